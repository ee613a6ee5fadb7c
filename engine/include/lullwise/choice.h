// choice.h - which set-up for the day: time round the course through lulls and puffs, and a ranking.
// SPDX-License-Identifier: MIT

#ifndef LW_CHOICE_H
#define LW_CHOICE_H

#include "lullwise/day.h"
#include "lullwise/range.h"
#include "lullwise/swims.h"

#define LW_COURSES_MOST 4

// clang-format off
// What the ranking is for.
#define LW_AIM_LIST(X)                                                     \
    X(RACE,   "race",   "least expected time round the course")            \
    X(STEADY, "steady", "least expected time, swims and lost hold counted threefold") \
    X(EASY,   "easy",   "widest hold of those that fly")

// Why a set-up stands where it stands: what costs it most against the first.
#define LW_REASON_LIST(X)                                                  \
    X(FIRST,   "best for this aim")                                        \
    X(NEVER,   "never takes off in these winds")                           \
    X(DROPS,   "spends the lulls on the hull")                             \
    X(UNHELD,  "cannot be held in the puffs")                              \
    X(SWIMS,   "swims more often")                                         \
    X(SLOWER,  "flies as much but slower")                                 \
    X(TIGHTER, "holds less wind than the first")
// clang-format on

#define LW_AS_AIM(name, text, doc) LW_AIM_##name,
#define LW_AS_REASON(name, text)   LW_REASON_##name,
typedef enum lw_aim { LW_AIM_LIST(LW_AS_AIM) LW_AIM_COUNT } lw_aim;
typedef enum lw_reason { LW_REASON_LIST(LW_AS_REASON) LW_REASON_COUNT } lw_reason;
const char *lw_aim_text(lw_aim aim);
const char *lw_aim_doc(lw_aim aim);
lw_aim lw_aim_of(const char *text);  // LW_AIM_COUNT when there is none of that name
const char *lw_reason_text(lw_reason reason);

// Winds of the day at its height, gusts about them as a sine whose 10 and 90 % points are the
// lull and the puff.
typedef struct lw_gusts {
    double lull, mean, puff;  // [m/s]
    double period;            // [s]
} lw_gusts;

// One set-up on the day.
typedef struct lw_prospect {
    double seconds;       // [s]   expected round the course, swims counted
    double flying;        // [-]   share of the time
    double unheld;        // [-]   share of the time in wind above the hold limit
    double swims;         // [-]   expected round the course
    double swims_error;   // [-]   standard error of that
    double swim_seconds;  // [s]   of `seconds`
    double hull_seconds;  // [s]   of `seconds`, sailed on the hull
    double launches_at;   // [m/s] on the course where it launches first
    double stays_up_at;   // [m/s] on the hardest leg; 0: on some leg never
    double held_up_to;    // [m/s] on the hardest leg: the lesser of the next two
    double margins_to;    // [m/s] by the margins of steady flight, in a puff too
    double rides_to;      // [m/s] by rides: above, they swim too often; 0: in no wind ridden in
    double speed;         // [m/s] made good round the course in the mean wind, if she flies in it
    double turns_lull;    // [turns] on the longest leg; where she does not fly, of the lightest
    double turns_mean;    //         wind in which she does
    double turns_puff;
    double score;  // [s], or [m/s] of hold when easy: what the ranking sorts by, least first
} lw_prospect;

extern const lw_table lw_prospect_table;

typedef struct lw_placing {
    size_t pin;  // index in the boat
    lw_prospect prospect;
    lw_reason reason;
    size_t ends_by;      // row of the margin that ends the hold on the hardest leg, or the count
    bool ends_by_rides;  // not a margin but the swims of rides end it there
    double flown[LW_COURSES_MOST];  // [s] in flight on each course
    double error;   // standard error of how far its score is behind that of the place before
    bool is_close;  // it is behind by less than that
    bool flies_in_lull, flies_in_mean, flies_in_puff;
} lw_placing;

typedef struct lw_choice {
    lw_aim aim;
    lw_gusts gusts;
    size_t count;
    lw_placing places[LW_PINS_MOST];  // best first
} lw_choice;

// All that a choice rests on, worked out once for a boat, a sailor and a day.
typedef struct lw_outlook {
    lw_craft craft;
    lw_gusts gusts;
    lw_cost cost;
    size_t pin_count, course_count, leg_count;
    lw_course courses[LW_COURSES_MOST];
    size_t leg_course[LW_LEGS_MOST];
    double leg_length[LW_LEGS_MOST];
    double
        reach_launch[LW_PINS_MOST];  // [m/s] least wind in which she launches bearing away; 0: none
    lw_range ranges[LW_PINS_MOST][LW_COURSES_MOST];
    lw_weather weather;
    lw_swim_counts ridden[LW_PINS_MOST][LW_COURSES_MOST];
    lw_swims swims[LW_PINS_MOST][LW_COURSES_MOST];  // from all that was ridden on a course
    lw_rate_family rates[LW_COURSES_MOST];
} lw_outlook;

// The day must be settled (day.h). At most LW_COURSES_MOST different headings count as courses;
// further legs take the nearest. About 2 MB: keep it off the stack.
void lw_outlook_prepare(lw_outlook *outlook, const lw_boat *boat, const lw_sections *sections,
                        const lw_person *person, const lw_day *day);

// The same in steps, for a caller that shows progress or stops: begin, then each step from 0 once,
// in any order (one pin on one course), then the end. The boat must be the one it began with.
void lw_outlook_begin(lw_outlook *outlook, const lw_boat *boat, const lw_sections *sections,
                      const lw_person *person, const lw_day *day);
size_t lw_outlook_steps(const lw_outlook *outlook);
void lw_outlook_step(lw_outlook *outlook, const lw_boat *boat, size_t step);
void lw_outlook_end(lw_outlook *outlook);

// Greatest wind [m/s] in which a pin is held on a course, by margins and by rides; 0: none.
double lw_outlook_hold(const lw_outlook *outlook, size_t pin, size_t course);

// The course on which a pin is held least.
size_t lw_outlook_hardest(const lw_outlook *outlook, size_t pin);

// By rides alone; INFINITY where they swim bearably in every wind ridden in.
double lw_outlook_ridden_to(const lw_outlook *outlook, size_t pin, size_t course);

// Whether swims end it, in less wind than the margins do.
bool lw_outlook_hold_ends_by_rides(const lw_outlook *outlook, size_t pin, size_t course);

// Ranks the pins when lull, mean and puff are all `more` [m/s] than the day says.
lw_choice lw_choice_of(const lw_outlook *outlook, lw_aim aim, double more);

#endif
