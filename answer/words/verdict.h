// verdict.h - what is said first of a day's ranking: which pin, that none holds the wind, or that
// nothing flies; and what would.
// SPDX-License-Identifier: MIT

#ifndef LW_VERDICT_H
#define LW_VERDICT_H

#include "answer/words/picked.h"

typedef enum lw_verdict {
    LW_VERDICT_PIN,     // one at least is held in the day's puffs
    LW_VERDICT_UNHELD,  // it blows enough to fly, and none is
    LW_VERDICT_NO_FLIGHT,
} lw_verdict;
lw_verdict lw_verdict_of(const lw_picked *picked);

// "Pin C", "No pin holds this wind", "Nothing flies in puffs of 5.0 kn". No full stop.
void lw_verdict_headline(const lw_picked *picked, char text[LW_REASON_LENGTH]);

// What would hold, or fly: which pin, up to or from which wind. Empty where a pin holds.
void lw_verdict_would(const lw_picked *picked, char text[LW_REASON_LENGTH]);

// The first place where it is not held in the puffs: "Not held in the puffs: pin C holds them".
// Empty where it is, or where none is.
void lw_verdict_unheld(const lw_picked *picked, char text[LW_REASON_LENGTH]);

// All of it in a line: "Pin C, held to 22.4 kn. Turns: lull +0.7, mean +0.8, puff +1.2".
void lw_verdict_line(const lw_picked *picked, char text[LW_REASON_LENGTH]);

#endif
