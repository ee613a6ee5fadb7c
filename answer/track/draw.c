// draw.c - the picture of `lullwise track`.
// SPDX-License-Identifier: MIT

#include "answer/track/track.h"
#include "answer/words/number_text.h"
#include "picture/track_picture.h"

void lw_tracked_draw(const void *it, FILE *out)
{
    const lw_tracked *t = it;
    char head[LW_TRACKED_LENGTH], wind[LW_TRACKED_LENGTH];
    lw_tracked_head(t, head);
    lw_tracked_wind_text(t, wind);
    lw_track_draw(out, &(lw_track_drawn){.head = head,
                                         .wind = wind,
                                         .track = &t->track,
                                         .events = &t->events,
                                         .from = t->found.from,
                                         .angles = t->found.angles,
                                         .model = t->model.speed,
                                         .has_model = t->model.is_asked,
                                         .limits = t->found.limits,
                                         .unit = lw_speed_unit(t->speed_unit)});
}
