// tell.c - the answer of `lullwise pick` told.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/pick/pick.h"
#include "answer/words/caution.h"
#include "answer/words/margin_text.h"
#include "answer/words/wind_text.h"
#include "records/fault.h"

#define TEXT(key, head)                                  \
    {                                                    \
        (key), (head), LW_AS_TEXT, LW_UNIT_NONE, 0, NULL \
    }
#define TRUTH(key)                                      \
    {                                                   \
        (key), NULL, LW_AS_TRUTH, LW_UNIT_NONE, 0, NULL \
    }
#define WIND(key, head)                                    \
    {                                                      \
        (key), (head), LW_AS_NUMBER, LW_UNIT_KN, 1, "none" \
    }
#define TURNS(key, head)                                 \
    {                                                    \
        (key), (head), LW_AS_CHANGE, LW_UNIT_TURN, 1, "" \
    }

static double there(double value) { return value > 0.0 ? value : NAN; }  // 0: there is none

void lw_tell_picked_head(lw_teller *t, const lw_picked *picked)
{
    static const lw_item lull = WIND("lull", NULL), mean = WIND("mean", NULL);
    static const lw_item puff = WIND("puff", NULL), period = {.key = "period", .unit = LW_UNIT_S};
    char text[600];
    const lw_gusts *gusts = &picked->now.gusts;
    const lw_inputs *inputs = &picked->inputs;
    const lw_person *person = &inputs->sailor.person;
    LW_FIT(text, "%s: lull %s, mean %s, puff %s. %s; %s, %.0f kg with gear.", inputs->day.name,
           LW_SPEED_TEXT(gusts->lull, 1, t->speed_unit),
           LW_SPEED_TEXT(gusts->mean, 1, t->speed_unit),
           LW_SPEED_TEXT(gusts->puff, 1, t->speed_unit), inputs->boat.name, inputs->sailor.name,
           person->mass + person->gear);
    lw_tell_sentence(t, "question", text);
    if (lw_wind_origin(&inputs->day, t->speed_unit, text)) lw_tell_sentence(t, "wind_origin", text);
    LW_FIT(text, "Aim: %s (%s).", lw_aim_text(picked->now.aim), lw_aim_doc(picked->now.aim));
    lw_tell_sentence(t, "aim_sentence", text);
    lw_tell_name(t, "boat", inputs->boat.name);
    lw_tell_name(t, "sailor", inputs->sailor.name);
    lw_tell_name(t, "day", inputs->day.name);
    lw_tell_name(t, "aim", lw_aim_text(picked->now.aim));
    lw_tell_object(t, "wind", NULL);
    lw_tell_number(t, &lull, gusts->lull);
    lw_tell_number(t, &mean, gusts->mean);
    lw_tell_number(t, &puff, gusts->puff);
    lw_tell_number(t, &period, gusts->period);
    lw_tell_end(t);
}

// --- the places

// clang-format off
static const lw_item place_columns[] = {
    {"place", "", LW_AS_NUMBER, LW_UNIT_NONE, 0, ""},
    TEXT("pin", "pin"),
    {"seconds",      "time",   LW_AS_TIME,   LW_UNIT_S,       0, "none"},
    {"flying",       "flying", LW_AS_NUMBER, LW_UNIT_PERCENT, 0, NULL},
    {"swims",        "swims",  LW_AS_NUMBER, LW_UNIT_NONE,    2, "-"},
    {"swims_error",  "",       LW_AS_ERROR,  LW_UNIT_NONE,    2, ""},
    WIND("launches_at", "launches"), WIND("stays_up_at", "stays up"), WIND("held_up_to", "held to"),
    WIND("speed", NULL),
    {"swim_seconds", NULL, LW_AS_TIME, LW_UNIT_S, 0, NULL},
    {"hull_seconds", NULL, LW_AS_TIME, LW_UNIT_S, 0, NULL},
    {"puff_to_spare", NULL, LW_AS_SIGNED, LW_UNIT_KN, 1, NULL},
    TRUTH("can_be_sailed"), TRUTH("flies"), TRUTH("is_held"),
};
// clang-format on

