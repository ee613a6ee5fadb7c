// range.c - `lullwise range`: from what wind each pin flies, up to what wind it is held, and why.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "answer/words/margin_text.h"
#include "command/cell.h"
#include "command/command.h"
#include "command/given.h"
#include "command/terminal/chart.h"
#include "command/terminal/print.h"
#include "command/terminal/progress.h"
#include "lullwise/range.h"
#include "records/json.h"

typedef struct ranged {
    lw_inputs inputs;
    lw_craft craft;
    double puff;
    size_t first, count;  // pins asked for
    size_t label_width;
    lw_range (*ranges)[LW_COURSE_COUNT];              // by pin of the boat
    double (*most)[LW_COURSE_COUNT][LW_RANGE_WINDS];  // turns that hold most, in the winds told
} ranged;

static const char *label_of(const ranged *r, size_t pin) { return r->inputs.boat.pins[pin].label; }

#define TURNS_FIRST 6
#define TURNS_LAST  24

static void work_out_most(ranged *r, size_t pin, const lw_setup *setup, int course)
{
    const lw_walk walk = {.craft = &r->craft,
                          .setup = *setup,
                          .course = lw_course_of((lw_course_kind)course),
                          .puff = r->puff};
    for (int kn = TURNS_FIRST; kn <= TURNS_LAST; kn += 2) {
        const lw_range_point *point = &r->ranges[pin][course].at[kn - LW_RANGE_FIRST_KN];
        if (!lw_answer_is_kept(&point->trimmed)) continue;
        const lw_trim trim = lw_trim_again(&r->craft, setup, &point->trimmed);
        const lw_trim most = lw_walk_holding(&walk, &trim);
        r->most[pin][course][kn - LW_RANGE_FIRST_KN] = most.steady.flight.turns;
    }
}

static void work_out(ranged *r)
{
    for (size_t i = 0; i < r->count; i++) {
        const size_t pin = r->first + i;
        const lw_setup setup = lw_craft_setup(&r->craft, &r->inputs.boat, pin);
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            char what[64];
            LW_FIT(what, "pin %s, %s", label_of(r, pin), lw_course_text(course));
            lw_progress(what, i * LW_COURSE_COUNT + (size_t)course, r->count * LW_COURSE_COUNT);
            lw_range_of(&r->craft, &setup, lw_course_of(course), r->puff, &r->ranges[pin][course]);
            work_out_most(r, pin, &setup, course);
        }
        r->label_width = lw_cell_width(r->label_width, label_of(r, pin));
    }
    lw_progress_over();
}

static void fit_end(char text[LW_CELL_LENGTH], const lw_range *range)
{
    if (!range->has_flight)
        lw_text_fit(text, LW_CELL_LENGTH, "does not fly");
    else if (!range->has_hold)
        lw_text_fit(text, LW_CELL_LENGTH, "no wind keeps all margins");
    else if (range->ends_by == LW_MARGIN_COUNT && !range->ends_in_puff &&
             range->held_up_to > 33.9 * LW_KN)
        lw_text_fit(text, LW_CELL_LENGTH, "the end of what was tried");
    else
        lw_text_fit(text, LW_CELL_LENGTH, "%s%s", lw_margin_end(range->ends_by),
                    range->ends_in_puff ? " *" : "");
}

static void print_row(const ranged *r, size_t pin, const lw_range *range)
{
    char text[LW_CELL_LENGTH];
    const double limits[] = {range->launches_at, range->stays_up_at, range->held_up_to};
    fputs("  ", stdout);
    lw_cell_left(stdout, label_of(r, pin), r->label_width);
    lw_cell_number(text, r->inputs.boat.pins[pin].incidence / LW_DEG, 1, true);
    lw_cell_right(stdout, text, 6);
    for (int i = 0; i < 3; i++) {
        lw_cell_wind(text, limits[i]);
        lw_cell_right(stdout, text, 10);
    }
    fit_end(text, range);
    printf("  %s\n", text);
}

static void print_table(const ranged *r, lw_course_kind course)
{
    const char *name = lw_course_text(course);
    printf("%c%s\n", name[0] - 'a' + 'A', name + 1);
    printf("  %-*s%6s%10s%10s%10s  %s\n", (int)r->label_width, "pin", "deg", "launches", "stays up",
           "held to", "ends by");
    for (size_t i = 0; i < r->count; i++) {
        print_row(r, r->first + i, &r->ranges[r->first + i][course]);
    }
    putchar('\n');
}

static void print_chart(const ranged *r)
{
    const lw_wind *wind = &r->inputs.day.wind;
    lw_chart_scale(stdout, r->label_width);
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        printf("%s\n", lw_course_text(course));
        for (size_t i = 0; i < r->count; i++) {
            const size_t pin = r->first + i;
            lw_chart_line(stdout, label_of(r, pin), r->label_width, &r->ranges[pin][course]);
        }
    }
    lw_chart_day(stdout, r->label_width, wind->lull, wind->mean, wind->puff);
    lw_chart_legend(stdout);
    fputs("  L, M, P: the day's lull, mean and puff\n\n", stdout);
}

