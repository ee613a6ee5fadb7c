// tell.c - the answer of `lullwise why` told.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/why/why.h"
#include "answer/words/caution.h"
#include "answer/words/move_text.h"
#include "answer/words/number_text.h"
#include "records/fault.h"

#define SPEED(x) LW_SPEED_TEXT((x), 1, t->speed_unit)

// --- what was asked

static void add_known(const lw_why *why, char *text, size_t room)
{
    const lw_known *told = &why->known;
    const char *label = why->inputs->boat.pins[why->found.told.pin].label;
    lw_text_add(text, room, told->has_pin ? "Pin %s" : "Pin not told, %s fits this wind", label);
    for (int k = 0; k < LW_LEVERS; k++) {
        const lw_lever lever = (lw_lever)k;
        char value[LW_CELL_LENGTH];
        if (!told->has[k]) continue;
        lw_cell_value(value, &lw_levers_table.rows[k], &told->levers);
        lw_text_add(text, room, ", %s %s", lw_levers_table.rows[lever].key, value);
    }
}

static void tell_question(const lw_why *why, lw_teller *t)
{
    static const lw_item lull = {.key = "lull", .unit = LW_UNIT_KN, .digits = 1};
    static const lw_item mean = {.key = "mean", .unit = LW_UNIT_KN, .digits = 1};
    static const lw_item puff = {.key = "puff", .unit = LW_UNIT_KN, .digits = 1};
    char text[500];
    LW_FIT(text, "%s, %s. ", why->inputs->boat.name, why->inputs->sailor.name);
    add_known(why, text, sizeof text);
    lw_text_add(text, sizeof text, "; lull %s, mean %s, puff %s; ", SPEED(why->wind.lull),
                SPEED(why->wind.mean), SPEED(why->wind.puff));
    if (why->has_heading)
        lw_text_add(text, sizeof text, "heading %s.", LW_ANGLE_TEXT(why->course.low, 0));
    else
        lw_text_add(text, sizeof text, "%s, on %s.", lw_course_text(why->kind),
                    LW_ANGLE_TEXT(why->scene.course.low, 0));
    lw_tell_sentence(t, "question", text);
    lw_tell_name(t, "boat", why->inputs->boat.name);
    lw_tell_name(t, "sailor", why->inputs->sailor.name);
    lw_tell_name(t, "day", why->inputs->day.name);
    lw_tell_name(t, "pin", why->inputs->boat.pins[why->found.told.pin].label);
    lw_tell_flag(t, "pin_is_told", why->known.has_pin);
    lw_tell_number(t, &lull, why->wind.lull);
    lw_tell_number(t, &mean, why->wind.mean);
    lw_tell_number(t, &puff, why->wind.puff);
}

static void tell_signs(const lw_why *why, lw_teller *t)
{
    static const lw_item columns[] = {
        {.key = "sign", .form = LW_AS_TEXT},
        {.key = "says", .head = "She does this", .form = LW_AS_TEXT},
    };
    lw_tell_table(t, "signs", "", columns, LW_COUNT_OF(columns));
    for (int s = 0; s < LW_SIGNS; s++) {
        if (!(why->found.seen.set & LW_SIGN_BIT(s))) continue;
        lw_tell_row(t);
        lw_tell_text(t, NULL, lw_sign_key((lw_sign)s));
        lw_tell_text(t, NULL, lw_sign_text((lw_sign)s));
    }
    lw_tell_end(t);
}

// --- what it is likely to be

#define CAUSES_SHOWN 4
#define LEAST_SHOWN  0.02  // chance of one that is shown  [judged]
#define LEAST_FACTOR 1.2   // and how far the signs speak for it  [judged]

