// lap.c - time round the course through lulls and puffs, with the hysteresis of taking off.
// SPDX-License-Identifier: MIT
//
// A boat that has dropped off the foils needs the wind that launches her, not the one in which she
// would have stayed up; so the state is carried from phase to phase of a gust.

#include "choice/lap.h"

#include <math.h>

#include "lullwise/elementary.h"

#define PHASES  60     // of one gust
#define SINE_90 0.951  // a sine is below this share of its height for 90 % of the time

// Wind at a phase of the gust, from 0 to 1.
static double wind_at(lw_gusts gusts, double phase)
{
    const double s = lw_sin(2.0 * LW_PI * phase) / SINE_90;
    return gusts.mean + s * (s > 0.0 ? gusts.puff - gusts.mean : gusts.mean - gusts.lull);
}

static int knot_below(double wind)
{
    const double k = floor(wind / LW_KN) - LW_RANGE_FIRST_KN;
    return (int)fmin(fmax(k, 0.0), LW_RANGE_WINDS - 2.0);
}

static bool is_up(const lw_answer *answer) { return answer->outcome == LW_FLIES; }

// The trimmed flight of the knot nearest to a wind, or NULL when she does not fly there.
static const lw_answer *near_wind(const lw_range *range, double wind)
{
    const int k = knot_below(wind + 0.5 * LW_KN);
    return is_up(&range->at[k].trimmed) ? &range->at[k].trimmed : NULL;
}

// Speed made good towards a course by a flying boat, straight between the knots of wind.
static double flying_speed(const lw_range *range, lw_course course, double wind)
{
    const int k = knot_below(wind);
    const lw_answer *a = &range->at[k].trimmed, *b = &range->at[k + 1].trimmed;
    if (!is_up(a)) a = b;
    if (!is_up(b)) b = a;
    if (!is_up(a)) return 0.0;
    const double u = fmin(fmax(wind / LW_KN - LW_RANGE_FIRST_KN - k, 0.0), 1.0);
    const double at_a = a->flight.speed * lw_cos(a->flight.heading - course.direction);
    const double at_b = b->flight.speed * lw_cos(b->flight.heading - course.direction);
    return at_a + u * (at_b - at_a);
}

// Speed made good on the hull: a knot at least, which any boat drifts and paddles.  [judged]
static double hull_speed(const lw_range *range, lw_course course, double wind)
{
    int k = knot_below(wind);
    while (k > 0 && (range->on_hull[k].flies || range->on_hull[k].speed <= 0.0)) k--;
    const double heading = 0.5 * (course.low + course.high);
    return fmax(range->on_hull[k].speed * lw_cos(heading - course.direction), 1.0 * LW_KN);
}

// Least wind that gets her flying for a leg: on its own headings, or bearing away to a reach.
static double launch_for(const lw_outlook *outlook, const lw_range *range, size_t pin)
{
    const double reach = outlook->reach_launch[pin];
    if (!range->has_launch) return reach;
    return reach > 0.0 ? fmin(range->launches_at, reach) : range->launches_at;
}

// What one gust brings on one course, as means over it.
typedef struct gust {
    double speed;           // made good [m/s]
    double flying, unheld;  // shares of the time
    double top;             // greatest wind while flying [m/s]
} gust;

static gust through(const lw_outlook *outlook, size_t pin, size_t c, lw_gusts gusts)
{
    const lw_range *range = &outlook->ranges[pin][c];
    const lw_course course = outlook->courses[c];
    const double launch = launch_for(outlook, range, pin), held = lw_outlook_hold(outlook, pin, c);
    gust mean = {0};
    bool up = false;
    for (int i = 0; i < 2 * PHASES; i++) {  // the first gust only settles the state
        const double wind = wind_at(gusts, (double)i / PHASES);
        const bool can_stay = range->has_flight && wind >= range->stays_up_at;
        up = can_stay && (up || (launch > 0.0 && wind >= launch));
        if (i < PHASES) continue;

        mean.speed += up ? flying_speed(range, course, wind) : hull_speed(range, course, wind);
        mean.flying += up;
        mean.unheld += up && wind > held;
        if (up) mean.top = fmax(mean.top, wind);
    }
    mean.speed = fmax(mean.speed, 1.0 * LW_KN * PHASES);
    mean.speed /= PHASES, mean.flying /= PHASES, mean.unheld /= PHASES;
    return mean;
}

// Swims in each gust beyond those that rides tell: the risk for each knot that its top exceeds what
// the margins hold.
static double swims_beyond(const lw_outlook *outlook, const lw_range *range, gust g)
{
    const double held = range->has_hold ? range->held_up_to : range->stays_up_at;
    return fmin(outlook->cost.puff_risk * fmax(g.top - held, 0.0) / LW_KN, 1.0);
}

static double turns_cost(const lw_outlook *outlook, lw_course course, double length)
{
    if (course.high <= course.low) return 0.0;
    const bool up = course.direction < LW_PI / 2.0;
    const double each = up ? outlook->cost.tack : outlook->cost.gybe;
    const double off = 0.5 * (course.low + course.high) - course.direction;
    const double sailed = length / fmax(lw_cos(off), 0.2);
    return floor(sailed / outlook->cost.tack_every) * each;
}

static void add_leg(const lw_outlook *outlook, size_t leg, lw_gusts gusts, lw_placing *to)
{
    const size_t c = outlook->leg_course[leg];
    const lw_course course = outlook->courses[c];
    const double length = outlook->leg_length[leg];
    const gust g = through(outlook, to->pin, c, gusts);
    const double sailing = length / g.speed;
    lw_prospect *sum = &to->prospect;
    sum->seconds += sailing + turns_cost(outlook, course, length);
    sum->flying += g.flying * sailing;
    sum->unheld += g.unheld * sailing;
    sum->hull_seconds += (1.0 - g.flying) * sailing;
    to->flown[c] += g.flying * sailing;
    sum->swims +=
        swims_beyond(outlook, &outlook->ranges[to->pin][c], g) * sailing / outlook->gusts.period;
}