static bool is_past_thread(const ranged *r, double turns)
{
    return turns < r->craft.least_turns || turns > r->craft.most_turns;
}

// Turns in one wind: in brackets beyond the hold, "!" beyond the thread. True for the latter.
static bool print_turns_cell(const ranged *r, const lw_range *range, const lw_range_point *point,
                             double turns)
{
    char number[LW_CELL_LENGTH], text[LW_CELL_LENGTH] = "- ";
    const bool is_held = range->has_hold && point->wind <= range->held_up_to;
    const bool is_past = lw_answer_is_kept(&point->trimmed) && is_past_thread(r, turns);
    if (lw_answer_is_kept(&point->trimmed)) {
        lw_cell_number(number, turns, 1, true);
        LW_FIT(text, "%s%s%c", is_held ? "" : "(", number, is_past ? '!' : is_held ? ' ' : ')');
    }
    lw_cell_right(stdout, text, 6);
    return is_past;
}

// A row of turns for speed, and one of those that hold most.
static bool print_turns_rows(const ranged *r, size_t pin, int course)
{
    const lw_range *range = &r->ranges[pin][course];
    bool is_past = false;
    for (int row = 0; row < 2; row++) {
        fputs("  ", stdout);
        lw_cell_left(stdout, row ? "" : label_of(r, pin), r->label_width);
        fputs(row ? "most  " : "speed ", stdout);
        for (int kn = TURNS_FIRST; kn <= TURNS_LAST; kn += 2) {
            const int i = kn - LW_RANGE_FIRST_KN;
            const lw_range_point *point = &range->at[i];
            const double turns = row ? r->most[pin][course][i] : point->trimmed.flight.turns;
            is_past |= print_turns_cell(r, range, point, turns);
        }
        putchar('\n');
    }
    return is_past;
}

static void print_turns(const ranged *r)
{
    bool is_past = false;
    lw_print_wrapped(stdout,
                     "Rudder lift on, in turns from the reference mark: for speed with all margins "
                     "kept, and the turns that hold most.",
                     0, 0);
    printf("  %*s      ", (int)r->label_width, "");
    for (int kn = TURNS_FIRST; kn <= TURNS_LAST; kn += 2) printf("%5d ", kn);
    fputs("kn\n", stdout);
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        printf("%s\n", lw_course_text(course));
        for (size_t i = 0; i < r->count; i++) {
            if (print_turns_rows(r, r->first + i, course)) is_past = true;
        }
    }
    fputs("  -  no steady flight that keeps its margins    ( )  beyond the hold\n", stdout);
    if (is_past) {
        printf("  !  beyond the rudder's thread, which goes from %+.1f to %+.1f turns\n",
               r->craft.least_turns, r->craft.most_turns);
    }
}

static void print_head(const ranged *r)
{
    char text[500];
    const lw_medium *medium = &r->craft.medium;
    const double wind = r->inputs.day.wind.mean;
    LW_FIT(text,
           "%s, %s. Puffs %.1f kn above the wind that she is trimmed for. Waves of %.2f m "
           "in %.0f kn of wind, growing with it.",
           r->inputs.boat.name, r->inputs.sailor.name, r->puff / LW_KN,
           lw_medium_wave(medium, wind).height, wind / LW_KN);
    if (medium->wave_height > 0.0)
        LW_FIT(text,
               "%s, %s. Puffs %.1f kn above the wind that she is trimmed for. Waves of %.2f "
               "m in every wind, as the day says.",
               r->inputs.boat.name, r->inputs.sailor.name, r->puff / LW_KN, medium->wave_height);
    lw_print_wrapped(stdout, text, 0, 0);
    putchar('\n');
}

// Where the launch fails on a course, she may still be launched on a reach and come up or down.
static void print_launch_hint(const ranged *r)
{
    for (size_t i = 0; i < r->count; i++) {
        const lw_range *on = r->ranges[r->first + i];
        if (!on[LW_REACH].has_launch) continue;
        if (on[LW_UPWIND].has_launch && on[LW_DOWNWIND].has_launch) continue;
        lw_print_wrapped(stdout,
                         "Launches \"none\": the hump holds her on that course. Launch on a reach, "
                         "then come up or bear away.",
                         0, 2);
        putchar('\n');
        return;
    }
}

static void print_text(const ranged *r)
{
    print_head(r);
    bool in_puff = false;
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        print_table(r, course);
        for (size_t i = 0; i < r->count; i++) {
            in_puff = in_puff || r->ranges[r->first + i][course].ends_in_puff;
        }
    }
    if (in_puff) {
        lw_print_wrapped(stdout,
                         "* in the puff, at the rudder turns of the wind before it. \"Held to\" "
                         "is the wind in that puff.",
                         0, 2);
        putchar('\n');
    }
    print_launch_hint(r);
    print_chart(r);
    print_turns(r);
}