static void tell_place(lw_teller *t, const lw_picked *picked, size_t i)
{
    const lw_placing *place = &picked->now.places[i];
    const lw_prospect *p = &place->prospect;
    const bool is_sailed = place->can_be_sailed, is_held = p->held_up_to > 0.0;
    const double winds[] = {p->launches_at, p->stays_up_at, p->held_up_to, p->speed};
    lw_tell_row(t);
    lw_tell_number(t, NULL, lw_picked_flies(&picked->now) ? (double)i + 1.0 : NAN);
    lw_tell_text(t, NULL, lw_picked_label(picked, place->pin));
    lw_tell_number(t, NULL, is_sailed ? there(p->seconds) : NAN);
    lw_tell_number(t, NULL, p->flying);
    lw_tell_number(t, NULL, is_sailed ? p->swims : NAN);
    lw_tell_number(t, NULL, is_sailed ? p->swims_error : NAN);
    for (size_t k = 0; k < LW_COUNT_OF(winds); k++) lw_tell_number(t, NULL, there(winds[k]));
    lw_tell_number(t, NULL, p->swim_seconds);
    lw_tell_number(t, NULL, p->hull_seconds);
    lw_tell_number(t, NULL, is_held ? p->held_up_to - picked->now.gusts.puff : NAN);
    lw_tell_truth(t, NULL, is_sailed);
    lw_tell_truth(t, NULL, place->flies);
    lw_tell_truth(t, NULL, is_held);
}

static void tell_places(lw_teller *t, const lw_picked *picked)
{
    lw_tell_table(t, "places", "", place_columns, LW_COUNT_OF(place_columns));
    for (size_t i = 0; i < picked->now.count; i++) tell_place(t, picked, i);
    lw_tell_end(t);
    lw_tell_note(t, "places_note",
                 "Time, flying, swims: from rides. Launches (bearing away if need be), stays up "
                 "(on every leg): steady wind. Held to: puffs, on every leg.");
}

// The first place in short: what is pinned ashore, how far it is held, what is wound afloat. Of no
// use beside the tables: a face that has room for little shows it.
static void tell_best(lw_teller *t, const lw_picked *picked)
{
    static const lw_item held = WIND("held_up_to", "held to puffs of");
    static const lw_item over = WIND("over_puffs", "over the puffs");
    static const lw_item under = WIND("under_puffs", "under the puffs");
    static const lw_item seconds = {"seconds", "round the course", LW_AS_TIME, LW_UNIT_S, 0,
                                    "none"};
    static const lw_item most = TURNS("holds_most", "holds most");
    static const char *const keys[] = {"lull", "mean", "puff"};
    const lw_placing *first = &picked->now.places[0];
    const lw_prospect *p = &first->prospect;
    const double spare = p->held_up_to - picked->now.gusts.puff;
    const double turns[] = {p->turns_lull, p->turns_mean, p->turns_puff};
    char course[LW_COURSE_NAME], head[80];
    const bool flies[] = {first->flies_in_lull, first->flies_in_mean, first->flies_in_puff};
    lw_tell_object(t, "best", NULL);
    lw_tell_name(t, "pin", lw_picked_label(picked, first->pin));
    if (spare < 0.0)
        lw_tell_sentence(t, "unheld",
                         p->held_up_to > 0.0 ? "Not held in the puffs" : "Held in no wind");
    lw_tell_number(t, &held, there(p->held_up_to));
    if (p->held_up_to > 0.0) lw_tell_number(t, spare < 0.0 ? &under : &over, fabs(spare));
    lw_tell_number(t, &seconds, there(p->seconds));
    lw_picked_course_name(picked, lw_outlook_longest(picked->outlook), course);
    LW_FIT(head, "Rudder lift on, in turns, %s", course);
    lw_tell_object(t, "turns", head);
    for (int i = 0; i < 3 && first->flies; i++) {
        const lw_item item = TURNS(keys[i], keys[i]);
        if (flies[i])
            lw_tell_number(t, &item, turns[i]);
        else
            lw_tell_bracketed(t, &item, turns[i]);
    }
    if (first->flies) lw_tell_number(t, &most, picked->outlook->most_turns[first->pin]);
    lw_tell_end(t);
    lw_tell_end(t);
}

// --- why, and how surely

