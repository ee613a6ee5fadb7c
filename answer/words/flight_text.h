// flight_text.h - the numbers of a flight, and of a moment of a ride, by the names that they have
// on the water.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_FLIGHT_TEXT_H
#define LW_WORDS_FLIGHT_TEXT_H

#include "answer/teller.h"
#include "lullwise/flight.h"

// "rudder lift on" for the row `turns` of lw_flight_table; the key itself where it has no other
// name.
const char *lw_flight_name(const char *key);

// "hull above the water" for the row `clearance` of lw_trace_table, likewise.
const char *lw_moment_name(const char *key);

// The objects `flight` and `forces`: every row, those with a name shown, or none of them.
void lw_tell_flight(lw_teller *teller, const lw_flight *flight, bool is_shown);

#endif
