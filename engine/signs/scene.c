// scene.c - each pin as it should be trimmed for a wind, and stances beside that.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/modes.h"
#include "lullwise/scene.h"

static double wind_in(const lw_scene *scene, int which)
{
    const double winds[LW_IN_WINDS] = {scene->wind.lull, scene->wind.mean, scene->wind.puff};
    return winds[which];
}

static double puff_of(const lw_scene *scene) { return scene->wind.puff - scene->wind.mean; }

// --- a pin as it should be trimmed

static lw_levers levers_of(const lw_setup *setup, const lw_flight *flight)
{
    return (lw_levers){.turns = flight->turns,
                       .place = flight->place_x,
                       .heel = flight->heel,
                       .sail = 1.0,
                       .pin = setup->incidence,
                       .rod = setup->rod,
                       .wand = setup->wand_length,
                       .gearing = setup->gearing,
                       .wind = 1.0};
}

static lw_ask ask_again(const lw_craft *craft, const lw_setup *setup, const lw_answer *answer)
{
    lw_ask ask = lw_ask_as(craft, setup, answer);
    lw_ask_give_rudder(&ask, lw_craft_rudder(craft, answer->flight.turns));
    return ask;
}

// Down to the lull with turns and place as they are, half of the way at a time.
static lw_trim lulled(const lw_scene *scene, const lw_setup *setup, const lw_answer *mean)
{
    const lw_freedom free = {.by = LW_BY_SPEED, .heel = true, .course = scene->course.direction};
    const double way = scene->wind.lull - scene->wind.mean;
    lw_trim trim = {.ask = ask_again(scene->craft, setup, mean)};
    for (int half = 1; half <= 2; half++) {
        trim.ask.wind = scene->wind.mean + 0.5 * half * way;
        const lw_trim next = lw_trim_from(scene->craft, &trim, &free);
        if (!lw_trim_is_up(&next)) {
            trim.steady = next.steady;
            return trim;
        }
        trim = next;
    }
    return trim;
}

static lw_walk walk_of(const lw_scene *scene, size_t pin)
{
    return (lw_walk){.craft = scene->craft,
                     .setup = lw_craft_setup(scene->craft, scene->boat, pin),
                     .course = scene->course,
                     .puff = puff_of(scene)};
}

// Sought again from a pin's trim: its own, or another's.
static lw_trim trim_from(const lw_scene *scene, size_t pin, const lw_trim *from)
{
    const lw_walk walk = walk_of(scene, pin);
    lw_trim start = *from;
    start.ask.setup = walk.setup;
    return lw_walk_trim(&walk, scene->wind.mean, &start);
}

// Keeps a pin's trim with its lull and puff. Returns how well it fits the wind.
static double keep_pin(lw_scene *scene, size_t pin, lw_trim trim)
{
    const lw_setup setup = lw_craft_setup(scene->craft, scene->boat, pin);
    lw_stance *own = &scene->own[pin];
    *own = (lw_stance){
        .levers = levers_of(&setup, &trim.steady.flight), .pin = pin, .hump = NAN, .damping = NAN};
    for (int i = 0; i < LW_IN_WINDS; i++) own->at[i] = trim.steady;
    if (!lw_trim_is_up(&trim)) return trim.score;
    const lw_trim lull = lulled(scene, &setup, &trim.steady);
    own->at[LW_IN_LULL] = lull.steady;
    own->at[LW_IN_PUFF] = trim.puffed;
    for (int i = 0; i < LW_IN_WINDS; i++) {
        const bool is_there = own->at[i].outcome == LW_FLIES;
        lw_ask *ask = &scene->asks[pin][i];
        *ask = ask_again(scene->craft, &setup, is_there ? &own->at[i] : &trim.steady);
        ask->wind = wind_in(scene, i);
    }
    return trim.score - (lw_trim_is_up(&lull) ? 0.0 : 2.0);  // in a lull on the water  [judged]
}

// Each pin walked to by itself. Returns the first, from the middle outwards, that flies; on the
// heading of its best VMG, if it is free, which is the scene's from then on.
static size_t begin(lw_scene *scene, lw_trim trims[LW_PINS_MOST])
{
    const size_t count = scene->boat->pin_count;
    size_t first = count;
    for (size_t i = 0; i < count; i++) {
        const size_t pin = (count / 2 + i) % count;
        lw_walk walk = walk_of(scene, pin);
        trims[pin] = lw_walk_to(&walk, scene->wind.mean);
        if (first == count && lw_trim_is_up(&trims[pin])) first = pin;
    }
    const double heading =
        first < count ? trims[first].steady.flight.heading : lw_course_middle(scene->course);
    scene->course = (lw_course){scene->course.direction, heading, heading};
    return first < count ? first : count / 2;
}

