// flights.c - what is foreseen of days: steady flights and rides with hidden quantities put in.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "learning/rides.h"
#include "lullwise/elementary.h"

#define WALKED_REACH (3.5 * LW_KN)  // of a day's wind, within which she flies steadily  [judged]
#define ABOUT        (2.0 * LW_KN)  // of a wind in which swims are as likely  [judged]
#define RIDDEN       1800.0         // [s] in each wind, about  [judged]
#define SKILL_MOST   2.0            // an expert: lw_person.skill

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

static bool is_sailed(const lw_season *season, size_t pin, double wind, double reach)
{
    size_t i = 0;
    while (i < season->count &&
           (season->days[i].pin != pin || fabs(season->days[i].wind - wind) > reach))
        i++;
    return i < season->count;
}

void lw_hidden_inputs(const lw_hidden *hidden, const lw_season *season, lw_inputs *inputs)
{
    *inputs = (lw_inputs){.boat = *season->boat, .day = season->day};
    inputs->sailor.person = *season->person;
    lw_hidden_put(hidden, inputs);
}

// A boat to sail, and how far she got.
typedef struct sailing {
    const lw_trying *trying;
    lw_inputs inputs;
    lw_ridden ridden;
    lw_setup setup;
    double puff;
} sailing;

static void begin(sailing *s, const lw_trying *trying)
{
    lw_flown *flown = &s->ridden.flown;
    lw_craft measured = *trying->craft;
    memset(s, 0, sizeof *s);
    s->trying = trying;
    lw_hidden_inputs(&trying->hidden, trying->season, &s->inputs);
    measured.medium = lw_medium_of(&s->inputs.day);
    flown->inputs = &s->inputs;
    flown->by = LW_BY_SPEED;
    flown->pin = trying->pin;
    lw_craft_vary(&flown->craft, &measured, &s->inputs.boat, trying->season->sections,
                  &s->inputs.sailor.person);
    s->setup = lw_craft_setup(&flown->craft, &s->inputs.boat, trying->pin);
    s->puff = s->inputs.day.wind.puff - s->inputs.day.wind.mean;
}

// Winds beside the pin's days.
static size_t sailed_winds(const lw_season *season, size_t pin, int winds[LW_RIDDEN_WINDS])
{
    size_t count = 0;
    for (int i = 0; i < LW_RIDDEN_WINDS; i++)
        if (is_sailed(season, pin, lw_ridden_wind(i), LW_RIDDEN_REACH)) winds[count++] = i;
    return count;
}

size_t lw_season_winds(const lw_season *season)
{
    int winds[LW_RIDDEN_WINDS];
    size_t count = 0;
    for (size_t pin = 0; pin < season->boat->pin_count; pin++)
        count += sailed_winds(season, pin, winds);
    return count;
}

// Of so many of them one, by pins in turn.
static size_t find_winds(const lw_trying *trying, size_t every, int winds[LW_RIDDEN_WINDS])
{
    int all[LW_RIDDEN_WINDS];
    const size_t sailed = every ? sailed_winds(trying->season, trying->pin, all) : 0;
    const size_t step = every < sailed ? every : sailed;
    size_t count = 0;
    for (size_t i = step ? trying->pin % step : 0; i < sailed; i += step) winds[count++] = all[i];
    return count;
}

// Along those walks, and rides in every so-many-th wind.
static void sail(lw_flights *flights, sailing *s, const lw_walk walks[LW_COURSE_COUNT],
                 size_t every)
{
    const size_t pin = s->trying->pin;
    lw_rides_sum sums[LW_RIDDEN_WINDS] = {0};
    int winds[LW_RIDDEN_WINDS];
    const size_t count = find_winds(s->trying, every, winds);
    for (int c = 0; c < LW_COURSE_COUNT; c++) {
        lw_flown *flown = &s->ridden.flown;
        flown->course = (lw_course_kind)c;
        flown->walk = walks[c];
        put_steady(flights->of[pin][c], &walks[c]);
        for (size_t i = 0; i < count; i++) {
            flown->wind = lw_ridden_wind(winds[i]);
            lw_rides_add(&sums[winds[i]], &s->ridden, s->trying->season->leg);
        }
    }
    for (int i = 0; every && i < LW_RIDDEN_WINDS; i++)
        flights->ridden[pin][i] = lw_rides_lesson(&sums[i]);
}

void lw_flights_add(lw_flights *flights, const lw_trying *trying, lw_walk walks[LW_COURSE_COUNT],
                    bool rides)
{
    sailing s;
    begin(&s, trying);
    for (int c = 0; c < LW_COURSE_COUNT; c++)
        walks[c] =
            lw_walk_of(&s.ridden.flown.craft, &s.setup, lw_course_of((lw_course_kind)c), s.puff);
    sail(flights, &s, walks, rides ? 1 : 0);
}

static bool is_sought(const lw_trying *trying, double wind)
{
    return fabs(trying->season->asked - wind) <= WALKED_REACH ||
           is_sailed(trying->season, trying->pin, wind, WALKED_REACH);
}

void lw_flights_add_beside(lw_flights *flights, const lw_trying *trying,
                           const lw_walk walks[LW_COURSE_COUNT], size_t every)
{
    sailing s;
    lw_walk own[LW_COURSE_COUNT];
    bool sought[LW_RANGE_WINDS];
    begin(&s, trying);
    for (int i = 0; i < LW_RANGE_WINDS; i++) sought[i] = is_sought(trying, lw_range_wind(i));
    for (int c = 0; c < LW_COURSE_COUNT; c++)
        own[c] = lw_walk_beside(&s.ridden.flown.craft, &s.setup, &walks[c], sought);
    sail(flights, &s, own, every);
}

void lw_flights_add_wound(lw_flights *flights, const lw_flights *others, size_t pin, double turns)
{
    const lw_rides_sum none = {.swims = 0.0};
    for (int c = 0; c < LW_COURSE_COUNT; c++) {
        for (int i = 0; i < LW_RANGE_WINDS; i++) {
            flights->of[pin][c][i] = others->of[pin][c][i];
            flights->of[pin][c][i].turns += turns;
        }
    }
    for (int i = 0; i < LW_RIDDEN_WINDS; i++) flights->ridden[pin][i] = lw_rides_lesson(&none);
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
