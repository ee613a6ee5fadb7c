// holds.c - what each pin is held in, what ends it, and its limits on every course.
// SPDX-License-Identifier: MIT

#include "answer/pick/told.h"
#include "answer/words/margin_text.h"
#include "records/fault.h"

// "over 27.9 kn" where rides met no end.
static void tell_rides_to(lw_teller *t, const lw_placing *place)
{
    char text[LW_CELL_LENGTH];
    const double to = place->prospect.rides_to;
    LW_FIT(text, "%s%s", place->rides_end ? "" : "over ", LW_SPEED_TEXT(to, 1, t->speed_unit));
    if (to > 0.0)
        lw_tell_number_as(t, NULL, to, text);
    else
        lw_tell_number(t, NULL, NAN);
}

static void tell_hold(lw_teller *t, const lw_picked *picked, const lw_placing *place)
{
    char end[LW_REASON_LENGTH], course[LW_COURSE_NAME];
    const size_t hardest = lw_outlook_hardest(picked->outlook, place->pin);
    const lw_range *range = &picked->outlook->ranges[place->pin][hardest];
    const bool is_by_margin = place->prospect.held_up_to > 0.0 && !place->ends_by_rides;
    lw_picked_end(picked, place->pin, end);
    lw_picked_course_name(picked, hardest, course);
    lw_tell_row(t);
    lw_tell_text(t, NULL, lw_picked_label(picked, place->pin));
    lw_tell_number(t, NULL, there(place->prospect.margins_to));
    tell_rides_to(t, place);
    lw_tell_text(t, NULL, end);
    lw_tell_text(t, NULL, is_by_margin ? lw_margin_key(range->ends_by) : NULL);
    lw_tell_text(t, NULL, course);
    lw_tell_truth(t, NULL, place->ends_by_rides);
    lw_tell_truth(t, NULL, place->rides_end);
    lw_tell_truth(t, NULL, is_by_margin && range->ends_in_puff);
}

// The two limits of each pin, and which of them ends its hold.
void lw_tell_holds(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {
        TEXT("pin", "pin"),           WIND("margins_to", "by margins"),
        WIND("rides_to", "by rides"), TEXT("end", "what ends it"),
        TEXT("ends_by", NULL),        TEXT("held_least", NULL),
        TRUTH("ends_by_rides"),       TRUTH("rides_end"),
        TRUTH("ends_in_puff")};
    const bool is_shown = lw_picked_flies(&picked->now);
    lw_tell_table(t, "holds",
                  is_shown ? "Held to, in puffs: by margins and by rides; the lesser counts" : NULL,
                  columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < picked->now.count; i++) tell_hold(t, picked, &picked->now.places[i]);
    lw_tell_end(t);
    if (is_shown) lw_tell_note(t, "holds_note", LW_HELD_BY_MARGINS "; " LW_HELD_BY_RIDES ".");
}

// Every pin on every course.
void lw_tell_ranges(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {TEXT("pin", NULL),         TEXT("course", NULL),
                                      WIND("launches_at", NULL), WIND("stays_up_at", NULL),
                                      WIND("held_up_to", NULL),  TEXT("ends_by", NULL),
                                      TRUTH("ends_in_puff")};
    lw_tell_table(t, "ranges", NULL, columns, LW_COUNT_OF(columns));
    for (size_t pin = 0; pin < picked->outlook->pin_count; pin++) {
        for (size_t c = 0; c < picked->outlook->course_count; c++) {
            const lw_range *range = &picked->outlook->ranges[pin][c];
            char course[LW_COURSE_NAME];
            lw_picked_course_name(picked, c, course);
            lw_tell_row(t);
            lw_tell_text(t, NULL, lw_picked_label(picked, pin));
            lw_tell_text(t, NULL, course);
            lw_tell_number(t, NULL, range->has_launch ? range->launches_at : NAN);
            lw_tell_number(t, NULL, range->has_flight ? range->stays_up_at : NAN);
            lw_tell_number(t, NULL, range->has_hold ? range->held_up_to : NAN);
            lw_tell_text(t, NULL, range->has_hold ? lw_margin_key(range->ends_by) : NULL);
            lw_tell_truth(t, NULL, range->ends_in_puff);
        }
    }
    lw_tell_end(t);
}
