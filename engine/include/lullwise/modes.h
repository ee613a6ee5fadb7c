// modes.h - small motions about a balance: which swing, how fast they die away, and how near the
// wand's loop is to swinging by itself.
// SPDX-License-Identifier: MIT
//
// Near a balance the rates of motion.h are x' = A x. Each eigenvalue of A is a motion that dies
// away or grows by itself: real ones without a swing, pairs with one.
//
//     x(t) = v exp(sigma t) cos(omega t + ...),   lambda = sigma + i omega
//
// Holds for    motions so small that no stop, slack, surface or stall is met; even wind, plain
// water. Leaves out   what motion.h leaves out; a swing that stops bound is found by a ride, not
// here.

#ifndef LW_MODES_H
#define LW_MODES_H

#include "lullwise/motion.h"

// What the sailor does meanwhile.
typedef enum lw_hands {
    LW_HANDS_STILL,    // helm, sheet and body stay where they are
    LW_HANDS_SAILING,  // she answers what she sees, as lw_pilot tells, with the gains of this speed
} lw_hands;

// clang-format off
// Parts of a motion: one line makes the code, the key and the name.
#define LW_PART_LIST(X)                  \
    X(SPEED,  "speed",    "speed")       \
    X(LEEWAY, "leeway",   "leeway")      \
    X(HEIGHT, "height",   "ride height") \
    X(PITCH,  "pitch",    "pitch")       \
    X(HEEL,   "heel",     "heel")        \
    X(COURSE, "course",   "course")      \
    X(WAND,   "wand",     "wand")        \
    X(DOWNWASH, "downwash", "downwash")    \
    X(BODY,   "body",     "body")        \
    X(SHEET,  "sheet",    "sheet")       \
    X(HELM,   "helm",     "helm")        \
    X(EYE,    "eye",      "sight")         \
    X(TRIM,   "trim",     "effort")
// clang-format on
#define LW_AS_PART(name, key, text) LW_PART_##name,
typedef enum lw_part { LW_PART_LIST(LW_AS_PART) LW_PARTS } lw_part;
const char *lw_part_key(lw_part part);
const char *lw_part_text(lw_part part);

// One motion in numbers. How far each goes is told for a motion in which the one that a sailor
// notices first goes as far as she would just notice it.
typedef struct lw_swing {
    double growth;   // sigma [1/s]   negative: it dies away
    double period;   //       [s]     infinite: it does not swing
    double natural;  //       [1/s]   |lambda| / 2 pi: its frequency without damping
    double damping;  // zeta  [-]     -sigma / |lambda|: 1 it does not swing, below 0 it grows
    double halves;   //       [s]     to half its size; infinite: it does not
    double doubles;  //       [s]     to twice its size; infinite: it does not
    double speed;    //       [m/s]
    double height;   //       [m]
    double pitch;    //       [rad]
    double heel;     //       [rad]
    double course;   //       [rad]
    double wand;     //       [rad]
    double helm;     //       [rad]
} lw_swing;
extern const lw_table lw_swing_table;

// How far a member of lw_swing goes to be just noticed, by its row; 0: it is none to be noticed.
double lw_swing_noticed(size_t row);

// `share`: how much each part has in the motion, 1 in all: |left vector| |right vector| of each
// state, which no unit changes [perez-arriaga-1982]. `first`, `second`: the parts with most of it.
typedef struct lw_mode {
    lw_swing swing;
    double share[LW_PARTS];
    lw_part first, second;
} lw_mode;

// The modes of a balance, those that grow or last longest first.
#define LW_MODES_MOST LW_RIDE_STATES
typedef struct lw_modes {
    bool is_steady;  // none doubles within ten minutes
    size_t count;    // 0: none could be found
    lw_mode mode[LW_MODES_MOST];
} lw_modes;

void lw_modes_of(const lw_motion *motion, const lw_ride_plan *plan, lw_hands hands,
                 lw_modes *modes);

// How near the loop from ride height over wand and flap back to ride height is to swinging by
// itself. Gearing is changed about the flap angle of the balance, which so stays a balance.
typedef struct lw_wand_margin {
    double gearing;         // [-] more gearing, as a factor, from which ride height and pitch
                            //     swing by themselves; 1: they do already
    double gearing_period;  // [s] of that swing
    double least_gearing;   // [-] factor below which ride height is not held; 0: none
    double lag;             // [s] lag of the wand from which they do
    double lag_period;      // [s]
    double lag_now;         // [s] as the rides have it
} lw_wand_margin;
extern const lw_table lw_wand_margin_table;

// Looked for up to ten times what is, and down to a tenth; infinite where nothing is found.
#define LW_MARGIN_SOUGHT 10.0
lw_wand_margin lw_wand_margin_of(const lw_motion *motion, const lw_ride_plan *plan, lw_hands hands);

#endif
