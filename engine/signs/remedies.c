// remedies.c - what to move, the smallest first, and what the boat does then.
// SPDX-License-Identifier: MIT
//
// From the likeliest state each lever is moved step by step, either way, until the signs go and the
// margins are kept: that is enough. Where no step is, the one that leaves least of the signs.

#include <math.h>

#include "lullwise/diagnosis.h"

#define STEPS_MOST 8
#define GONE       0.3  // chance of a sign, below which it is gone  [judged]
#define WORSE      1.0  // scales of margins that what helps may cost  [judged]
#define HELPS      0.7  // part of the signs' chance that is left by what is worth telling  [judged]

// --- how far the signs are gone

static double chance_left(const lw_scene *scene, lw_sign_set seen, const lw_remedy *remedy)
{
    double was = 0.0, is = 0.0;
    const lw_seen then = lw_seen_of(scene, &remedy->before);
    const lw_seen now = lw_seen_of(scene, &remedy->after);
    for (int s = 0; s < LW_SIGNS; s++) {
        if (!(seen & LW_SIGN_BIT(s))) continue;
        was += lw_sign_chance((lw_sign)s, &then);
        is += lw_sign_chance((lw_sign)s, &now);
    }
    return was > 0.0 ? is / was : 1.0;
}

static bool are_gone(const lw_scene *scene, lw_sign_set seen, const lw_stance *after)
{
    const lw_seen now = lw_seen_of(scene, after);
    for (int s = 0; s < LW_SIGNS; s++) {
        const bool was = seen & LW_SIGN_BIT(s);
        if (was && lw_sign_chance((lw_sign)s, &now) > GONE) return false;
    }
    return true;
}

// Overdrawn in mean and puff, each in its scale: what a move may not make worse.
static double overdrawn(const lw_stance *stance)
{
    const lw_answer *puff = &stance->at[LW_IN_PUFF];
    const double lost = puff->outcome == LW_NO_BALANCE ? 10.0 : 0.0;
    const double down = lw_answer_is_up(&stance->at[LW_IN_LULL]) ? 0.0 : 1.0;
    const bool is_wet = puff->outcome == LW_FLOATS;
    return lw_margins_overdrawn(&stance->at[LW_IN_MEAN].margins) + lost + down +
           (is_wet ? 0.0 : lw_margins_overdrawn(&puff->margins));
}

// --- moves

typedef struct bench {
    lw_scene *scene;
    const lw_diagnosis *found;
    lw_stance before;  // the likeliest state
    lw_lever off;      // the lever that is off there, and by how much
    double by;
} bench;

// Where even the right set-up overdraws its margins, as little as that is enough.
static bool is_enough(const bench *b, const lw_remedy *remedy)
{
    const double most = overdrawn(&b->found->should) + 0.05;
    const bool is_held = lw_stance_is_kept(&remedy->after) || overdrawn(&remedy->after) <= most;
    return is_held && are_gone(b->scene, b->found->seen.set, &remedy->after) &&
           remedy->left < HELPS;
}

// Leaves less of the signs, and the margins no worse.
static bool helps(const lw_remedy *remedy)
{
    return remedy->left < HELPS && overdrawn(&remedy->after) <= overdrawn(&remedy->before) + WORSE;
}

// A move from the likeliest state to another, judged.
static lw_remedy move_to(const bench *b, lw_lever lever, const lw_stance *after)
{
    lw_remedy remedy = {.lever = lever, .before = b->before, .after = *after};
    remedy.by = lw_lever_get(&after->levers, lever) - lw_lever_get(&b->before.levers, lever);
    remedy.is_more = remedy.by > 0.0;
    remedy.rights = lever == b->off && remedy.is_more != (b->by > 0.0);
    remedy.left = chance_left(b->scene, b->found->seen.set, &remedy);
    remedy.is_enough = is_enough(b, &remedy);
    return remedy;
}

static bool is_within(const bench *b, lw_lever lever, double value)
{
    const lw_craft *craft = b->scene->craft;
    switch (lever) {
        case LW_LEVER_HEEL:
            return value >= craft->least_heel && value <= craft->most_heel;
        case LW_LEVER_SAIL:
            return value <= 1.2;
        default:
            return lw_lever_is_possible(craft, lever, value);
    }
}

// Steps of a lever one way, as many as there are; whole steps.
static size_t steps_of(const bench *b, lw_lever lever, bool is_more, lw_stance after[STEPS_MOST])
{
    const lw_lever_row *row = lw_lever_of(lever);
    const double from = lw_lever_get(&b->before.levers, lever);
    size_t n = 0;
    while (n < STEPS_MOST) {
        const double by = row->step * (double)(n + 1) * (is_more ? 1.0 : -1.0);
        if (fabs(by) > row->most + 1e-9 || !is_within(b, lever, from + by)) break;
        after[n] = (lw_stance){.levers = b->before.levers, .pin = b->before.pin};
        lw_lever_put(&after[n++].levers, lever, from + by);
    }
    return n;
}

// The step from which on moving is worth while: what is off is put right, not half of it.
static size_t least_step(const bench *b, lw_lever lever, bool is_more, size_t n)
{
    const lw_lever_row *row = lw_lever_of(lever);
    if (lever != b->off || is_more == (b->by > 0.0)) return 0;
    const double steps = floor(fabs(b->by) / row->step + 0.5);
    return steps < 1.0 ? 0 : steps > (double)n ? n - 1 : (size_t)steps - 1;
}

// Of two that are not enough.
static bool is_better(const lw_remedy *one, const lw_remedy *other)
{
    return helps(one) && (!helps(other) || one->left < other->left);
}

