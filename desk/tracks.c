// tracks.c - a sailed track at the desk.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L  // fmemopen, open_memstream

#include "desk/tracks.h"

#include <event2/http.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "answer/parcel.h"
#include "answer/track/track.h"
#include "lullwise/logged.h"
#include "records/logbook/column.h"
#include "records/logbook/track_hash.h"

void lw_track_names_in(const char *target, char **name, char **unit)
{
    const char *from = target + strlen(LW_TRACK_AT), *query = strchr(from, '?');
    char *encoded = strndup(from, query ? (size_t)(query - from) : strlen(from));
    *name = encoded && encoded[0] ? evhttp_uridecode(encoded, 0, NULL) : NULL;
    *unit = query ? evhttp_uridecode(query + 1, 0, NULL) : NULL;
    free(encoded);
}

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
static void put_day(const lw_tracked *tracked, const lw_track_asked *asked)
{
    const lw_columns columns = lw_columns_of();
    lw_entry entry = lw_entry_blank();
    entry.day.sailed = lw_sailed_of(&tracked->track, &tracked->found);
    const bool has_name = lw_track_hash_bytes(&entry, asked->name, asked->bytes, asked->length);
    lw_parcel_object("day");
    for (size_t i = 0; i < columns.count; i++) {
        const char *key = columns.list[i].key;
        const bool is_of_track =
            strncmp(key, "sailed.", 7) == 0 || (has_name && strcmp(key, "tracks") == 0);
        char *text = is_of_track ? lw_column_text(&columns.list[i], &entry) : NULL;
        if (text) lw_parcel_text(key, text);
        free(text);
    }
    lw_parcel_end();
    lw_entry_free(&entry);
}

static lw_track_answer packed(const lw_tracked *tracked, const lw_track_asked *asked)
{
    lw_track_answer answer = {.status = 200};
    lw_teller teller = lw_parcel_teller(tracked->speed_unit);
    lw_parcel_begin();
    lw_parcel_object("told");
    lw_tracked_tell(tracked, &teller);
    lw_teller_finish(&teller);
    lw_parcel_end();
    put_picture(tracked);
    put_day(tracked, asked);
    const char *bytes = lw_parcel_bytes(&answer.length);
    answer.bytes = bytes ? malloc(answer.length) : NULL;
    if (!answer.bytes) return (lw_track_answer){.status = 500};
    memcpy(answer.bytes, bytes, answer.length);
    return answer;
}

static lw_track_answer in_faults(const lw_faults *faults)
{
    lw_track_answer answer = {.status = 400};
    FILE *out = open_memstream(&answer.bytes, &answer.length);
    if (!out) return (lw_track_answer){.status = 500};
    for (size_t i = 0; i < faults->count; i++) {
        const lw_fault *fault = &faults->list[i];
        if (fault->is_doubt) continue;
        if (fault->line) fprintf(out, "line %d: ", (int)fault->line);
        fprintf(out, "%s\n", fault->sentence);
    }
    if (fclose(out) != 0) return (lw_track_answer){.status = 500};
    return answer;
}

static lw_unit speed_unit_of(const char *name)
{
    const lw_unit unit = name ? lw_unit_of(name) : LW_UNIT_COUNT;
    const bool is_speed = unit < LW_UNIT_COUNT && lw_unit_same_dimension(unit, LW_UNIT_KN);
    return is_speed ? unit : LW_UNIT_KN;
}

lw_track_answer lw_track_answered(const lw_track_asked *asked)
{
    lw_faults faults = {0};
    lw_tracked *tracked = calloc(1, sizeof *tracked);
    FILE *stream = asked->length ? fmemopen((void *)asked->bytes, asked->length, "rb")
                                 : fopen("/dev/null", "rb");
    lw_track_answer answer = {.status = 500};
    if (tracked && stream) {
        tracked->name = asked->name;
        tracked->speed_unit = speed_unit_of(asked->unit);
        answer = lw_tracked_take(tracked, stream, asked->today, &faults) ? packed(tracked, asked)
                                                                         : in_faults(&faults);
        lw_tracked_release(tracked);
    }
    if (stream) fclose(stream);
    free(tracked);
    lw_faults_free(&faults);
    return answer;
}
