// offsets_file.h - hulls as tables of offsets: heights, then a line of half-breadths a station.
// SPDX-License-Identifier: MIT

#ifndef LW_OFFSETS_FILE_H
#define LW_OFFSETS_FILE_H

#include "lullwise/hull_shape.h"
#include "records/fault.h"

// Reads a file ("-": standard input):
//
//     unit mm
//     heights      50   100   150       of the waterlines, rising
//     # x   keel   half-breadths at those heights
//       0    120    0     0    85
//     ...                               from the transom forward
//
// The unit is m, cm or mm. Blanks, commas or semicolons part the numbers; what follows a # is
// passed over. False with every fault and its place; then the shape is left alone.
bool lw_offsets_file_read(lw_hull_shape *shape, const char *path, lw_faults *faults);

// The same with its bytes at hand, a closing zero behind them; they are changed. `path` names them.
bool lw_offsets_file_text(lw_hull_shape *shape, const char *path, char *text, size_t length,
                          lw_faults *faults);

#endif
