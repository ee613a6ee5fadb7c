// choice.h - which set-up for the day: rides round the course through lulls and puffs, and a
// ranking.
// SPDX-License-Identifier: MIT

#ifndef LW_CHOICE_H
#define LW_CHOICE_H

#include "lullwise/chance.h"
#include "lullwise/day.h"
#include "lullwise/draw.h"
#include "lullwise/range.h"
#include "lullwise/swims.h"

#define LW_COURSES_MOST 4

// clang-format off
// What the ranking is for. For `race` time decides, flown or not; for the others, what flies stands
// before what does not.
#define LW_AIM_LIST(X)                                                     \
    X(RACE,   "race",   "least expected time round the course")            \
    X(STEADY, "steady", "least expected time, swims counted threefold")    \
    X(EASY,   "easy",   "widest hold of those that fly")

// Why a set-up stands where it stands: what costs it most against the first.
#define LW_REASON_LIST(X)                                                  \
    X(FIRST,   "best for this aim")                                        \
    X(NEVER,   "does not fly in these winds")                              \
    X(HULL,    "does better on the hull than trying to fly")               \
    X(STUCK,   "cannot be sailed")                                         \
    X(DROPS,   "spends more time on the hull")                             \
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

// Winds of the day at its height.
typedef struct lw_gusts {
    double lull, mean, puff;  // [m/s]
    double period;            // [s]
} lw_gusts;

// In a wind whose mean is another, lull and puff in proportion.
lw_gusts lw_gusts_at(lw_gusts gusts, double mean);

// --- what is ridden

// What rides of one pin on one course came to, from the first second to the last.
typedef struct lw_ride_sum {
    double seconds;  // [s]  under way: all but lying in the water after a swim
    double along;    // [m]  made good along the course
    double flown;    // [s]
    double swims;
} lw_ride_sum;

typedef lw_ride_sum lw_ride_sums[LW_RIDE_WINDS][LW_PINS_MOST][LW_COURSES_MOST];

// A block of rides: one stretch of gusts and waves, which all pins meet.
typedef struct lw_block {
    lw_ride_sums as_is;                  // boat, sailor and judged numbers as given
    lw_ride_sums drawn[LW_BLOCK_DRAWS];  // drawn within their errors (draw.h)
} lw_block;

// How much is ridden. All pins and courses of a block and a wind have the same gusts and waves;
// what draws ride more has others, of each draw its own.
typedef struct lw_effort {
    double seconds;       // [s] each ride
    double drawn;         // [s] each ride of a draw, in the day's own wind and some others
    bool rides_all;       // each block in every wind; else all in the day's own, half in each other
    double more;          // [s] more of each draw in the day's wind, of pins not told apart
    uint64_t first_seed;  // rides have seeds from this on
} lw_effort;

lw_effort lw_effort_usual(void);     // of a ranking
lw_effort lw_effort_thorough(void);  // of hold or stop, and of the swims in every wind

// One set-up on the day. Times, flying and swims are expected over gusts and over what is not known
// of boat, sailor and judged numbers: who does not know his boat to half a degree must reckon with
// more swims than the boat as measured has. A wind of 0: there is none.
typedef struct lw_prospect {
    double seconds;       // [s]   expected round the course, swims counted; 0: cannot be sailed
    double flying;        // [-]   share of the time under way, in rides
    double swims;         // [-]   expected round the course
    double swims_error;   // [-]   standard error of that
    double swim_seconds;  // [s]   of `seconds`
    double hull_seconds;  // [s]   of `seconds`, sailed on the hull
    double speed;         // [m/s] made good round the course under way, lulls and puffs and all
    double launches_at;   // [m/s] on the course where it launches first
    double stays_up_at;   // [m/s] on the hardest leg; 0: on some leg never
    double held_up_to;    // [m/s] puffs, on the hardest leg: the lesser of the next two
    double margins_to;    // [m/s] by the margins of steady flight, as the puff hits
    double rides_to;      // [m/s] by rides (LW_HELD_BY_RIDES); or the most that was ridden in
    double turns_lull;    // [turns] on the longest leg; where she does not fly, of the lightest
    double turns_mean;    //         wind in which she does
    double turns_puff;
} lw_prospect;

