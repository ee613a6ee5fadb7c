// sensitivity.h - which measurement is worth taking better: what one tape error does to the choice.
// SPDX-License-Identifier: MIT

#ifndef LW_SENSITIVITY_H
#define LW_SENSITIVITY_H

#include "lullwise/shift.h"

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
// (shift.h), or with the best pin's range searched anew.
void lw_sensing_row(lw_sensing *sensing, size_t row, bool is_anew);

// Leaves out what cannot be moved; what matters most first. Or the first `count` rows alone.
void lw_sensitivity_sort(lw_sensitivity *found);
#define LW_SEARCHED_ANEW 10  // so many of the first rows are worth searching anew  [judged]
void lw_sensitivity_sort_first(lw_sensitivity *found, size_t count);

#endif
