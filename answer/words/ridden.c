// ridden.c - what is said of a ride through a day's gusts and chop.
// SPDX-License-Identifier: MIT

#include "answer/words/ridden.h"

#include <math.h>

#include "answer/words/number_text.h"
#include "lullwise/ride.h"
#include "records/fault.h"

#define SPEED(x) LW_SPEED_TEXT((x), 1, unit)

static void fit_waves(const lw_wave *wave, char text[LW_RIDDEN_LENGTH])
{
    lw_text_fit(text, LW_RIDDEN_LENGTH, "flat water");
    if (wave->height > 0.0)
        lw_text_fit(text, LW_RIDDEN_LENGTH, "waves of %.2f m every %.1f s", wave->height,
                    wave->period);
}

void lw_ridden_scene(const lw_ridden *ridden, lw_unit unit, char text[LW_RIDDEN_LENGTH])
{
    const lw_flown *flown = &ridden->flown;
    const lw_inputs *inputs = flown->inputs;
    const lw_pin *pin = &inputs->boat.pins[flown->pin];
    const lw_wind *wind = &ridden->wind;
    char waves[LW_RIDDEN_LENGTH];
    fit_waves(&ridden->motion.sea.wave, waves);
    lw_text_fit(text, LW_RIDDEN_LENGTH,
                "%s, %s. Pin %s (%s). Lull %s, mean %s, puff %s, a puff about every %.0f s; "
                "%s.",
                inputs->boat.name, inputs->sailor.name, pin->label,
                LW_ANGLE_TEXT(pin->incidence, 1), SPEED(wind->lull), SPEED(wind->mean),
                SPEED(wind->puff), wind->period, waves);
}

void lw_ridden_trim(const lw_ridden *ridden, lw_unit unit, char text[LW_RIDDEN_LENGTH])
{
    const lw_answer *answer = &ridden->flown.answer;
    const lw_flight *f = &answer->flight;
    const char *heading = LW_ANGLE_TEXT(fabs(f->heading), 0);
    const char *side = ridden->flown.heading < 0.0 ? "; starboard tack, port is its mirror" : "";
    const char *wound =
        ridden->is_wound ? "then wound after the wind of the last minute" : "and left there";
    char start[LW_CELL_LENGTH] = "the mean wind";
    if (answer->outcome == LW_FLIES && fabs(f->wind - ridden->flown.wind) > 0.5 * LW_KN)
        lw_text_fit(start, LW_CELL_LENGTH, "%s, the most she is held in", SPEED(f->wind));
    if (answer->outcome == LW_FLIES)
        lw_text_fit(text, LW_RIDDEN_LENGTH,
                    "Begins as trimmed for %s: %s at %s, rudder lift on %+.1f turns, %s; %s of "
                    "windward heel%s. Course and heel go with the wind of some seconds.",
                    start, heading, SPEED(f->speed), f->turns, wound, LW_ANGLE_TEXT(f->heel, 0),
                    side);
    else if (answer->outcome == LW_FLOATS)
        lw_text_fit(text, LW_RIDDEN_LENGTH,
                    "In the mean wind she does not fly on %s: starts on the hull, rudder lift "
                    "on %+.1f turns, %s%s.",
                    heading, f->turns, wound, side);
    else
        lw_text_fit(text, LW_RIDDEN_LENGTH,
                    "No steady flight was found in the mean wind: starts on the hull, on a "
                    "reach%s.",
                    side);
}

void lw_ridden_sum(const lw_ride_tally *tally, lw_unit unit, char text[LW_RIDDEN_LENGTH])
{
    const lw_ride_rates rates = lw_ride_rates_of(tally);
    char time[LW_CELL_LENGTH];
    lw_cell_time(time, tally->seconds);
    lw_text_fit(text, LW_RIDDEN_LENGTH, "Flew %.0f %% of %s; %s on average, %s made good to %s%s.",
                100.0 * rates.flying, time, SPEED(rates.speed), SPEED(fabs(rates.made_good)),
                rates.made_good < 0.0 ? "leeward" : "windward",
                lw_ride_tally_swims(tally) > 0.0 ? ", swims counted" : "");
}
