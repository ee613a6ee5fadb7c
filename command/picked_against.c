// picked_against.c - two answers side by side: as things are, and with something changed.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/words/compared.h"
#include "command/cell.h"
#include "command/picked.h"
#include "command/terminal/print.h"

#define NAME_WIDTH 26
#define CELL_WIDTH 16

static void print_cells(const char *name, const char *a, const char *b, const char *difference)
{
    fputs("  ", stdout);
    lw_cell_left(stdout, name, NAME_WIDTH);
    lw_cell_right(stdout, a, CELL_WIDTH);
    lw_cell_right(stdout, b, CELL_WIDTH);
    if (difference[0]) lw_cell_right(stdout, difference, CELL_WIDTH);
    putchar('\n');
}

// "+1.2 kn", or "=" when it is nothing as far as it is shown: of the two as they stand there.
static void fit_difference(char text[LW_CELL_LENGTH], const lw_quantity *row, double a, double b)
{
    char number[LW_CELL_LENGTH];
    const double last = pow(10.0, row->decimals);
    const double more = (round(b * last) - round(a * last)) / last;
    lw_cell_number(number, more, row->decimals, true);
    const char *unit = lw_unit_text(row->unit);
    if (strpbrk(number, "123456789"))
        lw_text_fit(text, LW_CELL_LENGTH, "%s%s%s", number, unit[0] ? " " : "", unit);
    else
        lw_text_fit(text, LW_CELL_LENGTH, "=");
}

// A member with its unit, or "none"; tells whether there is none.
static bool fit_value(char text[LW_CELL_LENGTH], const lw_quantity *row, const lw_prospect *p)
{
    const size_t at = (size_t)(row - lw_prospect_table.rows);
    if (lw_prospect_may_lack(at) && lw_quantity_value(row, p) <= 0.0) {
        lw_text_fit(text, LW_CELL_LENGTH, "none");
        return true;
    }
    lw_cell_value(text, row, p);
    return false;
}

static void print_value(const char *name, const char *key, const lw_prospect *a,
                        const lw_prospect *b)
{
    const lw_quantity *row = lw_table_find(&lw_prospect_table, key);
    char one[LW_CELL_LENGTH], other[LW_CELL_LENGTH], difference[LW_CELL_LENGTH];
    const bool lacks_one = fit_value(one, row, a), lacks_other = fit_value(other, row, b);
    difference[0] = '\0';
    if (!lacks_one && !lacks_other)
        fit_difference(difference, row, lw_quantity_shown(row, a), lw_quantity_shown(row, b));
    print_cells(name, one, other, difference);
}

static void print_first(const lw_picked *a, const lw_picked *b)
{
    // clang-format off
    static const struct { const char *name, *key; } rows[] = {
        {"  share of time flying", "flying"},
        {"  swims round the course", "swims"},
        {"  launches at",         "launches_at"},
        {"  stays up from",       "stays_up_at"},
        {"  held to",             "held_up_to"},
        {"  made good under way", "speed"},
        {"  turns in the lull",   "turns_lull"},
        {"  turns in the mean",   "turns_mean"},
        {"  turns in the puff",   "turns_puff"},
    };
    // clang-format on
    const lw_placing *first = &a->now.places[0], *other = &b->now.places[0];
    char one[LW_CELL_LENGTH], two[LW_CELL_LENGTH], difference[LW_CELL_LENGTH];
    print_cells("best pin", lw_picked_label(a, first->pin), lw_picked_label(b, other->pin), "");
    lw_cell_time(one, first->prospect.seconds);
    lw_cell_time(two, other->prospect.seconds);
    const double more = round(other->prospect.seconds) - round(first->prospect.seconds);
    LW_FIT(difference, fabs(more) < 0.5 ? "=" : "%+.0f s", more);
    print_cells("  time round the course", one, two, difference);
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        print_value(rows[i].name, rows[i].key, &first->prospect, &other->prospect);
    }
}

static void print_pins(const lw_picked *a, const lw_picked *b)
{
    char name[LW_CELL_LENGTH];
    fputs("\nEvery pin: time round the course, and held to\n", stdout);
    for (size_t pin = 0; pin < a->now.count; pin++) {
        const int same = lw_boat_pin(&b->inputs.boat, lw_picked_label(a, pin));
        if (same < 0) continue;
        const lw_prospect *p = &lw_picked_place_of(&a->now, pin)->prospect;
        const lw_prospect *q = &lw_picked_place_of(&b->now, (size_t)same)->prospect;
        LW_FIT(name, "%s", lw_picked_label(a, pin));
        print_value(name, "seconds", p, q);
        print_value("", "held_up_to", p, q);
    }
}

static void print_differences(const lw_picked *as_is, const lw_picked *changed)
{
    char lines[LW_COMPARED_MOST][LW_REASON_LENGTH];
    const size_t count = lw_compared(lw_side_of(as_is, NULL), lw_side_of(changed, NULL), lines);
    fputs("\nWhat the change does\n", stdout);
    for (size_t i = 0; i < count; i++) {
        fputs("  ", stdout);
        lw_print_wrapped(stdout, lines[i], 2, 2);
    }
}

static void print_change(const lw_options *options)
{
    const char *text;
    char tame[200], line[220];
    for (size_t n = 0; (text = lw_options_nth(options, "against", n)); n++) {
        lw_text_tame(tame, sizeof tame, text);
        LW_FIT(line, "%s %s", n ? "        " : "Changed:", tame);
        lw_print_wrapped(stdout, line, 0, 9);
    }
}

void lw_picked_print_against(const lw_picked *as_is, const lw_picked *changed,
                             const lw_options *options)
{
    char one[LW_REASON_LENGTH], two[LW_REASON_LENGTH];
    lw_picked_print_head(as_is);
    print_change(options);
    putchar('\n');
    print_cells("", "as it is", "changed", "difference");
    print_first(as_is, changed);
    print_pins(as_is, changed);
    putchar('\n');
    lw_picked_order(as_is, &as_is->now, one);
    lw_picked_order(changed, &changed->now, two);
    printf("Order as it is: %s\nOrder changed:  %s\n", one, two);
    print_differences(as_is, changed);
}
