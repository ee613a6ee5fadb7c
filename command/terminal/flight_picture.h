// flight_picture.h - boat, foils, wand and water from the side, in letters and to scale.
// SPDX-License-Identifier: MIT

#ifndef LW_FLIGHT_PICTURE_H
#define LW_FLIGHT_PICTURE_H

#include <stdbool.h>
#include <stdio.h>

// Of the answer of `lullwise fly`, where she flies.
bool lw_flight_has_picture(const void *fly);
void lw_flight_picture(FILE *out, const void *fly);

#endif
