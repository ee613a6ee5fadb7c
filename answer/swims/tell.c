// tell.c - the answer of `lullwise swims` told.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/swims/swims.h"
#include "answer/words/caution.h"
#include "answer/words/number_text.h"
#include "records/fault.h"

// --- what was asked

static void tell_head(const lw_counted *counted, lw_teller *t)
{
    char text[600];
    const lw_inputs *inputs = &counted->inputs;
    const lw_gust_kind *gust = &counted->outlook.weather.gust;
    LW_FIT(text,
           "%s, %s. Lulls at %.0f %% of the mean wind and puffs at %.0f %%, a puff about every "
           "%.0f s; the chop grows with the wind.",
           inputs->boat.name, inputs->sailor.name, 100.0 * gust->lull / gust->mean,
           100.0 * gust->puff / gust->mean, gust->period);
    lw_tell_sentence(t, "question", text);
    lw_tell_name(t, "boat", inputs->boat.name);
    lw_tell_name(t, "sailor", inputs->sailor.name);
    lw_tell_name(t, "day", inputs->day.name);
}

// The mean winds, for programs: of each, the columns swims_1, factor_1 and so on.
static void tell_winds(const lw_counted *counted, lw_teller *t)
{
    static const lw_item column = {"mean", "mean wind", LW_AS_BARE, LW_UNIT_KN, 1, NULL};
    lw_tell_table(t, "winds", NULL, &column, 1);
    for (size_t i = 0; i < LW_RIDE_WINDS; i++) {
        lw_tell_row(t);
        lw_tell_number(t, NULL, lw_outlook_wind(&counted->outlook, i));
    }
    lw_tell_end(t);
}

// --- a table for each course

// clang-format off
static const lw_item first = {"pin", "pin", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL};
static const lw_item last[] = {
    {"rides_to",  "held, puffs", LW_AS_NUMBER, LW_UNIT_KN,   1, "none"},
    {"rides_end", NULL,          LW_AS_TRUTH,  LW_UNIT_NONE, 0, NULL},
    {"counted",   NULL,          LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"under_way", NULL,          LW_AS_TIME,   LW_UNIT_S,    0, NULL},
};
// clang-format on
#define LAST_COUNT   (sizeof last / sizeof last[0])
#define COLUMN_COUNT (1 + 2 * LW_RIDE_WINDS + LAST_COUNT)

// What each column is called: the winds are the day's.
typedef struct heads {
    lw_item columns[COLUMN_COUNT];
    char keys[2 * LW_RIDE_WINDS][16], winds[LW_RIDE_WINDS][LW_CELL_LENGTH];
} heads;

static void put_wind(heads *h, size_t i, const lw_counted *counted, lw_unit unit)
{
    lw_speed_text(h->winds[i], lw_outlook_wind(&counted->outlook, i), 1, unit);
    LW_FIT(h->keys[2 * i], "swims_%zu", i + 1);
    LW_FIT(h->keys[2 * i + 1], "factor_%zu", i + 1);
    h->columns[1 + 2 * i] = (lw_item){
        .key = h->keys[2 * i], .head = h->winds[i], .form = LW_AS_NUMBER, .unit = LW_UNIT_PERH};
    h->columns[2 + 2 * i] = (lw_item){.key = h->keys[2 * i + 1], .form = LW_AS_NUMBER, .digits = 1};
}

static void put_heads(heads *h, const lw_counted *counted, lw_unit unit)
{
    h->columns[0] = first;
    for (size_t i = 0; i < LW_RIDE_WINDS; i++) put_wind(h, i, counted, unit);
    for (size_t i = 0; i < LAST_COUNT; i++) h->columns[1 + 2 * LW_RIDE_WINDS + i] = last[i];
}