static json_t *point_json(const ranged *r, size_t pin, int course, int i)
{
    const lw_range_point *point = &r->ranges[pin][course].at[i];
    const bool flies = point->trimmed.outcome == LW_FLIES;
    const bool is_told = lw_answer_is_kept(&point->trimmed) &&
                         i >= TURNS_FIRST - LW_RANGE_FIRST_KN &&
                         i <= TURNS_LAST - LW_RANGE_FIRST_KN && i % 2 == 0;
    const lw_flight *f = &point->trimmed.flight;
    return json_pack("{s:f, s:b, s:b, s:b, s:o, s:o, s:o, s:o}", "wind", round(point->wind / LW_KN),
                     "flies", flies, "keeps_margins", lw_answer_is_kept(&point->trimmed), "held",
                     point->is_held, "turns", flies ? json_real(f->turns) : json_null(),
                     "turns_that_hold_most",
                     is_told ? json_real(r->most[pin][course][i]) : json_null(), "speed",
                     flies ? json_real(f->speed / LW_KN) : json_null(), "heading",
                     flies ? json_real(f->heading / LW_DEG) : json_null());
}

static json_t *range_json(const ranged *r, size_t pin, lw_course_kind course)
{
    const lw_range *range = &r->ranges[pin][course];
    json_t *points = json_array();
    for (int i = 0; i < LW_RANGE_WINDS; i++)
        json_array_append_new(points, point_json(r, pin, course, i));
    return json_pack("{s:s, s:s, s:o, s:s?, s:b, s:o}", "pin", label_of(r, pin), "course",
                     lw_course_text(course), "limits", lw_table_json(&lw_range_table, range),
                     "ends_by", range->has_hold ? lw_margin_key(range->ends_by) : NULL,
                     "ends_in_puff", range->ends_in_puff, "at", points);
}

static json_t *ranged_json(const ranged *r)
{
    json_t *list = json_array();
    for (size_t i = 0; i < r->count; i++) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            json_array_append_new(list, range_json(r, r->first + i, course));
        }
    }
    return json_pack("{s:s, s:s, s:f, s:o, s:{s:s, s:o, s:s, s:s, s:s, s:s}}", "boat",
                     r->inputs.boat.name, "sailor", r->inputs.sailor.name, "puff", r->puff / LW_KN,
                     "ranges", list, "units", "puff", "kn", "limits",
                     lw_table_units_json(&lw_range_table), "wind", "kn", "speed", "kn", "heading",
                     "deg", "turns", "turns");
}

static bool flies_somewhere(const ranged *r)
{
    for (size_t i = 0; i < r->count; i++) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            if (r->ranges[r->first + i][course].has_flight) return true;
        }
    }
    return false;
}

static lw_exit run(const lw_options *options)
{
    static ranged r;
    int pin;
    if (!lw_given(&r.inputs, &pin, options)) return LW_EXIT_WRONG_INPUT;
    r.puff = r.inputs.day.wind.puff - r.inputs.day.wind.mean;
    if (!lw_given_number(options, "puff", (lw_bounds){0}, &r.puff)) return LW_EXIT_WRONG_INPUT;
    r.first = pin == LW_ALL_PINS ? 0 : (size_t)pin;
    r.count = pin == LW_ALL_PINS ? r.inputs.boat.pin_count : 1;
    r.label_width = 3;
    r.craft = lw_given_craft(&r.inputs);
    r.ranges = calloc(LW_PINS_MOST, sizeof *r.ranges);
    r.most = calloc(LW_PINS_MOST, sizeof *r.most);
    if (!r.ranges || !r.most) {
        free(r.ranges);
        free(r.most);
        lw_print_complaint("range", "there is not enough memory");
        return LW_EXIT_NO_ANSWER;
    }
    work_out(&r);
    if (lw_options_has(options, "json"))
        lw_json_write(ranged_json(&r), stdout);
    else
        print_text(&r);
    const lw_exit ended = flies_somewhere(&r) ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
    free(r.ranges);
    free(r.most);
    return ended;
}

const lw_command lw_command_range = {
    .name = "range",
    .summary = "From what wind each pin flies, up to what wind it is held, and what ends it.",
    .operands = "",
    .takes = "boat sailor day set pin puff json",
    .doc =
        "Works out each pin upwind, on a reach and downwind. Launches: least wind that takes her "
        "through the hump on that course. Stays up: least wind in which she keeps flying. Held "
        "to: greatest wind that keeps all margins, the rudder wound for it, also when it comes as "
        "a puff at unchanged turns. The puff is the day's puff above its mean, or --puff. Ends "
        "with 1 when no pin "
        "flies at all.",
    .run = run,
};
