// foil.h - `lullwise foil`: a foil section by itself, or a whole foil of a boat.
// SPDX-License-Identifier: MIT
//
// Two ways to ask, each with its own work and words: questions in all but the name.

#ifndef LW_ANSWER_FOIL_H
#define LW_ANSWER_FOIL_H

#include "answer/foil/named_section.h"
#include "answer/steps.h"
#include "lullwise/craft.h"
#include "lullwise/foil.h"

#define LW_FOIL_USUAL_DEPTH 0.5  // [m]

// --section: the flow about a section, angle by angle.
typedef struct lw_foil_section {
    lw_medium medium;
    lw_named_section section;
    lw_section_flow flow;
    lw_profile_status status;
    double depth, flap_angle, flap_chord, trip;  // [m], [rad], [chords], [chords]
    double reynolds;                             // 0: a perfect fluid
    double waves;                                // n: they grow e^n before transition
    bool has_flap;
    bool has_stall;
    lw_layer_stall stall;  // of a row of angles with friction
    double unsure;         // part by which the lowest pressure may be off; NaN: not told
    lw_steps angles;       // [rad]
    lw_section_point points[LW_STEPS_MOST];
    lw_section_point others[LW_STEPS_MOST];  // where two roots hold, the one not taken; else NaN
    double pressures[LW_STEPS_MOST][LW_NODES_MOST];
    size_t count;  // of the angles, worked out so far
} lw_foil_section;

// --part: a foil of the boat at a depth, carrying a load at each speed, or at each angle.
typedef struct lw_foil_part {
    const lw_inputs *inputs;
    bool is_rudder;
    const lw_foil *foil;
    lw_craft craft;
    lw_named_section section;  // whose pressures count
    lw_whole_foil whole;
    bool has_load, has_section, is_measured;
    double load;  // [N]
    bool is_by_angle;
    lw_steps speeds, angles;  // [m/s], [rad]
    lw_unit speed_unit;
    lw_whole_point points[LW_STEPS_MOST];
    size_t count;                              // worked out so far
    double takes_off, cavitates;               // [m/s]; NaN: none
    lw_section_point sections[LW_STEPS_MOST];  // where the span is loaded most
    double pressures[LW_STEPS_MOST][LW_NODES_MOST];
} lw_foil_part;

const char *lw_foil_part_word(const lw_foil_part *part);  // "main" or "rudder"

// The faces of the two.
bool lw_foil_section_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                           lw_refusal *refusal);
bool lw_foil_part_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                        lw_refusal *refusal);
size_t lw_foil_section_steps(void *it);
size_t lw_foil_part_steps(void *it);
void lw_foil_section_step(void *it, size_t step);
void lw_foil_part_step(void *it, size_t step);
void lw_foil_section_end(void *it);
void lw_foil_part_end(void *it);
bool lw_foil_section_is_answered(const void *it);
bool lw_foil_part_is_answered(const void *it);
void lw_foil_section_tell(const void *it, lw_teller *teller);
void lw_foil_part_tell(const void *it, lw_teller *teller);
void lw_foil_section_draw(const void *it, FILE *out);
void lw_foil_part_draw(const void *it, FILE *out);

#endif
