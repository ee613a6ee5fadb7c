// random_boat.h - boats, sailors and days drawn evenly from the ranges of their tables.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_RANDOM_BOAT_H
#define LW_TEST_RANDOM_BOAT_H

#include <math.h>
#include <string.h>

#include "lullwise/boat.h"
#include "lullwise/day.h"
#include "test/random.h"

// Where numbers are drawn from: the usual bands (a boat that may well sail), or all that a file
// may say.
typedef enum boat_kind { BOAT_USUAL, BOAT_ANY } boat_kind;

// A number of a row.
static inline double random_of_row(const lw_quantity *row, boat_kind kind, random_stream *stream)
{
    const bool is_narrow = kind == BOAT_USUAL && row->usual_min < row->usual_max;
    const double shown = is_narrow ? random_between(stream, row->usual_min, row->usual_max)
                                   : random_between(stream, row->min, row->max);
    return shown * lw_unit_in_si(row->unit);
}

// Each member evenly over its row. A row that came late draws aside, so that the others are drawn
// as before it came.
static inline void random_table(const lw_table *table, void *data, boat_kind kind,
                                random_stream *stream)
{
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        random_stream aside = {~stream->state};
        lw_quantity_put(row, data, random_of_row(row, kind, row->is_late ? &aside : stream));
    }
}

// The sections that are one struct, of a record that has its presets.
static inline void random_record(const lw_record *record, void *data, boat_kind kind,
                                 random_stream *stream)
{
    lw_record_preset(record, data);
    for (size_t i = 0; i < record->section_count; i++) {
        const lw_section *section = &record->sections[i];
        if (section->kind != LW_SECTION_PLAIN) continue;
        random_table(section->table, (char *)data + section->offset, kind, stream);
    }
}

static inline void random_section(const lw_record *record, const char *key, void *data,
                                  boat_kind kind, random_stream *stream)
{
    for (size_t i = 0; i < record->section_count; i++) {
        const lw_section *section = &record->sections[i];
        if (section->kind != LW_SECTION_PLAIN || strcmp(section->table->key, key) != 0) continue;
        random_table(section->table, (char *)data + section->offset, kind, stream);
    }
}

// A boat without contradictions, with four pins in order. A section that contradicts itself or an
// earlier one is drawn anew; *again counts these.
static inline lw_boat random_boat(boat_kind kind, random_stream *stream, long *again)
{
    lw_boat boat;
    random_record(&lw_boat_record, &boat, kind, stream);
    boat.pin_count = 4;
    const double first = random_between(stream, 0.0, 8.0) * LW_DEG;
    for (int i = 0; i < 4; i++) {
        boat.pins[i] = (lw_pin){first - i * 1.2 * LW_DEG, {(char)('A' + i), '\0'}};
    }
    const char *why, *key;
    while ((key = lw_boat_contradiction(&boat, &why))) {
        random_section(&lw_boat_record, key, &boat, kind, stream);
        ++*again;
    }
    return boat;
}

static inline lw_person random_person(boat_kind kind, random_stream *stream)
{
    lw_sailor sailor;
    random_record(&lw_sailor_record, &sailor, kind, stream);
    return sailor.person;
}

static inline lw_day random_day(boat_kind kind, random_stream *stream)
{
    lw_day day;
    random_record(&lw_day_record, &day, kind, stream);
    day.has_wind = true, day.has_forecast = false;
    const double a = random_between(stream, 0.0, 45.0), b = random_between(stream, 0.0, 45.0);
    day.wind.lull = 0.5 * fmin(a, b) * LW_KN;
    day.wind.mean = fmin(a, b) * LW_KN;
    day.wind.puff = fmax(a, b) * LW_KN;
    day.leg_count = 1 + random_bits(stream) % 6;
    for (size_t i = 0; i < day.leg_count; i++) {
        day.legs[i] = (lw_leg){random_between(stream, 0.0, 180.0) * LW_DEG,
                               random_between(stream, 100.0, 3000.0)};
    }
    return day;
}

#endif
