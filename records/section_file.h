// section_file.h - foil sections as files of coordinates: a title, then x and y on each line.
// SPDX-License-Identifier: MIT

#ifndef LW_SECTION_FILE_H
#define LW_SECTION_FILE_H

#include "lullwise/base.h"
#include "lullwise/profile.h"
#include "records/fault.h"

// Coordinates as they stand in a file.
typedef struct lw_section_file {
    char title[LW_NAME_LENGTH];  // "" when the file has none
    bool is_lower_first;         // once around from the tail, the lower side first
    int count;
    double x[LW_OUTLINE_MOST], y[LW_OUTLINE_MOST];
    size_t line[LW_OUTLINE_MOST];
} lw_section_file;

// Reads a file ("-": standard input) and makes an outline of it. The first line may be a title; a
// line of two counts before both sides, empty lines and what follows a # are passed over. Once
// around either way, or both sides from the nose. False with every fault and its place; then
// neither file nor outline means anything.
bool lw_section_file_read(lw_section_file *file, const char *path, lw_outline *outline,
                          lw_faults *faults);

// The first half of that with the bytes at hand, a closing zero behind them; they are changed.
// `path` names them. And the second: the outline of what was read.
bool lw_section_file_text(lw_section_file *file, const char *path, char *text, size_t length,
                          lw_faults *faults);
bool lw_section_file_outline(lw_section_file *file, const char *path, lw_outline *outline,
                             lw_faults *faults);

#endif
