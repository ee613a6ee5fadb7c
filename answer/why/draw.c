// draw.c - the answer of `lullwise why` drawn: the boat from the side, now and after a move.
// SPDX-License-Identifier: MIT

#include "answer/why/why.h"
#include "answer/words/move_text.h"
#include "picture/side_picture.h"
#include "records/fault.h"

static lw_side_drawn side_of(const lw_why *why, const lw_stance *stance, const char *head)
{
    const lw_answer *mean = &stance->at[LW_IN_MEAN];
    return (lw_side_drawn){.boat = &why->inputs->boat,
                           .craft = &why->craft,
                           .pin = stance->pin,
                           .flight = mean->outcome == LW_NO_BALANCE ? NULL : &mean->flight,
                           .head = head};
}

void lw_why_draw(const void *it, FILE *out)
{
    const lw_why *why = it;
    char move[LW_MOVE_LENGTH], now[LW_WHY_LENGTH] = "Now", then[LW_WHY_LENGTH];
    lw_side_drawn sides[2] = {side_of(why, lw_why_state(why), now)};
    if (why->found.count > 0) {
        lw_why_cause(why, &why->found.causes[0], then);
        LW_FIT(now, "Now, likely: %s", then);
    }
    if (!lw_why_is_answered(why)) {
        lw_sides_draw(out, &(lw_sides_drawn){sides, 1, why->width, "The boat from the side, now"});
        return;
    }
    lw_move_text(&why->inputs->boat, &why->remedies[0], move);
    LW_FIT(then, "Then, if you %s", move);
    sides[1] = side_of(why, &why->remedies[0].after, then);
    lw_sides_draw(out, &(lw_sides_drawn){sides, 2, why->width,
                                         "The boat from the side, now and after the first move"});
}
