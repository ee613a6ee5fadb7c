// foil.c - `lullwise foil`: what is asked, and which of its two ways it is.
// SPDX-License-Identifier: MIT

#include "answer/foil/foil.h"

static const lw_question of_section = {
    .size = sizeof(lw_foil_section),
    .begin = lw_foil_section_begin,
    .steps = lw_foil_section_steps,
    .step = lw_foil_section_step,
    .end = lw_foil_section_end,
    .is_answered = lw_foil_section_is_answered,
    .tell = lw_foil_section_tell,
    .draw = lw_foil_section_draw,
};

static const lw_question of_part = {
    .size = sizeof(lw_foil_part),
    .begin = lw_foil_part_begin,
    .steps = lw_foil_part_steps,
    .step = lw_foil_part_step,
    .end = lw_foil_part_end,
    .is_answered = lw_foil_part_is_answered,
    .tell = lw_foil_part_tell,
    .draw = lw_foil_part_draw,
};

typedef struct asked {
    const lw_question *way;
    union {
        lw_foil_section section;
        lw_foil_part part;
    } of;
} asked;

// The first of some options that was given, or NULL.
static const char *first_given(const lw_options *options, const char *const *names)
{
    for (; *names; names++) {
        if (lw_options_has(options, *names)) return *names;
    }
    return NULL;
}

static bool begin(void *it, const lw_inputs *inputs, const lw_options *options, lw_refusal *refusal)
{
    static const char *const of_boat[] = {"part", "boat", NULL};
    static const char *const of_boat_only[] = {"sailor", "load", "speed", "heel", NULL};
    static const char *const of_section_only[] = {"re", "trip", "waves", "flap-chord", NULL};
    asked *a = it;
    const bool is_whole = first_given(options, of_boat) != NULL;
    const char *wrong = first_given(options, is_whole ? of_section_only : of_boat_only);
    if (!is_whole && !lw_options_has(options, "section"))
        return lw_refuse(refusal,
                         "which foil? --section 'NACA 2412', --section FILE with x and y "
                         "on each line, or --part main of the boat");
    if (wrong)
        return lw_refuse(refusal, "--%s goes with %s", wrong,
                         is_whole ? "a section alone: leave out --boat and --part"
                                  : "a whole foil: --part main or --part rudder");
    a->way = is_whole ? &of_part : &of_section;
    return a->way->begin(&a->of, inputs, options, refusal);
}

static size_t steps(void *it)
{
    asked *a = it;
    return a->way->steps(&a->of);
}

static void step(void *it, size_t step)
{
    asked *a = it;
    a->way->step(&a->of, step);
}

static void end(void *it)
{
    asked *a = it;
    a->way->end(&a->of);
}

static bool is_answered(const void *it)
{
    const asked *a = it;
    return a->way->is_answered(&a->of);
}

static void tell(const void *it, lw_teller *teller)
{
    const asked *a = it;
    a->way->tell(&a->of, teller);
}

static void draw(const void *it, FILE *out)
{
    const asked *a = it;
    a->way->draw(&a->of, out);
}

const lw_question lw_question_foil = {
    .name = "foil",
    .summary = "A foil section or a whole foil: lift, drag, moment, pressure, cavitation.",
    .takes =
        "section alpha re trip waves flap flap-chord boat sailor day set part depth heel speed "
        "load svg force json",
    .doc =
        "With --section alone: the flow about a section given by its designation (NACA of four or "
        "five digits, or of the six series) or by a file of coordinates: x and y on each line, "
        "after a title or none, once around from the tail or both sides from the nose; with --re "
        "the water has friction, and the section drag and a greatest lift. --svg draws the "
        "pressures and the polar. With --part: a foil of the boat at a depth, at each speed "
        "at which it carries a load (the whole weight, or --load), or with --alpha at each angle "
        "at one speed; --section then says whose pressures count, else the boat's own do, and "
        "--svg "
        "draws them where the span is loaded most. Ends with 1 when no speed "
        "carries the load.",
    .size = sizeof(asked),
    .begin = begin,
    .steps = steps,
    .step = step,
    .end = end,
    .is_answered = is_answered,
    .tell = tell,
    .draw = draw,
    .work = "each angle or speed",
};