// Stable words for the reasons: their names in small letters.
#define REASON_KEY(name, text) [LW_REASON_##name] = #name,
static const char *const reason_names[] = {LW_REASON_LIST(REASON_KEY)};

static void fit_reason_key(char key[16], lw_reason reason)
{
    size_t i = 0;
    for (; reason_names[reason][i] && i < 15; i++) key[i] = (char)(reason_names[reason][i] | 0x20);
    key[i] = '\0';
}

static void tell_reasons(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {{"place", "", LW_AS_NUMBER, LW_UNIT_NONE, 0, ""},
                                      TEXT("pin", NULL),
                                      TEXT("reason", NULL),
                                      TEXT("sentence", "")};
    lw_tell_table(t, "why", lw_picked_flies(&picked->now) ? "Why" : NULL, columns,
                  LW_COUNT_OF(columns));
    for (size_t i = 0; i < picked->now.count; i++) {
        const lw_placing *place = &picked->now.places[i];
        const char *label = lw_picked_label(picked, place->pin);
        char text[LW_REASON_LENGTH], line[LW_REASON_LENGTH + 40], key[16];
        lw_picked_reason(picked, i, text);
        fit_reason_key(key, place->reason);
        LW_FIT(line, "%s%s %s.", label, place->reason == LW_REASON_FIRST ? " is" : "", text);
        lw_tell_row(t);
        lw_tell_number(t, NULL, (double)i + 1.0);
        lw_tell_text(t, NULL, label);
        lw_tell_text(t, NULL, key);
        lw_tell_text(t, NULL, line);
    }
    lw_tell_end(t);
}

// How surely each is behind the one before.
static void tell_behind(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {
        TEXT("pin", NULL),
        {"behind", NULL, LW_AS_TIME, LW_UNIT_S, 0, NULL},
        {"behind_error", NULL, LW_AS_NUMBER, LW_UNIT_S, 0, NULL},
        {"behind_spread", NULL, LW_AS_NUMBER, LW_UNIT_S, 0, NULL},
        {"behind_chance", NULL, LW_AS_CHANCE, LW_UNIT_PERCENT, 0, NULL},
        TRUTH("is_close"),
        TEXT("sentence", "")};
    const bool is_weighed = picked->now.count > 1 && lw_picked_flies(&picked->now);
    char text[LW_REASON_LENGTH];
    size_t told = 0;
    for (size_t i = 1; i < picked->now.count; i++) told += lw_picked_behind(picked, i, text);
    lw_tell_table(t, "order_sure", is_weighed && told ? "How sure the order is" : NULL, columns,
                  LW_COUNT_OF(columns));
    for (size_t i = 1; i < picked->now.count; i++) {
        const lw_placing *place = &picked->now.places[i];
        if (!lw_picked_behind(picked, i, text)) continue;
        lw_tell_row(t);
        lw_tell_text(t, NULL, lw_picked_label(picked, place->pin));
        lw_tell_number(t, NULL, place->behind);
        lw_tell_number(t, NULL, place->error);
        lw_tell_number(t, NULL, place->spread);
        lw_tell_number(t, NULL, place->chance);
        lw_tell_truth(t, NULL, place->is_close);
        lw_tell_text(t, NULL, text);
    }
    lw_tell_end(t);
    if (!is_weighed || !told) return;
    lw_tell_note(t, "order_sure_note",
                 "By rides: from the number of them; nearer than twice that is too close to call. "
                 "What is not known: measurements within their errors, and the sailor and wand of "
                 "the rides, drawn for each of eight stretches of wind.");
}

// --- what a pin is held in

// "over 27.9 kn" where rides met no end.
static void tell_rides_to(lw_teller *t, const lw_placing *place)
{
    char text[LW_CELL_LENGTH];
    const double to = place->prospect.rides_to;
    LW_FIT(text, "%s%s", place->rides_end ? "" : "over ", LW_SPEED_TEXT(to, 1, t->speed_unit));
    if (to > 0.0)
        lw_tell_number_as(t, NULL, to, text);
    else
        lw_tell_number(t, NULL, NAN);
}

