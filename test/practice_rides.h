// practice_rides.h - facts of the trade about what happens on the water: breaches, air, swims.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PRACTICE_RIDES_H
#define LW_TEST_PRACTICE_RIDES_H

#include "lullwise/elementary.h"
#include "test/practice.h"

// What came before the breaches of a boat that is carried into more wind than she is trimmed for.
typedef struct breaching {
    double breaches, seconds;
    double told;   // breaches with the sign within two seconds before
    double signs;  // [s] that have the sign within two seconds before them, breach or none
} breaching;

#define LOOK    0.04  // [s] between two looks at a ride
#define SECOND  25    // looks
#define MINUTE  1500
#define RIDES   40
#define AT_STOP (0.5 * LW_DEG)

// What an eye takes in within a second, waves evened out.
typedef struct glance {
    double pitch, height;  // means [rad], [m]
    bool is_at_stop;       // wand at its forward stop at some time
} glance;

static glance glance_at(const lw_trace *trace, int end)
{
    glance g = {0};
    for (int i = end - SECOND; i < end; i++) {
        g.pitch += trace[i].pitch / SECOND;
        g.height += trace[i].ride_height / SECOND;
        g.is_at_stop |= trace[i].wand <= usual.craft.linkage.forward_stop + AT_STOP;
    }
    return g;
}

// Bow below where the trim had it, higher than a second ago, wand at its forward stop.
static bool is_sign(const lw_trace *trace, int end, double bow_trimmed)
{
    if (end < 2 * SECOND) return false;
    const glance now = glance_at(trace, end), before = glance_at(trace, end - SECOND);
    return now.pitch < bow_trimmed && now.height > before.height && now.is_at_stop;
}

static void ride_minute(const lw_motion *motion, const lw_ride_plan *plan, double bow_trimmed,
                        breaching *sum)
{
    static lw_trace trace[MINUTE];
    lw_ride ride = {.events = NULL};
    int since = 1000;
    double counted = 0.0;
    lw_ride_begin(&ride, motion, plan);
    for (int look = 0; look < MINUTE; look++, since++) {
        trace[look] = lw_ride_trace(motion, &ride);
        if (is_sign(trace, look, bow_trimmed)) since = 0;
        lw_rides_advance(motion, &ride, 1, (size_t)(LOOK / motion->parameters.step + 0.5));
        const double breaches = ride.tally.count[LW_RIDE_BREACH];
        if (since < 2 * SECOND) sum->told += breaches - counted, sum->signs += LOOK;
        counted = breaches;
    }
    sum->breaches += counted;
    sum->seconds += ride.tally.seconds;
}

// What rides of a pin in a mean wind start from: sailed as its range has it, the rudder wound after
// the mean wind, or left as for another wind with some turns more.
typedef struct going {
    size_t pin;
    lw_course course;
    double wind;     // [kn]
    double left_at;  // [kn] turns left as for that wind; 0: wound
    double more;     // [turns]
} going;

static lw_ride_plan plan_for(const going *g, lw_motion *motion)
{
    const lw_craft *craft = &usual.craft;
    const lw_range *range = range_on(g->pin, g->course);
    const lw_setup setup = setup_of(&usual, g->pin);
    const double trimmed_for = g->left_at > 0.0 ? g->left_at : g->wind;
    const lw_range_point *sailed = lw_range_sailed(range, trimmed_for * LW_KN);
    const lw_weather weather = lw_weather_of(craft, &demo.day);
    const lw_ask ask = lw_ask_as(craft, &setup, &sailed->trimmed);
    *motion = lw_motion_of(craft);
    lw_weather_put(&weather, g->wind * LW_KN, motion);
    lw_ride_plan plan = lw_ride_plan_of(motion, &ask, &sailed->trimmed);
    if (g->left_at == 0.0) lw_ride_plan_wind(&plan, craft, range);
    for (int k = 0; k < LW_WISHES; k++) plan.pilot.rudder[k] += g->more * craft->rudder_turn;
    plan.start.rudder += g->more * craft->rudder_turn;
    return plan;
}

