// turns.c - rudder turns of every pin, for lull, mean and puff and through the band.
// SPDX-License-Identifier: MIT

#include "answer/pick/told.h"
#include "lullwise/choice_find.h"
#include "records/fault.h"

void lw_tell_turns_in(lw_teller *t, const lw_item *item, const lw_placing *place, lw_turns_in in)
{
    if (!lw_placing_stays_up(place, in.wind))
        lw_tell_number(t, item, NAN);
    else if (isfinite(in.turns) && !lw_placing_holds(place, in.wind))
        lw_tell_bracketed(t, item, in.turns);
    else
        lw_tell_number(t, item, in.turns);
}

static void tell_turns_row(lw_teller *t, const lw_picked *picked, const lw_placing *place)
{
    const lw_prospect *p = &place->prospect;
    const lw_gusts *gusts = &picked->now.gusts;
    const double winds[] = {gusts->lull, gusts->mean, gusts->puff};
    const double turns[] = {p->turns_lull, p->turns_mean, p->turns_puff};
    const double most = picked->outlook->most_turns[place->pin];
    lw_tell_row(t);
    lw_tell_text(t, NULL, lw_picked_label(picked, place->pin));
    for (int i = 0; i < 3; i++) lw_tell_turns_in(t, NULL, place, (lw_turns_in){winds[i], turns[i]});
    lw_tell_turns_in(t, NULL, place, (lw_turns_in){gusts->mean, most});
    for (int i = 0; i < 3; i++) lw_tell_truth(t, NULL, lw_placing_stays_up(place, winds[i]));
    for (int i = 0; i < 3; i++) lw_tell_truth(t, NULL, lw_placing_holds(place, winds[i]));
}

static void tell_turns(lw_teller *t, const lw_picked *picked)
{
    static const lw_item columns[] = {TEXT("pin", "pin"),
                                      TURNS("lull", "lull"),
                                      TURNS("mean", "mean"),
                                      TURNS("puff", "puff"),
                                      TURNS("holds_most", "holds most"),
                                      TRUTH("stays_up_in_lull"),
                                      TRUTH("stays_up_in_mean"),
                                      TRUTH("stays_up_in_puff"),
                                      TRUTH("is_held_in_lull"),
                                      TRUTH("is_held_in_mean"),
                                      TRUTH("is_held_in_puff")};
    char course[LW_COURSE_NAME], head[LW_TURNS_HEAD];
    const bool flies = lw_picked_flies(&picked->now);
    lw_picked_course_name(picked, lw_outlook_longest(picked->outlook), course);
    lw_picked_turns_head(picked, head);
    lw_tell_name(t, "turns_course", course);
    lw_tell_table(t, "turns", flies ? head : NULL, columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < picked->now.count; i++) {
        const lw_placing *place = &picked->now.places[i];
        if (place->flies) tell_turns_row(t, picked, place);
    }
    lw_tell_end(t);
    if (flies)
        lw_tell_note(t, "turns_note",
                     "Lull, mean, puff: for speed. Holds most: in the mean, with most margin "
                     "left. " LW_TURNS_WAY " " LW_TURNS_NOTE);
}

static void tell_band_row(lw_teller *t, const lw_picked *picked, const lw_placing *place, int from,
                          int to)
{
    const size_t longest = lw_outlook_longest(picked->outlook);
    const lw_range *range = &picked->outlook->ranges[place->pin][longest];
    lw_tell_row(t);
    lw_tell_text(t, NULL, lw_picked_label(picked, place->pin));
    for (int kn = from; kn <= to; kn++) {
        const double wind = kn * LW_KN;
        lw_tell_turns_in(t, NULL, place, (lw_turns_in){wind, lw_range_turns(range, wind)});
    }
}

// Turns in the winds from lull to puff, a column for each knot, on the longest leg.
static void tell_band(lw_teller *t, const lw_picked *picked)
{
    lw_item columns[LW_RANGE_WINDS + 1] = {TEXT("pin", "pin")};
    char keys[LW_RANGE_WINDS + 1][16], heads[LW_RANGE_WINDS + 1][LW_CELL_LENGTH], head[120];
    char course[LW_COURSE_NAME];
    const lw_gusts *gusts = &picked->now.gusts;
    const lw_unit unit = lw_speed_unit(t->speed_unit);
    const size_t longest = lw_outlook_longest(picked->outlook);
    const int last = LW_RANGE_FIRST_KN + LW_RANGE_WINDS - 1;
    const int from = (int)fmax(floor(gusts->lull / LW_KN), LW_RANGE_FIRST_KN);
    const int to = (int)fmin(ceil(gusts->puff / LW_KN), last);
    size_t count = 1;
    for (int kn = from; kn <= to; kn++, count++) {
        LW_FIT(keys[count], "at_%d_kn", kn);
        lw_cell_number(heads[count], kn * LW_KN / lw_unit_in_si(unit), unit == LW_UNIT_KN ? 0 : 1,
                       false);
        columns[count] = (lw_item){keys[count], heads[count], LW_AS_CHANGE, LW_UNIT_TURN, 1, "-"};
    }
    lw_picked_course_name(picked, longest, course);
    LW_FIT(head, "Turns through the band, wind in %s, %s", lw_unit_sign(unit), course);
    lw_tell_table(t, "band", lw_picked_flies(&picked->now) ? head : NULL, columns, count);
    for (size_t i = 0; i < picked->now.count; i++) {
        const lw_placing *place = &picked->now.places[i];
        if (place->flies) tell_band_row(t, picked, place, from, to);
    }
    lw_tell_end(t);
    if (lw_picked_flies(&picked->now)) lw_tell_note(t, "band_note", LW_TURNS_NOTE);
}

void lw_tell_turns(lw_teller *t, const lw_picked *picked)
{
    tell_turns(t, picked);
    tell_band(t, picked);
}
