// held_print.c - hold on or stop, as a sailor reads it, and as JSON.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/words/caution.h"
#include "command/cell.h"
#include "command/held.h"
#include "command/print.h"

static void print_head(const lw_held *held)
{
    char text[600], stop[LW_CELL_LENGTH];
    const lw_inputs *inputs = &held->picked.inputs;
    lw_cell_time(stop, held->hold.stop);
    LW_FIT(text,
           "%s, %s; %s. Mean wind %.1f kn now and %.1f kn at the finish, lull and puff in "
           "proportion; %.2f nmi left; a stop costs %s.",
           inputs->boat.name, inputs->sailor.name, inputs->day.name, held->hold.now / LW_KN,
           held->hold.later / LW_KN, held->hold.left / LW_NMI, stop);
    lw_print_wrapped(stdout, text, 0, 0);
    putchar('\n');
}

// What only a pin to change to has: saved, give or take, chance, break-even.
static void print_change(const lw_change *change)
{
    char text[LW_CELL_LENGTH];
    lw_cell_time(text, change->saved);
    lw_cell_right(stdout, text, 13);
    lw_cell_time(text, lw_hold_unsure(change->error, change->spread));
    lw_cell_right(stdout, text, 12);
    lw_chance_text(text, change->chance);
    lw_cell_right(stdout, text, 11);
    LW_FIT(text, "never");
    if (change->is_ever) {
        const double miles = change->even_left / LW_NMI;
        LW_FIT(text, "%s%.*f nmi", miles > 99.0 ? "over " : "", miles < 9.95 ? 2 : 0,
               fmin(miles, 99.0));
    }
    lw_cell_right(stdout, text, 12);
}

static void print_row(const lw_held *held, size_t pin, size_t wide)
{
    char text[LW_CELL_LENGTH];
    double error;
    const bool is_in = pin == held->hold.pin;
    const lw_change *change = &held->hold.changes[pin];
    fputs("  ", stdout);
    lw_cell_left(stdout, lw_picked_label(&held->picked, pin), wide);
    lw_cell_time(text, is_in ? change->held : change->changed);
    lw_cell_right(stdout, text, 13);
    if (is_in)
        printf("%13s%12s%11s%12s", "held", "", "", "");
    else
        print_change(change);
    LW_FIT(text, "%.1f", lw_hold_swims(&held->hold, pin, &error));
    lw_cell_right(stdout, text, 7);
    LW_FIT(text, "%.1f", error);
    lw_cell_right(stdout, text, 6);
    putchar('\n');
}

static void print_table(const lw_held *held)
{
    size_t wide = 3;
    const size_t count = held->picked.outlook->pin_count;
    for (size_t i = 0; i < count; i++) {
        wide = lw_cell_width(wide, lw_picked_label(&held->picked, i));
    }
    printf("\n  %-*s%13s%13s%12s%11s%12s%7s%6s\n", (int)wide, "pin", "to finish", "saves", "+-",
           "chance", "break-even", "swims", "+-");
    for (size_t pin = 0; pin < count; pin++) print_row(held, pin, wide);
}

// What ends the hold of the pin in the boat, and swims where the wind is greatest.
static void print_why(const lw_held *held)
{
    char text[800], end[LW_REASON_LENGTH];
    const lw_picked *picked = &held->picked;
    const double puff = lw_hold_puff(&held->hold, picked->now.gusts.puff) / LW_KN;
    lw_picked_end(picked, held->hold.pin, end);
    const double most = lw_picked_place_of(&picked->now, held->hold.pin)->prospect.held_up_to;
    if (most > 0.0)
        LW_FIT(text, "%s is held up to %.1f kn of puff, then: %s; puffs at the finish are %.1f kn.",
               lw_picked_label(picked, held->hold.pin), most / LW_KN, end, puff);
    else
        LW_FIT(text, "%s is held in no wind: %s; puffs at the finish are %.1f kn.",
               lw_picked_label(picked, held->hold.pin), end, puff);
    fputs("\nWhy  ", stdout);
    lw_print_wrapped(stdout, text, 5, 5);
    if (!held->hold.has_best) return;
    const size_t pins[] = {held->hold.pin, held->hold.best};
    for (int i = 0; i < 2; i++) {
        double error;
        const double swims = lw_hold_swims_an_hour(&held->hold, pins[i], &error);
        LW_FIT(text, "%s: %.1f swims an hour, give or take %.1f, flying %.0f %% of the time.",
               lw_picked_label(picked, pins[i]), swims, error,
               100.0 * lw_hold_flying(&held->hold, pins[i]));
        fputs("     ", stdout);
        lw_print_wrapped(stdout, text, 5, 5);
    }
}

static void print_trust(const lw_held *held)
{
    char text[200];
    putchar('\n');
    if (lw_hold_is_beyond_rides(&held->hold)) {
        LW_FIT(text, "Rides reach from %.1f to %.1f kn of mean wind; beyond, the nearer stands.",
               LW_RIDE_LEAST * held->hold.now / LW_KN, LW_RIDE_MOST * held->hold.now / LW_KN);
        lw_print_wrapped(stdout, text, 0, 0);
    }
    lw_print_wrapped(
        stdout,
        "Saves: by stopping here, the stop counted. Break-even: stop with more left, hold with "
        "less. +- and chance: over the gusts of the rides, your measurements within their errors, "
        "and what is judged of the sailor and the wand, drawn eight times, the same for every pin. "
        "They know nothing of what the model leaves out. Time yourself changing a pin, and say it "
        "with --stop.",
        0, 0);
}

static void print_caution(const char *text)
{
    fputs("  - ", stdout);
    lw_print_wrapped(stdout, text, 4, 4);
}

// Puffs at the finish above what any pin is held in.
static void print_unheld(const lw_held *held)
{
    char text[LW_CAUTION_LENGTH];
    const lw_choice *now = &held->picked.now;
    const double puff = lw_hold_puff(&held->hold, now->gusts.puff);
    double most = 0.0;
    for (size_t i = 0; i < now->count; i++) most = fmax(most, now->places[i].prospect.held_up_to);
    if (puff <= most) return;
    if (most <= 0.0) {
        print_caution(
            "No pin is held in any wind on every leg: be ready to come off the foils, or to "
            "go in.");
        return;
    }
    LW_FIT(text,
           "Puffs of %.1f kn come before the finish, and no pin is held in more than %.1f kn: be "
           "ready to come off the foils, or to go in.",
           puff / LW_KN, most / LW_KN);
    print_caution(text);
}

static void print_cautions(const lw_held *held)
{
    char lines[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH];
    const size_t count = lw_cautions(&held->picked, lines);
    fputs("\nTake care\n", stdout);
    print_unheld(held);
    print_caution(
        "Faster is not safer. When the wind is more than you can handle, come off the "
        "foils or go in, whatever the race.");
    print_caution(
        "Stop clear of other boats and of the shore: she drifts while you change the "
        "pin.");
    for (size_t i = 0; i < count; i++) print_caution(lines[i]);
}

void lw_held_print(const lw_held *held)
{
    char text[LW_HELD_LENGTH];
    print_head(held);
    lw_held_answer(held, text);
    lw_print_wrapped(stdout, text, 0, 0);
    if (lw_hold_flies(&held->hold)) {
        print_table(held);
        print_why(held);
        print_trust(held);
    }
    print_cautions(held);
}
