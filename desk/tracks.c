// tracks.c - a sailed track at the desk.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L  // fmemopen, open_memstream

#include "desk/tracks.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "answer/parcel.h"
#include "answer/track/track.h"
#include "desk/track_sent.h"
#include "lullwise/logged.h"
#include "records/logbook/column.h"
#include "records/logbook/track_hash.h"

static void put_picture(const lw_tracked *tracked)
{
    char *text = NULL;
    size_t length;
    FILE *out = open_memstream(&text, &length);
    if (!out) return;
    lw_tracked_draw(tracked, out);
    if (fclose(out) == 0) lw_parcel_text("picture", text);
    free(text);
}

// The columns that hang on a track.
static void put_day(const lw_tracked *tracked, const lw_track_sent *sent)
{
    const lw_columns columns = lw_columns_of();
    lw_entry entry = lw_entry_blank();
    entry.day.sailed = lw_sailed_of(&tracked->track, &tracked->found);
    for (size_t i = 0; i < sent->options.operand_count; i++) {
        const lw_source_text *track = &sent->tracks[i];
        lw_track_hash_bytes(&entry, track->name, track->text, track->length);
    }
    lw_parcel_object("day");
    for (size_t i = 0; i < columns.count; i++) {
        const char *key = columns.list[i].key;
        const bool is_of_track = strncmp(key, "sailed.", 7) == 0 ||
                                 (entry.track_count > 0 && strcmp(key, "tracks") == 0);
        char *text = is_of_track ? lw_column_text(&columns.list[i], &entry) : NULL;
        if (text) lw_parcel_text(key, text);
        free(text);
    }
    lw_parcel_end();
    lw_entry_free(&entry);
}

static lw_track_answer packed(const lw_tracked *tracked, const lw_track_sent *sent)
{
    lw_track_answer answer = {.status = 200};
    lw_teller teller = lw_parcel_teller(tracked->speed_unit);
    lw_parcel_begin();
    lw_parcel_object("told");
    lw_tracked_tell(tracked, &teller);
    lw_teller_finish(&teller);
    lw_parcel_end();
    put_picture(tracked);
    put_day(tracked, sent);
    FILE *out = open_memstream(&answer.bytes, &answer.length);
    if (!out) return (lw_track_answer){.status = 500};
    size_t length;
    const char *bytes = lw_parcel_bytes(&length);
    const bool is_whole = bytes && fwrite(bytes, 1, length, out) == length;
    if (fclose(out) == 0 && is_whole) return answer;
    free(answer.bytes);
    return (lw_track_answer){.status = 500};
}

static lw_track_answer refused(const lw_refusal *refusal)
{
    const lw_faults *faults = &refusal->faults;
    lw_track_answer answer = {.status = 400};
    FILE *out = open_memstream(&answer.bytes, &answer.length);
    if (!out) return (lw_track_answer){.status = 500};
    if (refusal->text[0]) fprintf(out, "%s\n", refusal->text);
    for (size_t i = 0; i < faults->count; i++) {
        const lw_fault *fault = &faults->list[i];
        if (fault->is_doubt) continue;
        if (fault->line) fprintf(out, "line %d: ", (int)fault->line);
        fprintf(out, fault->read[0] ? "%s (read: %s)\n" : "%s\n", fault->sentence, fault->read);
    }
    if (fclose(out) != 0) return (lw_track_answer){.status = 500};
    return answer;
}

// An empty file is one, too.
static FILE *stream_of(const lw_source_text *track)
{
    return track->length ? fmemopen((void *)track->text, track->length, "rb")
                         : fopen("/dev/null", "rb");
}

// The question as it is asked of files, with its steps. False: refused, or there is no memory.
static bool work_out(lw_tracked *tracked, const lw_inputs *inputs, const lw_track_sent *sent,
                     lw_refusal *refusal)
{
    FILE *streams[LW_DAY_TRACKS_MOST] = {NULL};
    const size_t count = sent->options.operand_count;
    bool is_open = true;
    for (size_t i = 0; i < count; i++)
        is_open = (streams[i] = stream_of(&sent->tracks[i])) != NULL && is_open;
    tracked->streams = streams;
    const bool is_taken = is_open && lw_tracked_begin(tracked, inputs, &sent->options, refusal);
    for (size_t i = 0; i < count; i++)
        if (streams[i]) fclose(streams[i]);
    if (!is_open) lw_refuse(refusal, "there is not enough memory");
    if (!is_taken) return false;
    for (size_t step = 0; step < lw_tracked_steps(tracked); step++) lw_tracked_step(tracked, step);
    lw_tracked_end(tracked);
    return true;
}

static lw_track_answer answer_of(const lw_track_sent *sent, lw_refusal *refusal)
{
    lw_track_answer answer = {.status = 500};
    lw_tracked *tracked = calloc(1, sizeof *tracked);
    lw_inputs *inputs = calloc(1, sizeof *inputs);
    if (tracked && inputs)
        answer =
            lw_track_sent_inputs(sent, inputs, refusal) && work_out(tracked, inputs, sent, refusal)
                ? packed(tracked, sent)
                : refused(refusal);
    if (tracked) lw_tracked_release(tracked);
    free(tracked);
    free(inputs);
    return answer;
}

lw_track_answer lw_track_answered(const lw_track_asked *asked)
{
    lw_track_sent sent;
    lw_refusal refusal = {0};
    const bool is_sent = lw_track_sent_take(&sent, asked);
    if (!is_sent) lw_refuse(&refusal, "the query does not tell what was sent");
    const lw_track_answer answer = is_sent ? answer_of(&sent, &refusal) : refused(&refusal);
    lw_track_sent_release(&sent);
    lw_faults_free(&refusal.faults);
    return answer;
}
