// shift.h - a day's outlook for a boat that is a little different, without a new search.
// SPDX-License-Identifier: MIT

#ifndef LW_SHIFT_H
#define LW_SHIFT_H

#include "lullwise/choice.h"

// How the limits of a range move with what moves them: worked out once.
typedef struct lw_limit_slopes {
    int hold_knot;       // last held point, or -1: no hold, or nothing that ends it
    double hold_margin;  // there, of the margin that ends it, in SI
    double hold_slope;   // of that margin over the wind
    int stay_knot;       // a knot above the lightest flight, or -1
    double stay_slope;   // of the speed over the wind
} lw_limit_slopes;

typedef struct lw_shift_base {
    const lw_outlook *outlook;
    double puff;  // above the mean [m/s]
    lw_limit_slopes slopes[LW_PINS_MOST][LW_COURSES_MOST];
} lw_shift_base;

// outlook: all steps done; it must outlive the base.
void lw_shift_base_prepare(lw_shift_base *base, const lw_outlook *outlook);

// *to becomes the outlook of another boat, with its sections, and person, whose heel, place and
// heading stay: to first order right, in a hundredth of the time.
void lw_shifted(const lw_shift_base *base, const lw_boat *boat, const lw_sections *sections,
                const lw_person *person, lw_outlook *to);

// The same for the pace of one pin alone, from its ranges in both: rides are carried over by what
// steady flight gains or loses.
void lw_shift_pace(const lw_outlook *from, size_t pin, lw_outlook *to);

#endif
