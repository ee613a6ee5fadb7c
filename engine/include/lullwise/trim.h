// trim.h - what the sailor sets by choice: heel, place, rudder turns, heading; and by which aim.
// SPDX-License-Identifier: MIT

#ifndef LW_TRIM_H
#define LW_TRIM_H

#include "lullwise/flight.h"

// clang-format off
// What a trim is chosen by. A further criterion is a line here and its case in flight/trim.c.
#define LW_CRITERION_LIST(X)                                                                  \
    X(SPEED, "speed", "fastest along the course with margins in hand, kept in the puff too")   \
    X(HOLD,  "hold",  "most in hand of tips, flap and wand, in the puff too")                  \
    X(LEVEL, "level", "as for speed, with the bow level")                                     \
    X(BOLD,  "bold",  "as for a mark: speed first, tip depth and heel in hand hardly count")
// clang-format on

#define LW_AS_CRITERION(name, text, doc) LW_BY_##name,
typedef enum lw_criterion { LW_CRITERION_LIST(LW_AS_CRITERION) LW_CRITERION_COUNT } lw_criterion;
const char *lw_criterion_text(lw_criterion criterion);
const char *lw_criterion_doc(lw_criterion criterion);
lw_criterion lw_criterion_of(const char *text);  // the count when there is none of that name

// What the sailor may choose, within the craft's bounds, and by what.
typedef struct lw_freedom {
    lw_criterion by;
    bool heel, place, turns, heading;
    double heading_low, heading_high;  // [rad] when the heading is free
    double course;  // [rad] direction wanted: the speed made good along it is what counts
    double puff;    // [m/s] by which a puff comes above the wind, at unchanged turns; 0: none
} lw_freedom;

// A trim: what to ask for, and what comes of it in the wind and in the puff.
typedef struct lw_trim {
    lw_ask ask;
    double heel_in_puff;  // [rad] more than in the wind
    lw_answer steady;
    lw_answer
        puffed;    // rudder, place and heading as steady; the heel follows. Steady, without puff
    double score;  // the criterion's: the greater the better; far below 0: no flight
} lw_trim;

// A trim to start from, as a flight is sailed.
lw_trim lw_trim_again(const lw_craft *craft, const lw_setup *setup, const lw_answer *answer);

// The best trim by a criterion, from an ask. With the turns free the rudder's incidence follows
// from the bow, which goes no further down or up than the sailor lets it; else the ask's rudder, or
// its bow when it gives that (lw_ask.gives_pitch), stays.
//
//     SPEED   V cos(heading - course) - 4 m/s x what margins are overdrawn, in their scales
//             - 0.25 m/s x what rudder tip, flap and wand travel lack of one scale
//     HOLD    the least of tip depths, flap and wand travel, in their scales
//
// both smooth: a margin counts as overdrawn a little before it is, by some hundredths of its scale,
// so that the trim goes evenly with the wind. Of trims as good as each other the leveller.
lw_trim lw_trim_of(const lw_craft *craft, const lw_ask *start, const lw_freedom *freedom);

// From where another trim left off.
lw_trim lw_trim_from(const lw_craft *craft, const lw_trim *start, const lw_freedom *freedom);

// A trim as it stands, scored but not sought.
lw_trim lw_trim_as(const lw_craft *craft, const lw_trim *trim, const lw_freedom *freedom);

// Flies with the hull clear; and keeps all margins too, in the wind and in the puff. A puff that
// sets her down on the hull costs time, but she is still held.
bool lw_trim_is_up(const lw_trim *trim);
bool lw_trim_beats(const lw_trim *trim, const lw_trim *other);  // is up, the other not or worse
bool lw_trim_is_held(const lw_trim *trim);

#endif