// The better of a pin's trim from its own, on the scene's heading, and from its neighbour's.
static void settle(const lw_scene *scene, size_t pin, size_t neighbour, lw_trim trims[LW_PINS_MOST])
{
    if (lw_trim_is_up(&trims[pin])) trims[pin] = trim_from(scene, pin, &trims[pin]);
    if (!lw_trim_is_up(&trims[neighbour])) return;
    const lw_trim other = trim_from(scene, pin, &trims[neighbour]);
    if (lw_trim_beats(&other, &trims[pin])) trims[pin] = other;
}

// [m/s] Of pins that fit a wind so nearly alike the one with the least lift is proper: on this
// course little tells them apart, and it is held in more.  [judged]
#define AS_GOOD 0.1

void lw_scene_prepare(lw_scene *scene, const lw_craft *craft, const lw_boat *boat,
                      const lw_wind *wind, lw_course course)
{
    lw_trim trims[LW_PINS_MOST];
    double scores[LW_PINS_MOST] = {0}, best = -INFINITY;
    scene->craft = craft, scene->boat = boat;
    scene->wind = *wind, scene->course = course;
    scene->wants_hump = scene->wants_damping = false;
    scene->proper = 0;
    const size_t first = begin(scene, trims);
    for (size_t pin = first; pin-- > 0;) settle(scene, pin, pin + 1, trims);
    for (size_t pin = first + 1; pin < boat->pin_count; pin++) settle(scene, pin, pin - 1, trims);
    for (size_t pin = 0; pin < boat->pin_count; pin++) {
        scores[pin] = keep_pin(scene, pin, trims[pin]);
        best = fmax(best, scores[pin]);
    }
    for (size_t pin = 0; pin < boat->pin_count; pin++) {
        const bool is_up = lw_answer_is_up(&scene->own[pin].at[LW_IN_MEAN]);
        if (is_up && scores[pin] > best - AS_GOOD) scene->proper = pin;
    }
}

// --- stances

#define PARTS 3   // of the way from a pin's own levers: each balance leads to the next
#define BATCH 16  // stances side by side

static lw_levers on_the_way(const lw_levers *from, const lw_levers *to, double part)
{
    lw_levers levers;
    for (int k = 0; k < LW_LEVERS; k++) {
        const lw_lever lever = (lw_lever)k;
        const double a = lw_lever_get(from, lever), b = lw_lever_get(to, lever);
        lw_lever_put(&levers, lever, a + part * (b - a));
    }
    return levers;
}

bool lw_lever_is_possible(const lw_craft *craft, lw_lever lever, double value)
{
    const double aft = craft->place_aft - craft->transom_x;
    const double forward = craft->place_forward - craft->transom_x;
    if (lever == LW_LEVER_TURNS) return value >= craft->least_turns && value <= craft->most_turns;
    return lever != LW_LEVER_PLACE || (value >= aft - 1e-6 && value <= forward + 1e-6);
}

lw_setup lw_levers_setup(const lw_levers *levers)
{
    return (lw_setup){.incidence = levers->pin,
                      .wand_length = levers->wand,
                      .gearing = levers->gearing,
                      .rod = levers->rod};
}

const lw_craft *lw_levers_craft(const lw_levers *levers, const lw_craft *craft, lw_craft *room)
{
    const double fullness = levers->sail;
    if (fullness == 1.0) return craft;
    *room = *craft;
    for (int i = 0; i < LW_CURVE_KNOTS; i++) {
        room->sail.lift.value[i] *= fullness, room->sail.lift.slope[i] *= fullness;
        room->sail.drag.value[i] *= fullness, room->sail.drag.slope[i] *= fullness;
    }
    return room;
}

static void put_levers(const lw_scene *scene, size_t pin, int wind, const lw_levers *levers,
                       lw_ask *ask)
{
    const double heel = scene->asks[pin][wind].heel + levers->heel - scene->own[pin].levers.heel;
    ask->setup = lw_levers_setup(levers);
    ask->wind = levers->wind * wind_in(scene, wind);
    ask->heel = fmax(heel, 0.0);
    ask->place = levers->place + scene->craft->transom_x;
    lw_ask_give_rudder(ask, lw_craft_rudder(scene->craft, levers->turns));
}

static const lw_craft *craft_of(lw_scene *scene, const lw_stance *stance)
{
    return lw_levers_craft(&stance->levers, scene->craft, &scene->fuller);
}

// Takes an answer; without balance the flight that was reached stays.
static void take(lw_stance *stance, int wind, const lw_answer *answer)
{
    if (answer->outcome == LW_NO_BALANCE)
        stance->at[wind].outcome = LW_NO_BALANCE;
    else
        stance->at[wind] = *answer;
}

