// flights.c - what is foreseen of days: steady flights and rides with hidden quantities put in.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "learning/rides.h"
#include "lullwise/elementary.h"

#define ABOUT      (2.0 * LW_KN)  // of a wind in which swims are as likely  [judged]
#define RIDDEN     1800.0         // [s] in each wind, about  [judged]
#define SKILL_MOST 2.0            // an expert: lw_person.skill

void lw_hidden_put(const lw_hidden *hidden, lw_inputs *inputs)
{
    lw_boat *boat = &inputs->boat;
    lw_person *person = &inputs->sailor.person;
    lw_sea *seas[] = {&inputs->day.sea, &inputs->day_as_given.sea};
    for (size_t i = 0; i < boat->pin_count; i++) boat->pins[i].incidence += hidden->main_incidence;
    boat->rudder.mark_incidence += hidden->rudder_incidence;
    boat->main_foil.root_chord *= hidden->main_chord;
    boat->main_foil.tip_chord *= hidden->main_chord;
    boat->hull.windage_area += hidden->drag_area;
    boat->hull.windage_side += hidden->drag_area;
    boat->rig.greatest_lift *= hidden->sail_power;
    person->skill = fmin(fmax(person->skill + hidden->skill, 0.0), SKILL_MOST);
    for (size_t i = 0; i < sizeof seas / sizeof seas[0]; i++) {
        seas[i]->height *= hidden->chop;
        seas[i]->fetch *= hidden->chop * hidden->chop;
    }
}

// --- steady flights

// What cannot be held is not trimmed for speed, and tells nothing.
static lw_foreseen foreseen_of(const lw_trim *trim, const lw_course *course)
{
    if (!lw_trim_is_up(trim) || !lw_answer_is_kept(&trim->steady))
        return (lw_foreseen){NAN, NAN, NAN};
    const lw_flight *flight = &trim->steady.flight;
    return (lw_foreseen){flight->turns, flight->speed,
                         lw_flight_made_good(flight, course->direction)};
}

static void put_steady(lw_foreseen along[LW_RANGE_WINDS], const lw_walk *walk)
{
    for (int i = 0; i < LW_RANGE_WINDS; i++) along[i] = foreseen_of(&walk->trims[i], &walk->course);
}

// --- both

static bool is_sailed(const lw_season *season, size_t pin, double wind)
{
    size_t i = 0;
    while (i < season->count &&
           (season->days[i].pin != pin || fabs(season->days[i].wind - wind) > LW_RIDDEN_REACH))
        i++;
    return i < season->count;
}

void lw_hidden_inputs(const lw_hidden *hidden, const lw_season *season, lw_inputs *inputs)
{
    *inputs = (lw_inputs){.boat = *season->boat, .day = season->day};
    inputs->sailor.person = *season->person;
    lw_hidden_put(hidden, inputs);
}

void lw_flights_add(lw_flights *flights, const lw_season *season, const lw_hidden *hidden,
                    size_t pin, bool rides)
{
    lw_inputs inputs;
    lw_ridden ridden = {.flown = {.by = LW_BY_SPEED}};
    lw_rides_sum sums[LW_RIDDEN_WINDS] = {0};
    lw_hidden_inputs(hidden, season, &inputs);
    lw_ridden_prepare(&ridden, &inputs, season->sections);
    ridden.flown.pin = pin;
    for (int c = 0; c < LW_COURSE_COUNT; c++) {
        ridden.flown.course = (lw_course_kind)c;
        ridden.flown.wind = season->day.wind.mean;
        lw_flown_answer(&ridden.flown);
        put_steady(flights->of[pin][c], &ridden.flown.walk);
        for (int i = 0; i < LW_RIDDEN_WINDS; i++) {
            ridden.flown.wind = lw_ridden_wind(i);
            if (rides && is_sailed(season, pin, ridden.flown.wind))
                lw_rides_add(&sums[i], &ridden, season->leg);
        }
    }
    for (int i = 0; i < LW_RIDDEN_WINDS; i++) flights->ridden[pin][i] = lw_rides_lesson(&sums[i]);
}

// --- between the knots

// At a knot, with what is beside it where she flies there too.
static double evened(const lw_foreseen *along, int knot)
{
    const double here = along[knot].turns;
    const double less = knot > 0 ? along[knot - 1].turns : NAN;
    const double more = knot + 1 < LW_RANGE_WINDS ? along[knot + 1].turns : NAN;
    return isnan(less + more) ? here : 0.25 * less + 0.5 * here + 0.25 * more;
}

static double turns_in(const lw_foreseen *along, double wind)
{
    const lw_range_interval in = lw_range_interval_of(wind);
    const double below = evened(along, in.below);
    return below + in.part * (evened(along, in.below + 1) - below);
}

static double ridden_in(const lw_lesson *along, double wind, size_t row)
{
    const lw_quantity *quantity = &lw_lesson_table.rows[row];
    const double place =
        fmin(fmax((wind - LW_RIDDEN_FIRST) / LW_RIDDEN_APART, 0.0), (double)(LW_RIDDEN_WINDS - 1));
    const size_t below = (size_t)fmin(floor(place), (double)(LW_RIDDEN_WINDS - 2));
    const double less = lw_quantity_value(quantity, &along[below]);
    const double more = lw_quantity_value(quantity, &along[below + 1]);
    return less + (place - (double)below) * (more - less);
}

// Rides tell no turns; where nothing was put, there is nought.
static bool was_ridden(const lw_lesson *told)
{
    return isnan(told->upwind_turns) && !isnan(told->flying);
}

// Swims are rare: those of all pins in winds about this one, and half of one that has not happened
// yet but may still.  [judged]
static double swims_in(const lw_flights *flights, double wind)
{
    double swims = 0.5, seconds = 0.0;
    for (size_t pin = 0; pin < LW_PINS_MOST; pin++) {
        for (int i = 0; i < LW_RIDDEN_WINDS; i++) {
            const double off = (lw_ridden_wind(i) - wind) / ABOUT;
            const double rate = flights->ridden[pin][i].swims;
            const double time = lw_exp(-0.5 * off * off) * RIDDEN;
            if (!was_ridden(&flights->ridden[pin][i])) continue;
            swims += rate * time, seconds += time;
        }
    }
    return seconds > 0.0 ? swims / seconds : NAN;
}

double lw_flights_lesson(const lw_flights *flights, size_t pin, double wind, size_t row)
{
    const lw_lesson_kind kind = lw_lesson_kind_of(row);
    const lw_foreseen *along = flights->of[pin][row % LW_COURSE_COUNT];
    if (kind == LW_LESSON_TURNS) return turns_in(along, wind);
    if (kind == LW_LESSON_SWIMS) return swims_in(flights, wind);
    return ridden_in(flights->ridden[pin], wind, row);
}
