// modes_text.h - what is said of small motions about a balance.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_MODES_TEXT_H
#define LW_WORDS_MODES_TEXT_H

#include "answer/words/number_text.h"
#include "lullwise/modes.h"

#define LW_MODES_LENGTH 400
#define LW_SWING_LONG   999.5  // [s] what takes longer nobody waits for  [judged]

// "ride height and pitch": what the motion mostly is.
void lw_mode_name(const lw_mode *mode, char text[LW_CELL_LENGTH]);

// "pitch 1.0°, height 4.8 cm": what goes together, the most noticed first.
void lw_mode_shape(const lw_mode *mode, char text[LW_MODES_LENGTH]);

// Worth a line: it grows, lasts, or swings long enough to be seen.
bool lw_mode_is_seen(const lw_mode *mode);

// Whether she is steady as sailed and left alone, and what lasts longest.
void lw_modes_verdict(const lw_modes *sailed, const lw_modes *alone, char text[LW_MODES_LENGTH]);

// "from 6.6 times the gearing it swings by itself, every 0.28 s": of more gearing, of less, and of
// the wand's lag.
void lw_wand_more(const lw_wand_margin *margin, char text[LW_MODES_LENGTH]);
void lw_wand_less(const lw_wand_margin *margin, char text[LW_MODES_LENGTH]);
void lw_wand_late(const lw_wand_margin *margin, char text[LW_MODES_LENGTH]);

// What bounds the answer: sentences, one each.
#define LW_MODES_TRUST 3
extern const char *const lw_modes_trust[LW_MODES_TRUST];

#endif
