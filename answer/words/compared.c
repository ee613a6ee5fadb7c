// compared.c - two answers side by side, in sentences: as it is, and with something changed.
// SPDX-License-Identifier: MIT

#include "answer/words/compared.h"

#include <math.h>
#include <string.h>

#include "answer/words/margin_text.h"
#include "answer/words/number_text.h"
#include "records/fault.h"

typedef struct lines {
    char (*at)[LW_REASON_LENGTH];
    size_t count;
} lines;

#define ADD(lines, ...) lw_text_fit((lines)->at[(lines)->count++], LW_REASON_LENGTH, __VA_ARGS__)
#define SPEED(x)        LW_SPEED_TEXT((x), 1, unit)

lw_side lw_side_of(const lw_picked *picked, const char *label)
{
    const int pin = label ? lw_boat_pin(&picked->inputs.boat, label) : -1;
    const lw_placing *place = pin < 0 ? NULL : lw_picked_place_of(&picked->now, (size_t)pin);
    return (lw_side){picked, place ? place : &picked->now.places[0]};
}

static const char *label_of(lw_side side) { return lw_picked_label(side.picked, side.place->pin); }

static bool is_first(lw_side side) { return side.place == &side.picked->now.places[0]; }

// Of two numbers as they are shown, so many decimals: how much more the second is.
static double more_shown(double from, double to, double unit, int decimals)
{
    const double last = lw_ten_to(decimals) / unit;
    return (round(to * last) - round(from * last)) / last;
}

static void say_pin(lines *to, lw_side as_is, lw_side changed)
{
    const char *was = label_of(as_is), *is = label_of(changed);
    const bool are_first = is_first(as_is) && is_first(changed);
    if (!are_first)
        ADD(to, "Pin %s as it is beside pin %s changed.", was, is);
    else if (strcmp(was, is) == 0)
        ADD(to, "Pin %s is first either way.", was);
    else
        ADD(to, "Pin %s is first instead of pin %s.", is, was);
}

// Whether both fly; if not, what is to be said of it.
static bool say_flight(lines *to, const lw_placing *as_is, const lw_placing *changed)
{
    if (as_is->flies && changed->flies) return true;
    if (as_is->flies)
        ADD(to, "Changed, she does not fly in the day's winds.");
    else if (changed->flies)
        ADD(to, "As it is she does not fly in the day's winds; changed, she does.");
    else
        ADD(to, "She does not fly in the day's winds, as it is or changed.");
    return false;
}

static void say_time(lines *to, const lw_prospect *as_is, const lw_prospect *changed)
{
    char was[LW_CELL_LENGTH], is[LW_CELL_LENGTH], more[LW_CELL_LENGTH];
    const double seconds = more_shown(as_is->seconds, changed->seconds, 1.0, 0);
    if (as_is->seconds <= 0.0 || changed->seconds <= 0.0) {
        ADD(to, "%s the course cannot be sailed: less than a knot made good on some leg.",
            changed->seconds > 0.0 ? "As it is" : "Changed");
        return;
    }
    lw_cell_time(was, as_is->seconds);
    lw_cell_time(is, changed->seconds);
    lw_cell_time(more, fabs(seconds));
    if (fabs(seconds) < 0.5)
        ADD(to, "Round the course as long: %s.", was);
    else
        ADD(to, "Round the course %s %s: %s instead of %s.", more, seconds < 0.0 ? "less" : "more",
            is, was);
}

// "takes off at 8.1 kn, 0.4 kn sooner" with the words for less and more.
static void fit_wind(char text[LW_REASON_LENGTH], double was, double is, lw_unit unit,
                     const char *const words[4])
{
    const double more = more_shown(was, is, lw_unit_in_si(lw_speed_unit(unit)), 1);
    if (was <= 0.0 && is <= 0.0)
        lw_text_fit(text, LW_REASON_LENGTH, "%s in no wind", words[1]);
    else if (is <= 0.0)
        lw_text_fit(text, LW_REASON_LENGTH, "%s in no wind any more (%s as it is)", words[1],
                    SPEED(was));
    else if (was <= 0.0)
        lw_text_fit(text, LW_REASON_LENGTH, "%s %s, as it is in no wind", words[0], SPEED(is));
    else if (fabs(more) < 1e-9)
        lw_text_fit(text, LW_REASON_LENGTH, "%s %s as before", words[0], SPEED(is));
    else
        lw_text_fit(text, LW_REASON_LENGTH, "%s %s, %s %s", words[0], SPEED(is), SPEED(fabs(more)),
                    words[more < 0.0 ? 2 : 3]);
}

