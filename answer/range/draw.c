// draw.c - the winds of `lullwise range` as a picture.
// SPDX-License-Identifier: MIT

#include "answer/range/range.h"
#include "answer/words/number_text.h"
#include "picture/range_picture.h"

static lw_range_bar bar_of(const lw_ranged *ranged, size_t pin, int course)
{
    const lw_range *range = &ranged->of[pin][course].range;
    return (lw_range_bar){.pin = ranged->inputs->boat.pins[pin].label,
                          .launches_at = range->has_launch ? range->launches_at : 0.0,
                          .stays_up_at = range->has_flight ? range->stays_up_at : 0.0,
                          .held_up_to = range->has_hold ? range->held_up_to : 0.0,
                          .end = lw_ranged_end(range)};
}

void lw_ranged_draw(const void *it, FILE *out)
{
    const lw_ranged *ranged = it;
    const lw_wind *wind = &ranged->inputs->day.wind;
    char head[LW_RANGED_LENGTH];
    lw_ranged_question(ranged, ranged->speed_unit, head);
    lw_range_drawn drawn = {.head = head,
                            .panel_count = LW_COURSE_COUNT,
                            .lull = wind->lull,
                            .mean = wind->mean,
                            .puff = wind->puff,
                            .unit = lw_speed_unit(ranged->speed_unit),
                            .width = ranged->width};
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        lw_range_panel *panel = &drawn.panels[course];
        panel->heading = lw_course_text((lw_course_kind)course);
        panel->count = ranged->count;
        for (size_t i = 0; i < ranged->count; i++) {
            panel->bars[i] = bar_of(ranged, ranged->first + i, course);
        }
    }
    lw_range_draw(out, &drawn);
}
