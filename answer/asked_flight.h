// asked_flight.h - which steady flight is asked for.
// SPDX-License-Identifier: MIT

#ifndef LW_ASKED_FLIGHT_H
#define LW_ASKED_FLIGHT_H

#include "answer/asked.h"
#include "lullwise/flown.h"

// The options that say it.
#define LW_FLIGHT_OPTIONS "pin wind course heading heel place turns trim"

// The flight prepared for the inputs, which stay where they are, and asked as the options say: the
// middle pin in the day's mean wind, upwind, where they say nothing. False: refused.
bool lw_asked_flight(lw_flown *flown, const lw_inputs *inputs, const lw_options *options,
                     lw_refusal *refusal);

#endif
