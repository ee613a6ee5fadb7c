// chart.c - ranges as letters: winds across, one line for each pin and course.
// SPDX-License-Identifier: MIT

#include "command/terminal/chart.h"

#include <math.h>
#include <string.h>

#include "answer/range/range.h"
#include "command/terminal/cell.h"
#include "command/terminal/print.h"

#define FIRST_KN LW_RANGE_FIRST_KN
#define LAST_KN  30  // as far as one sails: a wider chart leaves the page
#define PER_KN   2   // columns

#define GREEN  "\033[32m"
#define YELLOW "\033[33m"
#define RED    "\033[31m"
#define PLAIN  "\033[0m"

lw_state lw_state_of(const lw_range *range, double wind)
{
    if (!range->has_flight || wind < range->stays_up_at) return LW_STATE_HULL;
    if (!range->has_hold || wind > range->held_up_to) return LW_STATE_BEYOND;
    return range->has_launch && wind >= range->launches_at ? LW_STATE_FLIES : LW_STATE_STAYS;
}

static void draw_scale(FILE *out, size_t label_width)
{
    fprintf(out, "  %*s ", (int)label_width, "");
    for (int kn = FIRST_KN; kn <= LAST_KN; kn += 2) fprintf(out, "%-*d", 2 * PER_KN, kn);
    fputs("kn\n", out);
}

static const char *colour_of(lw_state state)
{
    if (state == LW_STATE_FLIES) return GREEN;
    if (state == LW_STATE_STAYS) return YELLOW;
    return state == LW_STATE_BEYOND ? RED : "";
}

static void draw_line(FILE *out, const char *label, size_t label_width, const lw_range *range)
{
    const bool has_colour = lw_print_has_colour(out);
    fputs("  ", out);
    lw_cell_left(out, label, label_width);
    for (int kn = FIRST_KN; kn <= LAST_KN; kn++) {
        const lw_state state = lw_state_of(range, kn * LW_KN);
        if (has_colour)
            fprintf(out, " %s%c%s", colour_of(state), (char)state, PLAIN);
        else
            fprintf(out, " %c", (char)state);
    }
    fputc('\n', out);
}

static void draw_legend(FILE *out)
{
    fputs("  .  on the hull                 s  stays up once flying, does not take off\n", out);
    fputs("  F  takes off, flies, is held   !  more than can be held\n", out);
    fputs("  L, M, P: the day's lull, mean and puff\n", out);
}

static void draw_day(FILE *out, size_t label_width, const lw_wind *wind)
{
    char line[(LAST_KN - FIRST_KN + 1) * PER_KN + 1];
    const double winds[] = {wind->lull, wind->mean, wind->puff};
    memset(line, ' ', sizeof line), line[sizeof line - 1] = '\0';
    for (int i = 0; i < 3; i++) {
        const long at = lround(PER_KN * (winds[i] / LW_KN - FIRST_KN));
        if (at >= 0 && at < (long)sizeof line - 1) line[at] = "LMP"[i];
    }
    size_t end = sizeof line - 1;
    while (end > 0 && line[end - 1] == ' ') line[--end] = '\0';
    fprintf(out, "  %*s %s\n", (int)label_width, "", line);
}

static size_t label_width_of(const lw_ranged *ranged)
{
    size_t width = 0;
    for (size_t i = 0; i < ranged->count; i++) {
        width = lw_cell_width(width, ranged->inputs->boat.pins[ranged->first + i].label);
    }
    return width;
}

void lw_chart_draw(FILE *out, const void *it)
{
    const lw_ranged *ranged = it;
    const size_t width = label_width_of(ranged);
    draw_scale(out, width);
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        fprintf(out, "%s\n", lw_course_text((lw_course_kind)course));
        for (size_t i = 0; i < ranged->count; i++) {
            const size_t pin = ranged->first + i;
            const lw_range *range = &ranged->of[pin][course].range;
            draw_line(out, ranged->inputs->boat.pins[pin].label, width, range);
        }
    }
    draw_day(out, width, &ranged->inputs->day.wind);
    draw_legend(out);
}
