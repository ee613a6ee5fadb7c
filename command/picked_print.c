// picked_print.c - the ranking as a sailor reads it ashore.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "answer/words/caution.h"
#include "command/cell.h"
#include "command/picked.h"
#include "command/terminal/print.h"

static size_t label_width(const lw_picked *picked)
{
    size_t wide = 3;
    for (size_t i = 0; i < picked->now.count; i++) {
        wide = lw_cell_width(wide, lw_picked_label(picked, i));
    }
    return wide;
}

void lw_picked_print_head(const lw_picked *picked)
{
    char text[600];
    const lw_gusts *gusts = &picked->now.gusts;
    const lw_person *person = &picked->inputs.sailor.person;
    LW_FIT(text, "%s: lull %.1f, mean %.1f, puff %.1f kn. %s; %s, %.0f kg with gear.",
           picked->inputs.day.name, gusts->lull / LW_KN, gusts->mean / LW_KN, gusts->puff / LW_KN,
           picked->inputs.boat.name, picked->inputs.sailor.name, person->mass + person->gear);
    lw_print_wrapped(stdout, text, 0, 0);
    LW_FIT(text, "Aim: %s (%s).", lw_aim_text(picked->now.aim), lw_aim_doc(picked->now.aim));
    lw_print_wrapped(stdout, text, 0, 0);
    putchar('\n');
}

static void print_row(const lw_picked *picked, size_t i, size_t wide)
{
    const lw_placing *place = &picked->now.places[i];
    const lw_prospect *p = &place->prospect;
    const double winds[] = {p->launches_at, p->stays_up_at, p->held_up_to};
    char text[LW_CELL_LENGTH];
    lw_cell_left(stdout, lw_picked_label(picked, place->pin), wide);
    LW_FIT(text, "none");
    if (place->can_be_sailed) lw_cell_time(text, p->seconds);
    lw_cell_right(stdout, text, 13);
    LW_FIT(text, "%.0f %%", 100.0 * p->flying);
    lw_cell_right(stdout, text, 8);
    LW_FIT(text, "-");
    if (place->can_be_sailed) LW_FIT(text, "%.2f ± %.2f", p->swims, p->swims_error);
    lw_cell_right(stdout, text, 14);
    for (int k = 0; k < 3; k++) {
        lw_cell_wind(text, winds[k]);
        lw_cell_right(stdout, text, 10);
    }
    putchar('\n');
}

static void print_table(const lw_picked *picked)
{
    const size_t wide = label_width(picked);
    const bool is_ranked = lw_picked_flies(&picked->now);
    printf("    %-*s%13s%8s%14s%10s%10s%10s\n", (int)wide, "pin", "time", "flying", "swims",
           "launches", "stays up", "held to");
    for (size_t i = 0; i < picked->now.count; i++) {
        if (is_ranked)
            printf("%2zu  ", i + 1);
        else
            fputs("    ", stdout);
        print_row(picked, i, wide);
    }
    fputs("    ", stdout);
    lw_print_wrapped(
        stdout,
        "Time, flying, swims: from rides. Launches (bearing away if need be), stays up "
        "(on every leg): steady wind. Held to: puffs, on every leg.",
        4, 4);
}

static void print_reasons(const lw_picked *picked)
{
    char text[LW_REASON_LENGTH], line[LW_REASON_LENGTH + 40];
    fputs("\nWhy\n", stdout);
    for (size_t i = 0; i < picked->now.count; i++) {
        const lw_placing *place = &picked->now.places[i];
        const bool is_first = place->reason == LW_REASON_FIRST;
        lw_picked_reason(picked, i, text);
        LW_FIT(line, "%s%s %s.", lw_picked_label(picked, place->pin), is_first ? " is" : "", text);
        printf("%2zu  ", i + 1);
        lw_print_wrapped(stdout, line, 4, 6);
    }
}

// How surely each is behind the one before.
static void print_behind(const lw_picked *picked)
{
    char text[LW_REASON_LENGTH];
    bool is_told = false;
    for (size_t i = 1; i < picked->now.count; i++) {
        if (!lw_picked_behind(picked, i, text)) continue;
        if (!is_told) fputs("\nHow sure the order is\n    ", stdout);
        if (is_told) fputs("    ", stdout);
        is_told = true;
        lw_print_wrapped(stdout, text, 4, 6);
    }
    if (!is_told) return;
    fputs("    ", stdout);
    lw_print_wrapped(stdout,
                     "By rides: from the number of them; nearer than twice that is too close to "
                     "call. What is not known: measurements within their errors, and the sailor "
                     "and wand of the rides, drawn for each of eight stretches of wind.",
                     4, 4);
}

