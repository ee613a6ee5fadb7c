// choice.h - which set-up for the day: a ranking of the pins, and why each stands where it does.
// SPDX-License-Identifier: MIT

#ifndef LW_CHOICE_H
#define LW_CHOICE_H

#include "lullwise/outlook.h"

// clang-format off
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

#define LW_AS_REASON(name, text) LW_REASON_##name,
typedef enum lw_reason { LW_REASON_LIST(LW_AS_REASON) LW_REASON_COUNT } lw_reason;
const char *lw_reason_text(lw_reason reason);

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

// Ranks the pins when the mean wind is `more` [m/s] than the day says, lull and puff in proportion.
lw_choice lw_choice_of(const lw_outlook *outlook, lw_aim aim, double more);

#endif