static void say_winds(lines *to, const lw_prospect *as_is, const lw_prospect *changed, lw_unit unit)
{
    static const char *const launch[] = {"Takes off at", "Takes off", "sooner", "later"};
    static const char *const stay[] = {"Stays up from", "Stays up", "sooner", "later"};
    static const char *const hold[] = {"Held to", "Held", "less", "more"};
    char launches[LW_REASON_LENGTH], stays[LW_REASON_LENGTH], held[LW_REASON_LENGTH];
    fit_wind(launches, as_is->launches_at, changed->launches_at, unit, launch);
    fit_wind(stays, as_is->stays_up_at, changed->stays_up_at, unit, stay);
    fit_wind(held, as_is->held_up_to, changed->held_up_to, unit, hold);
    ADD(to, "%.90s. %.90s. %.90s.", launches, stays, held);
}

static void say_speed(lines *to, const lw_prospect *as_is, const lw_prospect *changed, lw_unit unit)
{
    const double si = lw_unit_in_si(lw_speed_unit(unit));
    const double more = more_shown(as_is->speed, changed->speed, si, 1);
    if (as_is->speed <= 0.0 || changed->speed <= 0.0 || fabs(more) < 1e-9) return;
    ADD(to, "Under way %s %s made good: %s instead of %s.", SPEED(fabs(more)),
        more < 0.0 ? "slower" : "faster", SPEED(changed->speed), SPEED(as_is->speed));
}

static void say_swims(lines *to, const lw_prospect *as_is, const lw_prospect *changed)
{
    if (fabs(changed->swims - as_is->swims) < 0.05) return;
    ADD(to, "Swims expected in a lap: %.2f instead of %.2f.", changed->swims, as_is->swims);
}

static void say_turns(lines *to, lw_side as_is, lw_side changed)
{
    char was[LW_CELL_LENGTH], is[LW_CELL_LENGTH];
    const double from = as_is.place->prospect.turns_mean, now = changed.place->prospect.turns_mean;
    const double more = more_shown(from, now, 1.0, 1);
    if (!as_is.place->flies_in_mean || !changed.place->flies_in_mean) return;
    lw_cell_number(was, from, 1, true);
    lw_cell_number(is, now, 1, true);
    if (fabs(more) < 0.05)
        ADD(to, "The rudder stands as before in the mean wind: %s turns.", is);
    else
        ADD(to, "In the mean wind %.1f turns %s rudder lift: %s instead of %s.", fabs(more),
            more < 0.0 ? "less" : "more", is, was);
}

static void say_end(lines *to, lw_side as_is, lw_side changed)
{
    char was[LW_REASON_LENGTH], is[LW_REASON_LENGTH];
    lw_picked_end(as_is.picked, as_is.place->pin, was);
    lw_picked_end(changed.picked, changed.place->pin, is);
    if (strcmp(was, is) == 0)
        ADD(to, "What ends it is the same: %.200s.", was);
    else
        ADD(to, "What ends it: %.100s; as it is: %.100s.", is, was);
}

size_t lw_compared(lw_side as_is, lw_side changed, char at[LW_COMPARED_MOST][LW_REASON_LENGTH])
{
    lines to = {.at = at};
    const lw_prospect *p = &as_is.place->prospect, *q = &changed.place->prospect;
    const lw_unit unit = as_is.picked->speed_unit;
    say_pin(&to, as_is, changed);
    const bool both_fly = say_flight(&to, as_is.place, changed.place);
    say_time(&to, p, q);
    if (both_fly) say_speed(&to, p, q, unit);
    say_winds(&to, p, q, unit);
    say_swims(&to, p, q);
    say_turns(&to, as_is, changed);
    say_end(&to, as_is, changed);
    return to.count;
}
