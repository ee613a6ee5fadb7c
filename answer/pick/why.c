// why.c - why each place stands where it stands, and how surely.
// SPDX-License-Identifier: MIT

#include "answer/pick/told.h"
#include "records/fault.h"

// Stable words for the reasons: their names in small letters.
#define REASON_KEY(name, text) [LW_REASON_##name] = #name,
static const char *const reason_names[] = {LW_REASON_LIST(REASON_KEY)};

static void fit_reason_key(char key[16], lw_reason reason)
{
    size_t i = 0;
    for (; reason_names[reason][i] && i < 15; i++) key[i] = (char)(reason_names[reason][i] | 0x20);
    key[i] = '\0';
}

static void tell_reasons(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {{"place", "", LW_AS_NUMBER, LW_UNIT_NONE, 0, ""},
                                      TEXT("pin", NULL),
                                      TEXT("reason", NULL),
                                      TEXT("sentence", "")};
    lw_tell_table(t, "why", lw_picked_flies(&picked->now) ? "Why" : NULL, columns,
                  LW_COUNT_OF(columns));
    for (size_t i = 0; i < picked->now.count; i++) {
        const lw_placing *place = &picked->now.places[i];
        const char *label = lw_picked_label(picked, place->pin);
        char text[LW_REASON_LENGTH], line[LW_REASON_LENGTH + 40], key[16];
        lw_picked_reason(picked, i, text);
        fit_reason_key(key, place->reason);
        LW_FIT(line, "%s%s %s.", label, place->reason == LW_REASON_FIRST ? " is" : "", text);
        lw_tell_row(t);
        lw_tell_number(t, NULL, (double)i + 1.0);
        lw_tell_text(t, NULL, label);
        lw_tell_text(t, NULL, key);
        lw_tell_text(t, NULL, line);
    }
    lw_tell_end(t);
}

// How surely each is behind the one before.
static void tell_behind(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {
        TEXT("pin", NULL),
        {"behind", NULL, LW_AS_TIME, LW_UNIT_S, 0, NULL},
        {"behind_error", NULL, LW_AS_TIME, LW_UNIT_S, 0, NULL},
        {"behind_spread", NULL, LW_AS_TIME, LW_UNIT_S, 0, NULL},
        {"behind_chance", NULL, LW_AS_CHANCE, LW_UNIT_PERCENT, 0, NULL},
        TRUTH("is_close"),
        TEXT("sentence", "")};
    const bool is_weighed = picked->now.count > 1 && lw_picked_flies(&picked->now);
    char text[LW_REASON_LENGTH];
    size_t told = 0;
    for (size_t i = 1; i < picked->now.count; i++) told += lw_picked_behind(picked, i, text);
    lw_tell_table(t, "order_sure", is_weighed && told ? "How sure the order is" : NULL, columns,
                  LW_COUNT_OF(columns));
    for (size_t i = 1; i < picked->now.count; i++) {
        const lw_placing *place = &picked->now.places[i];
        if (!lw_picked_behind(picked, i, text)) continue;
        lw_tell_row(t);
        lw_tell_text(t, NULL, lw_picked_label(picked, place->pin));
        lw_tell_number(t, NULL, place->behind);
        lw_tell_number(t, NULL, place->error);
        lw_tell_number(t, NULL, place->spread);
        lw_tell_number(t, NULL, place->chance);
        lw_tell_truth(t, NULL, place->is_close);
        lw_tell_text(t, NULL, text);
    }
    lw_tell_end(t);
    if (!is_weighed || !told) return;
    lw_tell_note(t, "order_sure_note",
                 "By rides: from the number of them; nearer than twice that is too close to call. "
                 "What is not known: measurements within their errors, and the sailor and wand of "
                 "the rides, drawn 32 times. Times and swims are expected over both.");
}

void lw_tell_why(lw_teller *t, const lw_picked *picked)
{
    tell_reasons(t, picked);
    tell_behind(t, picked);
}
