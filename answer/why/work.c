// work.c - the answer of `lullwise why` worked out.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/asked.h"
#include "answer/why/why.h"

// --- signs

static void list_signs(char *text, size_t room)
{
    text[0] = '\0';
    for (int s = 0; s < LW_SIGNS; s++) {
        lw_text_add(text, room, "%s%s", s ? ", " : "", lw_sign_key((lw_sign)s));
    }
}

static bool refuse_sign(const char *text, lw_refusal *refusal)
{
    char all[LW_REFUSAL_LENGTH / 2];
    const lw_sign near = lw_sign_nearest(text);
    list_signs(all, sizeof all);
    return lw_refuse(refusal, "there is no sign \"%s\"; did you mean %s (%s)? The signs are: %s",
                     text, lw_sign_key(near), lw_sign_text(near), all);
}

static bool ask_signs(lw_why *why, const lw_options *options, lw_refusal *refusal)
{
    char all[LW_REFUSAL_LENGTH / 2];
    lw_sign one, other;
    for (size_t n = 0; lw_options_nth(options, "sign", n); n++) {
        const char *text = lw_options_nth(options, "sign", n);
        const lw_sign sign = lw_sign_named(text);
        if (sign == LW_SIGNS) return refuse_sign(text, refusal);
        why->seen.set |= LW_SIGN_BIT(sign);
    }
    list_signs(all, sizeof all);
    if (!why->seen.set)
        return lw_refuse(refusal, "what does she do? Say it with --sign, once for each: %s", all);
    if (lw_signs_clash(why->seen.set, &one, &other))
        return lw_refuse(refusal,
                         "\"%s\" and \"%s\" contradict each other: tell of one wind and one moment",
                         lw_sign_text(one), lw_sign_text(other));
    return true;
}

// --- what is known

static bool ask_wind(lw_why *why, const lw_options *options, lw_refusal *refusal)
{
    double mean = why->inputs->day.wind.mean;
    if (!lw_asked_number(options, "wind", (lw_bounds){0}, &mean, refusal)) return false;
    why->wind = why->inputs->day.wind;
    const double share = mean / why->wind.mean;
    why->wind.lull *= share, why->wind.mean = mean, why->wind.puff *= share;
    return true;
}

static bool ask_course(lw_why *why, const lw_options *options, lw_refusal *refusal)
{
    double heading;
    if (!lw_asked_course(options, &why->kind, refusal)) return false;
    why->course = lw_course_of(why->kind);
    why->has_heading = lw_options_has(options, "heading");
    if (!why->has_heading) return true;
    if (!lw_asked_number(options, "heading", (lw_bounds){0}, &heading, refusal)) return false;
    heading = fabs(heading);
    why->course = (lw_course){heading, heading, heading};
    return true;
}

static bool ask_lever(lw_why *why, const lw_options *options, lw_lever lever, lw_bounds bounds,
                      lw_refusal *refusal)
{
    double value = 0.0;
    const char *key = lw_levers_table.rows[lever].key;
    why->known.has[lever] = lw_options_has(options, key);
    if (!lw_asked_number(options, key, bounds, &value, refusal)) return false;
    lw_lever_put(&why->known.levers, lever, value);
    return true;
}

static bool ask_levers(lw_why *why, const lw_options *options, lw_refusal *refusal)
{
    const lw_boat *boat = &why->inputs->boat;
    const lw_bounds along = {boat->place.aft_x, boat->place.forward_x, "the boat"};
    const lw_bounds thread = {boat->rudder.least_turns, boat->rudder.most_turns, "the thread"};
    int pin;
    if (!lw_asked_pin(options, boat, &pin, refusal)) return false;
    why->known.has_pin = pin != LW_ALL_PINS;
    why->known.pin = why->known.has_pin ? (size_t)pin : 0;
    return ask_lever(why, options, LW_LEVER_TURNS, thread, refusal) &&
           ask_lever(why, options, LW_LEVER_PLACE, along, refusal) &&
           ask_lever(why, options, LW_LEVER_HEEL, (lw_bounds){0}, refusal);
}

static bool ask_eyes(lw_why *why, const lw_options *options, lw_refusal *refusal)
{
    static const char *const names[LW_EYES] = {"bow", "ride-height", "wand", "speed"};
    for (int eye = 0; eye < LW_EYES; eye++) {
        why->seen.has[eye] = lw_options_has(options, names[eye]);
        if (!lw_asked_number(options, names[eye], (lw_bounds){0}, &why->seen.read[eye], refusal))
            return false;
    }
    return true;
}

bool lw_why_begin(void *it, const lw_inputs *inputs, const lw_options *options, lw_refusal *refusal)
{
    lw_why *why = it;
    why->inputs = inputs;
    if (!ask_signs(why, options, refusal) || !ask_wind(why, options, refusal) ||
        !ask_course(why, options, refusal) || !ask_levers(why, options, refusal) ||
        !ask_eyes(why, options, refusal) ||
        !lw_asked_number(options, "width", (lw_bounds){0}, &why->width, refusal))
        return false;
    why->craft = lw_asked_craft(inputs);
    return true;
}

// --- the answer

bool lw_why_flies(const lw_why *why)
{
    return lw_answer_is_up(&why->scene.own[why->scene.proper].at[LW_IN_MEAN]);
}

bool lw_why_stays_down(const lw_why *why)
{
    return (why->seen.set & LW_SIGN_BIT(LW_SIGN_STAYS_DOWN)) != 0;
}

const lw_stance *lw_why_state(const lw_why *why)
{
    return why->remedy_count > 0 ? &why->remedies[0].before : &why->found.told;
}

#define EASED 0.9  // of the power in use  [judged]

static void ease(lw_why *why)
{
    const lw_stance *state = lw_why_state(why);
    why->eased = (lw_stance){.levers = state->levers, .pin = state->pin};
    why->eased.levers.sail *= EASED * fmin(state->at[LW_IN_MEAN].flight.sail_power, 1.0);
    lw_scene_stances(&why->scene, &why->eased, 1);
}

// Of the pin in the boat; of all, the one that takes off soonest, where none is told.
static void take_off(lw_why *why)
{
    const lw_stance *state = lw_why_state(why);
    why->taken_off = state->pin;
    why->takes_off = lw_scene_takes_off(&why->scene, state);
    for (size_t pin = 0; !why->known.has_pin && pin < why->inputs->boat.pin_count; pin++) {
        const double wind = lw_scene_takes_off(&why->scene, &why->scene.own[pin]);
        if (wind <= 0.0 || (why->takes_off > 0.0 && wind >= why->takes_off)) continue;
        why->takes_off = wind, why->taken_off = pin;
    }
}

void lw_why_end(void *it)
{
    lw_why *why = it;
    lw_scene_prepare(&why->scene, &why->craft, &why->inputs->boat, &why->wind, why->course);
    lw_diagnose(&why->scene, &why->known, &why->seen, &why->found);
    if (lw_why_flies(why) || lw_why_stays_down(why))
        why->remedy_count = lw_remedies_of(&why->scene, &why->found, why->remedies);
    ease(why);
    if (lw_why_stays_down(why) || !lw_why_flies(why)) take_off(why);
}

bool lw_why_is_answered(const void *it)
{
    const lw_why *why = it;
    return why->remedy_count > 0;
}
