// chart.c - the winds of some pins as a picture, from what an answer has told of them.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "answer/parcel.h"
#include "answer/words/number_text.h"
#include "picture/range_picture.h"
#include "web/page.h"

// What the script asks, as doubles in the room: these, then of each bar where she takes off, stays
// up and up to what she is held, all in the slot's unit, 0: none; then the labels, each closed by a
// zero.
typedef struct question {
    double width, count;
    double lull, mean, puff;
} question;

static lw_range_bar bar_of(const double *winds, const char *label, double si)
{
    return (lw_range_bar){.pin = label,
                          .launches_at = winds[0] * si,
                          .stays_up_at = winds[1] * si,
                          .held_up_to = winds[2] * si};
}

LW_EXPORT(lw_web_chart) void lw_web_chart(int slot, size_t length)
{
    question q;
    double winds[3 * LW_PINS_MOST];
    const lw_unit unit = lw_speed_unit(lw_web_slots[slot].speed_unit);
    const double si = lw_unit_in_si(unit);
    const char *room = lw_web_room(length), *end = room + length;
    memcpy(&q, room, sizeof q);
    lw_parcel_begin();
    if (!(q.count >= 1.0 && q.count <= LW_PINS_MOST)) return;
    const size_t count = (size_t)q.count, size = 3 * count * sizeof *winds;
    const char *label = room + sizeof q + size;
    memcpy(winds, room + sizeof q, size);
    lw_range_drawn drawn = {.panels = {{.count = count}},
                            .panel_count = 1,
                            .lull = q.lull * si,
                            .mean = q.mean * si,
                            .puff = q.puff * si,
                            .unit = unit,
                            .width = q.width};
    for (size_t i = 0; i < count && label < end; i++, label += strlen(label) + 1) {
        drawn.panels[0].bars[i] = bar_of(&winds[3 * i], label, si);
    }
    FILE *out = lw_web_drawing();
    lw_range_draw(out, &drawn);
    lw_web_put_drawing("picture", out);
}
