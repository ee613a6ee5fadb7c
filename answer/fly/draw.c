// draw.c - the flight of `lullwise fly` from the side.
// SPDX-License-Identifier: MIT

#include "answer/fly/fly.h"
#include "answer/words/flown.h"
#include "picture/side_picture.h"
#include "records/fault.h"

void lw_fly_draw(const void *it, FILE *out)
{
    const lw_fly *fly = it;
    const lw_flown *a = &fly->flown;
    char asked[LW_FLOWN_LENGTH], outcome[LW_FLOWN_LENGTH], turns[LW_FLOWN_LENGTH];
    char head[3 * LW_FLOWN_LENGTH];
    lw_flown_question(a, fly->speed_unit, asked);
    lw_flown_outcome(a, fly->speed_unit, outcome);
    const bool has_turns = lw_flown_turns(a, turns);
    LW_FIT(head, "%s %s%s%s", asked, outcome, has_turns ? " " : "", has_turns ? turns : "");
    const lw_side_drawn side = {
        .boat = &a->inputs->boat,
        .craft = &a->craft,
        .pin = a->pin,
        .flight = lw_fly_is_answered(fly) ? &a->answer.flight : NULL,
        .head = head,
    };
    lw_sides_draw(out,
                  &(lw_sides_drawn){&side, 1, fly->width,
                                    "The boat from the side, to scale, with the forces on her"});
}