// clang-format off
static const lw_item cause_columns[] = {
    {.key = "lever",   .form = LW_AS_TEXT},
    {.key = "is_more", .form = LW_AS_TRUTH},
    {.key = "factor",  .form = LW_AS_NUMBER, .digits = 1},
    {.key = "chance",  .head = "chance", .form = LW_AS_CHANCE, .unit = LW_UNIT_PERCENT},
    {.key = "says",    .head = "likely to be", .form = LW_AS_TEXT},
    {.key = "check",   .form = LW_AS_TEXT},
};
// clang-format on

static bool is_telling(const lw_cause *cause)
{
    return cause->chance >= LEAST_SHOWN && cause->factor >= LEAST_FACTOR;
}

static void tell_cause(const lw_why *why, const lw_cause *cause, bool is_shown, lw_teller *t)
{
    char text[LW_WHY_LENGTH];
    lw_why_cause(why, cause, text);
    if (is_shown)
        lw_tell_row(t);
    else
        lw_tell_hidden_row(t);
    lw_tell_text(t, NULL, lw_levers_table.rows[cause->lever].key);
    lw_tell_truth(t, NULL, cause->is_more);
    lw_tell_number(t, NULL, cause->factor);
    lw_tell_number(t, NULL, cause->chance);
    lw_tell_text(t, NULL, text);
    lw_tell_text(t, NULL, lw_lever_of(cause->lever)->check);
}

// "To tell them apart: tape the wand, pivot to tip of the paddle; see ..."
static void tell_checks(const lw_why *why, lw_teller *t)
{
    char text[400] = "To see which: ";
    const lw_diagnosis *found = &why->found;
    size_t n = 0;
    bool is_told[LW_LEVERS] = {false};
    for (size_t i = 0; i < found->count && n < 3; i++) {
        const lw_cause *cause = &found->causes[i];
        if (cause->chance < 0.1 || !is_telling(cause) || is_told[cause->lever]) continue;
        is_told[cause->lever] = true;
        lw_text_add(text, sizeof text, "%s%s", n++ ? "; " : "", lw_lever_of(cause->lever)->check);
    }
    lw_text_add(text, sizeof text, ".");
    lw_tell_note(t, "checks", n > 1 ? text : NULL);
}

// Every sign that is seen is likely of the boat as she is told.
static bool does_so(const lw_why *why)
{
    const lw_seen look = lw_seen_of(&why->scene, &why->found.told);
    for (int s = 0; s < LW_SIGNS; s++) {
        const bool is_seen = (why->found.seen.set & LW_SIGN_BIT(s)) != 0;
        if (is_seen && !(lw_sign_chance((lw_sign)s, &look) > 0.5)) return false;
    }
    return true;
}

static void tell_nothing(const lw_why *why, lw_teller *t)
{
    char text[LW_WHY_LENGTH], chance[LW_CELL_LENGTH];
    const char *pin = why->inputs->boat.pins[why->found.told.pin].label;
    if (why->found.nothing < LEAST_SHOWN) return;
    lw_chance_text(chance, why->found.nothing);
    if (does_so(why))
        LW_FIT(text, "Nothing wrong, she does so in this wind with pin %s: %s.", pin, chance);
    else
        LW_FIT(text, "None of these: %s. By the model she does not do so in this wind with pin %s.",
               chance, pin);
    lw_tell_note(t, "nothing", text);
}

static void tell_causes(const lw_why *why, lw_teller *t)
{
    size_t shown = 0;
    const lw_diagnosis *found = &why->found;
    static const lw_item nothing = {
        .key = "nothing_wrong", .form = LW_AS_CHANCE, .unit = LW_UNIT_PERCENT};
    lw_tell_table(t, "causes", "What it is likely to be", cause_columns,
                  LW_COUNT_OF(cause_columns));
    for (size_t i = 0; i < found->count; i++) {
        const bool is_shown = shown < CAUSES_SHOWN && is_telling(&found->causes[i]);
        shown += is_shown;
        tell_cause(why, &found->causes[i], is_shown, t);
    }
    lw_tell_end(t);
    lw_tell_number(t, &nothing, found->nothing);
    tell_nothing(why, t);
    tell_checks(why, t);
}

// --- what to move

