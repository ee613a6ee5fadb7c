// log_write.c - `lullwise log add`, `edit` and `remove`.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "answer/log/entered.h"
#include "answer/track/sailed.h"
#include "command/log.h"
#include "command/terminal/print.h"
#include "records/logbook/track_hash.h"
#include "records/record_file.h"
#include "records/track/moment.h"

#define DAY 86400.0  // [s]

// --- what options tell of a day beside the files

// The options without those --set that are of the log.
static lw_options of_inputs(const lw_options *options)
{
    lw_options others = *options;
    others.count = 0;
    for (size_t i = 0; i < options->count; i++) {
        if (strcmp(options->given[i]->name, "set") == 0 && lw_entered_has(options->texts[i]))
            continue;
        others.given[others.count] = options->given[i];
        others.texts[others.count++] = options->texts[i];
    }
    return others;
}

static void put_tracks(lw_entry *entry, const lw_options *options, lw_faults *faults)
{
    const char *path;
    if (lw_options_has(options, "track")) entry->track_count = 0;
    for (size_t n = 0; (path = lw_options_nth(options, "track", n)); n++) {
        const lw_written written = {.file = "command line", .key = "--track", .text = path};
        const char *why = NULL;
        if (!lw_track_hash(entry, path, &why))
            LW_FIT(lw_faults_add(faults, &written)->sentence, "%s", why);
    }
}

// What the tracks tell takes the place of what was there; a file of another kind is kept by name.
// When they begin [s since 1970]; NAN: they do not tell, or there are none.
static double put_sailed(lw_entry *entry, const lw_options *options, lw_faults *faults)
{
    double begins = NAN;
    lw_faults ignored = {0};
    const char *paths[LW_GIVEN_MOST + 1] = {NULL};
    for (size_t n = 0; n < LW_GIVEN_MOST && (paths[n] = lw_options_nth(options, "track", n));) n++;
    if (!paths[0]) return begins;
    entry->day.sailed = lw_entry_blank().day.sailed;
    if (!lw_sailed_read(&entry->day.sailed, &begins, paths, options->wants_end, &ignored)) {
        const lw_written written = {.file = "command line", .key = "--track", .text = paths[0]};
        LW_FIT(lw_faults_doubt(faults, &written)->sentence,
               "no track that can be read: only its name is kept");
    }
    lw_faults_free(&ignored);
    return begins;
}

// Tracks tell UTC, by which her day may be the one before or after.
static void doubt_date(const lw_entry *entry, double begins, lw_faults *faults)
{
    const lw_written written = {.file = "command line", .key = "--track", .text = ""};
    double day;
    char track[LW_MOMENT_LENGTH];
    if (isnan(begins) || !lw_moment_read(entry->day.date, &day)) return;
    if (fabs(begins - day - 0.5 * DAY) <= 1.5 * DAY) return;
    lw_moment_text(track, begins);
    LW_FIT(lw_faults_doubt(faults, &written)->sentence,
           "the track is of %.10s, and kept with a day of %s", track, entry->day.date);
}

// --- add

// A day is logged as it was: nothing of it is taken from the examples of `lullwise new`.
static bool has_files(const lw_options *options, lw_faults *faults)
{
    const size_t before = faults->fault_count;
    for (const lw_record *const *record = lw_records; *record; record++) {
        char option[20];
        LW_FIT(option, "--%s", (*record)->name);
        const lw_written written = {.file = "command line", .key = option, .text = ""};
        if (lw_options_has(options, (*record)->name)) continue;
        LW_FIT(lw_faults_add(faults, &written)->sentence, "the file of the %s is missing",
               (*record)->name);
    }
    return faults->fault_count == before;
}

static bool read_day(lw_entry *entry, const lw_options *options, lw_faults *faults)
{
    static lw_inputs inputs;
    const lw_options others = of_inputs(options);
    const bool has_all = has_files(options, faults);
    const bool are_read = lw_inputs_read(&inputs, &others, faults) && has_all;
    put_tracks(entry, options, faults);
    const double begins = put_sailed(entry, options, faults);
    const bool is_sound = lw_entered_begin(entry, are_read ? &inputs : NULL, options, faults);
    doubt_date(entry, begins, faults);
    return is_sound;
}

static lw_exit tell_change(const lw_log_call *call, const lw_entry *entry, const char *key,
                           const char *verb)
{
    const lw_log_change change = {.path = call->path, .key = key, .verb = verb, .entry = entry};
    return lw_log_tell(call, lw_log_change_tell, &change);
}

static lw_exit add(lw_log_call *call, lw_entry *entry)
{
    if (!lw_entry_draw_id(entry->id)) {
        lw_print_complaint("log", "this system gives no random numbers, which a day's id needs");
        return LW_EXIT_NO_ANSWER;
    }
    if (!lw_log_open(call, true)) return LW_EXIT_NO_ANSWER;
    const bool is_added = lw_logbook_add(&call->book, entry);
    lw_logbook_close(&call->book);
    return is_added ? tell_change(call, entry, "added", "Added") : lw_log_complain(call);
}

lw_exit lw_log_add(lw_log_call *call)
{
    lw_faults faults = {0};
    lw_entry entry = lw_entry_blank();
    const bool is_sound = read_day(&entry, call->options, &faults);
    lw_print_faults(stderr, &faults);  // what is unusual is taken all the same
    const lw_exit ended = is_sound ? add(call, &entry) : LW_EXIT_WRONG_INPUT;
    lw_faults_free(&faults);
    lw_entry_free(&entry);
    return ended;
}

// --- edit

static lw_exit edit(lw_log_call *call, lw_entry *entry)
{
    lw_faults faults = {0};
    put_tracks(entry, call->options, &faults);
    const double begins = put_sailed(entry, call->options, &faults);
    const bool is_sound = lw_entered_change(entry, call->options, &faults);
    doubt_date(entry, begins, &faults);
    lw_print_faults(stderr, &faults);
    lw_faults_free(&faults);
    if (!is_sound) return LW_EXIT_WRONG_INPUT;
    if (!lw_logbook_replace(&call->book, entry)) return lw_log_complain(call);
    return tell_change(call, entry, "changed", "Changed");
}

lw_exit lw_log_edit(lw_log_call *call)
{
    lw_entries days = {0};
    if (!lw_log_read(call, true, true, &days)) return LW_EXIT_NO_ANSWER;
    lw_entry *entry = lw_log_day(call, &days);
    const lw_exit ended = entry ? edit(call, entry) : LW_EXIT_WRONG_INPUT;
    lw_entries_free(&days);
    lw_logbook_close(&call->book);
    return ended;
}

// --- remove

lw_exit lw_log_remove(lw_log_call *call)
{
    lw_entries days = {0};
    if (!lw_log_read(call, true, false, &days)) return LW_EXIT_NO_ANSWER;
    const lw_entry *entry = lw_log_day(call, &days);
    lw_exit ended = LW_EXIT_WRONG_INPUT;
    if (entry)
        ended = lw_logbook_remove(&call->book, entry->id)
                    ? tell_change(call, entry, "removed", "Removed")
                    : lw_log_complain(call);
    lw_entries_free(&days);
    lw_logbook_close(&call->book);
    return ended;
}
