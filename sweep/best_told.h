// best_told.h - the hardware that a search came to, told: what to buy, and what it costs elsewhere.
// SPDX-License-Identifier: MIT

#ifndef LW_BEST_TOLD_H
#define LW_BEST_TOLD_H

#include "answer/teller.h"
#include "sweep/best.h"

void lw_best_tell(const void *best, lw_teller *teller);

#endif
