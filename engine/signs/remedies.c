// remedies.c - what to move, the smallest first, and what the boat does then.
// SPDX-License-Identifier: MIT
//
// From the likeliest state each lever is moved step by step, either way, until the signs go and the
// margins are kept: that is enough. Where no step is, the one that leaves least of the signs.

#include <math.h>

#include "lullwise/signs.h"

#define STEPS_MOST 8
#define GONE       0.3  // chance of a sign, below which it is gone  [judged]
#define HELPS      0.7  // part of the signs' chance that is left by what is worth telling  [judged]

// --- how far the signs are gone

static double chance_left(const lw_diagnosis *found, const lw_stance *before,
                          const lw_stance *after)
{
    double was = 0.0, is = 0.0;
    const lw_seen then = lw_seen_of(before, &found->should);
    const lw_seen now = lw_seen_of(after, &found->should);
    for (int s = 0; s < LW_SIGNS; s++) {
        if (!(found->seen.set & LW_SIGN_BIT(s))) continue;
        was += lw_sign_chance((lw_sign)s, &then);
        is += lw_sign_chance((lw_sign)s, &now);
    }
    return was > 0.0 ? is / was : 1.0;
}

static bool are_gone(const lw_diagnosis *found, const lw_stance *after)
{
    const lw_seen now = lw_seen_of(after, &found->should);
    for (int s = 0; s < LW_SIGNS; s++) {
        const bool was = found->seen.set & LW_SIGN_BIT(s);
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
    const double wet = puff->outcome == LW_FLOATS;
    return lw_margins_overdrawn(&stance->at[LW_IN_MEAN].margins) + lost + down +
           (wet ? 0.0 : lw_margins_overdrawn(&puff->margins));
}

// Where even the right set-up overdraws its margins, as little as that is enough.
static bool is_enough(const lw_diagnosis *found, const lw_stance *after, double left)
{
    const double most = overdrawn(&found->should) + 0.05;
    const bool is_held = lw_stance_is_kept(after) || overdrawn(after) <= most;
    return is_held && are_gone(found, after) && left < HELPS;
}

static lw_remedy judged(const lw_diagnosis *found, lw_remedy remedy)
{
    remedy.left = chance_left(found, &remedy.before, &remedy.after);
    remedy.is_enough = is_enough(found, &remedy.after, remedy.left);
    return remedy;
}

// --- moves

typedef struct bench {
    lw_scene *scene;
    const lw_diagnosis *found;
    size_t pin;        // from whose own trim
    lw_stance before;  // the likeliest state
} bench;

static bool is_within(const bench *b, lw_lever lever, double value)
{
    const lw_craft *craft = b->scene->craft;
    const double aft = craft->place_aft - craft->transom_x;
    const double forward = craft->place_forward - craft->transom_x;
    switch (lever) {
        case LW_LEVER_TURNS:
            return value >= craft->least_turns && value <= craft->most_turns;
        case LW_LEVER_PLACE:
            return value >= aft - 1e-6 && value <= forward + 1e-6;
        case LW_LEVER_HEEL:
            return value >= craft->least_heel && value <= craft->most_heel;
        case LW_LEVER_SAIL:
            return value <= 1.2;
        default:
            return true;
    }
}

// A lever one way, step by step: the first that is enough, else the best of them.
static bool move(const bench *b, lw_lever lever, bool is_more, lw_remedy *remedy)
{
    const lw_lever_row *row = lw_lever_of(lever);
    const double from = lw_lever_get(&b->before.levers, lever);
    lw_stance after[STEPS_MOST];
    size_t n = 0;
    while (n < STEPS_MOST) {
        const double by = row->step * (double)(n + 1) * (is_more ? 1.0 : -1.0);
        if (fabs(by) > row->most + 1e-9 || !is_within(b, lever, from + by)) break;
        after[n].levers = b->before.levers;
        lw_lever_put(&after[n++].levers, lever, from + by);
    }
    if (n == 0) return false;
    lw_scene_stances(b->scene, b->pin, after, n);
    for (size_t i = 0; i < n; i++) {
        const lw_remedy one =
            judged(b->found, (lw_remedy){.lever = lever,
                                         .is_more = is_more,
                                         .by = lw_lever_get(&after[i].levers, lever) - from,
                                         .before = b->before,
                                         .after = after[i]});
        if (i == 0 || one.is_enough || one.left < remedy->left) *remedy = one;
        if (one.is_enough) return true;
    }
    return remedy->left < HELPS;
}

// Another pin, trimmed anew; what else is off stays off.
static bool change_pin(const bench *b, size_t pin, lw_remedy *remedy)
{
    const lw_levers *own = &b->scene->own[pin].levers, *now = &b->before.levers;
    lw_stance after = {.levers = *own};
    after.levers.sail = now->sail, after.levers.rod = now->rod;
    after.levers.wand = now->wand, after.levers.gearing = now->gearing;
    lw_scene_stances(b->scene, pin, &after, 1);
    *remedy = judged(b->found, (lw_remedy){.lever = LW_LEVER_PIN,
                                           .is_more = own->pin > now->pin,
                                           .by = own->pin - now->pin,
                                           .pin = pin,
                                           .turns = own->turns - now->turns,
                                           .before = b->before,
                                           .after = after});
    return remedy->is_enough || remedy->left < HELPS;
}

// --- in order

static double size_of(const lw_remedy *remedy)
{
    const lw_lever_row *row = lw_lever_of(remedy->lever);
    return row->trouble * fabs(remedy->by) / row->usual;
}

// Trim that is enough, set-up that is enough, the smallest first; what helps, by what it leaves.
static double order_of(const lw_remedy *remedy)
{
    const bool is_trim = lw_lever_of(remedy->lever)->is_trim;
    if (remedy->is_enough) return (is_trim ? 0.0 : 100.0) + size_of(remedy);
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
        const bool flies = b->scene->own[pin].at[LW_IN_MEAN].outcome == LW_FLIES;
        if (pin == b->pin || !flies || !change_pin(b, pin, &one)) continue;
        lw_remedy *top = &best[one.is_more];
        if (!has[one.is_more] || order_of(&one) < order_of(top)) *top = one;
        has[one.is_more] = true;
    }
    for (int side = 0; side < 2; side++) {
        if (has[side]) count = insert(list, count, &best[side]);
    }
    return count;
}

size_t lw_remedies_of(lw_scene *scene, const lw_diagnosis *found, lw_remedy list[LW_REMEDIES_MOST])
{
    const bool is_off = found->count > 0 && found->causes[0].chance > 0.5 * found->nothing;
    const bench b = {.scene = scene,
                     .found = found,
                     .pin = is_off ? found->causes[0].pin : found->pin,
                     .before = is_off ? found->causes[0].stance : found->told};
    size_t count = 0;
    for (int k = 0; k < LW_LEVERS; k++) {
        for (int side = 0; side < 2 && k != LW_LEVER_PIN; side++) {
            lw_remedy one;
            if (move(&b, (lw_lever)k, side == 1, &one)) count = insert(list, count, &one);
        }
    }
    return add_pins(&b, list, count);
}
