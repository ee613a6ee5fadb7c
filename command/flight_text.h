// flight_text.h - one flight as a sailor reads it: attitude, forces, margins.
// SPDX-License-Identifier: MIT

#ifndef LW_FLIGHT_TEXT_H
#define LW_FLIGHT_TEXT_H

#include <stdio.h>

#include "lullwise/flight.h"

// Speed, attitude, trim and forces in two columns.
void lw_flight_print(FILE *out, const lw_flight *flight);

// Every margin, the first to run out on top.
void lw_margins_print(FILE *out, const lw_margins *margins);

// Boat, foils, wand and water from the side, to scale.
void lw_flight_picture(FILE *out, const lw_boat *boat, const lw_flight *flight);

#endif
