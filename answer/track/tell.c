// tell.c - the answer of `lullwise track` told.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/track/track.h"
#include "answer/words/number_text.h"
#include "records/source_text.h"
#include "records/track/moment.h"

#define HARDLY 60.0  // [s] under way, below which nothing is said of the wind

// --- what was sailed

void lw_tracked_head(const lw_tracked *t, char text[LW_TRACKED_LENGTH])
{
    char from[LW_MOMENT_LENGTH], to[LW_MOMENT_LENGTH], files[40] = "";
    const lw_track_file *file = &t->file;
    lw_moment_text(from, file->points[0].time);
    lw_moment_text(to, file->points[file->count - 1].time);
    from[16] = to[16] = '\0';  // to the minute
    from[10] = to[10] = ' ';
    const bool is_one_day = file->lacks_date || strncmp(from, to, 10) == 0;
    if (t->file_count > 1) LW_FIT(files, " and %zu more", t->file_count - 1);
    lw_text_fit(text, LW_TRACKED_LENGTH, "%s%s: %s to %s UTC%s.", lw_source_name(t->name), files,
                file->lacks_date ? from + 11 : from, is_one_day ? to + 11 : to,
                file->lacks_date ? ", the day not told" : "");
}

static void tell_head(const lw_tracked *t, lw_teller *teller)
{
    char text[LW_TRACKED_LENGTH], moment[LW_MOMENT_LENGTH];
    const lw_track_file *file = &t->file;
    lw_tracked_head(t, text);
    lw_tell_sentence(teller, "question", text);
    lw_moment_text(moment, file->points[0].time);
    lw_tell_name(teller, "begins", moment);
    lw_moment_text(moment, file->points[file->count - 1].time);
    lw_tell_name(teller, "ends", moment);
    lw_tell_flag(teller, "lacks_date", file->lacks_date);
}

static void tell_sum(const lw_tracked *t, lw_teller *teller)
{
    static const lw_item seconds = {"seconds", "time", LW_AS_TIME, LW_UNIT_S, 0, NULL};
    static const lw_item under_way = {"under_way", "under way", LW_AS_TIME, LW_UNIT_S, 0, NULL};
    static const lw_item flying = {"flying", "flying", LW_AS_TIME, LW_UNIT_S, 0, NULL};
    static const lw_item share = {
        "flying_share", "flying, of the time under way", LW_AS_NUMBER, LW_UNIT_PERCENT, 0, NULL};
    static const lw_item run = {"run", "sailed", LW_AS_NUMBER, LW_UNIT_NMI, 2, NULL};
    static const lw_item pieces = {"pieces", "pieces", LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL};
    const lw_track_sum *sum = &t->found.sum;
    lw_tell_object(teller, "sum", "Sailed");
    lw_tell_number(teller, &seconds, sum->seconds);
    lw_tell_number(teller, &under_way, sum->under_way);
    lw_tell_number(teller, &flying, sum->flying);
    lw_tell_number(teller, &share, sum->under_way > 0.0 ? sum->flying / sum->under_way : NAN);
    lw_tell_number(teller, &run, sum->run);
    lw_tell_number(teller, &pieces, (double)sum->pieces);
    lw_tell_end(teller);
}

// --- the wind

