// record_file.h - boats, sailors and days from files and from --set, with every fault named.
// SPDX-License-Identifier: MIT
//
// A file is a small part of YAML: `key: value` lines, sections, lists, comments.
//
//     name: Blue boat
//     main_foil:
//       span: 98 cm      # any unit of length will do
//
// Not taken: anchors, aliases, tags, a second document, a key twice, more than 1 MB.

#ifndef LW_RECORD_FILE_H
#define LW_RECORD_FILE_H

#include <stdint.h>
#include <stdio.h>

#include "lullwise/quantity.h"
#include "records/source_text.h"

#define LW_FILE_MOST     1000000  // [bytes]
#define LW_SECTIONS_MOST 16

// One record on its way in, and where its sections were given.
typedef struct lw_reading {
    const lw_record *record;
    void *data;          // the record's struct; changed only by a call that returns true
    const char *file;    // last one read, or NULL
    const char *option;  // that assignments are blamed on; NULL: "--set"
    const char *set_by[LW_SECTIONS_MOST];   // the last assignment to a section, or NULL
    size_t section_line[LW_SECTIONS_MOST];  // of the file; 0: not given there
    uint64_t given[LW_SECTIONS_MOST];       // PLAIN sections: bit i tells that row i was given
} lw_reading;

// A reading with the presets in *data.
lw_reading lw_reading_of(const lw_record *record, void *data);

// Reads a whole file ("-": standard input), or a text. All faults and doubts of it are added; true
// when there was no fault. The path or name must outlive the faults.
bool lw_reading_file(lw_reading *reading, const char *path, lw_faults *faults);
bool lw_reading_text(lw_reading *reading, const lw_source_text *source, lw_faults *faults);

// Sets one value from "main_foil.span=1.05 m", "pins.B=2 deg", "legs[0].length=400 m",
// "readings[3]=9 kn" or "name=Blue boat". A new label, or the index after the last, adds one. The
// text must outlive the reading and its faults.
bool lw_reading_set(lw_reading *reading, const char *assignment, lw_faults *faults);

// The option that assignments are blamed on.
const char *lw_reading_option(const lw_reading *reading);

// Faults that one value cannot show (lw_boat_contradiction; lw_day_settle, on a copy). Call it
// after the last lw_reading_set.
bool lw_reading_check(const lw_reading *reading, lw_faults *faults);

// Number of values of PLAIN sections, and of those the ones that stand at their preset.
size_t lw_reading_count(const lw_reading *reading, size_t *at_preset);

// Presets, file or text, and check in one; and one assignment to a record that is there already.
// With a fault the record stays as it was.
bool lw_record_read_file(const lw_record *record, const char *path, void *data, lw_faults *faults);
bool lw_record_read_text(const lw_record *record, const lw_source_text *source, void *data,
                         lw_faults *faults);
bool lw_record_set(const lw_record *record, void *data, const char *assignment, lw_faults *faults);

// Which record a text is: the one that knows most of its keys; NULL, and a fault, when none knows
// any or the text cannot be read.
const lw_record *lw_record_recognise(const lw_source_text *source, lw_faults *faults);

// The boat, the sailor and the day, NULL-ended.
extern const lw_record *const lw_records[];
const lw_record *lw_record_named(const char *name);  // or NULL

// Presets, with the pins, legs and wind that a starter file shows.
void lw_record_example(const lw_record *record, void *data);

// Writes a file in which every value is explained; it reads back. NULL: the example.
void lw_record_write(const lw_record *record, const void *data, FILE *out);

// The same without its comments: what was read from a file reads back to the bit.
void lw_record_write_bare(const lw_record *record, const void *data, FILE *out);

// The page on all quantities of a record, in Markdown.
void lw_record_manual(FILE *out, const lw_record *record);

// The rows of one table of it, with ranges, presets and errors.
void lw_table_manual(FILE *out, const lw_table *table);

// The same of the quantities of a result, which nobody writes.
void lw_result_manual(FILE *out, const lw_table *table);

#endif