// A lever one way: the first step that is enough, else the best of them.
static bool move(const bench *b, lw_lever lever, bool is_more, lw_remedy *remedy)
{
    lw_stance after[STEPS_MOST];
    const size_t n = steps_of(b, lever, is_more, after);
    if (n == 0) return false;
    lw_scene_stances(b->scene, after, n);
    const size_t first = least_step(b, lever, is_more, n);
    for (size_t k = 0; k < n; k++) {
        const size_t i = (first + k) % n;  // those before it last
        const lw_remedy one = move_to(b, lever, &after[i]);
        if (k == 0 || one.is_enough || is_better(&one, remedy)) *remedy = one;
        if (one.is_enough) return true;
    }
    return helps(remedy);
}

// The pin by itself, all else as it is, leaves no more of the signs: else it is the new trim that
// helps, and that can be had without.
static bool pin_helps(const bench *b, size_t pin)
{
    lw_stance alone = {.levers = b->before.levers, .pin = b->before.pin};
    alone.levers.pin = b->scene->own[pin].levers.pin;
    lw_scene_stances(b->scene, &alone, 1);
    const lw_remedy remedy = move_to(b, LW_LEVER_PIN, &alone);
    return remedy.left < 1.0;
}

// Another pin, trimmed anew; what else is off stays off.
static bool change_pin(const bench *b, size_t pin, lw_remedy *remedy)
{
    const lw_levers *own = &b->scene->own[pin].levers, *now = &b->before.levers;
    lw_stance after = {.levers = *own, .pin = pin};
    after.levers.sail = now->sail, after.levers.rod = now->rod;
    after.levers.wand = now->wand, after.levers.gearing = now->gearing;
    after.levers.wind = now->wind;
    lw_scene_stances(b->scene, &after, 1);
    *remedy = move_to(b, LW_LEVER_PIN, &after);
    remedy->turns = own->turns - now->turns;
    return (remedy->is_enough || helps(remedy)) && pin_helps(b, pin);
}

// --- in order

static double size_of(const lw_remedy *remedy)
{
    const lw_lever_row *row = lw_lever_of(remedy->lever);
    return row->trouble * fabs(remedy->by) / row->usual;
}

// Trim that is enough, set-up that is enough, what is likeliest off before the smallest; what only
// helps, by what it leaves.
static double order_of(const lw_remedy *remedy)
{
    const bool is_trim = lw_lever_of(remedy->lever)->is_trim;
    const double least = is_trim ? 0.0 : 100.0;
    if (remedy->is_enough) return remedy->rights ? least : least + size_of(remedy);
    return 200.0 + remedy->left;
}

static size_t insert(lw_remedy list[LW_REMEDIES_MOST], size_t count, const lw_remedy *one)
{
    size_t at = count < LW_REMEDIES_MOST ? count : LW_REMEDIES_MOST - 1;
    if (count == LW_REMEDIES_MOST && order_of(one) >= order_of(&list[at])) return count;
    for (; at > 0 && order_of(&list[at - 1]) > order_of(one); at--) list[at] = list[at - 1];
    list[at] = *one;
    return count < LW_REMEDIES_MOST ? count + 1 : count;
}

// The pins that are enough nearest to the one in the boat, one either way.
static size_t add_pins(const bench *b, lw_remedy list[LW_REMEDIES_MOST], size_t count)
{
    lw_remedy best[2];
    bool has[2] = {false, false};
    for (size_t pin = 0; pin < b->scene->boat->pin_count; pin++) {
        lw_remedy one;
        const bool flies = lw_answer_is_up(&b->scene->own[pin].at[LW_IN_MEAN]);
        if (pin == b->before.pin || !flies || !change_pin(b, pin, &one)) continue;
        lw_remedy *top = &best[one.is_more];
        if (!has[one.is_more] || order_of(&one) < order_of(top)) *top = one;
        has[one.is_more] = true;
    }
    for (int side = 0; side < 2; side++) {
        if (has[side]) count = insert(list, count, &best[side]);
    }
    return count;
}

// How clearly a stance shows the signs that are seen: the mean of their chances.
static double showing(const lw_scene *scene, lw_sign_set seen, const lw_stance *stance)
{
    double sum = 0.0;
    int count = 0;
    const lw_seen look = lw_seen_of(scene, stance);
    for (int s = 0; s < LW_SIGNS; s++) {
        if (!(seen & LW_SIGN_BIT(s))) continue;
        sum += lw_sign_chance((lw_sign)s, &look), count++;
    }
    return count > 0 ? sum / count : 0.0;
}

// What is put right: the likeliest state, as far as it shows the signs.
static bench bench_of(lw_scene *scene, const lw_diagnosis *found)
{
    const lw_sign_set seen = found->seen.set;
    bench b = {.scene = scene, .found = found, .before = found->told, .off = LW_LEVERS};
    double best = found->nothing * showing(scene, seen, &found->told);
    for (size_t i = 0; i < found->count; i++) {
        const lw_cause *cause = &found->causes[i];
        const double weight = cause->chance * showing(scene, seen, &cause->stance);
        const bool is_of_pin = !found->knows_pin || cause->stance.pin == found->told.pin;
        if (weight <= best || !is_of_pin) continue;
        best = weight, b.before = cause->stance;
        b.off = cause->lever, b.by = cause->off;
    }
    return b;
}

size_t lw_remedies_of(lw_scene *scene, const lw_diagnosis *found, lw_remedy list[LW_REMEDIES_MOST])
{
    const bench b = bench_of(scene, found);
    size_t count = 0;
    for (int k = 0; k < LW_LEVERS; k++) {
        for (int side = 0; side < 2 && k != LW_LEVER_PIN; side++) {
            lw_remedy one;
            if (move(&b, (lw_lever)k, side == 1, &one)) count = insert(list, count, &one);
        }
    }
    return add_pins(&b, list, count);
}
