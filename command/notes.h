// notes.h - sentences that go with an answer: what was done to the input, how far to trust it.
// SPDX-License-Identifier: MIT

#ifndef LW_NOTES_H
#define LW_NOTES_H

#include <jansson.h>
#include <stdio.h>

#define LW_NOTES_MOST  8
#define LW_NOTE_LENGTH 240

// Begins as {0}.
typedef struct lw_notes {
    int count;
    char text[LW_NOTES_MOST][LW_NOTE_LENGTH];
} lw_notes;

void lw_note(lw_notes *notes, const char *format, ...) __attribute__((format(printf, 2, 3)));

void lw_notes_print(FILE *out, const lw_notes *notes);  // wrapped, one below the other
json_t *lw_notes_json(const lw_notes *notes);           // an array of texts

#endif