static void tell_hold(lw_teller *t, const lw_picked *picked, const lw_placing *place)
{
    char end[LW_REASON_LENGTH], course[LW_COURSE_NAME];
    const size_t hardest = lw_outlook_hardest(picked->outlook, place->pin);
    const lw_range *range = &picked->outlook->ranges[place->pin][hardest];
    lw_picked_end(picked, place->pin, end);
    lw_picked_course_name(picked, hardest, course);
    lw_tell_row(t);
    lw_tell_text(t, NULL, lw_picked_label(picked, place->pin));
    lw_tell_number(t, NULL, there(place->prospect.margins_to));
    tell_rides_to(t, place);
    lw_tell_text(t, NULL, end);
    lw_tell_text(t, NULL, range->has_hold ? lw_margin_key(range->ends_by) : NULL);
    lw_tell_text(t, NULL, course);
    lw_tell_truth(t, NULL, place->ends_by_rides);
    lw_tell_truth(t, NULL, place->rides_end);
    lw_tell_truth(t, NULL, range->ends_in_puff);
}

// The two limits of each pin, and which of them ends its hold.
static void tell_holds(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {
        TEXT("pin", "pin"),           WIND("margins_to", "by margins"),
        WIND("rides_to", "by rides"), TEXT("end", "what ends it"),
        TEXT("ends_by", NULL),        TEXT("held_least", NULL),
        TRUTH("ends_by_rides"),       TRUTH("rides_end"),
        TRUTH("ends_in_puff")};
    const bool is_shown = lw_picked_flies(&picked->now);
    lw_tell_table(t, "holds",
                  is_shown ? "Held to, in puffs: by margins and by rides; the lesser counts" : NULL,
                  columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < picked->now.count; i++) tell_hold(t, picked, &picked->now.places[i]);
    lw_tell_end(t);
    if (is_shown) lw_tell_note(t, "holds_note", LW_HELD_BY_MARGINS "; " LW_HELD_BY_RIDES ".");
}

// --- other winds

static void tell_labels(lw_teller *t, const char *key, const lw_picked *picked,
                        const lw_choice *choice)
{
    lw_tell_list(t, key, NULL);
    for (size_t i = 0; i < choice->count; i++) {
        lw_tell_text(t, NULL, lw_picked_label(picked, choice->places[i].pin));
    }
    lw_tell_end(t);
}

static void tell_orders(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {WIND("wind_more", NULL), TEXT("wind", ""), TEXT("order", "")};
    const lw_choice *const choices[] = {&picked->less, &picked->more};
    const lw_unit unit = lw_speed_unit(t->speed_unit);
    lw_tell_table(t, "orders", "The order if the wind is otherwise", columns, LW_COUNT_OF(columns));
    for (int i = 0; i < 2; i++) {
        char order[LW_REASON_LENGTH], wind[LW_CELL_LENGTH];
        lw_picked_order(picked, choices[i], order);
        LW_FIT(wind, "%s %s", LW_SPEED_TEXT(LW_WIND_STEP, unit == LW_UNIT_KN ? 0 : 1, unit),
               i ? "more" : "less");
        lw_tell_row(t);
        lw_tell_number(t, NULL, i ? LW_WIND_STEP : -LW_WIND_STEP);
        lw_tell_text(t, NULL, wind);
        lw_tell_text(t, NULL, order);
    }
    lw_tell_end(t);
    tell_labels(t, "order_less_wind", picked, &picked->less);
    tell_labels(t, "order_more_wind", picked, &picked->more);
}

// --- rudder turns

// In brackets when she does not fly in that wind. True when she does.
static bool tell_turns_cell(lw_teller *t, double turns, bool flies)
{
    if (flies)
        lw_tell_number(t, NULL, turns);
    else
        lw_tell_bracketed(t, NULL, turns);
    return flies;
}

