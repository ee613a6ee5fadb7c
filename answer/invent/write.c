// write.c - an invented season written into a folder.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <errno.h>
#include <math.h>
#include <string.h>
#include <sys/stat.h>

#include "answer/invent/invent.h"
#include "answer/learned.h"
#include "answer/track/sailed.h"
#include "lullwise/elementary.h"
#include "records/logbook/track_hash.h"
#include "records/logbook/transfer.h"
#include "records/output_file.h"
#include "records/record_file.h"

#define PATH_ROOM     600
#define LATITUDE_DEG  45.0  // an invented place on an ocean
#define LONGITUDE_DEG (-30.0)
#define METRES_A_DEG  111195.0  // of a sphere of 6371 km, which is near enough for an invention

typedef void writing(const lw_inventing *inventing, size_t number, FILE *out);

static bool write_file(lw_inventing *inventing, const char *name, writing *write, size_t number)
{
    char path[PATH_ROOM];
    lw_output output;
    LW_FIT(path, "%s/%s", inventing->folder, name);
    inventing->why = "there is not enough memory";
    if (!lw_output_open(&output)) return false;
    write(inventing, number, output.stream);
    return lw_output_commit(&output, path, inventing->may_replace, &inventing->why);
}

// --- a track

static void write_track(const lw_inventing *inventing, size_t number, FILE *out)
{
    const lw_invented_day *day = &inventing->days[number];
    const double along = METRES_A_DEG * lw_cos(LATITUDE_DEG * LW_DEG);
    double north = 0.0, east = 0.0;
    fputs("time,latitude,longitude,speed [kn],course [deg]\n", out);
    for (size_t i = 0; i < (size_t)LW_INVENTED_LEGS * LW_INVENTED_LEG; i++) {
        const double around = day->from + day->fixes[i].angle, speed = day->fixes[i].speed;
        const double course = around - 2.0 * LW_PI * floor(around / (2.0 * LW_PI));
        north += speed * lw_cos(course), east += speed * lw_sin(course);
        fprintf(out, "%sT12:%02zu:%02zuZ,%.7f,%.7f,%.2f,%.1f\n", day->entry.day.date, i / 60,
                i % 60, LATITUDE_DEG + north / METRES_A_DEG, LONGITUDE_DEG + east / along,
                speed / LW_KN, course / LW_DEG);
    }
}

static bool write_tracks(lw_inventing *inventing)
{
    for (size_t i = 0; i < inventing->count; i++) {
        char name[40], path[PATH_ROOM];
        const char *why;
        double begins;
        lw_faults ignored = {0};
        lw_entry *entry = &inventing->days[i].entry;
        LW_FIT(name, "invented-%03zu.csv", i + 1);
        LW_FIT(path, "%s/%s", inventing->folder, name);
        if (!write_file(inventing, name, write_track, i)) return false;
        if (!lw_track_hash(entry, path, &why)) return false;
        const char *const paths[] = {path, NULL};
        lw_sailed_read(&entry->day.sailed, &begins, paths, NULL, &ignored);
        lw_faults_free(&ignored);
    }
    return true;
}

// --- days and truth

static void write_days(const lw_inventing *inventing, size_t number, FILE *out)
{
    lw_entries days = {0};
    (void)number;
    for (size_t i = 0; i < inventing->count; i++) {
        lw_entry *entry = &inventing->days[i].entry;
        lw_entry *to = lw_entries_add(&days);
        if (!to) break;
        *to = *entry, *entry = lw_entry_blank();
        to->boat = lw_entry_record_text(&lw_boat_record, &inventing->inputs->boat);
        to->sailor = lw_entry_record_text(&lw_sailor_record, &inventing->inputs->sailor);
        lw_entry_put(&to->notes, "Invented: nobody sailed this.", 29);
    }
    lw_days_write_csv(&days, out);
    lw_entries_free(&days);
}

static void write_truth(const lw_inventing *inventing, size_t number, FILE *out)
{
    lw_learned_boat truth = {.values = inventing->truth};
    char hash[LW_HASH_TEXT];
    (void)number;
    lw_boat_hash_text(&inventing->inputs->boat, hash);
    LW_FIT(truth.boat, "%s", inventing->inputs->boat.name);
    LW_FIT(truth.hash, "%s", hash);
    fputs("# Invented: what was put into the boat before she was ridden; errors are none.\n", out);
    lw_record_write(&lw_learned_record, &truth, out);
}

bool lw_invented_write(lw_inventing *inventing)
{
    if (mkdir(inventing->folder, 0777) != 0 && errno != EEXIST) {
        inventing->why = "the folder cannot be made";
        return false;
    }
    return write_tracks(inventing) && write_file(inventing, "days.csv", write_days, 0) &&
           write_file(inventing, "truth.yaml", write_truth, 0);
}
