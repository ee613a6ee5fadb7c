// near.c - the logged days most like a forecast: found, and told with what differs.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/log/words.h"
#include "answer/words/number_text.h"

// --- found

// Among the likest so far, where it belongs.
static void take(lw_near *near, const struct lw_near_day *day)
{
    size_t place = near->count;
    while (place > 0 && near->found[place - 1].apart > day->apart) place--;
    if (place == LW_NEAR_MOST) return;
    if (near->count < LW_NEAR_MOST) near->count++;
    memmove(&near->found[place + 1], &near->found[place],
            (near->count - 1 - place) * sizeof near->found[0]);
    near->found[place] = *day;
}

void lw_near_find(lw_near *near)
{
    const lw_inputs *inputs = near->inputs;
    const lw_person *person = &inputs->sailor.person;
    near->asked = lw_conditions_of(&inputs->day.wind, &inputs->day.sea,
                                   near->asks_mass ? person->mass + person->gear : NAN);
    for (size_t i = near->days->count; i-- > 0;) {  // of days as like, the later one
        const lw_entry *entry = &near->days->list[i];
        const lw_logged *day = &entry->day;
        struct lw_near_day found = {.entry = entry};
        found.was = lw_conditions_of(&day->wind, &day->sea, day->outing.mass);
        found.apart = lw_conditions_apart(&found.was, &near->asked);
        take(near, &found);
    }
}

// --- told

#define TOLD_FROM 0.25  // of a step: what differs by less is not told  [judged]
#define LIKE_TO   2.0   // steps: days further apart are not alike      [judged]

#define SPEED(x) LW_SPEED_TEXT((x), 1, t->speed_unit)

static void tell_question(const lw_near *near, lw_teller *t)
{
    const lw_conditions *asked = &near->asked;
    char text[500];
    LW_FIT(text, "%s: lull %s, mean %s, puff %s at 3 m, chop %s", near->inputs->day.name,
           SPEED(asked->lull), SPEED(asked->mean), SPEED(asked->puff),
           LW_MEASURE_TEXT(asked->chop, 0, LW_UNIT_CM));
    if (near->asks_mass)
        lw_text_add(text, sizeof text, "; %s, %s with gear", near->inputs->sailor.name,
                    LW_MEASURE_TEXT(asked->mass, 0, LW_UNIT_KG));
    lw_text_add(text, sizeof text, ".");
    lw_tell_sentence(t, "question", text);
    lw_tell_name(t, "day", near->inputs->day.name);
    lw_tell_rows(t, "asked", &lw_conditions_table, asked);
}

// "mean 1.2 kn more, chop 4 cm less": what a day had beside the one asked for.
#define WHY_LENGTH 240
static void say_why(const lw_near *near, const struct lw_near_day *day, char text[WHY_LENGTH],
                    const lw_teller *t)
{
    text[0] = '\0';
    for (size_t i = 0; i < lw_conditions_table.count; i++) {
        const lw_quantity *row = &lw_conditions_table.rows[i];
        const double more =
            lw_quantity_value(row, &day->was) - lw_quantity_value(row, &near->asked);
        if (isnan(more) || fabs(more) < TOLD_FROM * lw_conditions_step(i)) continue;
        const char *much = row->unit == LW_UNIT_KN
                               ? LW_SPEED_TEXT(fabs(more), row->decimals, t->speed_unit)
                               : LW_MEASURE_TEXT(fabs(more), row->decimals, row->unit);
        const bool is_mass = row->unit == LW_UNIT_KG;
        lw_text_add(text, WHY_LENGTH, "%s%s %s %s", text[0] ? ", " : "",
                    is_mass ? "sailor" : row->key, much,
                    more > 0.0 ? (is_mass ? "heavier" : "more") : (is_mass ? "lighter" : "less"));
    }
    if (!text[0]) lw_text_fit(text, WHY_LENGTH, "as good as the same");
    if (near->asks_boat && strcmp(near->inputs->boat.name, day->entry->day.boat) != 0)
        lw_text_add(text, WHY_LENGTH, "; another boat, %s", day->entry->day.boat);
}

