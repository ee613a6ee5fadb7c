// diagnosis.c - what the signs are likely to come from.
// SPDX-License-Identifier: MIT
//
// One thing at most is wrong beside what is told. Lever c is off by d, or nothing is:
//
//     P(c, d | signs) ~ often_c g(d / usual_c) L(signs | c off by d)
//     L = product over signs seen of (q p + e), over the others of (1 - q p)
//
// p: lw_sign_chance of the stance; q: that a sailor tells of it, e: that she tells of it wrongly.
// Who it is is not known: one who tells of all that she sees, or one who tells of what strikes her
// most; L is the mean of both.
// What is told and is not as it should be is blamed, too, as far as putting it right makes the
// signs that are seen less likely: in proportion to ln of their L as told less ln of it put right.

#include <math.h>
#include <string.h>

#include "lullwise/diagnosis.h"
#include "lullwise/elementary.h"

#define TELLS_ALL  0.85  // q of one who tells of all that she sees  [judged]
#define TELLS_MAIN 0.3   // and of one who tells of what strikes her most  [judged]
#define WRONGLY    0.02  // e  [judged]
#define SECOND     0.3  // of their odds, where what is told is off already: a second thing [judged]
#define NOTHING    1.0  // prior odds that nothing is wrong, beside the levers'  [judged]

// Of a number that was read: -z^2 / 2.
static double misread(const lw_signs_seen *seen, lw_eye eye, const lw_flight *flight)
{
    const double z = (seen->read[eye] - lw_eye_of(eye, flight)) / lw_eye_error(eye);
    return seen->has[eye] ? -0.5 * z * z : 0.0;
}

// Of readings.
static double log_read(const lw_signs_seen *seen, const lw_stance *stance)
{
    double sum = 0.0;
    for (int eye = 0; eye < LW_EYES; eye++) {
        sum += misread(seen, (lw_eye)eye, &stance->at[LW_IN_MEAN].flight);
    }
    return sum;
}

// Of signs that are seen, by a sailor who tells of so many.
static double log_told(const lw_signs_seen *seen, const lw_seen *look, double tells)
{
    double sum = 0.0;
    for (int s = 0; s < LW_SIGNS; s++) {
        if (!(seen->set & LW_SIGN_BIT(s))) continue;
        sum += lw_log(tells * lw_sign_chance((lw_sign)s, look) + WRONGLY);
    }
    return sum;
}

// Of the others; of a boat that stays down none of a flight can be seen.
static double log_untold(const lw_signs_seen *seen, const lw_seen *look, double tells)
{
    double sum = 0.0;
    if (seen->set & LW_SIGN_BIT(LW_SIGN_STAYS_DOWN)) return 0.0;
    for (int s = 0; s < LW_SIGNS; s++) {
        if (seen->set & LW_SIGN_BIT(s)) continue;
        sum += lw_log(1.0 - tells * lw_sign_chance((lw_sign)s, look));
    }
    return sum;
}

// Of what is seen: signs and readings.
static double log_seen(const lw_scene *scene, const lw_signs_seen *seen, const lw_stance *stance)
{
    const lw_seen look = lw_seen_of(scene, stance);
    return log_read(seen, stance) + log_told(seen, &look, TELLS_ALL);
}

// And of the signs that are not, by one sailor or the other.
static double log_likelihood(const lw_scene *scene, const lw_signs_seen *seen,
                             const lw_stance *stance)
{
    static const double tells[] = {TELLS_ALL, TELLS_MAIN};
    const lw_seen look = lw_seen_of(scene, stance);
    double sum = 0.0;
    for (int i = 0; i < 2; i++) {
        sum += 0.5 * lw_exp(log_told(seen, &look, tells[i]) + log_untold(seen, &look, tells[i]));
    }
    return log_read(seen, stance) + lw_log(sum);
}

// --- what is weighed

#define GRID 10  // departures of a lever: half of `usual` apart, up to 2.5 of it either way

typedef struct weighed {
    lw_lever lever;
    double off, prior, log_l;
    lw_stance stance;
} weighed;

typedef struct scale {
    size_t count;
    weighed at[GRID];  // of one lever at a time
} scale;

static double gauss(double z) { return lw_exp(-0.5 * z * z); }

