// fault.h - what is wrong with something that a person wrote, and where; and a list of it.
// SPDX-License-Identifier: MIT

#ifndef LW_FAULT_H
#define LW_FAULT_H

#include <stdbool.h>
#include <stddef.h>

#define LW_FAULTS_MOST 100  // kept; those beyond are only counted

// A value as somebody wrote it, and where it stands.
typedef struct lw_written {
    const char *file;  // or "--set"; must outlive the faults that name it
    size_t line;       // from 1; 0: the whole file
    size_t column;     // from 1, in characters
    const char *key;   // "main_foil.span"; "" where no key is concerned
    const char *text;  // what was read; "" where nothing was
} lw_written;

typedef struct lw_fault {
    const char *file;
    size_t line, column;
    char key[96];
    char read[64];       // clipped, without control characters
    char expected[160];  // range and unit, or the words allowed; "" when there is nothing to expect
    char hint[64];       // what may have been meant, or ""
    char sentence[240];  // what is wrong
    bool is_doubt;       // the value was taken all the same
} lw_fault;

// Begins as {0}; owned by the caller.
typedef struct lw_faults {
    lw_fault *list;
    size_t count, room;
    size_t fault_count;  // without the doubts, but with those that were not kept
    size_t left_out;     // faults and doubts that were not kept
    lw_fault spill;      // where those are written
} lw_faults;

void lw_faults_free(lw_faults *faults);

// Adds an entry whose sentence and expectation the caller then writes. Never NULL.
lw_fault *lw_faults_add(lw_faults *faults, const lw_written *written);
lw_fault *lw_faults_doubt(lw_faults *faults, const lw_written *written);

// Adds the fault that memory ran out while `file` was read; false, so that it can be returned.
bool lw_faults_no_memory(lw_faults *faults, const char *file);

// Orders the entries from index `first` on by line; those of one line stay as they came.
void lw_faults_sort(lw_faults *faults, size_t first);

// printf into an array member: LW_FIT(fault->sentence, "no key %s", key). Clipped, never over.
#define LW_FIT(member, ...) lw_text_fit((member), sizeof(member), __VA_ARGS__)
void lw_text_fit(char *to, size_t room, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

// The same behind what stands there already.
void lw_text_add(char *to, size_t room, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

// Copies a text for showing: control characters become spaces, what is no UTF-8 becomes question
// marks, the end is clipped with "...". The copy always is UTF-8.
void lw_text_tame(char *to, size_t room, const char *text);

#endif