// clang-format off
static const lw_item columns[] = {
    {"date",    "date",    LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"id",      NULL,      LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"pin",     "pin",     LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"upwind",  "upwind",  LW_AS_BARE, LW_UNIT_TURN, 1, "-"},
    {"reach",   NULL,      LW_AS_SIGNED, LW_UNIT_TURN, 1, "-"},
    {"downwind",NULL,      LW_AS_SIGNED, LW_UNIT_TURN, 1, "-"},
    {"swims",   "swims",   LW_AS_NUMBER, LW_UNIT_NONE, 0, "-"},
    {"verdict", "verdict", LW_AS_TEXT,   LW_UNIT_NONE, 0, "-"},
    {"apart",   NULL,      LW_AS_NUMBER, LW_UNIT_NONE, 2, NULL},
    {"lull",    NULL,      LW_AS_NUMBER, LW_UNIT_KN,   1, NULL},
    {"mean",    NULL,      LW_AS_NUMBER, LW_UNIT_KN,   1, NULL},
    {"puff",    NULL,      LW_AS_NUMBER, LW_UNIT_KN,   1, NULL},
    {"chop",    NULL,      LW_AS_NUMBER, LW_UNIT_CM,   0, NULL},
    {"mass",    NULL,      LW_AS_NUMBER, LW_UNIT_KG,   0, NULL},
    {"waters",  NULL,      LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"why",     "it had",  LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
};
// clang-format on

static void tell_day(const lw_near *near, const struct lw_near_day *day, lw_teller *t)
{
    const lw_logged *was = &day->entry->day;
    char verdict[LW_NAME_LENGTH], why[WHY_LENGTH];
    say_why(near, day, why, t);
    lw_tell_row(t);
    lw_tell_text(t, NULL, was->date);
    lw_tell_text(t, NULL, day->entry->id);
    lw_tell_text(t, NULL, was->pin);
    lw_tell_number(t, NULL, was->used.upwind);
    lw_tell_number(t, NULL, was->used.reach);
    lw_tell_number(t, NULL, was->used.downwind);
    lw_tell_number(t, NULL, was->outing.swims);
    lw_tell_text(t, NULL, lw_verdict_text(day->entry, verdict));
    lw_tell_number(t, NULL, day->apart);
    for (size_t i = 0; i < lw_conditions_table.count; i++)
        lw_tell_number(t, NULL, lw_quantity_value(&lw_conditions_table.rows[i], &day->was));
    lw_tell_text(t, NULL, was->waters);
    lw_tell_text(t, NULL, why);
}

static void tell_days(const lw_near *near, lw_teller *t)
{
    lw_tell_table(t, "near", near->count ? "Days most like it, the likest first" : NULL, columns,
                  LW_COUNT_OF(columns));
    for (size_t i = 0; i < near->count; i++) tell_day(near, &near->found[i], t);
    lw_tell_end(t);
}

#define LEFT_OUT "Gusts' period, temperatures and course do not count."

static void tell_trust(const lw_near *near, lw_teller *t)
{
    const bool is_like = near->count > 0 && near->found[0].apart <= LIKE_TO;
    lw_tell_flag(t, "is_like", is_like);
    lw_tell_list(t, "trust", "How far to trust it");
    if (near->count == 0)
        lw_tell_text(t, NULL, "No day is logged yet.");
    else if (!is_like)
        lw_tell_text(t, NULL,
                     "None of these was a day like this: take from them which way to go, not the "
                     "pin.");
    lw_tell_text(
        t, NULL,
        near->asks_mass
            ? "Days are compared by lull, mean and puff, each at 3 m, by chop and by the "
              "sailor's weight: 2 kn, 10 cm or 8 kg count alike, which is judged. " LEFT_OUT
            : "Days are compared by lull, mean and puff, each at 3 m, and by chop: 2 kn "
              "or 10 cm count alike, which is judged. With --sailor the weight counts "
              "too. " LEFT_OUT);
    lw_tell_end(t);
}

void lw_near_tell(const void *it, lw_teller *t)
{
    const lw_near *near = it;
    tell_question(near, t);
    tell_days(near, t);
    tell_trust(near, t);
}