// clang-format off
static const lw_item move_columns[] = {
    {.key = "lever",   .form = LW_AS_TEXT},
    {.key = "is_more", .form = LW_AS_TRUTH},
    {.key = "where",   .head = "where", .form = LW_AS_TEXT},
    {.key = "is_enough", .form = LW_AS_TRUTH},
    {.key = "enough",  .head = "is it enough", .form = LW_AS_TEXT},
    {.key = "speed",   .head = "speed", .form = LW_AS_SIGNED, .unit = LW_UNIT_KN, .digits = 1},
    {.key = "signs_left", .form = LW_AS_CHANCE, .unit = LW_UNIT_PERCENT},
    {.key = "says",    .head = "move", .form = LW_AS_TEXT},
};
// clang-format on

#define TRIM_SHOWN   3
#define SET_UP_SHOWN 2

static double speed_gain(const lw_stance *before, const lw_stance *after)
{
    return after->at[LW_IN_MEAN].flight.speed - before->at[LW_IN_MEAN].flight.speed;
}

static void tell_move(const lw_why *why, const lw_remedy *remedy, bool is_shown, lw_teller *t)
{
    char text[LW_MOVE_LENGTH];
    const bool is_trim = lw_lever_of(remedy->lever)->is_trim;
    lw_move_text(&why->inputs->boat, remedy, text);
    if (is_shown)
        lw_tell_row(t);
    else
        lw_tell_hidden_row(t);
    lw_tell_text(t, NULL, lw_levers_table.rows[remedy->lever].key);
    lw_tell_truth(t, NULL, remedy->is_more);
    lw_tell_text(t, NULL, is_trim ? "afloat" : "ashore");
    lw_tell_truth(t, NULL, remedy->is_enough);
    lw_tell_text(t, NULL, remedy->is_enough ? "yes" : "helps");
    lw_tell_number(t, NULL, speed_gain(&remedy->before, &remedy->after));
    lw_tell_number(t, NULL, remedy->left);
    lw_tell_text(t, NULL, text);
}

static void tell_eased(const lw_why *why, lw_teller *t)
{
    static const lw_item cost = {
        .key = "eased_speed", .form = LW_AS_SIGNED, .unit = LW_UNIT_KN, .digits = 1};
    char text[LW_WHY_LENGTH];
    const lw_stance *state = lw_why_state(why);
    const lw_answer *eased = &why->eased.at[LW_IN_MEAN];
    const bool flies = eased->outcome == LW_FLIES && state->at[LW_IN_MEAN].outcome == LW_FLIES;
    const double gain = flies ? speed_gain(state, &why->eased) : NAN;
    const double tip =
        why->eased.at[LW_IN_PUFF].margins.tip_depth - state->at[LW_IN_PUFF].margins.tip_depth;
    lw_tell_number(t, &cost, gain);
    if (flies)
        LW_FIT(text,
               "Easing a tenth of the sail's power in use: %s %s; main foil's tip %.1f chords %s "
               "in the puff.",
               LW_APART_TEXT(fabs(gain), t->speed_unit), gain < 0.0 ? "slower" : "faster",
               fabs(tip), tip > 0.0 ? "deeper" : "higher");
    else
        LW_FIT(text, "With a tenth of the sail's power in use taken off she does not fly.");
    lw_tell_note(t, "eased", text);
}

// The moves afloat, or those ashore.
static void tell_some(const lw_why *why, bool is_afloat, int most, lw_teller *t)
{
    for (size_t i = 0; i < why->remedy_count; i++) {
        const lw_remedy *remedy = &why->remedies[i];
        if (lw_lever_of(remedy->lever)->is_trim == is_afloat) tell_move(why, remedy, most-- > 0, t);
    }
}

static void tell_moves(const lw_why *why, lw_teller *t)
{
    lw_tell_table(t, "moves", "What to move", move_columns, LW_COUNT_OF(move_columns));
    tell_some(why, true, TRIM_SHOWN, t);
    tell_some(why, false, SET_UP_SHOWN, t);
    lw_tell_end(t);
    tell_eased(why, t);
}

