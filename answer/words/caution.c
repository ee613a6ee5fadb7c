// caution.c - is this sensible to sail? Plain words; local rules and qualified people decide.
// SPDX-License-Identifier: MIT

#include "answer/words/caution.h"

#include <math.h>
#include <string.h>

#include "answer/words/number_text.h"
#include "answer/words/verdict.h"
#include "lullwise/choice_find.h"
#include "lullwise/medium.h"
#include "records/fault.h"

#define SPEED(x)   LW_SPEED_TEXT((x), 1, care->speed_unit)
#define DEGREES(x) LW_MEASURE_TEXT((x), 0, LW_UNIT_DEGC)

#define LASTING 27.0  // [degC] in water that is warmer nothing is said of how long  [judged]

typedef struct lines {
    char (*at)[LW_CAUTION_LENGTH];
    size_t count;
} lines;

#define ADD(lines, ...)                                                                 \
    do {                                                                                \
        if ((lines)->count < LW_CAUTIONS_MOST)                                          \
            lw_text_fit((lines)->at[(lines)->count++], LW_CAUTION_LENGTH, __VA_ARGS__); \
    } while (0)

lw_care lw_care_of_day(const lw_inputs *inputs, lw_unit speed_unit)
{
    const lw_wind *wind = &inputs->day.wind;
    return (lw_care){inputs, speed_unit, .mean = wind->mean, .puff = wind->puff};
}

lw_care lw_care_of(const lw_picked *picked)
{
    const lw_gusts *gusts = &picked->now.gusts;
    return (lw_care){.inputs = &picked->inputs,
                     .speed_unit = picked->speed_unit,
                     .mean = gusts->mean,
                     .puff = gusts->puff,
                     .felt = lw_outlook_felt_wind(picked->outlook, picked->now.places[0].pin),
                     .picked = picked};
}

// --- the ranking

static void add_hold(lines *to, const lw_care *care)
{
    const lw_picked *picked = care->picked;
    const lw_choice *choice = &picked->now;
    const double puff = choice->gusts.puff;
    const lw_placing *first = &choice->places[0], *holder = lw_choice_holder(choice, puff);
    const char *label = lw_picked_label(picked, first->pin);
    char held[2 * LW_CELL_LENGTH] = "in no wind on every leg";
    if (lw_verdict_of(picked) == LW_VERDICT_UNHELD)
        ADD(to,
            "No pin holds this wind: wait, find more shelter, or be ready to come off the foils.");
    if (lw_verdict_of(picked) != LW_VERDICT_PIN || lw_placing_holds(first, puff)) return;
    if (first->prospect.held_up_to > 0.0) LW_FIT(held, "to %s", SPEED(first->prospect.held_up_to));
    ADD(to, "Pin %s is held %s, puffs are %s; pin %s holds them%s.", label, held, SPEED(puff),
        lw_picked_label(picked, holder->pin),
        holder->flies ? "" : ", but does not fly on this day");
}

static void add_swims(lines *to, const lw_picked *picked)
{
    const lw_placing *first = &picked->now.places[0];
    if (first->prospect.swims < LW_SWIMS_MANY) return;
    ADD(to, "Expect about %.1f swims in one lap with pin %s.", first->prospect.swims,
        lw_picked_label(picked, first->pin));
}

// --- the sailor

// Puffs, not means: a puff throws her, and a day of the same mean may have stronger ones.
static void add_experience(lines *to, const lw_care *care)
{
    const double known = care->inputs->sailor.person.puff_known;
    if (known <= 0.0) {
        ADD(to,
            "Has this sailor come home well from puffs of %s in such a boat? The file does not say "
            "(person.puff_known). If not, wait for less, or go with a safety boat beside you.",
            SPEED(care->puff));
    } else if (care->puff > known) {
        ADD(to,
            "Puffs of %s are %s more than this sailor has come home well from (%s): wait for less, "
            "or go with a safety boat beside you.",
            SPEED(care->puff), LW_APART_TEXT(care->puff - known, care->speed_unit), SPEED(known));
    }
}

// --- cold

static void fit_hours(char text[40], double from, double to)
{
    if (from <= 0.0)
        lw_text_fit(text, 40, "less than %.0f minutes", to / 60.0);
    else if (to <= 3600.0)
        lw_text_fit(text, 40, "%.0f to %.0f minutes", from / 60.0, to / 60.0);
    else
        lw_text_fit(text, 40, "%.0f to %.0f hours", from / 3600.0, to / 3600.0);
}