static breaching breaches_of(const going *g)
{
    lw_motion motion;
    lw_ride_plan plan = plan_for(g, &motion);
    breaching sum = {0};
    for (plan.seed = 1; plan.seed <= RIDES; plan.seed++) {
        ride_minute(&motion, &plan, 0.0, &sum);
    }
    return sum;
}

static double an_hour(const breaching *b) { return 3600.0 * b->breaches / b->seconds; }

static double share_of_signs(const breaching *b) { return b->signs / b->seconds; }

// P4 sailed as for 12 kn while the wind comes to 20: on a reach.
static bool fact_8(void)
{
    const int before = missed;
    const breaching own = breaches_of(&(going){P4, reach, 12.0, 0.0, 0.0});
    const breaching strong = breaches_of(&(going){P4, reach, 20.0, 12.0, 0.0});
    const breaching calm = breaches_of(&(going){P2, reach, 20.0, 12.0, 0.0});
    const double told = strong.told / fmax(strong.breaches, 1.0);
    row("8  P4 from 12 into 20 kn, a reach: of 10 breaches came", 10.0, 10.0 * told, 5.0,
        strong.breaches >= 10.0);
    printf("     within 2 s of bow down, still rising, wand at its stop\n");
    row("   of 10 moments so: in 20 kn; in the 12 kn it is for", 10.0 * share_of_signs(&strong),
        10.0 * share_of_signs(&own), 1e9, share_of_signs(&own) < 0.5 * share_of_signs(&strong));
    row("   with P2 in 20 kn", 10.0 * share_of_signs(&strong), 10.0 * share_of_signs(&calm), 1e9,
        share_of_signs(&calm) < 0.5 * share_of_signs(&strong));
    row("   breaches an hour, with P2 fewer", an_hour(&strong), an_hour(&calm), 1e9,
        calm.breaches < 0.5 * strong.breaches);
    row("   and with P4 in the 12 kn it is for", an_hour(&strong), an_hour(&own), 1e9,
        own.breaches < 0.5 * strong.breaches);
    return all_held(before);
}

// --- swims an hour under way

#define SWIM_RIDES 16

static double swims_an_hour(const going *g)
{
    static lw_ride rides[SWIM_RIDES];
    lw_motion motion;
    lw_ride_plan plan = plan_for(g, &motion);
    double swims = 0.0, seconds = 0.0;
    for (int i = 0; i < SWIM_RIDES; i++) {
        plan.seed = (uint64_t)i + 1;
        rides[i].events = NULL, rides[i].event_room = 0;
        lw_ride_begin(&rides[i], &motion, &plan);
    }
    lw_rides_advance(&motion, rides, SWIM_RIDES, (size_t)(600.0 / motion.parameters.step));
    for (int i = 0; i < SWIM_RIDES; i++) {
        swims += lw_ride_tally_swims(&rides[i].tally);
        seconds += rides[i].tally.seconds - rides[i].tally.swimming;
    }
    return 3600.0 * swims / seconds;
}

// --- what air does

typedef struct airing {
    double count, turned, swum;  // airs, and after how many of them
    double touched, hull;        // a rack or the hull; the hull
    double fell;                 // [rad] the bow, in half a second, as a mean
} airing;

#define FAST        (15.0 * LW_KN)
#define TOUCH_IN    25  // looks: a second
#define TURN_IN     38  // a second and a half
#define FELL_IN     12
#define SWIM_IN     125
#define AIR_LOOKS   (SWIM_IN + 1)
#define AIR_SECONDS 300.0  // of each ride
#define AIR_RIDES   160    // in which some 500 airs come: a share is known to 1 or 2 in 100

// Whether the lower rack's edge, athwart the main foil, is in the water: heeled far she comes down
// on that.
static bool is_rack_wet(const lw_trace *now)
{
    const lw_hull *hull = &demo.boat.hull;
    const double down = 0.5 * hull->rack_width * fabs(lw_sin(now->heel));
    return now->clearance + hull->rack_height * lw_cos(now->heel) < down;
}