extern const lw_table lw_prospect_table;

// Whether a row of lw_prospect is a wind that there may be none of, or a time that may not be.
bool lw_prospect_may_lack(size_t row);

typedef struct lw_placing {
    size_t pin;  // index in the boat
    lw_prospect prospect;
    lw_reason reason;
    size_t ends_by;      // row of the margin that ends the hold on the hardest leg, or the count
    bool ends_by_rides;  // not a margin but the swims of rides end it there
    bool rides_end;      // false: rides hold the most wind that they met, on every leg
    bool can_be_sailed;  // at a knot made good and more on every leg
    bool flies;          // on some leg
    bool could_fly;      // rides flew, but on the hull she does better on every leg
    double behind;       // [s]  the place before, as the aim counts seconds; 0 where it does not
    double error;        // [s]  standard error of that, by the number of rides
    double spread;       // [s]  of one boat and sailor, by what is not known of them
    double chance;       // [-]  that it is behind, over both; 0: not weighed
    bool is_close;       // behind by less than LW_CLOSE errors
    bool flies_in_lull, flies_in_mean, flies_in_puff;  // steady flight on every leg in that wind
} lw_placing;

typedef struct lw_choice {
    lw_aim aim;
    lw_gusts gusts;
    size_t count;
    lw_placing places[LW_PINS_MOST];  // best first
} lw_choice;

// All that a choice rests on, worked out once for a boat, a sailor and a day.
typedef struct lw_outlook {
    lw_boat boat;
    lw_person person;
    lw_sections sections;
    lw_craft craft;
    lw_gusts gusts;
    lw_cost cost;
    lw_aim aim;
    lw_effort effort;
    size_t pin_count, course_count, leg_count;
    lw_course courses[LW_COURSES_MOST];
    size_t leg_course[LW_LEGS_MOST];
    double leg_length[LW_LEGS_MOST];
    double
        reach_launch[LW_PINS_MOST];  // [m/s] least wind in which she launches bearing away; 0: none
    double relaunch[LW_PINS_MOST];   // [s] to launch again after a swim, bearing away
    double most_turns[LW_PINS_MOST];  // of lw_outlook_most_turns in the mean wind
    lw_range ranges[LW_PINS_MOST][LW_COURSES_MOST];
    lw_weather weather;
    lw_ride_plan plans[LW_RIDE_WINDS][LW_PINS_MOST][LW_COURSES_MOST];    // once they are asked for
    lw_wishes wishes[LW_RIDE_WINDS][LW_PINS_MOST][LW_COURSES_MOST];      // theirs
    signed char has_plan[LW_RIDE_WINDS][LW_PINS_MOST][LW_COURSES_MOST];  // 1; -1: she never flies
    lw_craft drawn[LW_DRAWS];                                            // once they are asked for
    bool has_drawn[LW_DRAWS];
    lw_block blocks[LW_BLOCKS];
    bool is_done[LW_PINS_MOST * LW_COURSES_MOST + 2 * LW_BLOCKS];           // by step
    bool is_decided, rides_more[LW_PINS_MOST];                              // which pins ride again
    lw_ride_sums sums[LW_SETS];                                             // as is
    double rate[2][LW_SETS][LW_PINS_MOST][LW_COURSES_MOST][LW_RIDE_WINDS];  // [1/s] of swims,
        // fitted: of each set as is, and of its draws
    lw_swims swims[LW_PINS_MOST][LW_COURSES_MOST];  // of all blocks
    double pace[LW_PINS_MOST][LW_COURSES_MOST];  // factor on speeds, for a boat a little different
} lw_outlook;

// The day must be settled (day.h). At most LW_COURSES_MOST different headings count as courses;
// further legs take the nearest. About 5 MB: keep it off the stack.
void lw_outlook_prepare(lw_outlook *outlook, const lw_boat *boat, const lw_sections *sections,
                        const lw_person *person, const lw_day *day);

