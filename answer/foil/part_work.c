// part_work.c - a whole foil of a boat at each speed or angle.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/asked.h"
#include "answer/foil/foil.h"
#include "answer/words/number_text.h"

#define USUAL_SPEED (12.0 * LW_KN)  // for a row of angles

static bool find_part(lw_foil_part *a, const lw_options *options, lw_refusal *refusal)
{
    const char *word = lw_options_text(options, "part");
    a->is_rudder = word && strcmp(word, "rudder") == 0;
    if (word && !a->is_rudder && strcmp(word, "main") != 0)
        return lw_refuse(refusal,
                         "--part %s: the boat has a main and a rudder foil; main or "
                         "rudder is expected",
                         word);
    const lw_boat *boat = &a->inputs->boat;
    a->foil = a->is_rudder ? &boat->rudder_foil : &boat->main_foil;
    a->whole.foil = a->is_rudder ? &a->craft.rudder_foil : &a->craft.main_foil;
    return true;
}

static bool ask_place(lw_foil_part *a, const lw_options *options, lw_refusal *refusal)
{
    const lw_bounds any = {0};
    lw_foil_place *place = &a->whole.place;
    place->depth = LW_FOIL_USUAL_DEPTH;
    if (!lw_asked_number(options, "depth", any, &place->depth, refusal) ||
        !lw_asked_number(options, "heel", any, &place->heel, refusal) ||
        !lw_asked_number(options, "flap", any, &place->flap, refusal))
        return false;
    if (place->flap == 0.0 || (a->foil->flap_chord > 0.0 && a->foil->flap_span > 0.0)) return true;
    return lw_refuse(refusal, "--flap: the %s foil has no flap", lw_foil_part_word(a));
}

static void name_own_section(lw_named_section *section, const lw_polar_shape *own)
{
    if (lw_whole_own_section(&section->outline, own))
        LW_FIT(section->name, "%s", own->designation);
    else
        LW_FIT(section->name, "a four-digit section, %.1f %% thick", 100.0 * own->thickness);
}

static bool ask_section(lw_foil_part *a, const lw_options *options, lw_refusal *refusal)
{
    const char *text = lw_options_text(options, "section");
    const lw_polar_shape own =
        lw_sections_shape(&a->inputs->boat, a->is_rudder ? LW_RUDDER_SECTION : LW_MAIN_SECTION);
    a->has_section = text != NULL;
    a->is_measured = !a->has_section && !own.designation;
    a->whole.outline = &a->section.outline;
    if (text) return lw_named_section_read(&a->section, text, &refusal->faults);
    name_own_section(&a->section, &own);
    return true;
}

static void fill_usual(lw_foil_part *a)
{
    a->speeds.count = a->is_by_angle ? 1 : 11;
    for (int i = 0; i < a->speeds.count; i++)
        a->speeds.value[i] = a->is_by_angle ? USUAL_SPEED : (8 + 2 * i) * LW_KN;
    a->angles.count = 13;
    for (int i = 0; i < a->angles.count; i++) a->angles.value[i] = (i - 4) * LW_DEG;
}

// Speeds that carry a load, or angles at one speed. The rudder foil's load is not known by itself.
static bool ask_rows(lw_foil_part *a, const lw_options *options, lw_refusal *refusal)
{
    const lw_bounds any = {0};
    a->has_load = lw_options_has(options, "load");
    a->load = a->craft.weight;
    a->is_by_angle = lw_options_has(options, "alpha") || (a->is_rudder && !a->has_load);
    if (a->is_by_angle && a->has_load)
        return lw_refuse(refusal, "--alpha sets the lift, and so does --load; leave one out");
    fill_usual(a);
    if (!lw_asked_number(options, "load", any, &a->load, refusal) ||
        !lw_asked_steps(&a->speeds, options, "speed", false, refusal) ||
        !lw_asked_steps(&a->angles, options, "alpha", true, refusal))
        return false;
    if (!a->is_by_angle || a->speeds.count == 1) return true;
    return lw_refuse(refusal, "a row of angles is for one speed; --load goes with several");
}

bool lw_foil_part_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                        lw_refusal *refusal)
{
    lw_foil_part *a = it;
    const char *why;
    a->inputs = inputs;
    a->speed_unit = lw_speed_unit(options->speed_unit);
    a->takes_off = a->cavitates = NAN;
    a->craft = lw_asked_craft(inputs);
    a->whole.medium = &a->craft.medium;
    if (!find_part(a, options, refusal) || !ask_place(a, options, refusal) ||
        !ask_section(a, options, refusal) || !ask_rows(a, options, refusal))
        return false;
    if (lw_whole_prepare(&a->whole, a->foil, &why)) return true;
    return lw_refuse(refusal, "%s foil: %s", lw_foil_part_word(a), why);
}

size_t lw_foil_part_steps(void *it)
{
    const lw_foil_part *a = it;
    return (size_t)(a->is_by_angle ? a->angles.count : a->speeds.count);
}

void lw_foil_part_step(void *it, size_t step)
{
    lw_foil_part *a = it;
    a->points[step] = a->is_by_angle
                          ? lw_whole_at(&a->whole, a->speeds.value[0], a->angles.value[step])
                          : lw_whole_carrying(&a->whole, a->speeds.value[step], a->load);
    a->count = step + 1;
}

void lw_foil_part_end(void *it)
{
    lw_foil_part *a = it;
    if (!a->is_by_angle) a->takes_off = lw_whole_takes_off(&a->whole, a->load);
    if (isfinite(a->takes_off)) a->cavitates = lw_whole_cavitates(&a->whole, a->load);
    for (size_t i = 0; i < a->count; i++)
        a->sections[i] = lw_whole_pressures(&a->whole, a->points[i].coefficient, a->pressures[i]);
}

bool lw_foil_part_is_answered(const void *it)
{
    const lw_foil_part *a = it;
    return a->is_by_angle || isfinite(a->takes_off);
}

const char *lw_foil_part_word(const lw_foil_part *a) { return a->is_rudder ? "rudder" : "main"; }
