// tell.c - the answer of `lullwise range` told.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/range/range.h"
#include "answer/words/caution.h"
#include "answer/words/margin_text.h"
#include "answer/words/number_text.h"
#include "answer/words/picked.h"
#include "records/fault.h"

static const char *label_of(const lw_ranged *ranged, size_t pin)
{
    return ranged->inputs->boat.pins[pin].label;
}

// --- what was asked

void lw_ranged_question(const lw_ranged *ranged, lw_unit unit, char text[LW_RANGED_LENGTH])
{
    char waves[120];
    const lw_inputs *inputs = ranged->inputs;
    const lw_medium *medium = &ranged->craft.medium;
    const double wind = inputs->day.wind.mean;
    if (medium->wave_height > 0.0)
        LW_FIT(waves, "Waves of %.2f m in every wind, as the day says.", medium->wave_height);
    else
        LW_FIT(waves, "Waves of %.2f m in %s of wind, growing with it.",
               lw_medium_wave(medium, wind).height, LW_SPEED_TEXT(wind, 1, unit));
    lw_text_fit(text, LW_RANGED_LENGTH,
                "%s, %s. Puffs %s above the wind that she is trimmed for. %s", inputs->boat.name,
                inputs->sailor.name, LW_SPEED_TEXT(ranged->puff, 1, unit), waves);
}

static void tell_question(const lw_ranged *ranged, lw_teller *t)
{
    char text[LW_RANGED_LENGTH];
    const lw_inputs *inputs = ranged->inputs;
    lw_ranged_question(ranged, t->speed_unit, text);
    lw_tell_sentence(t, "question", text);
    lw_tell_name(t, "boat", inputs->boat.name);
    lw_tell_name(t, "sailor", inputs->sailor.name);
    lw_tell_name(t, "day", inputs->day.name);
    lw_tell_number(t, &(lw_item){.key = "puff", .unit = LW_UNIT_KN, .digits = 1}, ranged->puff);
}

// --- from what wind, up to what wind

// clang-format off
static const lw_item limits[] = {
    {"pin",          "pin",      LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"incidence",    "angle",    LW_AS_NUMBER, LW_UNIT_DEG,  1, NULL},
    {"launches_at",  "takes off", LW_AS_NUMBER, LW_UNIT_KN,   1, "none"},
    {"stays_up_at",  "stays up", LW_AS_NUMBER, LW_UNIT_KN,   1, "none"},
    {"held_up_to",   "held to",  LW_AS_NUMBER, LW_UNIT_KN,   1, "none"},
    {"ends_by",      NULL,       LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"ends_in_puff", "puff",     LW_AS_TRUTH,  LW_UNIT_NONE, 0, NULL},
    {"end",          "ends by",  LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
};
// clang-format on

const char *lw_ranged_end(const lw_range *range)
{
    const bool is_open = range->ends_by == LW_MARGIN_COUNT && !range->ends_in_puff &&
                         range->held_up_to > 33.9 * LW_KN;
    if (!range->has_flight) return "does not fly";
    if (!range->has_hold) return "no wind keeps all margins";
    return is_open ? "the end of what was tried" : lw_margin_end(range->ends_by);
}

static void tell_limits(const lw_ranged *ranged, size_t pin, const lw_range *range, lw_teller *t)
{
    lw_tell_row(t);
    lw_tell_text(t, NULL, label_of(ranged, pin));
    lw_tell_number(t, NULL, ranged->inputs->boat.pins[pin].incidence);
    lw_tell_number(t, NULL, range->has_launch ? range->launches_at : NAN);
    lw_tell_number(t, NULL, range->has_flight ? range->stays_up_at : NAN);
    lw_tell_number(t, NULL, range->has_hold ? range->held_up_to : NAN);
    lw_tell_text(t, NULL, range->has_hold ? lw_margin_key(range->ends_by) : NULL);
    lw_tell_truth(t, NULL, range->ends_in_puff);
    lw_tell_text(t, NULL, lw_ranged_end(range));
}

// Where the launch fails on a course, she may still be launched on a reach and come up or down.
static bool may_launch_elsewhere(const lw_ranged *ranged)
{
    for (size_t i = 0; i < ranged->count; i++) {
        const lw_ranged_one *on = ranged->of[ranged->first + i];
        if (!on[LW_REACH].range.has_launch) continue;
        if (!on[LW_UPWIND].range.has_launch || !on[LW_DOWNWIND].range.has_launch) return true;
    }
    return false;
}

static bool ends_in_puff(const lw_ranged *ranged)
{
    for (size_t i = 0; i < ranged->count; i++) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            if (ranged->of[ranged->first + i][course].range.ends_in_puff) return true;
        }
    }
    return false;
}