// The same in steps, for a caller that shows progress, stops, or shares them out:
//
//     lw_outlook_begin(outlook, ...)              then, if other effort is wanted, outlook->effort
//     for (done = 0; done < (n = lw_outlook_steps(outlook)); done = n)
//         lw_outlook_step(outlook, k)             each k from done up to n, in any order
//     lw_outlook_end(outlook)
//
// First come the pins on their courses, then the blocks of rides, then more rides if neighbours are
// not told apart. What a step works out can be given to another outlook that has begun the same.
void lw_outlook_begin(lw_outlook *outlook, const lw_boat *boat, const lw_sections *sections,
                      const lw_person *person, const lw_day *day);
size_t lw_outlook_steps(lw_outlook *outlook);
bool lw_outlook_is_whole(lw_outlook *outlook);  // all steps that there will be are done
void lw_outlook_step(lw_outlook *outlook, size_t step);
void lw_outlook_end(lw_outlook *outlook);
void lw_outlook_work_out(lw_outlook *outlook);  // all steps of one that has begun, and its end

// Begun again: what steps worked out is forgotten.
void lw_outlook_forget(lw_outlook *outlook);

typedef struct lw_outlook_part {
    lw_range range;
    double reach_launch, relaunch, most_turns;
    lw_block block;
} lw_outlook_part;
void lw_outlook_give(const lw_outlook *outlook, size_t step, lw_outlook_part *to);
void lw_outlook_take(lw_outlook *outlook, size_t step, const lw_outlook_part *from);

// The k-th mean wind [m/s] that is ridden in, of LW_RIDE_WINDS.
double lw_outlook_wind(const lw_outlook *outlook, size_t k);

// Greatest puffs [m/s] in which a pin is held on a course, by margins and by rides; 0: none, or
// less than the wind in which she stays up.
double lw_outlook_hold(const lw_outlook *outlook, size_t pin, size_t course);

// The course of the longest leg, on which rudder turns are told.
size_t lw_outlook_longest(const lw_outlook *outlook);

// Rudder turns that hold most in a wind [m/s] on that course, of flights whose heading, heel and
// place are those for speed; straight between knots. NAN: none there keeps its margins.
double lw_outlook_most_turns(const lw_outlook *outlook, size_t pin, double wind);

// The course on which a pin is held least.
size_t lw_outlook_hardest(const lw_outlook *outlook, size_t pin);

// Whether swims end it, in less wind than the margins do.
bool lw_outlook_hold_ends_by_rides(const lw_outlook *outlook, size_t pin, size_t course);

// --- what is expected

// Whose rides: of a set of blocks, as is, with swims from the curves fitted to them; or of one
// draw, or as is beside it, in its block and its winds; with swims drawn towards those curves. From
// draw to draw rates go as a gamma variable with a deviation of its mean m [judged]; after n swims
// in a time T
//
//     m (n + 1) / (m T + 1)
//
// is expected: what a few minutes happened to see does not count for a draw's own.
typedef struct lw_source {
    enum { LW_OF_SET, LW_OF_DRAW, LW_BESIDE_DRAW } kind;
    size_t set;     // whose curves tell the swims
    size_t number;  // of a draw
    bool for_time;  // where time decides she is sailed on the hull if that is the faster
} lw_source;

// A pin on one course in a mean wind [m/s].
typedef struct lw_sailing {
    double speed;   // [m/s] made good along the course under way
    double flying;  // [-]   share of that time
    double swims;   // [1/s] under way
    double swim;    // [s]   that one costs, with launching again
    bool on_hull;   // sails on the hull: does not fly, lies in the water longer than she sails, or,
                    // where time decides, is faster so
    bool is_stuck;  // makes less than a knot good
} lw_sailing;

lw_sailing lw_outlook_sailing(const lw_outlook *outlook, lw_source source, size_t pin,
                              size_t course, double wind);

// Ranks the pins when the mean wind is `more` [m/s] than the day says, lull and puff in proportion.
lw_choice lw_choice_of(const lw_outlook *outlook, lw_aim aim, double more);

#endif
