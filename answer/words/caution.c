// caution.c - is this sensible to sail? Plain words; local rules and qualified people decide.
// SPDX-License-Identifier: MIT

#include "answer/words/caution.h"

#include <math.h>

#include "answer/words/number_text.h"
#include "answer/words/verdict.h"
#include "lullwise/choice_find.h"
#include "lullwise/medium.h"
#include "records/fault.h"

#define SPEED(x)   LW_SPEED_TEXT((x), 1, picked->speed_unit)
#define DEGREES(x) LW_MEASURE_TEXT((x), 0, LW_UNIT_DEGC)

typedef struct lines {
    char (*at)[LW_CAUTION_LENGTH];
    size_t count;
} lines;

#define ADD(lines, ...)                                                                 \
    do {                                                                                \
        if ((lines)->count < LW_CAUTIONS_MOST)                                          \
            lw_text_fit((lines)->at[(lines)->count++], LW_CAUTION_LENGTH, __VA_ARGS__); \
    } while (0)

static void add_hold(lines *to, const lw_picked *picked)
{
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

static void fit_hours(char text[40], double from, double to)
{
    if (to <= 3600.0)
        lw_text_fit(text, 40, "%.0f to %.0f minutes", from / 60.0, to / 60.0);
    else
        lw_text_fit(text, 40, "%.0f to %.0f hours", from / 3600.0, to / 3600.0);
}

static void add_water(lines *to, double temperature)
{
    const lw_cold_band band = lw_cold_band_of(temperature);
    char hours[40];
    if (temperature < LW_COLD_SHOCK) {
        ADD(to,
            "Water of %s takes your breath when you fall in: hold on to the boat, and "
            "do nothing else for the first minute.",
            DEGREES(temperature));
    }
    if (band.below > 27.0) return;
    fit_hours(hours, band.able_from, band.able_to);
    ADD(to,
        "In water of %s people stayed able to help themselves for %s. Dress for the "
        "water, not for the air.",
        DEGREES(temperature), hours);
}

static void add_chill(lines *to, const lw_picked *picked)
{
    const double wind = fmax(lw_outlook_felt_wind(picked->outlook, picked->now.places[0].pin),
                             picked->now.gusts.mean);
    const double air = picked->inputs.day.air.temperature, chill = lw_wind_chill(air, wind);
    if (chill < air - 0.5) {
        ADD(to,
            "With %s of wind over the rack, air of %s chills dry skin like %s; wet "
            "skin cools faster.",
            LW_SPEED_TEXT(wind, 0, picked->speed_unit), DEGREES(air), DEGREES(chill));
    }
}

size_t lw_cautions(const lw_picked *picked, char at[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH])
{
    lines to = {.at = at};
    const lw_placing *first = &picked->now.places[0];
    add_hold(&to, picked);
    if (first->prospect.swims >= LW_SWIMS_MANY)
        ADD(&to, "Expect about %.1f swims in one lap with pin %s.", first->prospect.swims,
            lw_picked_label(picked, first->pin));
    add_water(&to, picked->inputs.day.water.temperature);
    add_chill(&to, picked);
    ADD(&to, "Wear a buoyancy aid and a helmet. Foils cut: keep clear of them, afloat and ashore.");
    ADD(&to, "Do not sail alone. Somebody ashore knows where you are and when you are due.");
    ADD(&to, "Look up before you rig, launch or tow: a mast near a power line kills.");
    ADD(&to, "Local rules, and qualified people who see the place and you, decide; not this.");
    return to.count;
}

void lw_tell_cautions(lw_teller *teller, const lw_picked *picked)
{
    char at[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH];
    const size_t count = lw_cautions(picked, at);
    for (size_t i = 0; i < count; i++) lw_tell_text(teller, NULL, at[i]);
}