// The two limits of each pin, and which of them ends its hold.
static void print_holds(const lw_picked *picked)
{
    const size_t wide = label_width(picked);
    char text[LW_REASON_LENGTH], cell[LW_CELL_LENGTH], more[LW_CELL_LENGTH];
    fputs("\nHeld to, in puffs: by margins and by rides; the lesser counts\n", stdout);
    for (size_t i = 0; i < picked->now.count; i++) {
        const lw_placing *place = &picked->now.places[i];
        fputs("    ", stdout);
        lw_cell_left(stdout, lw_picked_label(picked, place->pin), wide);
        lw_cell_wind(cell, place->prospect.margins_to);
        lw_cell_right(stdout, cell, 10);
        lw_cell_wind(cell, place->prospect.rides_to);
        LW_FIT(more, "%s%s", place->rides_end ? "" : "over ", cell);
        lw_cell_right(stdout, place->prospect.rides_to > 0.0 ? more : cell, 14);
        lw_picked_end(picked, place->pin, text);
        fputs("  ", stdout);
        lw_print_wrapped(stdout, text, wide + 30, wide + 30);
    }
    fputs("    ", stdout);
    lw_print_wrapped(stdout, LW_HELD_BY_MARGINS "; " LW_HELD_BY_RIDES ".", 4, 4);
}

static void print_orders(const lw_picked *picked)
{
    char text[LW_REASON_LENGTH];
    fputs("\nThe order if the wind is otherwise\n", stdout);
    lw_picked_order(picked, &picked->less, text);
    printf("    2 kn less  %s\n", text);
    lw_picked_order(picked, &picked->more, text);
    printf("    2 kn more  %s\n", text);
}

// One number of turns; in brackets when she does not fly in that wind.
static bool print_turns_cell(double turns, bool flies)
{
    char number[LW_CELL_LENGTH], text[LW_CELL_LENGTH];
    lw_cell_number(number, turns, 1, true);
    LW_FIT(text, flies ? "%s " : "(%s)", number);
    lw_cell_right(stdout, text, 10);
    return flies;
}

static void print_turns(const lw_picked *picked)
{
    char course[LW_COURSE_NAME];
    const size_t wide = label_width(picked);
    bool all_fly = true;
    lw_picked_course_name(picked, lw_picked_longest(picked), course);
    printf("\nRudder lift on, in turns from the reference mark, %s\n", course);
    printf("    %-*s%9s%10s%10s\n", (int)wide, "pin", "lull", "mean", "puff");
    for (size_t i = 0; i < picked->now.count; i++) {
        const lw_placing *place = &picked->now.places[i];
        if (!place->flies) continue;
        fputs("    ", stdout);
        lw_cell_left(stdout, lw_picked_label(picked, place->pin), wide);
        all_fly &= print_turns_cell(place->prospect.turns_lull, place->flies_in_lull);
        all_fly &= print_turns_cell(place->prospect.turns_mean, place->flies_in_mean);
        all_fly &= print_turns_cell(place->prospect.turns_puff, place->flies_in_puff);
        putchar('\n');
    }
    if (!all_fly) {
        fputs("    ( ) does not fly in that wind: turns for the lightest in which she does\n",
              stdout);
    }
}

static void print_steps(const lw_picked *picked)
{
    char text[LW_REASON_LENGTH], line[LW_REASON_LENGTH + 60];
    fputs("\nOne pin calmer\n", stdout);
    for (size_t pin = 0; pin + 1 < picked->now.count; pin++) {
        lw_picked_step(picked, pin, text);
        LW_FIT(line, "%s to %s: %s.", lw_picked_label(picked, pin),
               lw_picked_label(picked, pin + 1), text);
        fputs("    ", stdout);
        lw_print_wrapped(stdout, line, 4, 6);
    }
}

static void print_cautions(const lw_picked *picked)
{
    char lines[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH];
    const size_t count = lw_cautions(picked, lines);
    fputs("\nTake care\n", stdout);
    for (size_t i = 0; i < count; i++) {
        fputs("  - ", stdout);
        lw_print_wrapped(stdout, lines[i], 4, 4);
    }
}

void lw_picked_print(const lw_picked *picked)
{
    char text[LW_REASON_LENGTH];
    lw_picked_print_head(picked);
    if (!lw_picked_flies(&picked->now)) {
        lw_picked_no_flight(picked, text);
        lw_print_wrapped(stdout, text, 0, 0);
        putchar('\n');
    }
    print_table(picked);
    if (lw_picked_flies(&picked->now)) {
        print_reasons(picked);
        print_behind(picked);
        print_holds(picked);
    }
    print_orders(picked);
    if (lw_picked_flies(&picked->now)) {
        print_turns(picked);
        if (picked->now.count > 1) print_steps(picked);
    }
    print_cautions(picked);
}
