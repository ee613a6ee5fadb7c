// sail.c - an invented day: rides, and what is noted of them.
// SPDX-License-Identifier: MIT

#include <inttypes.h>
#include <math.h>
#include <stdlib.h>

#include "answer/invent/invent.h"
#include "lullwise/elementary.h"
#include "lullwise/lesson.h"
#include "lullwise/weather.h"
#include "records/fault.h"

// An invented scenario: none of these numbers was measured.
#define WIND_LEAST (8.0 * LW_KN)
#define WIND_MORE  (10.0 * LW_KN)
#define LULL       0.82  // of the mean
#define PUFF       1.22
#define SIT_OUT    10  // [s] of a ride before its first fix: she is under way

// A day's room to ride in.
typedef struct riding {
    lw_inputs inputs;
    lw_ridden ridden;
    lw_ride ride;
} riding;

static void blow(lw_wind *wind, lw_seed *seed)
{
    wind->mean = WIND_LEAST + WIND_MORE * lw_seed_uniform(seed);
    wind->lull = LULL * wind->mean;
    wind->puff = PUFF * wind->mean;
}

// The stronger the wind, the less lift; now and then a pin too many or too few.
static size_t pin_for(const lw_boat *boat, double mean, lw_seed *seed)
{
    const double part = (mean - WIND_LEAST) / WIND_MORE;
    const double pin = floor(part * (double)boat->pin_count + lw_seed_uniform(seed) - 0.5);
    return (size_t)fmin(fmax(pin, 0.0), (double)(boat->pin_count - 1));
}

static double noise(lw_seed *seed, size_t row)
{
    const lw_quantity *number = &lw_lesson_table.rows[row];
    return number->error * lw_unit_in_si(number->unit) * lw_seed_normal(seed);
}

// One leg on one tack, a fix each second.
static double ride_leg(riding *r, uint64_t seed, double side, lw_invented_fix *fixes)
{
    const lw_motion *motion = &r->ridden.motion;
    lw_ridden_plan(&r->ridden, seed);
    lw_ride_begin(&r->ride, motion, &r->ridden.plan);
    lw_rides_advance(motion, &r->ride, 1, lw_ridden_steps(&r->ridden, SIT_OUT));
    for (size_t i = 0; i < LW_INVENTED_LEG; i++) {
        lw_rides_advance(motion, &r->ride, 1, lw_ridden_steps(&r->ridden, 1.0));
        const lw_trace at = lw_ride_trace(motion, &r->ride);
        fixes[i] = (lw_invented_fix){at.speed, side * fabs(at.heading)};
    }
    return lw_ride_tally_swims(&r->ride.tally);
}

static void ride_all(riding *r, lw_seed *seed, lw_invented_day *day)
{
    lw_logged *logged = &day->entry.day;
    lw_invented_fix *at = day->fixes;
    double *const turns[] = {&logged->used.upwind, &logged->used.reach, &logged->used.downwind};
    logged->outing.swims = 0.0;
    for (int c = 0; c < LW_COURSE_COUNT; c++) {
        r->ridden.flown.course = (lw_course_kind)c;
        for (int side = -1; side <= 1; side += 2) {
            logged->outing.swims += ride_leg(r, lw_seed_bits(seed) >> 12, side, at);
            at += LW_INVENTED_LEG;
        }
        const lw_answer *trimmed = &r->ridden.flown.answer;
        const bool is_held = lw_answer_is_kept(trimmed) && trimmed->outcome == LW_FLIES;
        *turns[c] = is_held ? trimmed->flight.turns + noise(seed, (size_t)c) : NAN;
    }
}

// --- what is noted

// The wind as it was read, which is not the wind that blew.
static void note_wind(lw_wind *wind, lw_seed *seed)
{
    const double share = 1.0 + LW_WIND_ERROR * lw_seed_normal(seed) / wind->mean;
    wind->lull *= share, wind->mean *= share, wind->puff *= share;
}

static void note(const lw_inventing *inventing, size_t number, lw_seed *seed, lw_invented_day *day)
{
    const lw_inputs *inputs = inventing->inputs;
    const lw_linkage *linkage = &inputs->boat.linkage;
    const lw_person *person = &inputs->sailor.person;
    lw_logged *logged = &day->entry.day;
    LW_FIT(logged->date, "2024-%02zu-%02zu", 1 + number / 28 % 12, 1 + number % 28);
    LW_FIT(logged->waters, "Invented water, day %zu", number + 1);
    LW_FIT(day->entry.id, "%016" PRIx64, lw_seed_bits(seed));
    logged->sea = inputs->day.sea;
    logged->water = inputs->day.water, logged->air = inputs->day.air;
    logged->setup.wand_length = linkage->wand_length;
    logged->setup.gearing = linkage->gearing, logged->setup.rod = linkage->rod;
    logged->outing.mass = person->mass + person->gear;
    logged->outing.afloat = LW_INVENTED_LEGS * LW_INVENTED_LEG;
    note_wind(&logged->wind, seed);
}

void lw_invented_sail(const lw_inventing *inventing, size_t number, lw_invented_day *day)
{
    riding *r = calloc(1, sizeof *r);
    if (!r) return;
    lw_seed seed = lw_seed_of(inventing->seed * LW_INVENTED_MOST + number, LW_SEED_DRAW);
    r->inputs = *inventing->inputs;
    lw_hidden_put(&inventing->truth, &r->inputs);
    blow(&r->inputs.day.wind, &seed);
    const size_t pin = pin_for(&r->inputs.boat, r->inputs.day.wind.mean, &seed);
    lw_ridden_prepare(&r->ridden, &r->inputs, inventing->sections);
    r->ridden.flown.pin = pin;
    day->entry = lw_entry_blank();
    day->entry.day.wind = r->inputs.day.wind;
    day->from = 2.0 * LW_PI * lw_seed_uniform(&seed);
    LW_FIT(day->entry.day.pin, "%s", inventing->inputs->boat.pins[pin].label);
    day->entry.day.setup.incidence = inventing->inputs->boat.pins[pin].incidence;
    ride_all(r, &seed, day);
    note(inventing, number, &seed, day);
    day->is_sailed = true;
    free(r);
}
