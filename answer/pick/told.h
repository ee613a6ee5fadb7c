// told.h - the rooms of a ranking that is told, and the kinds of columns that they share.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_PICK_TOLD_H
#define LW_ANSWER_PICK_TOLD_H

#include <math.h>

#include "answer/pick/pick.h"

#define TEXT(key, head)                                  \
    {                                                    \
        (key), (head), LW_AS_TEXT, LW_UNIT_NONE, 0, NULL \
    }
#define TRUTH(key)                                      \
    {                                                   \
        (key), NULL, LW_AS_TRUTH, LW_UNIT_NONE, 0, NULL \
    }
#define WIND(key, head)                                    \
    {                                                      \
        (key), (head), LW_AS_NUMBER, LW_UNIT_KN, 1, "none" \
    }
#define TURNS(key, head)                                  \
    {                                                     \
        (key), (head), LW_AS_CHANGE, LW_UNIT_TURN, 1, "-" \
    }

static inline double there(double value) { return value > 0.0 ? value : NAN; }  // 0: there is none

// What is said first; the first place in short.
void lw_tell_first(lw_teller *t, const lw_picked *picked);

// Every place in numbers; why it stands there, and how surely.
void lw_tell_places(lw_teller *t, const lw_picked *picked);
void lw_tell_why(lw_teller *t, const lw_picked *picked);

// What each pin is held in, and what ends it; and on every course, for charts.
void lw_tell_holds(lw_teller *t, const lw_picked *picked);
void lw_tell_ranges(lw_teller *t, const lw_picked *picked);

// Rudder turns for lull, mean and puff, and knot by knot through the band. One of a place in a wind
// [m/s]: in brackets where it is not held, none where she does not stay up.
void lw_tell_turns(lw_teller *t, const lw_picked *picked);
typedef struct lw_turns_in {
    double wind, turns;
} lw_turns_in;
void lw_tell_turns_in(lw_teller *t, const lw_item *item, const lw_placing *place, lw_turns_in in);
#define LW_TURNS_NOTE \
    "In brackets: more wind than she is held in; a dash: she does not stay up in that wind."

// The order in other winds; what a pin with less lift costs and buys.
void lw_tell_others(lw_teller *t, const lw_picked *picked);

#endif
