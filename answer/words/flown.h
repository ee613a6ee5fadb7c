// flown.h - what is said about one steady flight.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_FLOWN_H
#define LW_WORDS_FLOWN_H

#include "answer/teller.h"
#include "lullwise/flown.h"

// Turns for the answer and turns that hold most, and where they part; only where she flies and the
// turns are free.
#define LW_FLOWN_LENGTH 400
bool lw_flown_turns(const lw_flown *flown, char text[LW_FLOWN_LENGTH]);

// "Grey Heron, Wren. Pin B (3.6°), wind 12.0 kn, heading 50°."
void lw_flown_question(const lw_flown *flown, lw_unit unit, char text[LW_FLOWN_LENGTH]);

// "Flies at 17.2 kn on 45°. First to run out: ..."; what to try when she does not fly, speeds in
// the unit; and what was given and what was chosen.
void lw_flown_outcome(const lw_flown *flown, lw_unit unit, char text[LW_FLOWN_LENGTH]);
void lw_flown_advice(const lw_flown *flown, lw_unit unit, char text[LW_FLOWN_LENGTH]);
void lw_flown_freedom(const lw_flown *flown, char text[LW_FLOWN_LENGTH]);

// How well the forces balance, and where the model leaves its grounds: sentences; returns how many,
// at most LW_TRUST_MOST.
#define LW_TRUST_MOST   8
#define LW_TRUST_LENGTH 240
size_t lw_flown_trust(const lw_flown *flown, char notes[LW_TRUST_MOST][LW_TRUST_LENGTH]);

// Whose flight it is, what was asked and what came of it, in members that nobody is shown.
void lw_tell_flown(lw_teller *teller, const lw_flown *flown);

#endif
