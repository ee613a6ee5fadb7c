// lap.h - one set-up round the course through the day's gusts.
// SPDX-License-Identifier: MIT

#ifndef LW_LAP_H
#define LW_LAP_H

#include "lullwise/choice.h"

lw_prospect lw_lap(const lw_outlook *outlook, size_t pin, lw_gusts gusts);

#endif
