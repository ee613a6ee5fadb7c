// part.h - everything that the desk serves: a fixed table, its bytes inside the program.
// SPDX-License-Identifier: MIT

#ifndef LW_DESK_PART_H
#define LW_DESK_PART_H

typedef struct lw_part {
    const char *path;         // as a request writes it, compared letter by letter: nothing decoded
    const char *type;         // media type
    const char *bytes, *end;  // the first, and the one behind the last
} lw_part;

extern const lw_part lw_parts[];  // the page first; ends with a path of NULL

// The part that a request's target ("/?wind=12") names, whatever follows the "?"; NULL: none.
const lw_part *lw_part_at(const char *target);

#endif
