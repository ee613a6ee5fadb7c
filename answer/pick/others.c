// others.c - the order in other winds; what a pin with less lift costs and buys.
// SPDX-License-Identifier: MIT

#include "answer/pick/told.h"
#include "records/fault.h"

static void tell_labels(lw_teller *t, const char *key, const lw_picked *picked,
                        const lw_choice *choice)
{
    lw_tell_list(t, key, NULL);
    for (size_t i = 0; i < choice->count; i++) {
        lw_tell_text(t, NULL, lw_picked_label(picked, choice->places[i].pin));
    }
    lw_tell_end(t);
}

static void tell_orders(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {WIND("wind_more", NULL), TEXT("wind", ""), TEXT("order", "")};
    const lw_choice *const choices[] = {&picked->less, &picked->more};
    const lw_unit unit = lw_speed_unit(t->speed_unit);
    lw_tell_table(t, "orders", "The order if the wind is otherwise", columns, LW_COUNT_OF(columns));
    for (int i = 0; i < 2; i++) {
        char order[LW_REASON_LENGTH], wind[LW_CELL_LENGTH];
        lw_picked_order(picked, choices[i], order);
        LW_FIT(wind, "%s %s", LW_SPEED_TEXT(LW_WIND_STEP, unit == LW_UNIT_KN ? 0 : 1, unit),
               i ? "more" : "less");
        lw_tell_row(t);
        lw_tell_number(t, NULL, i ? LW_WIND_STEP : -LW_WIND_STEP);
        lw_tell_text(t, NULL, wind);
        lw_tell_text(t, NULL, order);
    }
    lw_tell_end(t);
    tell_labels(t, "order_less_wind", picked, &picked->less);
    tell_labels(t, "order_more_wind", picked, &picked->more);
}

static void tell_less_lift(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {TEXT("from", NULL),
                                      TEXT("to", NULL),
                                      {"speed_lost", NULL, LW_AS_SIGNED, LW_UNIT_KN, 1, NULL},
                                      {"seconds_lost", NULL, LW_AS_TIME, LW_UNIT_S, 0, NULL},
                                      {"hold_gained", NULL, LW_AS_SIGNED, LW_UNIT_KN, 1, NULL},
                                      TEXT("sentence", "")};
    const bool is_shown = lw_picked_flies(&picked->now) && picked->now.count > 1;
    lw_tell_table(t, "less_lift", is_shown ? "One pin with less lift" : NULL, columns,
                  LW_COUNT_OF(columns));
    for (size_t pin = 0; pin + 1 < picked->now.count; pin++) {
        const lw_prospect *a = &lw_picked_place_of(&picked->now, pin)->prospect;
        const lw_prospect *b = &lw_picked_place_of(&picked->now, pin + 1)->prospect;
        const bool are_sailed = a->seconds > 0.0 && b->seconds > 0.0;
        const bool are_held = a->held_up_to > 0.0 && b->held_up_to > 0.0;
        const char *from = lw_picked_label(picked, pin), *to = lw_picked_label(picked, pin + 1);
        char text[LW_REASON_LENGTH], line[LW_REASON_LENGTH + 60];
        lw_picked_step(picked, pin, text);
        LW_FIT(line, "%s to %s: %s.", from, to, text);
        lw_tell_row(t);
        lw_tell_text(t, NULL, from);
        lw_tell_text(t, NULL, to);
        lw_tell_number(t, NULL, are_sailed ? a->speed - b->speed : NAN);
        lw_tell_number(t, NULL, are_sailed ? b->seconds - a->seconds : NAN);
        lw_tell_number(t, NULL, are_held ? b->held_up_to - a->held_up_to : NAN);
        lw_tell_text(t, NULL, line);
    }
    lw_tell_end(t);
}

void lw_tell_others(lw_teller *t, const lw_picked *picked)
{
    tell_orders(t, picked);
    tell_less_lift(t, picked);
}
