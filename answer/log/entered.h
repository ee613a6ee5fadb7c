// entered.h - a day to be logged, or changed, as options tell it: to the command and to the page.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_LOG_ENTERED_H
#define LW_ANSWER_LOG_ENTERED_H

#include "answer/options.h"
#include "records/logbook/entry.h"
#include "records/record_file.h"

// Whether a --set is of the logged day and of none of boat, sailor and day: "turns.upwind".
bool lw_entered_has(const char *assignment);

// A blank entry that takes boat, sailor, wind and sea from the inputs, and from the options its
// date, pin, signs, notes and what --set tells of it. False: all faults; inputs NULL: faulty
// themselves.
bool lw_entered_begin(lw_entry *entry, const lw_inputs *inputs, const lw_options *options,
                      lw_faults *faults);

// The same options put into a settled entry; --set takes every key of it.
bool lw_entered_change(lw_entry *entry, const lw_options *options, lw_faults *faults);

#endif
