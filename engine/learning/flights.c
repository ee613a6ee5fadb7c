// flights.c - what is foreseen of days: steady flights with hidden quantities in the boat.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/learning.h"

void lw_hidden_put(const lw_hidden *hidden, lw_boat *boat)
{
    for (size_t i = 0; i < boat->pin_count; i++) boat->pins[i].incidence += hidden->main_incidence;
    boat->rudder.mark_incidence += hidden->rudder_incidence;
    boat->main_foil.root_chord *= hidden->main_chord;
    boat->main_foil.tip_chord *= hidden->main_chord;
    boat->hull.windage_area += hidden->drag_area;
    boat->hull.windage_side += hidden->drag_area;
    boat->rig.greatest_lift *= hidden->sail_power;
}

// What cannot be held is not trimmed for speed, and tells nothing.
static lw_foreseen foreseen_of(const lw_trim *trim, const lw_course *course)
{
    if (!lw_trim_is_up(trim) || !lw_answer_is_kept(&trim->steady))
        return (lw_foreseen){{NAN, NAN}, NAN};
    const lw_flight *flight = &trim->steady.flight;
    return (lw_foreseen){{flight->turns, flight->speed},
                         lw_flight_made_good(flight, course->direction)};
}

void lw_flights_add(lw_flights *flights, const lw_season *season, const lw_hidden *hidden,
                    size_t pin)
{
    lw_boat boat = *season->boat;
    lw_craft craft;
    const lw_wind *wind = &season->day.wind;
    const lw_medium medium = lw_medium_of(&season->day);
    lw_hidden_put(hidden, &boat);
    lw_craft_prepare(&craft, &boat, season->sections, season->person, &medium);
    const lw_setup setup = lw_craft_setup(&craft, &boat, pin);
    for (int c = 0; c < LW_COURSE_COUNT; c++) {
        const lw_course course = lw_course_of((lw_course_kind)c);
        const lw_walk walk = lw_walk_of(&craft, &setup, course, wind->puff - wind->mean);
        for (int i = 0; i < LW_RANGE_WINDS; i++)
            flights->of[pin][c][i] = foreseen_of(&walk.trims[i], &course);
    }
}

// At a knot, with what is beside it where she flies there too.
static double evened(const lw_foreseen *along, int knot, size_t kind)
{
    const double here = along[knot].at[kind];
    const double less = knot > 0 ? along[knot - 1].at[kind] : NAN;
    const double more = knot + 1 < LW_RANGE_WINDS ? along[knot + 1].at[kind] : NAN;
    return isnan(less + more) ? here : 0.25 * less + 0.5 * here + 0.25 * more;
}

double lw_flights_lesson(const lw_flights *flights, size_t pin, double wind, size_t row)
{
    const size_t kind = row / LW_COURSE_COUNT;
    const lw_range_interval in = lw_range_interval_of(wind);
    const lw_foreseen *along = flights->of[pin][row % LW_COURSE_COUNT];
    const double below = evened(along, in.below, kind);
    return below + in.part * (evened(along, in.below + 1, kind) - below);
}
