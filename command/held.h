// held.h - one answer of `lullwise hold`: worked out, printed, as JSON.
// SPDX-License-Identifier: MIT

#ifndef LW_HELD_H
#define LW_HELD_H

#include <jansson.h>

#include "answer/words/picked.h"
#include "lullwise/hold.h"

typedef struct lw_held {
    lw_picked picked;   // of the day as it is now
    size_t pin;         // in the boat
    double left;        // [m]
    double now, later;  // [m/s] mean wind here and at the finish
    double stop;        // [s]
    lw_pace paces[LW_PINS_MOST];
    lw_change changes[LW_PINS_MOST];  // to each pin; that of the pin in the boat is not used
    size_t best;                      // the pin that saves most by a stop, here or later on
    bool has_best;                    // there is another pin
} lw_held;

// Paces, changes and the best from the inputs and what is asked; the outlook is there.
void lw_held_work_out(lw_held *held);

bool lw_held_flies(const lw_held *held);  // any pin, somewhere on the way

// Swims expected to the finish, and their standard error.
double lw_held_swims(const lw_held *held, size_t pin, double *error);

// Give or take, of rides and of what is not known together.
double lw_held_unsure(double error, double spread);

void lw_held_print(const lw_held *held);
json_t *lw_held_json(const lw_held *held);

// The answer in words, a sentence or two.
#define LW_HELD_LENGTH 500
void lw_held_answer(const lw_held *held, char text[LW_HELD_LENGTH]);

#endif
