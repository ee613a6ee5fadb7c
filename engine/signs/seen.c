// seen.c - what a sailor could see of a stance.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/diagnosis.h"

bool lw_stance_is_kept(const lw_stance *stance)
{
    return lw_answer_is_up(&stance->at[LW_IN_LULL]) && lw_answer_is_kept(&stance->at[LW_IN_MEAN]) &&
           lw_answer_rides_out(&stance->at[LW_IN_PUFF]);
}

#define LOST     1.0  // chords or parts by which a margin is gone without balance [judged]
#define LOST_WAY (10.0 * LW_DEG)  // the same of the wand's and the flap's travel  [judged]

static double lost(const lw_answer *answer, double by)
{
    return answer->outcome == LW_NO_BALANCE ? by : 0.0;
}

// Wand travel before either stop of the linkage lets the flap go no further up.
static double travel_of(const lw_stance *stance)
{
    const lw_margins *m = &stance->at[LW_IN_PUFF].margins;
    return fmin(m->wand_forward, m->flap_up / stance->levers.gearing);
}

static double lift_left(const lw_answer *lull)
{
    if (lull->outcome == LW_FLIES) return lull->margins.flap_down;
    return fmin(lull->margins.flap_down, 0.0) - LOST_WAY;
}

// Nothing of a flight can be seen of a boat that does not fly.
static lw_seen unseen(const lw_stance *stance)
{
    return (lw_seen){NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, stance->hump, NAN};
}

lw_seen lw_seen_of(const lw_scene *scene, const lw_stance *stance)
{
    const lw_answer *lull = &stance->at[LW_IN_LULL], *puff = &stance->at[LW_IN_PUFF];
    const lw_answer *own = &scene->own[stance->pin].at[LW_IN_MEAN];
    const lw_answer *fair = &scene->own[scene->proper].at[LW_IN_MEAN];
    const lw_flight *is = &stance->at[LW_IN_MEAN].flight;
    if (!lw_answer_is_up(own) || !lw_answer_is_up(fair)) return unseen(stance);
    return (lw_seen){
        .bow = is->pitch - own->flight.pitch,
        .level = is->pitch,
        .height = is->ride_height - fair->flight.ride_height,
        .travel = travel_of(stance),
        .tip = puff->margins.tip_depth - lost(puff, LOST),
        .stern_tip = puff->margins.rudder_tip,
        .clearance = lull->outcome == LW_FLIES ? lull->margins.clearance : 0.0,
        .lift_left = lift_left(lull),
        .power_left = puff->margins.power,
        .sitting = lull->flight.effort,
        .speed = is->speed / fair->flight.speed - 1.0,
        .hump = stance->hump,
        .damping = stance->damping,
    };
}

double lw_eye_of(lw_eye eye, const lw_flight *f)
{
    const double reads[LW_EYES] = {f->pitch, f->ride_height, f->wand, f->speed};
    return reads[eye];
}

// By a photo from abeam against the horizon and the hull's length; by a satellite receiver and a
// wind that is never even.  [judged]
static const double errors[LW_EYES] = {0.5 * LW_DEG, 0.03, 2.0 * LW_DEG, 0.5 * LW_KN};

double lw_eye_error(lw_eye eye) { return errors[eye]; }