static void add_shock(lines *to, double temperature)
{
    if (temperature < LW_COLD_SHOCK)
        ADD(to,
            "Water of %s takes your breath when you fall in: hold on to the boat, and do nothing "
            "else for %.0f minute.",
            DEGREES(temperature), LW_COLD_BREATHING / 60.0);
    if (temperature < LW_COLD_ICY)
        ADD(to,
            "So near to freezing, hands and arms work for about %.0f minutes, and you are "
            "unconscious in about %.0f hour: get out of the water first.",
            LW_COLD_MOVEMENT / 60.0, LW_COLD_UNCONSCIOUS / 3600.0);
}

static void add_water(lines *to, double temperature)
{
    const lw_cold_band band = lw_cold_band_of(temperature);
    char hours[40];
    add_shock(to, temperature);
    if (band.below > LASTING) return;
    fit_hours(hours, band.able_from, band.able_to);
    ADD(to,
        "In water of %s people stayed able to help themselves for %s. Dress for the "
        "water, not for the air.",
        DEGREES(temperature), hours);
}

static void add_chill(lines *to, const lw_care *care)
{
    const double wind = fmax(care->felt, care->mean);
    const double air = care->inputs->day.air.temperature, chill = lw_wind_chill(air, wind);
    if (chill < air - 0.5) {
        ADD(to,
            "With %s of wind over the rack, air of %s chills dry skin like %s; wet "
            "skin cools faster.",
            LW_SPEED_TEXT(wind, 0, care->speed_unit), DEGREES(air), DEGREES(chill));
    }
}

// --- always

// Common practice, but for what level 50 is made for [iso-12402-5].
static void add_standing(lines *to)
{
    ADD(to,
        "Wear a helmet and a buoyancy aid; level 50 is for swimmers in sheltered water with help "
        "close by.");
    ADD(to, "Foils cut: keep clear of them, afloat and ashore.");
    ADD(to, "Do not sail alone. Somebody ashore knows where you are and when you are due.");
    ADD(to, "Look up before you rig, launch or tow: a mast near a power line kills.");
    ADD(to,
        "Local rules, the organising authority, and qualified people who see the place and you, "
        "decide; not this.");
}

size_t lw_cautions(const lw_care *care, char at[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH])
{
    lines to = {.at = at};
    if (care->picked) {
        add_hold(&to, care);
        add_swims(&to, care->picked);
    }
    add_experience(&to, care);
    add_water(&to, care->inputs->day.water.temperature);
    add_chill(&to, care);
    add_standing(&to);
    return to.count;
}

// --- told

void lw_tell_caution_lines(lw_teller *t, const lw_care *care)
{
    char at[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH];
    const size_t count = lw_cautions(care, at);
    for (size_t i = 0; i < count; i++) lw_tell_text(t, NULL, at[i]);
}

void lw_tell_cautions(lw_teller *t, const lw_care *care)
{
    lw_tell_list(t, "cautions", LW_CAUTIONS_HEAD);
    lw_tell_caution_lines(t, care);
    lw_tell_end(t);
}

typedef char lines_of[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH];

static bool is_among(const char *line, lines_of of, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        if (strcmp(line, of[i]) == 0) return true;
    }
    return false;
}

// Of one side those that are the other's too, or those that are not.
static void tell_side(lw_teller *t, const lw_care *care, const lw_care *other, const char *only)
{
    lines_of at, of;
    char text[LW_CAUTION_LENGTH + 20];
    const size_t count = lw_cautions(care, at), others = lw_cautions(other, of);
    for (size_t i = 0; i < count; i++) {
        if (is_among(at[i], of, others) != !only) continue;
        LW_FIT(text, "%s%s", only ? only : "", at[i]);
        lw_tell_text(t, NULL, text);
    }
}

void lw_tell_cautions_of_two(lw_teller *t, const lw_care *as_is, const lw_care *changed)
{
    lw_tell_list(t, "cautions", LW_CAUTIONS_HEAD);
    tell_side(t, as_is, changed, "As it is: ");
    tell_side(t, changed, as_is, "Changed: ");
    tell_side(t, changed, as_is, NULL);
    lw_tell_end(t);
}
