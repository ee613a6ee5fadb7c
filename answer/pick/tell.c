// tell.c - the answer of `lullwise pick` told, room by room.
// SPDX-License-Identifier: MIT

#include "answer/pick/told.h"
#include "answer/words/caution.h"
#include "answer/words/wind_text.h"
#include "records/fault.h"

void lw_tell_picked_head(lw_teller *t, const lw_picked *picked)
{
    static const lw_item lull = WIND("lull", NULL), mean = WIND("mean", NULL);
    static const lw_item puff = WIND("puff", NULL), period = {.key = "period", .unit = LW_UNIT_S};
    char text[600];
    const lw_gusts *gusts = &picked->now.gusts;
    const lw_inputs *inputs = &picked->inputs;
    const lw_person *person = &inputs->sailor.person;
    LW_FIT(text, "%s: lull %s, mean %s, puff %s. %s; %s, %.0f kg with gear.", inputs->day.name,
           LW_SPEED_TEXT(gusts->lull, 1, t->speed_unit),
           LW_SPEED_TEXT(gusts->mean, 1, t->speed_unit),
           LW_SPEED_TEXT(gusts->puff, 1, t->speed_unit), inputs->boat.name, inputs->sailor.name,
           person->mass + person->gear);
    lw_tell_sentence(t, "question", text);
    if (lw_wind_origin(&inputs->day, t->speed_unit, text)) lw_tell_sentence(t, "wind_origin", text);
    LW_FIT(text, "Aim: %s (%s).", lw_aim_text(picked->now.aim), lw_aim_doc(picked->now.aim));
    lw_tell_sentence(t, "aim_sentence", text);
    lw_tell_name(t, "boat", inputs->boat.name);
    lw_tell_name(t, "sailor", inputs->sailor.name);
    lw_tell_name(t, "day", inputs->day.name);
    lw_tell_name(t, "aim", lw_aim_text(picked->now.aim));
    lw_tell_object(t, "wind", NULL);
    lw_tell_number(t, &lull, gusts->lull);
    lw_tell_number(t, &mean, gusts->mean);
    lw_tell_number(t, &puff, gusts->puff);
    lw_tell_number(t, &period, gusts->period);
    lw_tell_end(t);
}

void lw_tell_picked(lw_teller *t, const lw_picked *picked)
{
    lw_tell_picked_head(t, picked);
    lw_tell_first(t, picked);
    lw_tell_places(t, picked);
    lw_tell_why(t, picked);
    lw_tell_holds(t, picked);
    lw_tell_turns(t, picked);
    lw_tell_others(t, picked);
    lw_tell_ranges(t, picked);
    const lw_care care = lw_care_of(picked);
    lw_tell_cautions(t, &care);
}
