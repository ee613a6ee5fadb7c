// given_flight.h - which steady flight is asked for.
// SPDX-License-Identifier: MIT

#ifndef LW_GIVEN_FLIGHT_H
#define LW_GIVEN_FLIGHT_H

#include "answer/options.h"
#include "answer/words/flown.h"

// Pin, wind, course, heading, heel, place and turns as the options give them, or the middle pin in
// the day's mean wind, upwind. The flight is prepared already. False after a complaint.
bool lw_given_flight(const lw_options *options, int pin, lw_flown *flown);

#endif