// "12 x1.3": swims an hour, and the factor by which the truth may well be more or less.
static void tell_rate(const lw_swims *swims, double wind, lw_teller *t)
{
    char text[LW_CELL_LENGTH] = "-";
    const double rate = lw_swims_rate(swims, wind), factor = lw_swims_factor(swims, wind);
    const double an_hour = rate / lw_unit_in_si(LW_UNIT_PERH);
    if (swims->is_known && factor < 9.95)
        LW_FIT(text, "%.0f x%.1f", an_hour, factor);
    else if (swims->is_known)
        LW_FIT(text, "%.0f x10+", an_hour);
    lw_tell_number_as(t, NULL, swims->is_known ? rate : NAN, text);
    lw_tell_number(t, NULL, swims->is_known ? factor : NAN);
}

static void tell_limit(const lw_counted *counted, const lw_swims *swims, lw_teller *t)
{
    char text[2 * LW_CELL_LENGTH] = "none";
    const lw_ride_hold hold = lw_swims_hold(swims, &counted->outlook.weather);
    if (hold.puff > 0.0)
        LW_FIT(text, "%s%s", hold.has_end ? "" : "over ",
               LW_SPEED_TEXT(hold.puff, 1, t->speed_unit));
    lw_tell_number_as(t, NULL, hold.puff > 0.0 ? hold.puff : NAN, text);
    lw_tell_truth(t, NULL, hold.has_end);
}

static void tell_pin(const lw_counted *counted, size_t pin, int course, lw_teller *t)
{
    const lw_swims *swims = &counted->outlook.swims[pin][course];
    lw_tell_row(t);
    lw_tell_text(t, NULL, counted->inputs.boat.pins[pin].label);
    for (size_t i = 0; i < LW_RIDE_WINDS; i++) {
        tell_rate(swims, lw_outlook_wind(&counted->outlook, i), t);
    }
    tell_limit(counted, swims, t);
    lw_tell_number(t, NULL, swims->events);
    lw_tell_number(t, NULL, swims->time);
}

static void tell_course(const lw_counted *counted, int course, const heads *h, lw_teller *t)
{
    char head[100];
    const char *name = lw_course_text((lw_course_kind)course);
    LW_FIT(head, "%s, swims an hour in a mean wind of", name);
    lw_tell_table(t, name, head, h->columns, COLUMN_COUNT);
    for (size_t i = 0; i < counted->count; i++) tell_pin(counted, counted->first + i, course, t);
    lw_tell_end(t);
}

// --- how far to trust it

static void tell_trust(const lw_counted *counted, lw_teller *t)
{
    char text[600];
    lw_tell_list(t, "trust", "How far to trust it");
    LW_FIT(
        text,
        "\"8 x1.5\": 8 an hour under way, two times in three between 8 / 1.5 and 8 x 1.5, as far "
        "as the number of rides goes: %d of %.1f min in each wind.",
        LW_BLOCKS, counted->outlook.effort.seconds / 60.0);
    lw_tell_text(t, NULL, text);
    lw_tell_text(t, NULL, "Held to, " LW_HELD_BY_RIDES "; margins are not asked here.");
    lw_tell_text(t, NULL,
                 "The sailor of these rides winds her rudder after the wind of the last minute, "
                 "never tires and sees no more than a gust ahead. Compare pins and winds rather "
                 "than trust a number.");
    lw_tell_end(t);
}

static void tell_cautions(const lw_counted *counted, lw_teller *t)
{
    lw_care care = lw_care_of_day(&counted->inputs, counted->speed_unit);
    care.felt = lw_outlook_felt_wind(&counted->outlook, counted->first);
    lw_tell_cautions(t, &care);
}

void lw_counted_tell(const void *it, lw_teller *t)
{
    const lw_counted *counted = it;
    heads h;
    put_heads(&h, counted, t->speed_unit);
    tell_head(counted, t);
    tell_winds(counted, t);
    for (int course = 0; course < LW_COURSE_COUNT; course++) tell_course(counted, course, &h, t);
    tell_trust(counted, t);
    tell_cautions(counted, t);
}
