// sensitivity.h - which measurement is worth taking better: what one tape error does to the choice.
// SPDX-License-Identifier: MIT

#ifndef LW_SENSITIVITY_H
#define LW_SENSITIVITY_H

#include "lullwise/choice.h"

// --- a day's outlook for a boat that is a little different, without a new search

// How the limits of a range move with what moves them: worked out once.
typedef struct lw_limit_slopes {
    int hold_knot;       // last held point, or -1: no hold, or nothing that ends it
    double hold_margin;  // there, of the margin that ends it, in SI
    double hold_slope;   // of that margin over the wind
    int stay_knot;       // a knot above the lightest flight, or -1
    double stay_least;   // least wind in which she flies as she is trimmed there [m/s]
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

// --- which measurement is worth taking better: what one tape error does to the choice

#define LW_SENSITIVITIES_MOST 160

// What a quantity does when it is one tape error more than measured.
typedef struct lw_sensitivity_row {
    char key[80];  // "main_foil.span"
    const lw_quantity *row;
    double hold;        // [m/s] change of the wind that the best pin is held in
    double seconds;     // [s]   change of its time round the course
    double weight;      // what the rows are sorted by; negative: it cannot be moved either way
    int first_instead;  // pin that an error one way or the other puts first, or -1
    void *data;         // where it stands in the boat and person that are moved
} lw_sensitivity_row;

typedef struct lw_sensitivity {
    bool flies;  // false: nothing flies on this day, and there are no rows
    size_t pin;  // best for the day's aim
    double held_up_to, seconds;
    size_t count;
    lw_sensitivity_row rows[LW_SENSITIVITIES_MOST];
} lw_sensitivity;

// What is needed on the way. Keep it where it is between the calls: rows point into it.
typedef struct lw_sensing {
    lw_boat boat;  // moved, and back
    lw_person person;
    lw_section_store *store;
    lw_shift_base base;
    lw_outlook *shifted;
    lw_sensitivity found;
} lw_sensing;

// Lists the measured quantities of boat and sailor, nothing worked out yet, with what the best pin
// does as things are. outlook: all steps done; scratch: room for another.
void lw_sensing_begin(lw_sensing *sensing, const lw_outlook *outlook, lw_outlook *scratch,
                      lw_section_store *store);

// One row moved by its error, both ways: to first order, heel, place and heading as they were
// (above), or with the best pin's range searched anew.
void lw_sensing_row(lw_sensing *sensing, size_t row, bool is_anew);

// Leaves out what cannot be moved; what matters most first. Or the first `count` rows alone.
void lw_sensitivity_sort(lw_sensitivity *found);
#define LW_SEARCHED_ANEW 10  // so many of the first rows are worth searching anew  [judged]
void lw_sensitivity_sort_first(lw_sensitivity *found, size_t count);

#endif
