// json.h - records and results as JSON.
// SPDX-License-Identifier: MIT
//
// A number stands in the unit that people write, twelve digits long; the units stand apart, once:
//
//     {"record": "boat", "name": "Blue boat",
//      "hull": {"length": 3.35, ...},
//      "pins": [{"label": "A", "incidence": 3.0}, ...],
//      "units": {"hull": {"length": "m", ...}, "pins": {"incidence": "deg"}}}
//
// Lists of values ("readings") are arrays of numbers. An optional section that was not given is
// null. What is no number (NaN, infinity) is null.

#ifndef LW_RECORDS_JSON_H
#define LW_RECORDS_JSON_H

#include <jansson.h>
#include <stdio.h>

#include "lullwise/quantity.h"
#include "records/fault.h"

// {"span": 0.98, ...} of one struct, and {"span": "m", ...} of its table. NULL: no memory.
json_t *lw_table_json(const lw_table *table, const void *data);
json_t *lw_table_units_json(const lw_table *table);

json_t *lw_record_json(const lw_record *record, const void *data);

// [{"file", "line", "column", "key", "read", "expected", "hint", "sentence", "doubt"}, ...]
json_t *lw_faults_json(const lw_faults *faults);

// Writes all of it with a closing newline, or nothing; drops the reference. False when there was
// no memory or `out` took less than all.
bool lw_json_write(json_t *json, FILE *out);

#endif
