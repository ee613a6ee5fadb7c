// work.c - the answer of `lullwise hull` worked out.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/asked.h"
#include "answer/hull/hull.h"
#include "records/offsets_file.h"

#define USUAL_LENGTH 3.0  // [m] of Wigley's hull

// Options that do not go together.
static bool refuse_odd(const lw_hull_answer *a, const lw_options *options, lw_refusal *refusal)
{
    if (a->is_wigley && (lw_options_has(options, "boat") || a->has_place))
        return lw_refuse(refusal, "--wigley is a hull of its own: leave out --%s",
                         a->has_place ? "place" : "boat");
    if (a->is_wigley && a->offsets)
        return lw_refuse(refusal, "--wigley and --offsets both give the hull; leave one out");
    if (!a->is_wigley && lw_options_has(options, "length"))
        return lw_refuse(refusal,
                         "--length goes with --wigley; a boat's is set by "
                         "--set hull.length='3.4 m'");
    if (a->is_by_froude && lw_options_has(options, "speed"))
        return lw_refuse(refusal, "--froude and --speed both give the speeds; leave one out");
    return true;
}

// Speeds, or Froude numbers; without either a usual row of these.
static bool ask_speeds(lw_hull_answer *a, const lw_options *options, lw_refusal *refusal)
{
    if (lw_options_has(options, "speed"))
        return lw_asked_steps(&a->speeds, options, "speed", false, refusal);
    a->is_by_froude = true;
    a->speeds.count = 17;
    for (int i = 0; i < a->speeds.count; i++) a->speeds.value[i] = 0.2 + 0.05 * i;
    return lw_asked_steps(&a->speeds, options, "froude", true, refusal);
}

static bool ask(lw_hull_answer *a, const lw_options *options, lw_refusal *refusal)
{
    const lw_boat *boat = &a->inputs->boat;
    const lw_bounds along = {boat->place.aft_x, boat->place.forward_x, "the boat"}, any = {0};
    a->is_wigley = lw_options_has(options, "wigley");
    a->offsets = lw_options_text(options, "offsets");
    a->has_place = lw_options_has(options, "place");
    a->is_by_froude = lw_options_has(options, "froude");
    a->length = USUAL_LENGTH;
    return refuse_odd(a, options, refusal) &&
           lw_asked_number(options, "length", any, &a->length, refusal) &&
           lw_asked_number(options, "place", along, &a->place, refusal) &&
           (!a->offsets || lw_offsets_file_read(&a->shape, a->offsets, &refusal->faults)) &&
           ask_speeds(a, options, refusal);
}

// The boat's hull from its dimensions or the lines of a file, with boat and sailor aboard; level
// unless the sailor's place was given, by which it then trims.
static lw_hull_status float_boat(lw_hull_answer *a)
{
    const lw_hull *hull = &a->inputs->boat.hull;
    const lw_hull_status status = a->offsets ? LW_HULL_OK : lw_hull_shape_of_boat(&a->shape, hull);
    if (status != LW_HULL_OK) return status;
    a->form_factor = hull->form_factor;
    const lw_hull_load load =
        lw_hull_load_of(hull, &a->inputs->sailor.person, a->has_place ? a->place : NAN);
    return lw_hull_float_load(&a->cut, &a->shape, load, a->medium.water_density);
}

bool lw_hull_answer_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                          lw_refusal *refusal)
{
    lw_hull_answer *a = it;
    a->inputs = inputs;
    if (!ask(a, options, refusal)) return false;
    a->medium = lw_medium_of(&inputs->day);
    a->status = a->is_wigley ? lw_hull_float_wigley(&a->cut, &a->shape, a->length) : float_boat(a);
    if (a->status != LW_HULL_OK) return true;
    a->afloat = lw_hull_afloat_of(&a->cut, a->medium.water_density);
    for (int i = 0; a->is_by_froude && i < a->speeds.count; i++)
        a->speeds.value[i] = lw_hull_speed_at(&a->cut, a->speeds.value[i]);
    return true;
}

bool lw_hull_answer_is_answered(const void *it)
{
    return ((const lw_hull_answer *)it)->status == LW_HULL_OK;
}

size_t lw_hull_answer_steps(void *it)
{
    const lw_hull_answer *a = it;
    return a->status == LW_HULL_OK ? (size_t)a->speeds.count : 0;
}

void lw_hull_answer_step(void *it, size_t step)
{
    lw_hull_answer *a = it;
    const lw_hull_water water = {a->medium.water_density, a->medium.water_viscosity,
                                 a->form_factor};
    a->at[step] = lw_hull_drive_at(&a->cut, water, a->speeds.value[step]);
    a->count = step + 1;
}
