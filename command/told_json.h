// told_json.h - the teller's face that writes JSON.
// SPDX-License-Identifier: MIT

#ifndef LW_TOLD_JSON_H
#define LW_TOLD_JSON_H

#include <stdbool.h>
#include <stdio.h>

#include "answer/teller.h"

// Writes all that `tell` tells of `it`, or nothing. False when there was no memory, or `out` took
// less than all.
bool lw_told_json_write(lw_tell *tell, const void *it, FILE *out);

#endif