// Follows a ride after air came to a place, for five seconds.
static void follow(const lw_motion *motion, lw_ride *ride, airing *a)
{
    const lw_trace first = lw_ride_trace(motion, ride);
    const double swims = lw_ride_tally_swims(&ride->tally);
    const double touches = ride->tally.count[LW_RIDE_TOUCH];
    bool hull = false, rack = false, turned = false, swum = false;
    for (int look = 1; look < AIR_LOOKS && !swum; look++) {
        lw_rides_advance(motion, ride, 1, (size_t)(LOOK / motion->parameters.step + 0.5));
        const lw_trace now = lw_ride_trace(motion, ride);
        swum = lw_ride_tally_swims(&ride->tally) > swims;
        if (look <= TOUCH_IN) hull |= ride->tally.count[LW_RIDE_TOUCH] > touches || swum;
        if (look <= TOUCH_IN) rack |= is_rack_wet(&now) && !is_rack_wet(&first);
        if (look <= TURN_IN) turned |= fabs(now.bow - first.bow) > 40.0 * LW_DEG || swum;
        if (look == FELL_IN) a->fell += first.pitch - now.pitch;
    }
    a->count++, a->hull += hull, a->touched += hull || rack;
    a->turned += turned, a->swum += swum;
}

// Every time that air comes to a place at more than 15 kn.
static airing airs_of(const going *g, lw_ride_what what)
{
    lw_motion motion;
    lw_ride_plan plan = plan_for(g, &motion);
    airing a = {0};
    for (plan.seed = 1; plan.seed <= AIR_RIDES; plan.seed++) {
        lw_ride ride = {.events = NULL};
        lw_ride_begin(&ride, &motion, &plan);
        while (ride.tally.seconds < AIR_SECONDS) {
            const double airs = ride.tally.count[what];
            lw_rides_advance(&motion, &ride, 1, (size_t)(LOOK / motion.parameters.step + 0.5));
            if (ride.tally.count[what] == airs) continue;
            if (lw_ride_trace(&motion, &ride).speed > FAST) follow(&motion, &ride, &a);
        }
    }
    a.fell /= fmax(a.count, 1.0);
    return a;
}

static double part(double of, const airing *a) { return 100.0 * of / fmax(a->count, 1.0); }

static bool fact_13(void)
{
    const int before = missed;
    const airing a =
        airs_of(&(going){P4, lw_course_of(LW_DOWNWIND), 18.0, 0.0, 0.0}, LW_RIDE_FOIL_AIR);
    row("13 air on the main foil above 15 kn: bow falls by (deg)", 5.0, a.fell / LW_DEG, 1e9,
        a.fell > 2.0 * LW_DEG);
    row("   within half a second; on the water in one, of 100", 100.0, part(a.touched, &a), 10.0,
        a.count >= 30.0);
    printf("     (hull, not a rack alone: %.1f)\n", part(a.hull, &a));
    return all_held(before);
}

static bool fact_14(void)
{
    const int before = missed;
    const going g = {P4, lw_course_of(LW_DOWNWIND), 18.0, 0.0, 0.0};
    const airing main_foil = airs_of(&g, LW_RIDE_FOIL_AIR), blade = airs_of(&g, LW_RIDE_BLADE_AIR);
    row("14 air on the rudder: turned by 40 deg in 1.5 s, of 100", 100.0,
        part(blade.turned, &blade), 10.0, blade.count >= 30.0);
    row("   swims within 5 s, of 100; more than on the main foil", part(main_foil.swum, &main_foil),
        part(blade.swum, &blade), 1e9, part(blade.swum, &blade) > part(main_foil.swum, &main_foil));
    return all_held(before);
}

static bool fact_15(void)
{
    const int before = missed;
    double strong = 0.0, calm = 0.0;
    const lw_course down = lw_course_of(LW_DOWNWIND);
    for (double kn = 14.0; kn <= 18.0; kn += 2.0) {
        strong += swims_an_hour(&(going){P4, down, kn, 12.0, 0.0}) / 3.0;
    }
    for (double kn = 14.0; kn <= 16.0; kn += 1.0) {
        calm = fmax(calm, swims_an_hour(&(going){P3, down, kn, 0.0, 0.0}));
    }
    row("15 P4 in 14 to 18 kn, downwind, swims an hour: again", 10.0, strong, 1e9, strong > 5.0);
    row("   and again; P3 up to 16 kn hardly ever", 0.0, calm, 0.5, true);
    return all_held(before);
}

#endif
