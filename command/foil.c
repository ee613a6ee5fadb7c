// foil.c - `lullwise foil`: a foil section, or a whole foil of a boat.
// SPDX-License-Identifier: MIT

#include "command/foil_ways.h"
#include "command/given.h"
#include "command/terminal/print.h"

bool lw_foil_read_section(lw_named_section *section, const lw_options *options)
{
    lw_faults faults = {0};
    const char *text = lw_options_text(options, "section");
    const bool is_read = lw_named_section_read(section, text, &faults);
    if (!is_read) lw_print_faults(stderr, &faults);
    lw_faults_free(&faults);
    return is_read;
}

// The first of some options that was given, or NULL.
static const char *first_given(const lw_options *options, const char *const *names)
{
    for (; *names; names++) {
        if (lw_options_has(options, *names)) return *names;
    }
    return NULL;
}

static lw_exit run(const lw_options *options)
{
    static const char *const of_boat[] = {"part", "boat", NULL};
    static const char *const of_boat_only[] = {"sailor", "load", "speed", "heel", NULL};
    static const char *const of_section_only[] = {"re", "trip", "flap-chord", NULL};
    static lw_inputs inputs;
    int pin;
    const bool is_whole = first_given(options, of_boat) != NULL;
    const char *wrong = first_given(options, is_whole ? of_section_only : of_boat_only);
    if (!is_whole && !lw_options_has(options, "section")) {
        lw_print_complaint("foil",
                           "which foil? --section 'NACA 2412', --section FILE with x and y "
                           "on each line, or --part main of the boat");
        return LW_EXIT_WRONG_INPUT;
    }
    if (wrong) {
        lw_print_complaint("foil", "--%s goes with %s", wrong,
                           is_whole ? "a section alone: leave out --boat and --part"
                                    : "a whole foil: --part main or --part rudder");
        return LW_EXIT_WRONG_INPUT;
    }
    if (!lw_given(&inputs, &pin, options)) return LW_EXIT_WRONG_INPUT;
    return is_whole ? lw_foil_of_boat(options, &inputs) : lw_foil_of_section(options, &inputs);
}

const lw_command lw_command_foil = {
    .name = "foil",
    .summary = "A foil section or a whole foil: lift, drag, moment, pressure, cavitation.",
    .operands = "",
    .takes =
        "section alpha re trip flap flap-chord boat sailor day set part depth heel speed load "
        "svg force json",
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
    .run = run,
};
