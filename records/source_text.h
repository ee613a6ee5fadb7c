// source_text.h - bytes of a file, fetched and looked over before anything reads them.
// SPDX-License-Identifier: MIT

#ifndef LW_SOURCE_TEXT_H
#define LW_SOURCE_TEXT_H

#include <stdio.h>

#include "records/fault.h"

// A text at hand, and what faults call it: the path it came from, or a name.
typedef struct lw_source_text {
    const char *name;
    const char *text;
    size_t length;
} lw_source_text;

// A file as a person calls it: "standard input" for "-".
const char *lw_source_name(const char *path);

// Adds the fault of a whole file.
void lw_source_fault(lw_faults *faults, const char *path, const char *sentence);

// A file open for reading ("-": standard input), which the caller closes. NULL and a fault when it
// is missing, unreadable or a folder.
FILE *lw_source_open(const char *path, lw_faults *faults);

// Reads a whole file of at most `most` bytes ("-": standard input) into *text, which the caller
// frees; a closing zero is added. NULL and a fault when it is missing, unreadable, a folder or
// too long.
char *lw_source_fetch(const char *path, size_t most, size_t *length, lw_faults *faults);

// True when the text is UTF-8 without control characters, indented without tabs, not empty.
bool lw_source_is_clean(const lw_source_text *source, lw_faults *faults);

#endif
