// sailed.h - what a logged day keeps of its tracks.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_SAILED_H
#define LW_ANSWER_SAILED_H

#include "answer/options.h"
#include "lullwise/logged.h"

// Of the files of --track, taken as one track; the wind's direction from instruments or from the
// sailing. False, with faults, where they are no tracks; *sailed is then as it was.
bool lw_sailed_read(lw_sailed *sailed, const lw_options *options, lw_faults *faults);

#endif
