// logged_days.h - made-up days for tests of the logbook, in a folder of their own.
// SPDX-License-Identifier: MIT
//
// Define _DEFAULT_SOURCE before the first include.

#ifndef LW_TEST_LOGGED_DAYS_H
#define LW_TEST_LOGGED_DAYS_H

#include <stdlib.h>
#include <string.h>

#include "records/logbook/column.h"
#include "records/logbook/logbook.h"
#include "records/record_file.h"
#include "test/log_folder.h"

#define TODAY "2030-06-30"

// What people write into notes and CSV would trip over.
static const char *const notes_made[] = {
    "", "Lulls, then puffs.", "\"Held\" her\nin the puffs; =1+1", "\n\n,\"\",", "Größe 98 cm, 17°"};

static inline void put_record(char **member, const lw_record *record, const char *path)
{
    static union {
        lw_boat boat;
        lw_sailor sailor;
    } data;
    lw_faults faults = {0};
    CHECK(lw_record_read_file(record, path, &data, &faults));
    lw_faults_free(&faults);
    *member = lw_entry_record_text(record, &data);
    CHECK(*member != NULL);
}

// A number of twelve digits inside a row's range; now and then none.
static inline double made_number(const lw_quantity *row, random_stream *stream)
{
    char text[40];
    if (random_between(stream, 0.0, 1.0) < 0.1 && isnan(row->preset)) return NAN;
    snprintf(text, sizeof text, "%.12g", random_between(stream, row->min, row->max));
    return strcmp(row->key, "swims") == 0 ? floor(atof(text)) : atof(text);
}

static inline void make_texts(lw_entry *entry, random_stream *stream)
{
    lw_logged *day = &entry->day;
    const int number = (int)random_between(stream, 0.0, 1000.0);
    snprintf(day->date, sizeof day->date, "20%02d-%02d-%02d", 10 + number % 20, 1 + number % 12,
             1 + number % 28);
    snprintf(day->waters, sizeof day->waters, "Reed Lake, \"bay\" %d", number);
    snprintf(day->pin, sizeof day->pin, "%c", "ABCD"[number % 4]);
    snprintf(day->verdict, sizeof day->verdict, "%s",
             number % 6 == 5 ? "" : lw_verdicts[number % 6]);
    day->signs = (lw_sign_set)(random_bits(stream) & (LW_SIGN_BIT(LW_SIGNS) - 1));
    const char *notes = notes_made[number % 5];
    CHECK(lw_entry_put(&entry->notes, notes, strlen(notes)));
    entry->track_count = (size_t)(number % 3);
    for (size_t i = 0; i < entry->track_count; i++) {
        entry->tracks[i].hash = random_bits(stream);
        snprintf(entry->tracks[i].file, sizeof entry->tracks[i].file, "lap %zu, %d.gpx", i, number);
    }
}

static inline void order_winds(lw_wind *wind)
{
    double *const w[3] = {&wind->lull, &wind->mean, &wind->puff};
    for (int i = 0; i < 2; i++) {
        for (int k = 0; k < 2; k++) {
            const double kept = *w[k];
            if (kept > *w[k + 1]) *w[k] = *w[k + 1], *w[k + 1] = kept;
        }
    }
}

// A settled day of random numbers. To be freed.
static inline lw_entry made_day(random_stream *stream)
{
    const lw_columns columns = lw_columns_of();
    const lw_entry_source source = {.file = "made", .today = TODAY};
    const lw_written written = {.file = "made", .key = "", .text = ""};
    lw_entry entry = lw_entry_blank();
    lw_faults faults = {0};
    for (size_t i = 0; i < columns.count; i++) {
        const lw_column *column = &columns.list[i];
        if (column->kind == LW_COLUMN_NUMBER)
            CHECK(lw_column_put_number(column, &entry, made_number(column->row, stream), &written,
                                       &faults));
    }
    order_winds(&entry.day.wind);
    make_texts(&entry, stream);
    put_record(&entry.boat, &lw_boat_record, LW_DEMO_DIR "/heron.yaml");
    put_record(&entry.sailor, &lw_sailor_record, LW_DEMO_DIR "/light.yaml");
    CHECK(lw_entry_draw_id(entry.id) && lw_entry_settle(&entry, &source, &faults));
    CHECK(faults.fault_count == 0);
    lw_faults_free(&faults);
    return entry;
}

static inline void make_days(lw_entries *days, size_t count)
{
    random_stream stream = {count};
    for (size_t i = 0; i < count; i++) *lw_entries_add(days) = made_day(&stream);
}

static inline void add_all(const char *path, const lw_entries *days)
{
    lw_logbook book;
    CHECK(lw_logbook_open(&book, path, true) && lw_logbook_begin(&book));
    for (size_t i = 0; i < days->count; i++) CHECK(lw_logbook_add(&book, &days->list[i]));
    CHECK(lw_logbook_end(&book, true));
    lw_logbook_close(&book);
}

static inline const lw_entry *twin_of(const lw_entry *entry, const lw_entries *days)
{
    for (size_t i = 0; i < days->count; i++) {
        if (strcmp(days->list[i].id, entry->id) == 0) return &days->list[i];
    }
    return NULL;
}

// All days of a logbook that can be read.
static inline lw_entries days_of(const char *path)
{
    lw_logbook book;
    lw_entries days = {0};
    if (!lw_logbook_open(&book, path, false)) fail_msg("%s", book.why);
    CHECK(lw_logbook_days(&book, true, &days));
    lw_logbook_close(&book);
    return days;
}

#endif