static void tell_ranges(const lw_ranged *ranged, lw_teller *t)
{
    lw_tell_object(t, "ranges", "");
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        const char *name = lw_course_text((lw_course_kind)course);
        lw_tell_table(t, name, name, limits, LW_COUNT_OF(limits));
        for (size_t i = 0; i < ranged->count; i++) {
            const size_t pin = ranged->first + i;
            tell_limits(ranged, pin, &ranged->of[pin][course].range, t);
        }
        lw_tell_end(t);
    }
    if (ends_in_puff(ranged))
        lw_tell_sentence(t, "in_puff",
                         "Puff: yes where it ends in the puff, at the rudder turns of the wind "
                         "before it; \"held to\" is the wind in that puff.");
    if (may_launch_elsewhere(ranged))
        lw_tell_sentence(t, "launch",
                         "Takes off \"none\": the hump holds her on that course. Take off on a "
                         "reach, then come up or bear away.");
    lw_tell_end(t);
}

// --- rudder turns

// Columns of the winds for which turns are told.
typedef struct winds {
    lw_item columns[2 + LW_RANGED_WINDS];
    char keys[LW_RANGED_WINDS][16], heads[LW_RANGED_WINDS][LW_CELL_LENGTH];
} winds;

static void put_columns(winds *w, lw_unit unit)
{
    const int digits = lw_speed_unit(unit) == LW_UNIT_KN ? 0 : 1;
    w->columns[0] = (lw_item){.key = "pin", .head = "pin", .form = LW_AS_TEXT};
    w->columns[1] = (lw_item){.key = "wound_for", .head = "for", .form = LW_AS_TEXT};
    for (int i = 0; i < LW_RANGED_WINDS; i++) {
        const int kn = LW_RANGE_FIRST_KN + LW_RANGED_FIRST + i * LW_RANGED_STEP;
        LW_FIT(w->keys[i], "at_%d_kn", kn);
        lw_speed_text(w->heads[i], kn * LW_KN, digits, unit);
        w->columns[2 + i] = (lw_item){.key = w->keys[i],
                                      .head = w->heads[i],
                                      .form = LW_AS_SIGNED,
                                      .unit = LW_UNIT_TURN,
                                      .digits = 1};
    }
}

static bool is_past_thread(const lw_ranged *ranged, double turns)
{
    return turns < ranged->craft.least_turns || turns > ranged->craft.most_turns;
}

// In brackets beyond the hold, "!" beyond the thread. True for the latter.
static bool tell_turns(const lw_ranged *ranged, const lw_range *range, const lw_range_point *point,
                       double turns, lw_teller *t)
{
    char number[LW_CELL_LENGTH], shown[LW_CELL_LENGTH] = "- ";
    const bool is_held = range->has_hold && point->wind <= range->held_up_to;
    const bool is_flown = lw_answer_is_kept(&point->trimmed);
    const bool is_past = is_flown && is_past_thread(ranged, turns);
    lw_cell_number(number, turns, 1, true);
    if (is_flown)
        LW_FIT(shown, "%s%s%c", is_held ? "" : "(", number, is_past ? '!' : is_held ? ' ' : ')');
    lw_tell_number_as(t, NULL, is_flown ? turns : NAN, shown);
    return is_past;
}

static bool tell_turns_row(const lw_ranged *ranged, size_t pin, int course, lw_criterion by,
                           lw_teller *t)
{
    const lw_ranged_one *one = &ranged->of[pin][course];
    bool is_past = false;
    lw_tell_row(t);
    lw_tell_text(t, NULL, label_of(ranged, pin));
    lw_tell_text(t, NULL, lw_criterion_text(by));
    for (size_t i = 0; i < LW_RANGED_WINDS; i++) {
        const lw_range_point *point = lw_ranged_point(&one->range, i);
        const double turns = by == LW_BY_HOLD ? one->most[i] : point->trimmed.flight.turns;
        is_past |= tell_turns(ranged, &one->range, point, turns, t);
    }
    return is_past;
}