// On one course, at the rate that rides have in that mean wind.
static double swims_expected(const lw_outlook *outlook, const lw_placing *place, size_t c,
                             lw_gusts gusts)
{
    const lw_swims *swims = &outlook->swims[place->pin][c];
    return swims->is_known ? place->flown[c] * lw_swims_rate(swims, gusts.mean) : 0.0;
}

double lw_lap_swims_error(const lw_outlook *outlook, const lw_placing *place,
                          const lw_placing *other, lw_gusts gusts)
{
    double square = 0.0;
    for (size_t c = 0; c < outlook->course_count; c++) {
        const lw_placing *places[2] = {place, other};
        double swims[2] = {0}, x[2] = {0};
        for (int i = 0; i < 2 && places[i]; i++) {
            swims[i] = (i ? -1.0 : 1.0) * swims_expected(outlook, places[i], c, gusts);
            x[i] = lw_swims_x(&outlook->swims[places[i]->pin][c], gusts.mean);
        }
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                if (swims[i] == 0.0 || swims[j] == 0.0) continue;
                square += swims[i] * swims[j] *
                          lw_rate_family_covariance(&outlook->rates[c], places[i]->pin, x[i],
                                                    places[j]->pin, x[j]);
            }
        }
    }
    return sqrt(fmax(square, 0.0));
}

static void add_swims(const lw_outlook *outlook, lw_gusts gusts, lw_placing *to)
{
    lw_prospect *sum = &to->prospect;
    for (size_t c = 0; c < outlook->course_count; c++) {
        sum->swims += swims_expected(outlook, to, c, gusts);
    }
    sum->swims_error = lw_lap_swims_error(outlook, to, NULL, gusts);
    sum->swim_seconds = sum->swims * outlook->cost.swim;
    sum->seconds += sum->swim_seconds;
}

lw_prospect lw_lap_leg(const lw_outlook *outlook, size_t pin, size_t leg, lw_gusts gusts)
{
    lw_placing to = {.pin = pin};
    add_leg(outlook, leg, gusts, &to);
    return to.prospect;
}

// The limits of the hardest leg.
static void add_limits(const lw_outlook *outlook, size_t pin, lw_prospect *sum)
{
    bool always = true;
    sum->held_up_to = sum->margins_to = sum->rides_to = INFINITY;
    for (size_t c = 0; c < outlook->course_count; c++) {
        const lw_range *range = &outlook->ranges[pin][c];
        const double launch = launch_for(outlook, range, pin);
        if (launch > 0.0 && (sum->launches_at == 0.0 || launch < sum->launches_at)) {
            sum->launches_at = launch;
        }
        always = always && range->has_flight;
        sum->stays_up_at = fmax(sum->stays_up_at, range->stays_up_at);
        sum->held_up_to = fmin(sum->held_up_to, lw_outlook_hold(outlook, pin, c));
        sum->margins_to = fmin(sum->margins_to, range->has_hold ? range->held_up_to : 0.0);
        sum->rides_to = fmin(sum->rides_to, lw_outlook_ridden_to(outlook, pin, c));
    }
    if (sum->rides_to == INFINITY) sum->rides_to = 0.0;
    if (!always) sum->stays_up_at = 0.0;
}

static size_t longest_leg(const lw_outlook *outlook)
{
    size_t longest = 0;
    for (size_t i = 1; i < outlook->leg_count; i++) {
        if (outlook->leg_length[i] > outlook->leg_length[longest]) longest = i;
    }
    return longest;
}

// Rudder turns that keep the bow level in a wind, or in the lightest in which she flies.
static double turns_in(const lw_range *range, double wind)
{
    const lw_answer *answer = near_wind(range, fmax(wind, range->stays_up_at));
    return answer ? answer->flight.turns : 0.0;
}

static double mean_speed(const lw_outlook *outlook, size_t pin, double wind)
{
    double length = 0.0, seconds = 0.0;
    for (size_t i = 0; i < outlook->leg_count; i++) {
        const size_t c = outlook->leg_course[i];
        const double v = flying_speed(&outlook->ranges[pin][c], outlook->courses[c], wind);
        if (v <= 0.0) return 0.0;
        length += outlook->leg_length[i];
        seconds += outlook->leg_length[i] / v;
    }
    return seconds > 0.0 ? length / seconds : 0.0;
}

lw_placing lw_lap(const lw_outlook *outlook, size_t pin, lw_gusts gusts)
{
    lw_placing to = {.pin = pin};
    lw_prospect *lap = &to.prospect;
    for (size_t i = 0; i < outlook->leg_count; i++) add_leg(outlook, i, gusts, &to);
    const double sailing = lap->flying + lap->hull_seconds;  // tacks and gybes left out
    if (sailing > 0.0) lap->flying /= sailing, lap->unheld /= sailing;
    add_swims(outlook, gusts, &to);
    add_limits(outlook, pin, lap);
    lap->speed = mean_speed(outlook, pin, gusts.mean);

    const lw_range *range = &outlook->ranges[pin][outlook->leg_course[longest_leg(outlook)]];
    lap->turns_lull = turns_in(range, gusts.lull);
    lap->turns_mean = turns_in(range, gusts.mean);
    lap->turns_puff = turns_in(range, gusts.puff);
    return to;
}
