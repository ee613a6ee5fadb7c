// section_work.c - the flow about a foil section at each angle.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/asked.h"
#include "answer/foil/foil.h"

#define USUAL_FLAP_CHORD 0.3

static bool ask(lw_foil_section *a, const lw_options *options, lw_refusal *refusal)
{
    const lw_bounds any = {0};
    a->depth = LW_FOIL_USUAL_DEPTH;
    a->flap_chord = USUAL_FLAP_CHORD;
    a->trip = 1.0;
    a->waves = LW_WAVE_GROWTH_USUAL;
    a->has_flap = lw_options_has(options, "flap");
    if (!a->has_flap && lw_options_has(options, "flap-chord"))
        return lw_refuse(refusal, "--flap-chord goes with --flap, as in --flap '5 deg'");
    if (!lw_options_has(options, "re") && lw_options_has(options, "trip"))
        return lw_refuse(refusal, "--trip goes with --re: without it there is no friction");
    if (!lw_options_has(options, "re") && lw_options_has(options, "waves"))
        return lw_refuse(refusal, "--waves goes with --re: without it there is no friction");
    a->angles.count = 17;
    for (int i = 0; i < a->angles.count; i++) a->angles.value[i] = (i - 4) * LW_DEG;
    return lw_asked_number(options, "depth", any, &a->depth, refusal) &&
           lw_asked_number(options, "re", any, &a->reynolds, refusal) &&
           lw_asked_number(options, "trip", any, &a->trip, refusal) &&
           lw_asked_number(options, "waves", any, &a->waves, refusal) &&
           lw_asked_number(options, "flap", any, &a->flap_angle, refusal) &&
           lw_asked_number(options, "flap-chord", any, &a->flap_chord, refusal) &&
           lw_asked_steps(&a->angles, options, "alpha", true, refusal);
}

bool lw_foil_section_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                           lw_refusal *refusal)
{
    lw_foil_section *a = it;
    const char *text = lw_options_text(options, "section");
    if (!lw_named_section_read(&a->section, text, &refusal->faults)) return false;
    if (!ask(a, options, refusal)) return false;
    a->medium = lw_medium_of(&inputs->day);
    const lw_profile_flap flap = {a->has_flap ? 1.0 - a->flap_chord : 0.0, a->flap_angle};
    a->status = lw_section_flow_of(&a->flow, &a->section.outline, flap);
    if (a->status == LW_PROFILE_OK || a->status == LW_PROFILE_NO_SOLUTION) return true;
    return lw_refuse(refusal, "%s: %s", a->section.name, lw_profile_status_text(a->status));
}

size_t lw_foil_section_steps(void *it)
{
    const lw_foil_section *a = it;
    return a->status == LW_PROFILE_OK ? (size_t)a->angles.count : 0;
}

static lw_section_water water_of(const lw_foil_section *a)
{
    return (lw_section_water){&a->medium, a->depth, a->reynolds, a->waves, a->trip};
}

void lw_foil_section_step(void *it, size_t step)
{
    lw_foil_section *a = it;
    a->points[step] =
        lw_section_pressures(&a->flow, water_of(a), a->angles.value[step], a->pressures[step]);
    a->others[step] = lw_section_other(&a->flow, water_of(a), &a->points[step]);
    a->count = step + 1;
}

void lw_foil_section_end(void *it)
{
    lw_foil_section *a = it;
    const bool is_row = a->count > 1 && a->count == (size_t)a->angles.count;
    a->unsure = NAN;
    for (size_t i = 0; i < a->count; i++)
        a->unsure = fmax(a->unsure, lw_section_unsure(&a->flow, a->angles.value[i]));
    a->has_stall = a->reynolds > 0.0 && is_row;
    if (a->has_stall) a->stall = lw_section_stall(&a->flow, water_of(a));
}

bool lw_foil_section_is_answered(const void *it)
{
    return ((const lw_foil_section *)it)->status == LW_PROFILE_OK;
}
