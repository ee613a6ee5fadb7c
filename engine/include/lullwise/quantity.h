// quantity.h - one row describes one quantity; readers, checks, forms and docs follow it.
// SPDX-License-Identifier: MIT

#ifndef LW_QUANTITY_H
#define LW_QUANTITY_H

#include "lullwise/base.h"

typedef struct lw_quantity {
    const char *key;     // in files, on the command line, in the form: the C member's own name
    size_t offset;       // where the member stands in its struct
    const char *symbol;  // as in doc/theory.md
    lw_unit unit;        // as people write it; the struct holds SI
    double min;          // inclusive, in `unit`
    double max;          // inclusive, in `unit`
    double preset;       // value before anyone has measured, in `unit`
    double error;  // how well a tape, a scale or an eye knows it (one sigma), in `unit`; 0: exact
    double usual_min;  // outside usual_min..usual_max a value is doubtful but taken;
    double usual_max;  // both 0: as wide as min..max
    int decimals;      // digits after the point when shown in `unit`
    bool required;     // where its section is given it must be too; otherwise the preset stands
    bool is_late;      // came when files already had a hash: counts in it only off its preset
    const char *doc;   // what it is, how to measure it, [source]
} lw_quantity;

typedef struct lw_table {
    const char *key;          // name of the section in files: "main_foil"
    const char *title;        // heading of the form and of the docs page: "Main foil"
    const lw_quantity *rows;  // in the order of the struct's members
    size_t count;
    const char *doc;  // a sentence on the whole section
} lw_table;

// How a section of a record stands in a file.
typedef enum lw_section_kind {
    LW_SECTION_PLAIN,     // `hull:` then `key: value` lines; one struct
    LW_SECTION_LABELLED,  // `pins:` then `label: value` lines; array of {one double, label}
    LW_SECTION_LIST,      // `legs:` then `- key: value` blocks; array of structs
    LW_SECTION_VALUES,    // `readings:` then `- value` lines; array of double
} lw_section_kind;

typedef struct lw_section {
    const lw_table *table;
    lw_section_kind kind;
    bool required;        // the file must have it; otherwise presets stand (PLAIN) or count is 0
    size_t offset;        // of the struct, or of element 0 of the array, in the record
    size_t stride;        // bytes from one element to the next (array kinds)
    size_t most;          // elements there is room for (array kinds)
    size_t count_offset;  // of the `size_t` that counts the elements (array kinds), or of the
        // `bool` that tells whether the section was given (PLAIN, if not required;
        // 0, where every record has its name: nobody asks)
    size_t label_offset;  // of `char label[LW_LABEL_LENGTH]` in an element (LABELLED)
} lw_section;

// A free-text member of a record: `name: ...` at the top of the file.
typedef struct lw_text {
    const char *key;
    size_t offset;  // of `char member[LW_NAME_LENGTH]`
    const char *preset;
    const char *const *words;  // NULL-ended list of the words allowed, or NULL: any text
    const char *doc;
} lw_text;

typedef struct lw_record {
    const char *name;   // "boat": what `lullwise new` takes
    const char *title;  // "Boat"
    const lw_text *texts;
    size_t text_count;
    const lw_section *sections;
    size_t section_count;
    size_t size;  // of the struct
    const char *doc;
} lw_record;

// Opens a row: the key and the place of one member. Compiles for a `double` member only.
#define LW_MEMBER(record, member) \
    .key = #member, .offset = _Generic(((record *)0)->member, double : offsetof(record, member))

// Stops the build when a struct of doubles has a member without a row, or a row too many.
#define LW_TABLE_COVERS(record, rows)                                                 \
    _Static_assert(sizeof(rows) / sizeof(rows)[0] == sizeof(record) / sizeof(double), \
                   #record ": every member needs one row")

const lw_quantity *lw_table_find(const lw_table *table, const char *key);

// The row whose key is most like `key` (edit distance), or NULL when none is near.
const lw_quantity *lw_table_nearest(const lw_table *table, const char *key);

// Fills the struct of one table, or the whole record, with the presets; arrays become empty.
void lw_table_preset(const lw_table *table, void *data);
void lw_record_preset(const lw_record *record, void *data);

// The elements of a section that is an array, inside the record at *data: how many, and each.
size_t *lw_section_length(const lw_section *section, void *data);
char *lw_section_element(const lw_section *section, void *data, size_t index);

// Reads "2.5 deg", "98 cm", "12", "-3 turns" as a value for `row`, in SI, into *si.
// Decimal point or decimal comma. Any unit of the row's dimension; a row with a unit demands one;
// a row without takes a bare number or a percentage. NaN and infinity are LW_BAD_NUMBER.
// *si is untouched unless LW_OK.
lw_status lw_quantity_read(const lw_quantity *row, const char *text, double *si);

double lw_quantity_value(const lw_quantity *row, const void *data);  // SI
double lw_quantity_shown(const lw_quantity *row, const void *data);  // in the row's unit
void lw_quantity_put(const lw_quantity *row, void *data, double si);

// Taken but doubtful: outside the usual band (in SI).
bool lw_quantity_is_doubtful(const lw_quantity *row, double si);

// First row whose member lies outside its range (NaN included), or NULL.
const lw_quantity *lw_table_check(const lw_table *table, const void *data);

// Inside its range (in SI, the ends included and given a last-digit's grace); NaN is not.
bool lw_quantity_is_in_range(const lw_quantity *row, double si);

// Reads a number with a decimal point or comma: "-1,05", "2.5e-3". Knows no locale, and takes a
// typographic minus. *rest points behind it. False, with nothing set, when no number stands here
// or it is too large; the words nan and inf are no numbers.
//
// Correctly rounded up to 15 digits and 22 places [clinger-1990]; beyond that within 2 ulp.
bool lw_decimal_read(const char *text, double *value, const char **rest);

// Smallest number of edits between two keys: a character more, less, changed, or two neighbours
// swapped; capitals aside. What "did you mean" rests on. Looks at the first 64 characters.
size_t lw_text_distance(const char *a, const char *b);

// The one of two candidates (either may be NULL) that is more like `key`, or NULL when neither is.
const char *lw_text_nearer(const char *key, const char *a, const char *b);

#endif