void lw_tracked_wind_text(const lw_tracked *t, char text[LW_TRACKED_LENGTH])
{
    const lw_track_wind *sailed = &t->found.sailed;
    char from[LW_CELL_LENGTH], error[LW_CELL_LENGTH], lesser[LW_CELL_LENGTH];
    lw_measure_text(from, t->found.from, 0, LW_UNIT_DEG);
    lw_measure_text(error, t->found.error, 0, LW_UNIT_DEG);
    lw_cell_number(lesser, 100.0 * sailed->lesser, 0, false);
    switch (t->found.by) {
        case LW_TRACK_BY_WORD:
            lw_text_fit(text, LW_TRACKED_LENGTH, "Wind from %s, as given.", from);
            return;
        case LW_TRACK_BY_INSTRUMENT:
            lw_text_fit(text, LW_TRACKED_LENGTH, "Wind from %s, mean of %zu readings on board.",
                        from, t->file.wind.count);
            return;
        case LW_TRACK_BY_SAILING:
            lw_text_fit(
                text, LW_TRACKED_LENGTH,
                "Wind from %s ± %s, by the sailing: both tacks are mirrored about it, %s %% "
                "of the time on the lesser.%s",
                from, error, lesser,
                sailed->is_doubtful ? " Doubtful: the tacks are not much alike, another axis fits "
                                      "nearly as well, or which end is upwind is open; give "
                                      "the wind's direction."
                                    : "");
            return;
        case LW_TRACK_BY_NOTHING:
            break;
    }
    lw_text_fit(text, LW_TRACKED_LENGTH,
                "The wind cannot be told from the sailing: %s. Give its direction for tacks, gybes "
                "and angles.",
                t->found.sum.under_way < HARDLY        ? "she was hardly under way"
                : !(sailed->lesser >= LW_TRACK_LESSER) ? "hardly more than one tack was sailed"
                                                       : "no axis mirrors speeds and courses");
}

static void tell_wind(const lw_tracked *t, lw_teller *teller)
{
    static const lw_item from = {"from", NULL, LW_AS_NUMBER, LW_UNIT_DEG, 1, NULL};
    static const lw_item error = {"error", NULL, LW_AS_NUMBER, LW_UNIT_DEG, 1, NULL};
    static const lw_item sailed = {"sailed_from", NULL, LW_AS_NUMBER, LW_UNIT_DEG, 1, NULL};
    static const lw_item likeness = {"likeness", NULL, LW_AS_NUMBER, LW_UNIT_NONE, 2, NULL};
    static const lw_item lesser = {"lesser_tack", NULL, LW_AS_NUMBER, LW_UNIT_PERCENT, 0, NULL};
    static const lw_item speed = {"told_speed", NULL, LW_AS_NUMBER, LW_UNIT_KN, 1, NULL};
    static const char *const ways[] = {"unknown", "given", "instruments", "sailing"};
    const lw_track_told_wind *told = &t->file.wind;
    char text[LW_TRACKED_LENGTH];
    lw_tracked_wind_text(t, text);
    lw_tell_object(teller, "wind", "Wind");
    lw_tell_sentence(teller, "sentence", text);
    lw_tell_name(teller, "by", ways[t->found.by]);
    lw_tell_number(teller, &from, t->found.from);
    lw_tell_number(teller, &error, t->found.error);
    lw_tell_number(teller, &sailed, t->found.sailed.is_found ? t->found.sailed.from : NAN);
    lw_tell_number(teller, &likeness, t->found.sailed.likeness);
    lw_tell_number(teller, &lesser, t->found.sailed.lesser);
    lw_tell_number(teller, &speed, told->count ? told->speed / (double)told->count : NAN);
    lw_tell_flag(teller, "is_doubtful",
                 t->found.by == LW_TRACK_BY_SAILING && t->found.sailed.is_doubtful);
    lw_tell_end(teller);
}

// --- speeds

static void tell_bests(const lw_tracked *t, lw_teller *teller)
{
    lw_tell_object(teller, "best", "Best averages");
    for (int i = 0; i < LW_TRACK_BESTS; i++) {
        const lw_track_best *best = &lw_track_bests[i];
        const lw_item item = {best->key, best->text, LW_AS_NUMBER, LW_UNIT_KN, 1, NULL};
        lw_tell_number(teller, &item, t->found.best[i]);
    }
    lw_tell_end(teller);
}

// clang-format off
static const lw_item of_angle[] = {
    {"angle",   "angle",  LW_AS_TEXT,   LW_UNIT_NONE,    0, NULL},
    {"middle",  NULL,     LW_AS_NUMBER, LW_UNIT_DEG,     0, NULL},
    {"seconds", "time",   LW_AS_TIME,   LW_UNIT_S,       0, NULL},
    {"flying",  "flying", LW_AS_NUMBER, LW_UNIT_PERCENT, 0, NULL},
    {"mean",    "mean",   LW_AS_NUMBER, LW_UNIT_KN,      1, NULL},
    {"fast",    "fast",   LW_AS_NUMBER, LW_UNIT_KN,      1, NULL},
    {"model",   "model",  LW_AS_NUMBER, LW_UNIT_KN,      1, NULL},
};
// clang-format on

