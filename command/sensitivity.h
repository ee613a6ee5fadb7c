// sensitivity.h - which measurement is worth taking better: what one tape error does to the choice.
// SPDX-License-Identifier: MIT

#ifndef LW_SENSITIVITY_H
#define LW_SENSITIVITY_H

#include <jansson.h>
#include <stdio.h>

#include "command/inputs.h"

#define LW_SENSITIVITIES_MOST 160

// What a quantity does when it is one tape error more than measured.
typedef struct lw_sensitivity_row {
    char key[80];  // "main_foil.span"
    const lw_quantity *row;
    double hold;        // [m/s] change of the wind that the best pin is held in
    double seconds;     // [s]   change of its time round the course
    double weight;      // what the rows are sorted by
    int first_instead;  // pin that an error one way or the other puts first, or -1
    void *data;         // where it stands while it is worked out
} lw_sensitivity_row;

typedef struct lw_sensitivity {
    bool flies;  // false: nothing flies on this day, and there are no rows
    size_t pin;  // best for the day's aim
    double held_up_to, seconds;
    size_t count;
    lw_sensitivity_row rows[LW_SENSITIVITIES_MOST];  // what matters most first
} lw_sensitivity;

// Each measured quantity of boat and sailor moved by its error, both ways: to first order, heel,
// place and heading as they were (shifted.h); then the LW_SEARCHED_ANEW that matter most with the
// best pin's range searched anew. False: no memory.
#define LW_SEARCHED_ANEW 10
bool lw_sensitivity_of(const lw_inputs *inputs, lw_sensitivity *sensitivity);

void lw_sensitivity_print(FILE *out, const lw_inputs *inputs, const lw_sensitivity *sensitivity);
json_t *lw_sensitivity_json(const lw_inputs *inputs, const lw_sensitivity *sensitivity);

#endif