static void tell_turns(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {TEXT("pin", "pin"),
                                      TURNS("lull", "lull"),
                                      TURNS("mean", "mean"),
                                      TURNS("puff", "puff"),
                                      TURNS("holds_most", "holds most"),
                                      TRUTH("flies_in_lull"),
                                      TRUTH("flies_in_mean"),
                                      TRUTH("flies_in_puff")};
    char course[LW_COURSE_NAME], head[LW_TURNS_HEAD];
    bool all_fly = true;
    lw_picked_course_name(picked, lw_outlook_longest(picked->outlook), course);
    lw_picked_turns_head(picked, head);
    lw_tell_name(t, "turns_course", course);
    lw_tell_table(t, "turns", lw_picked_flies(&picked->now) ? head : NULL, columns,
                  LW_COUNT_OF(columns));
    for (size_t i = 0; i < picked->now.count; i++) {
        const lw_placing *place = &picked->now.places[i];
        if (!place->flies) continue;
        lw_tell_row(t);
        lw_tell_text(t, NULL, lw_picked_label(picked, place->pin));
        all_fly &= tell_turns_cell(t, place->prospect.turns_lull, place->flies_in_lull);
        all_fly &= tell_turns_cell(t, place->prospect.turns_mean, place->flies_in_mean);
        all_fly &= tell_turns_cell(t, place->prospect.turns_puff, place->flies_in_puff);
        lw_tell_number(t, NULL, picked->outlook->most_turns[place->pin]);
        lw_tell_truth(t, NULL, place->flies_in_lull);
        lw_tell_truth(t, NULL, place->flies_in_mean);
        lw_tell_truth(t, NULL, place->flies_in_puff);
    }
    lw_tell_end(t);
    if (!lw_picked_flies(&picked->now)) return;
    lw_tell_note(t, "turns_note",
                 "Lull, mean, puff: for speed. Holds most: in the mean, with most margin left.");
    if (all_fly) return;
    lw_tell_note(t, "unflown_note",
                 "( ) does not fly in that wind: turns for the lightest in which she does.");
}

// --- one pin calmer

static void tell_calmer(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {TEXT("from", NULL),
                                      TEXT("to", NULL),
                                      {"speed_lost", NULL, LW_AS_SIGNED, LW_UNIT_KN, 1, NULL},
                                      {"seconds_lost", NULL, LW_AS_TIME, LW_UNIT_S, 0, NULL},
                                      {"hold_gained", NULL, LW_AS_SIGNED, LW_UNIT_KN, 1, NULL},
                                      TEXT("sentence", "")};
    const bool is_shown = lw_picked_flies(&picked->now) && picked->now.count > 1;
    lw_tell_table(t, "calmer", is_shown ? "One pin calmer" : NULL, columns, LW_COUNT_OF(columns));
    for (size_t pin = 0; pin + 1 < picked->now.count; pin++) {
        const lw_prospect *a = &lw_picked_place_of(&picked->now, pin)->prospect;
        const lw_prospect *b = &lw_picked_place_of(&picked->now, pin + 1)->prospect;
        const bool are_sailed = a->seconds > 0.0 && b->seconds > 0.0;
        const bool are_held = a->held_up_to > 0.0 && b->held_up_to > 0.0;
        const char *from = lw_picked_label(picked, pin), *to = lw_picked_label(picked, pin + 1);
        char text[LW_REASON_LENGTH], line[LW_REASON_LENGTH + 60];
        lw_picked_step(picked, pin, text);
        LW_FIT(line, "%s to %s: %s.", from, to, text);
        lw_tell_row(t);
        lw_tell_text(t, NULL, from);
        lw_tell_text(t, NULL, to);
        lw_tell_number(t, NULL, are_sailed ? a->speed - b->speed : NAN);
        lw_tell_number(t, NULL, are_sailed ? b->seconds - a->seconds : NAN);
        lw_tell_number(t, NULL, are_held ? b->held_up_to - a->held_up_to : NAN);
        lw_tell_text(t, NULL, line);
    }
    lw_tell_end(t);
}

// --- every pin on every course, for charts