static void tell_angles(const lw_tracked *t, lw_teller *teller)
{
    const bool has_model = t->model.is_asked;
    const size_t columns = LW_COUNT_OF(of_angle) - !has_model;
    if (t->found.by == LW_TRACK_BY_NOTHING) return;
    lw_tell_object(teller, "by_angle", "Speed by the angle from the wind");
    lw_tell_table(teller, "angles", "", of_angle, columns);
    for (int i = 0; i < LW_TRACK_ANGLES; i++) {
        const lw_track_angle *angle = &t->found.angles[i];
        char text[LW_CELL_LENGTH];
        if (angle->seconds >= 1.0)
            lw_tell_row(teller);
        else
            lw_tell_hidden_row(teller);
        LW_FIT(text, "%d-%d°", 10 * i, 10 * i + 10);
        lw_tell_text(teller, NULL, text);
        lw_tell_number(teller, NULL, (i + 0.5) * LW_PI / LW_TRACK_ANGLES);
        lw_tell_number(teller, NULL, angle->seconds);
        lw_tell_number(teller, NULL, angle->seconds > 0.0 ? angle->flying / angle->seconds : NAN);
        lw_tell_number(teller, NULL, angle->mean);
        lw_tell_number(teller, NULL, angle->fast);
        if (has_model) lw_tell_number(teller, NULL, t->model.speed[i]);
    }
    lw_tell_end(teller);
    lw_tell_note(teller, "reading",
                 "Both tacks together, by the course over ground. Fast: nine tenths of the time "
                 "were slower.");
    lw_tell_end(teller);
}

// --- what happened

// "12, 5 of them flown through".
static void tell_count(const lw_tracked *t, lw_track_what what, const char *head, lw_teller *teller)
{
    char shown[LW_CELL_LENGTH];
    const lw_item item = {lw_track_event_key(what), head, LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL};
    const bool is_turn = what == LW_TRACK_TACK || what == LW_TRACK_GYBE;
    const bool is_known = !is_turn || t->found.by != LW_TRACK_BY_NOTHING;
    LW_FIT(shown, "%zu", t->found.sum.count[what]);
    if (is_turn && t->found.sum.count[what])
        LW_FIT(shown, "%zu, %zu of them flown through", t->found.sum.count[what],
               t->found.sum.flown[what]);
    lw_tell_number_as(teller, &item, is_known ? (double)t->found.sum.count[what] : NAN,
                      is_known ? shown : "-");
}

static void tell_limits(const lw_tracked *t, lw_teller *teller)
{
    char text[LW_TRACKED_LENGTH];
    const bool is_model = fmin(t->model.lifts_off, t->model.slowest) > 0.0;
    LW_FIT(text, "She flies from %s until she is below %s: %s.",
           LW_SPEED_TEXT(t->found.limits.up, 1, t->speed_unit),
           LW_SPEED_TEXT(t->found.limits.down, 1, t->speed_unit),
           is_model ? "where the model lifts her off on a reach or keeps her flying upwind, and a "
                      "judged part of it"
                    : "judged; where a boat is given, the model tells");
    lw_tell_note(teller, "limits", text);
    if (t->events.left_out) {
        LW_FIT(text, "%zu events more than fit here are not counted.", t->events.left_out);
        lw_tell_note(teller, "left_out", text);
    }
}