// From what wind she takes off, where she does not.
static void tell_takes_off(const lw_why *why, lw_teller *t)
{
    static const lw_item takes_off = {.key = "takes_off", .unit = LW_UNIT_KN, .digits = 1};
    char text[LW_WHY_LENGTH];
    const char *label = why->inputs->boat.pins[why->taken_off].label;
    if (!lw_why_stays_down(why) && lw_why_flies(why)) return;
    lw_tell_number(t, &takes_off, why->takes_off > 0.0 ? why->takes_off : NAN);
    if (why->takes_off <= 0.0)
        LW_FIT(text, "On a reach pin %s takes off in no wind up to 8 kn more than this.", label);
    else if (why->takes_off > why->wind.mean)
        LW_FIT(text,
               "On a reach pin %s takes off from a steady %s, %s more than this: wait for a "
               "puff, bear away to a reach, bear up once she flies.",
               label, SPEED(why->takes_off), SPEED(why->takes_off - why->wind.mean));
    else
        LW_FIT(text, "On a reach pin %s should take off in this wind.", label);
    lw_tell_sentence(t, "takes_off_says", text);
}

// --- when to give up, and how far to trust it

static void tell_stops(const lw_why *why, lw_teller *t)
{
    lw_tell_list(t, "stop", "Give the pin up, or go in, when");
    for (int s = 0; s < LW_SIGNS; s++) {
        if (why->found.seen.set & LW_SIGN_BIT(s)) lw_tell_text(t, NULL, lw_sign_stop((lw_sign)s));
    }
    lw_tell_end(t);
}

static void tell_trust(const lw_why *why, lw_teller *t)
{
    lw_tell_list(t, "trust", "How far to trust it");
    lw_tell_text(t, NULL,
                 "One thing at most is taken as wrong; how often each is, and how far, is judged. "
                 "Signs are those of steady flight in lull, mean and puff.");
    if (!lw_answer_is_up(&why->found.should.at[LW_IN_MEAN]))
        lw_tell_text(t, NULL, "No pin of this boat flies in this wind on this heading.");
    else if (!lw_stance_is_kept(&why->found.should))
        lw_tell_text(t, NULL,
                     "Not even the pin that fits best keeps all margins in this wind: expect some "
                     "of these signs with any trim.");
    lw_tell_end(t);
}

static void tell_cautions(const lw_why *why, lw_teller *t)
{
    lw_care care = lw_care_of_day(why->inputs, t->speed_unit);
    care.mean = why->wind.mean, care.puff = why->wind.puff;
    lw_tell_list(t, "cautions", LW_CAUTIONS_HEAD);
    lw_tell_text(t, NULL,
                 "If she lets go, spins or throws you: ease, let her down, and look at foils and "
                 "struts before you try again.");
    lw_tell_caution_lines(t, &care);
    lw_tell_end(t);
}

// What the signs say, where there is a flight to be read.
static void tell_reading(const lw_why *why, lw_teller *t)
{
    tell_causes(why, t);
    if (lw_why_is_answered(why)) {
        tell_moves(why, t);
        lw_why_tell_change(why, t);
    } else {
        lw_tell_sentence(t, "nothing_helps", "No single move of trim or set-up makes it better.");
    }
}

void lw_why_tell(const void *it, lw_teller *t)
{
    const lw_why *why = it;
    tell_question(why, t);
    tell_signs(why, t);
    if (lw_why_flies(why) || lw_why_stays_down(why))
        tell_reading(why, t);
    else
        lw_tell_sentence(t, "no_flight",
                         "No pin of this boat flies in this wind on this heading: there is no "
                         "flight to be read.");
    tell_takes_off(why, t);
    if (lw_why_flies(why)) tell_stops(why, t);
    tell_trust(why, t);
    tell_cautions(why, t);
}