static bool tell_turns_on(const lw_ranged *ranged, int course, const winds *w, lw_teller *t)
{
    const char *name = lw_course_text((lw_course_kind)course);
    bool is_past = false;
    lw_tell_table(t, name, name, w->columns, LW_COUNT_OF(w->columns));
    for (size_t i = 0; i < ranged->count; i++) {
        is_past |= tell_turns_row(ranged, ranged->first + i, course, LW_BY_SPEED, t);
        is_past |= tell_turns_row(ranged, ranged->first + i, course, LW_BY_HOLD, t);
    }
    lw_tell_end(t);
    return is_past;
}

static void tell_all_turns(const lw_ranged *ranged, lw_teller *t)
{
    winds w;
    char text[120];
    bool is_past = false;
    put_columns(&w, t->speed_unit);
    lw_tell_object(t, "turns", "Rudder lift on, in turns from the reference mark");
    lw_tell_sentence(t, "sentence",
                     "For speed with all margins kept, and the turns that hold most. In brackets: "
                     "beyond the hold; - no steady flight that keeps its margins. " LW_TURNS_WAY);
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        is_past |= tell_turns_on(ranged, course, &w, t);
    }
    LW_FIT(text, "! beyond the rudder's thread, which goes from %+.1f to %+.1f turns.",
           ranged->craft.least_turns, ranged->craft.most_turns);
    lw_tell_sentence(t, "thread", is_past ? text : NULL);
    lw_tell_end(t);
}

// --- every wind, for programs

static const char *const flight_keys[] = {"wind", "turns", "speed", "heading"};

static void put_flight_columns(lw_item columns[5 + LW_COUNT_OF(flight_keys)])
{
    size_t at = 0;
    columns[at++] = (lw_item){.key = "pin", .form = LW_AS_TEXT};
    columns[at++] = (lw_item){.key = "course", .form = LW_AS_TEXT};
    for (size_t i = 0; i < LW_COUNT_OF(flight_keys); i++) {
        columns[at++] = lw_item_of(lw_table_find(&lw_flight_table, flight_keys[i]), NULL);
    }
    columns[at++] = (lw_item){.key = "flies", .form = LW_AS_TRUTH};
    columns[at++] = (lw_item){.key = "keeps_margins", .form = LW_AS_TRUTH};
    columns[at++] = (lw_item){.key = "is_held", .form = LW_AS_TRUTH};
}

static void tell_flight(const lw_range_point *point, lw_teller *t)
{
    const lw_flight *flight = &point->trimmed.flight;
    const bool flies = point->trimmed.outcome == LW_FLIES;
    lw_tell_number(t, NULL, point->wind);
    lw_tell_number(t, NULL, flies ? flight->turns : NAN);
    lw_tell_number(t, NULL, flies ? flight->speed : NAN);
    lw_tell_number(t, NULL, flies ? flight->heading : NAN);
    lw_tell_truth(t, NULL, flies);
    lw_tell_truth(t, NULL, lw_answer_is_kept(&point->trimmed));
    lw_tell_truth(t, NULL, point->is_held);
}

static void tell_flights(const lw_ranged *ranged, lw_teller *t)
{
    lw_item columns[5 + LW_COUNT_OF(flight_keys)];
    put_flight_columns(columns);
    lw_tell_table(t, "flights", NULL, columns, LW_COUNT_OF(columns));
    for (size_t k = 0; k < ranged->count * LW_COURSE_COUNT * LW_RANGE_WINDS; k++) {
        const size_t one = k / LW_RANGE_WINDS, pin = ranged->first + one / LW_COURSE_COUNT;
        const size_t course = one % LW_COURSE_COUNT;
        lw_tell_row(t);
        lw_tell_text(t, NULL, label_of(ranged, pin));
        lw_tell_text(t, NULL, lw_course_text((lw_course_kind)course));
        tell_flight(&ranged->of[pin][course].range.at[k % LW_RANGE_WINDS], t);
    }
    lw_tell_end(t);
}

// The puff is that of --puff.
static void tell_cautions(const lw_ranged *ranged, lw_teller *t)
{
    lw_care care = lw_care_of_day(ranged->inputs, t->speed_unit);
    care.puff = care.mean + ranged->puff;
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        const lw_range *range = &ranged->of[ranged->first][course].range;
        const lw_range_point *point = lw_range_sailed(range, care.mean);
        if (point) care.felt = fmax(care.felt, point->trimmed.flight.apparent_wind);
    }
    lw_tell_cautions(t, &care);
}

void lw_ranged_tell(const void *it, lw_teller *t)
{
    const lw_ranged *ranged = it;
    tell_question(ranged, t);
    tell_ranges(ranged, t);
    tell_all_turns(ranged, t);
    tell_flights(ranged, t);
    tell_cautions(ranged, t);
}