static void tell_happened(const lw_tracked *t, lw_teller *teller)
{
    static const lw_item tacks = {"tacks_flown", NULL, LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL};
    static const lw_item gybes = {"gybes_flown", NULL, LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL};
    lw_tell_object(teller, "happened", "What happened");
    tell_count(t, LW_TRACK_TAKE_OFF, "takes off", teller);
    tell_count(t, LW_TRACK_DROP, "comes down", teller);
    tell_count(t, LW_TRACK_TACK, "tacks", teller);
    tell_count(t, LW_TRACK_GYBE, "gybes", teller);
    tell_count(t, LW_TRACK_SWIM, "stops that look like swims", teller);
    tell_count(t, LW_TRACK_STOP, "other stops", teller);
    lw_tell_number(teller, &tacks, (double)t->found.sum.flown[LW_TRACK_TACK]);
    lw_tell_number(teller, &gybes, (double)t->found.sum.flown[LW_TRACK_GYBE]);
    tell_limits(t, teller);
    lw_tell_end(teller);
}

// clang-format off
static const lw_item of_event[] = {
    {"time",     NULL, LW_AS_NUMBER, LW_UNIT_S,    1, NULL},
    {"what",     NULL, LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"lasts",    NULL, LW_AS_NUMBER, LW_UNIT_S,    1, NULL},
    {"slowest",  NULL, LW_AS_NUMBER, LW_UNIT_KN,   1, NULL},
    {"is_flown", NULL, LW_AS_TRUTH,  LW_UNIT_NONE, 0, NULL},
};
// clang-format on

static void tell_events(const lw_tracked *t, lw_teller *teller)
{
    lw_tell_table(teller, "events", NULL, of_event, LW_COUNT_OF(of_event));
    for (size_t i = 0; i < t->events.count; i++) {
        const lw_track_event *event = &t->events.list[i];
        lw_tell_row(teller);
        lw_tell_number(teller, NULL, event->time);
        lw_tell_text(teller, NULL, lw_track_event_key(event->what));
        lw_tell_number(teller, NULL, event->lasts);
        lw_tell_number(teller, NULL, event->slowest);
        lw_tell_truth(teller, NULL, event->is_flown);
    }
    lw_tell_end(teller);
}

// --- the points, and how far to trust all this

static void tell_counts(const lw_tracked *t, lw_teller *teller)
{
    char text[LW_TRACKED_LENGTH];
    lw_tell_object(teller, "points", "Points");
    for (int i = 0; i < LW_TRACK_COUNTS; i++) {
        const size_t count = t->file.counts[i];
        const lw_item item = {.key = lw_track_count_key((lw_track_count)i),
                              .head = count ? lw_track_count_text((lw_track_count)i) : NULL,
                              .form = LW_AS_NUMBER};
        lw_tell_number(teller, &item, (double)count);
    }
    if (t->file.broken_line) {
        LW_FIT(text, "The first that cannot be read is in line %zu.", t->file.broken_line);
        lw_tell_note(teller, "broken_line", text);
    }
    lw_tell_end(teller);
}

static void tell_model(const lw_tracked *t, lw_teller *teller)
{
    char text[LW_TRACKED_LENGTH];
    LW_FIT(text,
           "The model's speeds are of %s with pin %s in the day's mean wind, %s, steady, the water "
           "smooth but for its chop.",
           t->inputs->boat.name, t->inputs->boat.pins[t->model.pin].label,
           LW_SPEED_TEXT(t->model.wind, 1, t->speed_unit));
    lw_tell_text(teller, NULL, text);
}

static void tell_trust(const lw_tracked *t, lw_teller *teller)
{
    lw_tell_list(teller, "trust", "How far to trust it");
    lw_tell_text(teller, NULL,
                 "Speeds are over ground: a current is in all of them, and turns the wind found by "
                 "the sailing.");
    lw_tell_text(teller, NULL,
                 "Flights, stops and swims are told by the speed alone, with thresholds that are "
                 "judged: a stop on purpose soon after a flight looks like a swim.");
    if (t->model.is_asked) tell_model(t, teller);
    lw_tell_end(teller);
}

void lw_tracked_tell(const void *it, lw_teller *teller)
{
    const lw_tracked *t = it;
    tell_head(t, teller);
    tell_sum(t, teller);
    tell_wind(t, teller);
    tell_bests(t, teller);
    tell_happened(t, teller);
    tell_angles(t, teller);
    tell_counts(t, teller);
    tell_events(t, teller);
    tell_trust(t, teller);
}