// The departures of a lever that the boat allows; their priors, with those that it does not, sum to
// how often the lever is wrong.
static void put_grid(const lw_scene *scene, const lw_diagnosis *found, const lw_known *told,
                     lw_lever lever, scale *to)
{
    const lw_lever_row *row = lw_lever_of(lever);
    const double share = row->often * (told->has[lever] ? row->doubt : 1.0);
    const double is = lw_lever_get(&found->told.levers, lever);
    double sum = 0.0;
    to->count = 0;
    for (int j = 0; j < GRID; j++) {
        const double z = 0.5 * (j < GRID / 2 ? j - GRID / 2 : j - GRID / 2 + 1);
        const double off = z * row->usual;
        sum += gauss(z);
        if (!lw_lever_is_possible(scene->craft, lever, is + off)) continue;
        weighed *w = &to->at[to->count++];
        *w = (weighed){.lever = lever, .off = off, .prior = gauss(z)};
        w->stance = (lw_stance){.levers = found->told.levers, .pin = found->told.pin};
        lw_lever_put(&w->stance.levers, lever, is + off);
    }
    for (size_t j = 0; j < to->count; j++) to->at[j].prior *= share / sum;
}

// The boat's other pins, each with its own turns, or those that are told.
static void put_pins(const lw_scene *scene, const lw_diagnosis *found, const lw_known *told,
                     scale *to)
{
    const lw_lever_row *row = lw_lever_of(LW_LEVER_PIN);
    const double share = row->often * (told->has_pin ? row->doubt : 1.0);
    double sum = 0.0;
    to->count = 0;
    for (size_t pin = 0; pin < scene->boat->pin_count && to->count < GRID; pin++) {
        const double off = scene->own[pin].levers.pin - found->told.levers.pin;
        if (pin == found->told.pin || !lw_answer_is_up(&scene->own[pin].at[LW_IN_MEAN])) continue;
        weighed *w = &to->at[to->count++];
        *w = (weighed){.lever = LW_LEVER_PIN, .off = off, .prior = gauss(off / row->usual)};
        w->stance = (lw_stance){.levers = scene->own[pin].levers, .pin = pin};
        for (int k = 0; k < LW_LEVERS; k++) {
            const lw_lever lever = (lw_lever)k;
            if (told->has[k])
                lw_lever_put(&w->stance.levers, lever, lw_lever_get(&told->levers, lever));
        }
        sum += w->prior;
    }
    for (size_t i = 0; i < to->count; i++) to->at[i].prior *= share / sum;
}

static void weigh(lw_scene *scene, const lw_diagnosis *found, scale *to)
{
    lw_stance stances[GRID];
    for (size_t i = 0; i < to->count; i++) stances[i] = to->at[i].stance;
    lw_scene_stances(scene, stances, to->count);
    for (size_t i = 0; i < to->count; i++) {
        to->at[i].stance = stances[i];
        to->at[i].log_l = log_likelihood(scene, &found->seen, &stances[i]);
    }
}

// --- causes

static lw_cause *cause_of(lw_diagnosis *found, lw_lever lever, bool is_more)
{
    for (size_t i = 0; i < found->count; i++) {
        lw_cause *cause = &found->causes[i];
        if (cause->lever == lever && cause->is_more == is_more) return cause;
    }
    lw_cause *cause = &found->causes[found->count++];
    *cause = (lw_cause){.lever = lever, .is_more = is_more};
    return cause;
}

// Adds one side of a lever's grid; the likeliest of it stands for it.
static void add_side(lw_diagnosis *found, const scale *from, bool is_more, double base)
{
    double mass = 0.0, prior = 0.0;
    const weighed *best = NULL;
    for (size_t i = 0; i < from->count; i++) {
        const weighed *w = &from->at[i];
        if ((w->off > 0.0) != is_more) continue;
        const double m = w->prior * lw_exp(w->log_l - base);
        mass += m, prior += w->prior;
        if (!best || m > best->prior * lw_exp(best->log_l - base)) best = w;
    }
    if (!best) return;
    lw_cause *cause = cause_of(found, best->lever, is_more);
    const bool is_first = cause->chance == 0.0;
    cause->chance += mass;
    if (!is_first && mass < 0.5 * cause->chance) return;
    cause->factor = mass / prior;
    cause->off = best->off;
    cause->stance = best->stance;
}

// What is told and off: how far, from what it should be.
static double told_off(const lw_diagnosis *found, lw_lever lever)
{
    return lw_lever_get(&found->told.levers, lever) - lw_lever_get(&found->should.levers, lever);
}

// The boat as told, with one lever put right; the pin with the turns that belong to it.
static lw_stance put_right(lw_scene *scene, const lw_diagnosis *found, lw_lever lever)
{
    lw_stance right = {.levers = found->told.levers, .pin = found->told.pin};
    lw_lever_put(&right.levers, lever, lw_lever_get(&found->should.levers, lever));
    if (lever == LW_LEVER_PIN) {
        const double more = right.levers.turns - scene->own[right.pin].levers.turns;
        right.pin = scene->proper;
        right.levers.turns = found->should.levers.turns + more;
        right.levers.place = found->should.levers.place;
        right.levers.heel = found->should.levers.heel;
    }
    lw_scene_stances(scene, &right, 1);
    return right;
}

