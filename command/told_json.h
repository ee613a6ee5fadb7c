// told_json.h - the teller's face that writes JSON.
// SPDX-License-Identifier: MIT

#ifndef LW_TOLD_JSON_H
#define LW_TOLD_JSON_H

#include <jansson.h>

#include "answer/teller.h"

typedef struct lw_told_json {
    json_t *open[2 * LW_TELLER_DEPTH];  // a table opens two
    size_t depth;
} lw_told_json;

lw_teller lw_told_json_begin(lw_told_json *told);

// All of it, the caller's; NULL when there was no memory.
json_t *lw_told_json_end(lw_told_json *told, lw_teller *teller);

#endif
