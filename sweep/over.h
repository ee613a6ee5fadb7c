// over.h - one quantity, word or file that a sweep is taken over: its values one by one.
// SPDX-License-Identifier: MIT

#ifndef LW_OVER_H
#define LW_OVER_H

#include "answer/question.h"

#define LW_OVER_MOST 1000000  // values
#define LW_OVER_KEY  96
#define LW_OVER_TEXT 300

// What is varied. Numbers stand in the unit that they were given in.
typedef struct lw_over {
    char key[LW_OVER_KEY];  // "person.mass"; of files "boat", "sailor" or "day"
    char unit[24];          // "kg"; "" without
    size_t count;
    double from, step;        // of numbers in even steps
    char *list;               // of others: the texts, a closing zero behind each; NULL: even steps
    bool is_number;           // all of them are
    const lw_record *record;  // of files; else NULL
    char *records;            // those read from them, one behind the other
} lw_over;

// Reads "person.mass=55:100:5 kg", "aim=race; steady", "wand.length=1.1; 1.3 m" or
// "sailor=wren.yaml; heron.yaml"; the unit behind the last number holds for all. False: refused; to
// be released all the same, behind what was told of it. option: "over" or "best".
bool lw_over_read(lw_over *over, const char *option, const char *text, lw_refusal *refusal);
void lw_over_release(lw_over *over);

// The i-th value as it is shown, without its unit; and as an assignment, "person.mass=55 kg".
void lw_over_value(const lw_over *over, size_t i, char text[LW_OVER_TEXT]);
void lw_over_assignment(const lw_over *over, size_t i, char text[LW_OVER_TEXT]);

#endif
