// draw.h - boat, sailor and judged numbers as they may as well be: drawn within their errors.
// SPDX-License-Identifier: MIT

#ifndef LW_DRAW_H
#define LW_DRAW_H

#include "lullwise/boat.h"
#include "lullwise/chance.h"
#include "lullwise/motion.h"

// What rides take from judgement, each as a factor on its preset; its row has the error.
typedef struct lw_judged {
    double delay;      // tau  [-] sight's
    double hand_lag;   //      [-] of sheet and helm
    double body_lag;   //      [-]
    double body_pace;  //      [-]
    double sheet_out;  //      [-] how fast power is taken off
    double sheet_in;   //      [-] and put back
    double wand_lag;   //      [-]
    double heel;       // k_e  [-] how strongly the sailor answers heel,
    double lead;       // T_l  [-] how far ahead she counts it,
    double steer;      // k_h  [-] how strongly she answers course,
    double lean;       // k_x  [-] and heel with the helm
} lw_judged;

extern const lw_table lw_judged_table;

lw_judged lw_judged_preset(void);  // all 1
void lw_judged_put_parameters(const lw_judged *judged, lw_ride_parameters *parameters);
void lw_judged_put_pilot(const lw_judged *judged, lw_pilot *pilot);

#define LW_DRAW_PAIRS (LW_DRAWS / 2)

// One draw. Each quantity of boat and sailor that has an error is moved by it times a normal
// number, and so is each judged factor; pins each on their own.
typedef struct lw_draw {
    lw_boat boat;
    lw_person person;
    lw_judged judged;
} lw_draw;

// Draws come in pairs, 2 k and 2 k + 1, that move everything the same way and the opposite way, so
// that they even out to what was measured. LW_DRAW_PAIRS pairs are a Latin hypercube [mckay-1979]:
// of as many parts of a half normal, alike in probability, each quantity meets every one once.
// Values are held within their ranges. A pair of which a boat contradicts itself is moved by half
// as much, and so on.
//
// Leaves out   errors of the day: what is asked is asked of its wind and water.
void lw_draw_of(const lw_boat *boat, const lw_person *person, unsigned number, lw_draw *draw);

#endif
