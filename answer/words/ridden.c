// ridden.c - a ride through a day's gusts and chop: what it starts from, and what is said of it.
// SPDX-License-Identifier: MIT

#include "answer/words/ridden.h"

#include <math.h>

#include "answer/words/number_text.h"
#include "lullwise/ride_rates.h"
#include "records/fault.h"

#define SPEED(x) LW_SPEED_TEXT((x), 1, ridden->flown.speed_unit)

void lw_ridden_prepare(lw_ridden *ridden, const lw_inputs *inputs)
{
    lw_flown *flown = &ridden->flown;
    lw_flown_prepare(flown, inputs);
    flown->pin = inputs->boat.pin_count / 2;
    flown->wind = inputs->day.wind.mean;
    flown->course = LW_UPWIND;
    flown->has_heading = flown->has_heel = flown->has_place = flown->has_turns = false;
}

// Middle of the sail above the water, as she flies.
static double sail_height(const lw_ridden *ridden)
{
    const lw_craft *craft = &ridden->flown.craft;
    const double ride = fmax(ridden->flown.answer.flight.ride_height, 0.0);
    return craft->sail.centre_height - craft->main_strut.length + ride;
}

static void put_weather(lw_ridden *ridden)
{
    lw_day day = ridden->flown.inputs->day;
    lw_motion *motion = &ridden->motion;
    const double share = ridden->flown.wind / day.wind.mean;
    day.wind.lull *= share, day.wind.mean *= share, day.wind.puff *= share;
    ridden->wind = day.wind;
    motion->gust =
        lw_gust_filter_of(lw_gust_kind_of(&day, sail_height(ridden)), motion->rules.step);
    motion->sea = lw_sea_kind_of(&ridden->flown.craft.medium, day.wind.mean);
    motion->is_gusty = true;
    motion->is_choppy = motion->sea.wave.height > 0.0;
}

// What she is sailed with: beyond the last wind that keeps her margins, the flight of that.
static void sail_as_held(lw_flown *flown)
{
    const lw_range_point *sailed = lw_range_sailed(&flown->range, flown->wind);
    const bool is_kept =
        flown->answer.outcome == LW_FLIES && lw_margins_hold(&flown->answer.margins);
    if (is_kept || !sailed || fabs(sailed->wind - flown->wind) < LW_KN) return;
    flown->ask = lw_ask_as(&flown->craft, &flown->walk.setup, &sailed->trimmed);
    flown->answer = sailed->trimmed;
}

void lw_ridden_plan(lw_ridden *ridden, uint64_t seed)
{
    lw_flown *flown = &ridden->flown;
    lw_flown_answer(flown);
    lw_range_trims(&flown->walk, &flown->range);
    ridden->is_wound = !flown->has_turns && lw_range_sailed(&flown->range, flown->wind) != NULL;
    if (ridden->is_wound && !flown->has_heel && !flown->has_place) sail_as_held(flown);
    ridden->motion = lw_motion_of(&flown->craft);
    ridden->motion.rules.swim = flown->inputs->day.cost.swim;
    put_weather(ridden);
    ridden->plan = lw_ride_plan_of(&ridden->motion, &flown->ask, &flown->answer);
    if (ridden->is_wound) lw_ride_plan_wind(&ridden->plan, &flown->craft, &flown->range);
    ridden->plan.seed = seed;
}

static void fit_waves(const lw_wave *wave, char text[LW_RIDDEN_LENGTH])
{
    lw_text_fit(text, LW_RIDDEN_LENGTH, "flat water");
    if (wave->height > 0.0)
        lw_text_fit(text, LW_RIDDEN_LENGTH, "waves of %.2f m every %.1f s", wave->height,
                    wave->period);
}

void lw_ridden_scene(const lw_ridden *ridden, char text[LW_RIDDEN_LENGTH])
{
    const lw_flown *flown = &ridden->flown;
    const lw_inputs *inputs = flown->inputs;
    const lw_pin *pin = &inputs->boat.pins[flown->pin];
    const lw_wind *wind = &ridden->wind;
    char waves[LW_RIDDEN_LENGTH];
    fit_waves(&ridden->motion.sea.wave, waves);
    lw_text_fit(text, LW_RIDDEN_LENGTH,
                "%s, %s. Pin %s (%.1f deg). Lull %s, mean %s, puff %s, a puff about every %.0f s; "
                "%s.",
                inputs->boat.name, inputs->sailor.name, pin->label, pin->incidence / LW_DEG,
                SPEED(wind->lull), SPEED(wind->mean), SPEED(wind->puff), wind->period, waves);
}

void lw_ridden_trim(const lw_ridden *ridden, char text[LW_RIDDEN_LENGTH])
{
    const lw_answer *answer = &ridden->flown.answer;
    const lw_flight *f = &answer->flight;
    const double heading = fabs(f->heading) / LW_DEG;
    const char *side = ridden->flown.heading < 0.0 ? "; starboard tack, port is its mirror" : "";
    const char *wound =
        ridden->is_wound ? "then wound after the wind of the last minute" : "and left there";
    char start[LW_CELL_LENGTH] = "the mean wind";
    if (answer->outcome == LW_FLIES && fabs(f->wind - ridden->flown.wind) > 0.5 * LW_KN)
        lw_text_fit(start, LW_CELL_LENGTH, "%s, the most she is held in", SPEED(f->wind));
    if (answer->outcome == LW_FLIES)
        lw_text_fit(
            text, LW_RIDDEN_LENGTH,
            "Begins as trimmed for %s: %.0f deg at %s, rudder lift on %+.1f turns, %s; %.0f "
            "deg of windward heel%s. Course and heel go with the wind of some seconds.",
            start, heading, SPEED(f->speed), f->turns, wound, f->heel / LW_DEG, side);
    else if (answer->outcome == LW_FLOATS)
        lw_text_fit(
            text, LW_RIDDEN_LENGTH,
            "In the mean wind she does not fly on %.0f deg: starts on the hull, rudder lift "
            "on %+.1f turns, %s%s.",
            heading, f->turns, wound, side);
    else
        lw_text_fit(text, LW_RIDDEN_LENGTH,
                    "No steady flight was found in the mean wind: starts on the hull, on a "
                    "reach%s.",
                    side);
}

void lw_ridden_sum(const lw_ridden *ridden, const lw_ride_tally *tally, char text[LW_RIDDEN_LENGTH])
{
    const lw_ride_rates rates = lw_ride_rates_of(tally);
    char time[LW_CELL_LENGTH];
    lw_cell_time(time, tally->seconds);
    lw_text_fit(text, LW_RIDDEN_LENGTH, "Flew %.0f %% of %s; %s on average, %s made good to %s%s.",
                100.0 * rates.flying, time, SPEED(rates.speed), SPEED(fabs(rates.made_good)),
                rates.made_good < 0.0 ? "leeward" : "windward",
                lw_ride_tally_swims(tally) > 0.0 ? ", swims counted" : "");
}
