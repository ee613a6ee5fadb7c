// range.h - from what wind a set-up flies, up to what wind it is held; its trims along the wind.
// SPDX-License-Identifier: MIT

#ifndef LW_RANGE_H
#define LW_RANGE_H

#include "lullwise/trim.h"

// --- from what wind a set-up flies on a course, up to what wind it is held, and what ends it

// clang-format off
// A course to sail, with the headings that a sailor tries on it.
//    name        text         direction   headings tried
#define LW_COURSE_LIST(X)                                    \
    X(UPWIND,     "upwind",      0.0,       32.0,  75.0)     \
    X(REACH,      "reach",     100.0,      100.0, 100.0)     \
    X(DOWNWIND,   "downwind",  180.0,      115.0, 165.0)
// clang-format on

typedef struct lw_course {
    double direction;  // [rad] wanted, from the wind
    double low, high;  // [rad] headings tried; equal: sailed straight
} lw_course;

#define LW_AS_COURSE(name, text, direction, low, high) LW_##name,
typedef enum lw_course_kind { LW_COURSE_LIST(LW_AS_COURSE) LW_COURSE_COUNT } lw_course_kind;
const char *lw_course_text(lw_course_kind kind);
lw_course lw_course_of(lw_course_kind kind);

// A leg straight to its mark, unless the mark lies too close to the wind or too far off it.
lw_course lw_course_to(double direction);

// The heading in the middle of those tried.
double lw_course_middle(lw_course course);

// One hullborne boat gathering way in a wind: what decides whether she flies.
typedef struct lw_launch {
    bool flies;         // through the hump and off the water
    double speed;       // [m/s]   where she stays on the hull, or lifts off
    double seconds;     // [s]     from 1.5 m/s to lift-off; 0 when she does not fly
    double hump_spare;  // [m/s^2] least acceleration on the way; negative: the hump holds her
    double hump_speed;  // [m/s]   where it is least
} lw_launch;

// rudder: incidence of the rudder foil [rad], as wound for the flight that is to follow.
lw_launch lw_launch_of(const lw_craft *craft, const lw_setup *setup, double rudder, double wind,
                       double heading);

// Winds of a range, every knot.
#define LW_RANGE_FIRST_KN 4
#define LW_RANGE_WINDS    31

double lw_range_wind(int i);  // of the i-th [m/s]

// Where a wind lies among them: between two neighbours; beyond the ends at the nearer.
typedef struct lw_range_interval {
    int below;    // index of the lower
    double part;  // 0 there, 1 at the next
} lw_range_interval;
lw_range_interval lw_range_interval_of(double wind);

// Index of the nearest.
int lw_range_nearest(double wind);

typedef struct lw_range_point {
    double wind;        // [m/s]
    lw_answer trimmed;  // fastest, turns wound for it, all margins kept if they can be
    lw_answer puffed;   // the same wind as a puff: rudder and place as trimmed one puff below
    bool is_held;       // both keep their margins
} lw_range_point;

typedef struct lw_range {
    double launches_at;  // [m/s] least wind that lifts her off the water; 0: none tried
    double stays_up_at;  // [m/s] least wind in which steady flight exists with the hull clear
    double held_up_to;   // [m/s] greatest wind that keeps all margins, also as a puff
    bool has_launch, has_flight, has_hold;
    size_t ends_by;     // row of the margin that ends it
    bool ends_in_puff;  // it is the puff at an unchanged rudder that ends it
    lw_range_point at[LW_RANGE_WINDS];
    lw_launch on_hull[LW_RANGE_WINDS];  // gathering way on the launching heading
} lw_range;

extern const lw_table lw_setup_table;
extern const lw_table lw_range_table;  // of the three winds

// Range of a set-up on a course when puffs come `puff` [m/s] above what the rudder is trimmed for.
void lw_range_of(const lw_craft *craft, const lw_setup *setup, lw_course course, double puff,
                 lw_range *range);

// What she is sailed with in a mean wind: the flight of the nearest knot; beyond the last that
// keeps her margins that of the last, because who cannot hold her does not trim her for speed;
// where no wind keeps them the nearest that flies. NULL: none does.
const lw_range_point *lw_range_sailed(const lw_range *range, double wind);

// Turns that the rudder is wound to in a mean wind, likewise; between knots along straight lines. 0
// where none flies.
double lw_range_turns(const lw_range *range, double wind);

// Least wind [m/s] that lifts her off the water on another heading, the rudder wound as the range
// has it; 0: none of a range's.
double lw_range_launch(const lw_craft *craft, const lw_setup *setup, const lw_range *range,
                       double heading);

// --- trims of a set-up on a course, knot by knot along the wind: the one finder of flights

// Every knot starts from its neighbour's trim, until four in a row keep no margins: beyond, none is
// sought. The craft must outlive it. About 30 ms to make.
typedef struct lw_walk {
    const lw_craft *craft;
    lw_setup setup;
    lw_course course;
    double puff;                    // [m/s]
    lw_trim trims[LW_RANGE_WINDS];  // of the winds of a range
} lw_walk;

lw_walk lw_walk_of(const lw_craft *craft, const lw_setup *setup, lw_course course, double puff);

// That of a boat or set-up a little different: knots that are sought from the other's trims there,
// in half the time, where that flies; the rest stay the other's.
lw_walk lw_walk_beside(const lw_craft *craft, const lw_setup *setup, const lw_walk *other,
                       const bool sought[LW_RANGE_WINDS]);

// The flight in a wind: of a knot as it is, between two with controls straight between theirs.
lw_trim lw_walk_flight(const lw_walk *walk, double wind);

// The flight in one wind alone: a walk of the knots about it and of those on the way to them, which
// are the walk's from then on; all others are none. About 20 ms.
lw_trim lw_walk_to(lw_walk *walk, double wind);

// The turns that hold most, for a flight whose heading, heel and place stay.
lw_trim lw_walk_holding(const lw_walk *walk, const lw_trim *flight);

// Those turns for a flight of a range that was found with this puff, so much above the wind.
double lw_range_most_turns(const lw_craft *craft, const lw_setup *setup, lw_course course,
                           double puff, const lw_answer *flight);

// The trim for a wind sought from another; NULL: from nothing.
lw_trim lw_walk_trim(const lw_walk *walk, double wind, const lw_trim *from);

// The same from a trim with its bow 2 degrees further up (side 1) or down (-1): where one way to
// sail a wind ends another may go on.
lw_trim lw_walk_tilted(const lw_walk *walk, double wind, const lw_trim *from, int side);

// The walk whose trims a range has kept.
lw_walk lw_walk_again(const lw_craft *craft, const lw_setup *setup, lw_course course, double puff,
                      const lw_range *range);

// What she is sailed with in a mean wind: its flight; where none is found, or the knot of
// lw_range_sailed is a knot off or more, that of the knot, in its own wind. Not up: none flies.
lw_trim lw_walk_sailed(const lw_walk *walk, const lw_range *range, double wind);

// The trims as the points of a range, whose limits stay unknown.
void lw_range_trims(const lw_walk *walk, lw_range *range);

// Straight between the knots beside a wind, for where to start; with one that flies, that one.
// False where neither does.
bool lw_walk_between(const lw_walk *walk, double wind, lw_trim *trim);

#endif