static bool is_told_off(const lw_diagnosis *found, const lw_known *told, lw_lever lever)
{
    const bool is_told = lever == LW_LEVER_PIN ? told->has_pin : told->has[lever];
    return is_told && fabs(told_off(found, lever)) > 0.3 * lw_lever_of(lever)->usual;
}

// Part of their prior odds that causes beside what is told keep.
static double beside_told(const lw_diagnosis *found, const lw_known *told)
{
    for (int k = 0; k < LW_LEVERS; k++) {
        if (is_told_off(found, told, (lw_lever)k)) return SECOND;
    }
    return 1.0;
}

// Shares the chance of the boat as told among what of it is not as it should be.
static void blame(lw_scene *scene, lw_diagnosis *found, const lw_known *told)
{
    const double log_told = log_seen(scene, &found->seen, &found->told);
    double fault[LW_LEVERS] = {0}, sum = 0.0, prior = NOTHING;
    for (int k = 0; k < LW_LEVERS; k++) {
        const lw_lever lever = (lw_lever)k;
        if (!is_told_off(found, told, lever)) continue;
        const lw_stance right = put_right(scene, found, lever);
        const double gain = log_told - log_seen(scene, &found->seen, &right);
        if (gain <= 0.0) continue;
        fault[k] = gain, sum += gain;
        prior += lw_lever_of(lever)->often * (1.0 - lw_lever_of(lever)->doubt);
    }
    const double all = prior, blamed = sum > 0.0 ? all * (1.0 - lw_exp(-sum)) : 0.0;
    found->nothing = all - blamed;
    for (int k = 0; k < LW_LEVERS; k++) {
        const lw_lever lever = (lw_lever)k;
        if (fault[k] <= 0.0) continue;
        lw_cause *cause = cause_of(found, lever, told_off(found, lever) > 0.0);
        cause->chance = blamed * fault[k] / sum;
        cause->factor = lw_exp(fault[k]);
        cause->off = told_off(found, lever);
        cause->stance = found->told;
    }
}

static void rank(lw_diagnosis *found)
{
    double sum = found->nothing;
    for (size_t i = 0; i < found->count; i++) sum += found->causes[i].chance;
    found->nothing /= sum;
    for (size_t i = 0; i < found->count; i++) {
        found->causes[i].chance /= sum;
        for (size_t k = i; k > 0; k--) {
            lw_cause *one = &found->causes[k - 1], *other = &found->causes[k];
            if (one->chance >= other->chance) break;
            const lw_cause held = *one;
            *one = *other, *other = held;
        }
    }
}

// The boat as told: the pin in it, its own trim but for what is told.
static void put_told(lw_scene *scene, const lw_known *told, lw_diagnosis *found)
{
    found->told.pin = told->has_pin ? told->pin : scene->proper;
    found->told.levers = scene->own[found->told.pin].levers;
    for (int k = 0; k < LW_LEVERS; k++) {
        const lw_lever lever = (lw_lever)k;
        if (told->has[k])
            lw_lever_put(&found->told.levers, lever, lw_lever_get(&told->levers, lever));
    }
    lw_scene_stances(scene, &found->told, 1);
}

void lw_diagnose(lw_scene *scene, const lw_known *told, const lw_signs_seen *seen,
                 lw_diagnosis *found)
{
    scale weighed_now;
    memset(found, 0, sizeof *found);
    found->seen = *seen;
    found->knows_pin = told->has_pin;
    scene->wants_hump = (seen->set & LW_SIGN_BIT(LW_SIGN_STAYS_DOWN)) != 0;
    scene->wants_damping = (seen->set & LW_SIGN_BIT(LW_SIGN_HOPS)) != 0;
    found->should = (lw_stance){.levers = scene->own[scene->proper].levers, .pin = scene->proper};
    lw_scene_stances(scene, &found->should, 1);
    put_told(scene, told, found);
    const double base = log_likelihood(scene, seen, &found->told);
    blame(scene, found, told);
    const double beside = beside_told(found, told);
    for (int k = 0; k < LW_LEVERS; k++) {
        const lw_lever lever = (lw_lever)k;
        if (lever == LW_LEVER_PIN)
            put_pins(scene, found, told, &weighed_now);
        else
            put_grid(scene, found, told, lever, &weighed_now);
        weigh(scene, found, &weighed_now);
        for (size_t i = 0; i < weighed_now.count; i++) weighed_now.at[i].prior *= beside;
        add_side(found, &weighed_now, true, base);
        add_side(found, &weighed_now, false, base);
    }
    rank(found);
}