// A batch whose pins and sails are alike.
static void balance_some(lw_scene *scene, lw_stance *stances, size_t n)
{
    lw_ask asks[BATCH * LW_IN_WINDS];
    lw_answer answers[BATCH * LW_IN_WINDS];
    const size_t pin = stances[0].pin;
    const lw_craft *craft = craft_of(scene, &stances[0]);
    for (size_t i = 0; i < n * LW_IN_WINDS; i++) {
        asks[i] = scene->asks[pin][i % LW_IN_WINDS];
        stances[i / LW_IN_WINDS].at[i % LW_IN_WINDS] = scene->own[pin].at[i % LW_IN_WINDS];
    }
    for (int part = 1; part <= PARTS; part++) {
        for (size_t i = 0; i < n * LW_IN_WINDS; i++) {
            const lw_levers levers = on_the_way(
                &scene->own[pin].levers, &stances[i / LW_IN_WINDS].levers, (double)part / PARTS);
            put_levers(scene, pin, (int)(i % LW_IN_WINDS), &levers, &asks[i]);
        }
        lw_balance(craft, asks, answers, n * LW_IN_WINDS);
        for (size_t i = 0; i < n * LW_IN_WINDS; i++) {
            take(&stances[i / LW_IN_WINDS], (int)(i % LW_IN_WINDS), &answers[i]);
            lw_ask_follow(craft, &asks[i], &answers[i]);
        }
    }
}

// --- what more is sought of a stance

#define REACH (100.0 * LW_DEG)  // heading on which she takes off  [common practice]

static double hump_of(const lw_craft *craft, const lw_levers *levers, double wind)
{
    const lw_setup setup = lw_levers_setup(levers);
    const double rudder = lw_craft_rudder(craft, levers->turns);
    return lw_launch_of(craft, &setup, rudder, wind, REACH).hump_spare;
}

static bool is_of_height(const lw_mode *mode)
{
    return mode->first == LW_PART_HEIGHT || mode->first == LW_PART_PITCH;
}

static double damping_of(const lw_scene *scene, const lw_craft *craft, const lw_stance *stance)
{
    lw_modes modes;
    double least = 1.0;
    const bool is_up = lw_answer_is_up(&scene->own[stance->pin].at[LW_IN_MEAN]);
    if (!is_up || stance->at[LW_IN_MEAN].outcome != LW_FLIES) return NAN;
    lw_ask ask = scene->asks[stance->pin][LW_IN_MEAN];
    const lw_motion motion = lw_motion_of(craft);
    put_levers(scene, stance->pin, LW_IN_MEAN, &stance->levers, &ask);
    const lw_ride_plan plan = lw_ride_plan_of(&motion, &ask, &stance->at[LW_IN_MEAN]);
    lw_modes_of(&motion, &plan, LW_HANDS_STILL, &modes);
    for (size_t i = 0; i < modes.count; i++) {
        if (is_of_height(&modes.mode[i])) least = fmin(least, modes.mode[i].swing.damping);
    }
    return least;
}

static void seek_more(lw_scene *scene, lw_stance *stance)
{
    stance->hump = stance->damping = NAN;
    if (!scene->wants_hump && !scene->wants_damping) return;
    const lw_craft *craft = craft_of(scene, stance);
    const double wind = stance->levers.wind * scene->wind.mean;
    if (scene->wants_hump) stance->hump = hump_of(craft, &stance->levers, wind);
    if (scene->wants_damping) stance->damping = damping_of(scene, craft, stance);
}

static bool are_alike(const lw_stance *one, const lw_stance *other)
{
    return one->pin == other->pin && one->levers.sail == other->levers.sail;
}

// Those of a pin that does not fly are as that pin is.
static void keep_down(const lw_scene *scene, lw_stance *stance)
{
    const lw_stance *own = &scene->own[stance->pin];
    for (int w = 0; w < LW_IN_WINDS; w++) stance->at[w] = own->at[w];
}

void lw_scene_stances(lw_scene *scene, lw_stance *stances, size_t n)
{
    for (size_t first = 0, end; first < n; first = end) {
        const lw_stance *own = &scene->own[stances[first].pin];
        for (end = first + 1; end < n && end - first < BATCH; end++) {
            if (!are_alike(&stances[first], &stances[end])) break;
        }
        if (lw_answer_is_up(&own->at[LW_IN_MEAN]))
            balance_some(scene, stances + first, end - first);
        else
            for (size_t i = first; i < end; i++) keep_down(scene, &stances[i]);
    }
    for (size_t i = 0; i < n; i++) seek_more(scene, &stances[i]);
}

#define MORE   (8.0 * LW_KN)
#define COARSE (1.0 * LW_KN)
#define FINE   (0.25 * LW_KN)

// The first wind from one on, in steps up to another, that lifts her; beyond it where none does.
static double lifted_from(const lw_craft *craft, const lw_levers *levers, double wind, double to,
                          double step)
{
    while (wind <= to && hump_of(craft, levers, wind) <= 0.0) wind += step;
    return wind;
}

double lw_scene_takes_off(lw_scene *scene, const lw_stance *stance)
{
    const lw_craft *craft = craft_of(scene, stance);
    const double from = scene->wind.mean, to = from + MORE;
    const double coarse = lifted_from(craft, &stance->levers, from, to, COARSE);
    if (coarse > to) return 0.0;
    if (coarse == from) return from;
    return lifted_from(craft, &stance->levers, coarse - COARSE + FINE, coarse, FINE);
}
