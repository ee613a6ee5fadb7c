// places.c - every place of a ranking in numbers.
// SPDX-License-Identifier: MIT

#include "answer/pick/told.h"
#include "lullwise/choice_find.h"

// clang-format off
static const lw_item place_columns[] = {
    {"place", "", LW_AS_NUMBER, LW_UNIT_NONE, 0, ""},
    TEXT("pin", "pin"),
    {"seconds",      "time",   LW_AS_TIME,   LW_UNIT_S,       0, "none"},
    {"flying",       "flying", LW_AS_NUMBER, LW_UNIT_PERCENT, 0, NULL},
    {"swims",        "swims",  LW_AS_NUMBER, LW_UNIT_NONE,    2, "-"},
    {"swims_error",  "",       LW_AS_ERROR,  LW_UNIT_NONE,    2, ""},
    WIND("launches_at", "takes off"), WIND("stays_up_at", "stays up"),
    WIND("held_up_to", "held to"),
    WIND("speed", NULL),
    {"swim_seconds", NULL, LW_AS_TIME, LW_UNIT_S, 0, NULL},
    {"hull_seconds", NULL, LW_AS_TIME, LW_UNIT_S, 0, NULL},
    {"puff_to_spare", NULL, LW_AS_SIGNED, LW_UNIT_KN, 1, NULL},
    TRUTH("can_be_sailed"), TRUTH("flies"), TRUTH("is_held"),
};
// clang-format on

static void tell_place(lw_teller *t, const lw_picked *picked, size_t i)
{
    const lw_placing *place = &picked->now.places[i];
    const lw_prospect *p = &place->prospect;
    const bool is_sailed = place->can_be_sailed, is_held = p->held_up_to > 0.0;
    const double winds[] = {p->launches_at, p->stays_up_at, p->held_up_to, p->speed};
    lw_tell_row(t);
    lw_tell_number(t, NULL, lw_picked_flies(&picked->now) ? (double)i + 1.0 : NAN);
    lw_tell_text(t, NULL, lw_picked_label(picked, place->pin));
    lw_tell_number(t, NULL, is_sailed ? there(p->seconds) : NAN);
    lw_tell_number(t, NULL, p->flying);
    lw_tell_number(t, NULL, place->flies ? p->swims : NAN);
    lw_tell_number(t, NULL, place->flies ? p->swims_error : NAN);
    for (size_t k = 0; k < LW_COUNT_OF(winds); k++) lw_tell_number(t, NULL, there(winds[k]));
    lw_tell_number(t, NULL, p->swim_seconds);
    lw_tell_number(t, NULL, p->hull_seconds);
    lw_tell_number(t, NULL, is_held ? p->held_up_to - picked->now.gusts.puff : NAN);
    lw_tell_truth(t, NULL, is_sailed);
    lw_tell_truth(t, NULL, place->flies);
    lw_tell_truth(t, NULL, lw_placing_holds(place, picked->now.gusts.puff));
}

void lw_tell_places(lw_teller *t, const lw_picked *picked)
{
    lw_tell_table(t, "places", "", place_columns, LW_COUNT_OF(place_columns));
    for (size_t i = 0; i < picked->now.count; i++) tell_place(t, picked, i);
    lw_tell_end(t);
    lw_tell_note(
        t, "places_note",
        "Time, flying, swims: from rides; flying: of the time under way, not in the water. "
        "Takes off (bearing away if need be), stays up (on every leg): steady wind. Held "
        "to: puffs, on every leg.");
}
