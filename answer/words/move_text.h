// move_text.h - what to move, and how far, in the sailor's words.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_MOVE_TEXT_H
#define LW_WORDS_MOVE_TEXT_H

#include "lullwise/diagnosis.h"

// "wind rudder lift on by 1.0 turns"; "take a pin with less lift: C, with rudder lift wound off by
// 2.7 turns, sitting 20 cm further aft". No full stop.
#define LW_MOVE_LENGTH  200
#define LW_TURNS_UNTOLD 0.25  // [turns] beside a change of pin  [judged]
#define LW_PLACE_UNTOLD 0.1   // [m]     the same of where she sits  [judged]
void lw_move_text(const lw_boat *boat, const lw_remedy *remedy, char text[LW_MOVE_LENGTH]);

// The same, of a pin as a card has room for, which tells of no place: "pin C, rudder lift off by
// 2.7 turns".
void lw_move_text_brief(const lw_boat *boat, const lw_remedy *remedy, char text[LW_MOVE_LENGTH]);

// "2.0 turns", "10 cm", "0.05", "10 %": how far a lever is off or moved, without a sign.
const char *lw_lever_amount(char text[LW_MOVE_LENGTH], lw_lever lever, double si);
#define LW_LEVER_AMOUNT(lever, si) lw_lever_amount((char[LW_MOVE_LENGTH]){0}, (lever), (si))

#endif
