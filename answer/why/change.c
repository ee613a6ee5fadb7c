// change.c - what the first move changes, told: the boat now, then, and as she should fly.
// SPDX-License-Identifier: MIT

#include <stddef.h>

#include "answer/why/why.h"
#include "answer/words/move_text.h"
#include "answer/words/number_text.h"
#include "records/fault.h"

static void tell_stance(const lw_why *why, const char *key, const lw_stance *stance, lw_teller *t)
{
    const lw_seen seen = lw_seen_of(&why->scene, stance);
    lw_tell_object(t, key, NULL);
    lw_tell_rows(t, "levers", &lw_levers_table, &stance->levers);
    lw_tell_rows(t, "seen", &lw_seen_table, &seen);
    lw_tell_rows(t, "flight", &lw_flight_table, &stance->at[LW_IN_MEAN].flight);
    lw_tell_end(t);
}

static void tell_line(const char *what, const char *key, const lw_stance *stances[3], lw_teller *t)
{
    const lw_quantity *row = lw_table_find(&lw_flight_table, key);
    lw_tell_row(t);
    lw_tell_text(t, NULL, what);
    for (int i = 0; i < 3; i++) {
        char text[LW_CELL_LENGTH];
        lw_cell_value(text, row, &stances[i]->at[LW_IN_MEAN].flight);
        lw_tell_text(t, NULL, text);
    }
}

static void tell_tip(const char *what, size_t margin, const lw_stance *stances[3], lw_teller *t)
{
    lw_tell_row(t);
    lw_tell_text(t, NULL, what);
    for (int i = 0; i < 3; i++) {
        char text[LW_CELL_LENGTH];
        const lw_answer *puff = &stances[i]->at[LW_IN_PUFF];
        lw_cell_value(text, &lw_margins_table.rows[margin], &puff->margins);
        lw_tell_text(t, NULL, puff->outcome == LW_NO_BALANCE ? "lost" : text);
    }
}

static void tell_flight_lines(const lw_stance *stances[3], lw_teller *t)
{
    tell_line("bow up", "pitch", stances, t);
    tell_line("hull above the water", "ride_height", stances, t);
    tell_line("wand", "wand", stances, t);
    tell_line("speed", "speed", stances, t);
    tell_tip("main tip in the puff", offsetof(lw_margins, tip_depth) / sizeof(double), stances, t);
    tell_tip("rudder tip in the puff", offsetof(lw_margins, rudder_tip) / sizeof(double), stances,
             t);
}

// Of a boat that does not take off.
static void tell_hump_line(const lw_why *why, const lw_stance *stances[3], lw_teller *t)
{
    const lw_quantity *row = lw_table_find(&lw_seen_table, "hump");
    lw_tell_row(t);
    lw_tell_text(t, NULL, "spare through the hump");
    for (int i = 0; i < 3; i++) {
        char text[LW_CELL_LENGTH];
        const lw_seen seen = lw_seen_of(&why->scene, stances[i]);
        lw_cell_value(text, row, &seen);
        lw_tell_text(t, NULL, text);
    }
}

void lw_why_tell_change(const lw_why *why, lw_teller *t)
{
    static const lw_item columns[] = {
        {.key = "what", .head = "in the mean wind", .form = LW_AS_TEXT},
        {.key = "before", .head = "now", .form = LW_AS_TEXT},
        {.key = "after", .head = "then", .form = LW_AS_TEXT},
        {.key = "should", .head = "should", .form = LW_AS_TEXT},
    };
    const lw_remedy *first = &why->remedies[0];
    const lw_stance *stances[3] = {&first->before, &first->after, &why->found.should};
    char head[LW_WHY_LENGTH], move[LW_MOVE_LENGTH];
    lw_move_text(&why->inputs->boat, first, move);
    LW_FIT(head, "Then, if you %s", move);
    lw_tell_table(t, "change", head, columns, LW_COUNT_OF(columns));
    if (lw_why_stays_down(why))
        tell_hump_line(why, stances, t);
    else
        tell_flight_lines(stances, t);
    lw_tell_end(t);
    tell_stance(why, "before", &first->before, t);
    tell_stance(why, "after", &first->after, t);
    tell_stance(why, "should", &why->found.should, t);
}
