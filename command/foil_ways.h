// foil_ways.h - the two ways of `lullwise foil`: a section, or a whole foil of a boat.
// SPDX-License-Identifier: MIT

#ifndef LW_FOIL_WAYS_H
#define LW_FOIL_WAYS_H

#include "answer/inputs.h"
#include "command/command.h"
#include "command/foil_section.h"

#define LW_FOIL_USUAL_DEPTH 0.5  // [m]

// Both answer on standard output, or complain.
lw_exit lw_foil_of_section(const lw_options *options, const lw_inputs *inputs);
lw_exit lw_foil_of_boat(const lw_options *options, const lw_inputs *inputs);

// The section of --section; false after a complaint when it is unsound.
bool lw_foil_read_section(lw_named_section *section, const lw_options *options);

#endif
