// sailed.h - what a logged day keeps of its tracks.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_SAILED_H
#define LW_ANSWER_SAILED_H

#include "lullwise/logged.h"
#include "records/fault.h"

// Of files (NULL-ended), taken as one track; the wind's direction from instruments or from the
// sailing. False, with faults, where they are no tracks; *sailed is then as it was. *begins: [s]
// since 1970-01-01 UTC, NAN where they tell no date. wants_end: whether to give up; or NULL.
bool lw_sailed_read(lw_sailed *sailed, double *begins, const char *const *paths,
                    bool (*wants_end)(void), lw_faults *faults);

#endif
