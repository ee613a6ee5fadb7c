// record_value.h - one written value put into a record: shared by files and --set.
// SPDX-License-Identifier: MIT

#ifndef LW_RECORD_VALUE_H
#define LW_RECORD_VALUE_H

#include "lullwise/quantity.h"
#include "records/fault.h"

// Reads a value in SI; a fault with what was expected, or a doubt, goes to the list.
bool lw_written_quantity(const lw_written *written, const lw_quantity *row, double *si,
                         lw_faults *faults);

// Copies a free text, or one of the words allowed, into the record at *data.
bool lw_written_text(const lw_written *written, const lw_text *text, void *data, lw_faults *faults);

// A pin's label fits: not empty, not too long, without control characters.
bool lw_written_label(const lw_written *written, lw_faults *faults);

// A fault "there is no such ...", with the nearest name as a hint where there is one.
void lw_written_unknown(const lw_written *written, const char *what, const char *nearest,
                        lw_faults *faults);

// "0.4 to 2.5 m".
#define LW_RANGE_LENGTH 80
void lw_quantity_range(const lw_quantity *row, double low, double high, char text[LW_RANGE_LENGTH]);

// Sections and texts of a record by key: NULL when there is none; the nearest of both, or NULL.
const lw_section *lw_record_section(const lw_record *record, const char *key);
const lw_text *lw_record_text(const lw_record *record, const char *key);
const char *lw_record_nearest(const lw_record *record, const char *key);

// Marks a section as given, where somebody asks; and whether one is there: required, or not
// empty, or given as far as anybody asks.
void lw_section_mark(const lw_section *section, void *data);
bool lw_section_is_given(const lw_section *section, const void *data);

// The elements of a labelled section put from the greatest value to the least.
void lw_section_sort(const lw_section *section, void *data);

#endif
