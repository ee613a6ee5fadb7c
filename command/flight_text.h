// flight_text.h - one flight as a sailor reads it: attitude, forces, margins, and how far to trust it.
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

// Sentences on where the model leaves its grounds; returns how many, at most LW_TRUST_MOST.
#define LW_TRUST_MOST   8
#define LW_TRUST_LENGTH 160
size_t lw_flight_trust(const lw_craft *craft, const lw_answer *answer,
                       char notes[LW_TRUST_MOST][LW_TRUST_LENGTH]);

#endif