static void tell_ranges(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {TEXT("pin", NULL),         TEXT("course", NULL),
                                      WIND("launches_at", NULL), WIND("stays_up_at", NULL),
                                      WIND("held_up_to", NULL),  TEXT("ends_by", NULL),
                                      TRUTH("ends_in_puff")};
    lw_tell_table(t, "ranges", NULL, columns, LW_COUNT_OF(columns));
    for (size_t pin = 0; pin < picked->outlook->pin_count; pin++) {
        for (size_t c = 0; c < picked->outlook->course_count; c++) {
            const lw_range *range = &picked->outlook->ranges[pin][c];
            char course[LW_COURSE_NAME];
            lw_picked_course_name(picked, c, course);
            lw_tell_row(t);
            lw_tell_text(t, NULL, lw_picked_label(picked, pin));
            lw_tell_text(t, NULL, course);
            lw_tell_number(t, NULL, range->has_launch ? range->launches_at : NAN);
            lw_tell_number(t, NULL, range->has_flight ? range->stays_up_at : NAN);
            lw_tell_number(t, NULL, range->has_hold ? range->held_up_to : NAN);
            lw_tell_text(t, NULL, range->has_hold ? lw_margin_key(range->ends_by) : NULL);
            lw_tell_truth(t, NULL, range->ends_in_puff);
        }
    }
    lw_tell_end(t);
}

// Turns in the winds from lull to puff, a column for each knot, on the longest leg.
static void tell_band(lw_teller *t, const lw_picked *picked)
{
    lw_item columns[LW_RANGE_WINDS + 1] = {TEXT("pin", "pin")};
    char keys[LW_RANGE_WINDS + 1][16], heads[LW_RANGE_WINDS + 1][LW_CELL_LENGTH], head[120];
    char course[LW_COURSE_NAME];
    const lw_gusts *gusts = &picked->now.gusts;
    const lw_unit unit = lw_speed_unit(t->speed_unit);
    const size_t longest = lw_outlook_longest(picked->outlook);
    const int last = LW_RANGE_FIRST_KN + LW_RANGE_WINDS - 1;
    const int from = (int)fmax(floor(gusts->lull / LW_KN), LW_RANGE_FIRST_KN);
    const int to = (int)fmin(ceil(gusts->puff / LW_KN), last);
    size_t count = 1;
    for (int kn = from; kn <= to; kn++, count++) {
        LW_FIT(keys[count], "at_%d_kn", kn);
        lw_cell_number(heads[count], kn * LW_KN / lw_unit_in_si(unit), unit == LW_UNIT_KN ? 0 : 1,
                       false);
        columns[count] = (lw_item){keys[count], heads[count], LW_AS_CHANGE, LW_UNIT_TURN, 1, "-"};
    }
    lw_picked_course_name(picked, longest, course);
    LW_FIT(head, "Turns through the band, wind in %s, %s", lw_unit_text(unit), course);
    lw_tell_table(t, "band", lw_picked_flies(&picked->now) ? head : NULL, columns, count);
    for (size_t i = 0; i < picked->now.count; i++) {
        const size_t pin = picked->now.places[i].pin;
        const lw_range *range = &picked->outlook->ranges[pin][longest];
        lw_tell_row(t);
        lw_tell_text(t, NULL, lw_picked_label(picked, pin));
        for (int kn = from; kn <= to; kn++) {
            const lw_range_point *point = &range->at[kn - LW_RANGE_FIRST_KN];
            const bool is_flown = lw_answer_is_kept(&point->trimmed);
            const double turns = is_flown ? point->trimmed.flight.turns : NAN;
            if (is_flown && !(range->has_hold && point->wind <= range->held_up_to))
                lw_tell_bracketed(t, NULL, turns);
            else
                lw_tell_number(t, NULL, turns);
        }
    }
    lw_tell_end(t);
    if (lw_picked_flies(&picked->now))
        lw_tell_note(t, "band_note", "( ) more than is held; - does not fly.");
}

void lw_tell_picked(lw_teller *t, const lw_picked *picked)
{
    char text[LW_REASON_LENGTH];
    const bool flies = lw_picked_flies(&picked->now);
    lw_tell_picked_head(t, picked);
    lw_tell_flag(t, "any_flies", flies);
    if (!flies) {
        lw_picked_no_flight(picked, text);
        lw_tell_sentence(t, "no_flight", text);
    }
    if (flies) tell_best(t, picked);
    tell_places(t, picked);
    tell_reasons(t, picked);
    tell_behind(t, picked);
    tell_holds(t, picked);
    tell_orders(t, picked);
    tell_turns(t, picked);
    tell_band(t, picked);
    tell_calmer(t, picked);
    tell_ranges(t, picked);
    lw_tell_list(t, "cautions", "Take care");
    lw_tell_cautions(t, picked);
    lw_tell_end(t);
}
