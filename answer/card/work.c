// work.c - the answer of `lullwise card` worked out.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/asked.h"
#include "answer/card/card.h"
#include "answer/steps.h"
#include "answer/words/sections.h"
#include "lullwise/logged.h"
#include "records/record_file.h"

// --- what is asked

static bool ask_paper(lw_carded *card, const lw_options *options, lw_refusal *refusal)
{
    const char *text = lw_options_text(options, "paper");
    card->paper = text ? lw_paper_of(text) : LW_PAPER_A6;
    if (card->paper < LW_PAPER_COUNT) return true;
    return lw_refuse(refusal, "there is no paper \"%.40s\"; it is A6, A5 or half-letter", text);
}

static bool ask_date(lw_carded *card, const lw_options *options, lw_refusal *refusal)
{
    const char *given = lw_options_text(options, "date");
    if (given && !lw_date_is_sound(given))
        return lw_refuse(refusal, "\"%.40s\" is no date; write it as 2030-05-17", given);
    if (!given) given = options->today ? options->today : "";
    LW_FIT(card->date, "%s", given);
    return true;
}

static bool ask_winds(lw_carded *card, const lw_day *day, const lw_options *options,
                      lw_refusal *refusal)
{
    const double winds[] = {day->wind.lull, day->wind.mean, day->wind.puff};
    lw_steps season = {0};
    if (!lw_asked_steps(&season, options, "season", false, refusal)) return false;
    card->is_season = season.count > 0;
    card->wind_count = card->is_season ? (size_t)season.count : LW_COUNT_OF(winds);
    if (card->wind_count > LW_CARD_WINDS)
        return lw_refuse(refusal, "a season of %zu winds is too many for a card: %d at most",
                         card->wind_count, LW_CARD_WINDS);
    memcpy(card->winds, card->is_season ? season.value : winds,
           card->wind_count * sizeof card->winds[0]);
    for (size_t i = 1; i < card->wind_count; i++) {
        if (card->winds[i] <= card->winds[i - 1])
            return lw_refuse(refusal, "the winds of --season go from the least to the most");
    }
    return true;
}

// The inputs of each sailor.
static bool ask_sailors(lw_carded *card, const lw_inputs *inputs, const lw_options *options,
                        lw_refusal *refusal)
{
    const char *second = lw_options_text(options, "second");
    card->side_count = second ? 2 : 1;
    for (size_t i = 0; i < card->side_count; i++) card->sides[i].picked.inputs = *inputs;
    return !second || lw_record_read_file(&lw_sailor_record, second,
                                          &card->sides[1].picked.inputs.sailor, &refusal->faults);
}

static void begin_side(const lw_carded *card, lw_card_side *side)
{
    const lw_inputs *inputs = &side->picked.inputs;
    side->picked.outlook = &side->outlook;
    side->picked.speed_unit = card->speed_unit;
    lw_outlook_begin(&side->outlook, &inputs->boat, lw_sections_of(&inputs->boat),
                     &inputs->sailor.person, &inputs->day);
}

bool lw_carded_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                     lw_refusal *refusal)
{
    lw_carded *card = it;
    card->speed_unit = options->speed_unit;
    if (!ask_paper(card, options, refusal) || !ask_date(card, options, refusal) ||
        !ask_winds(card, &inputs->day, options, refusal) ||
        !ask_sailors(card, inputs, options, refusal))
        return false;
    for (size_t i = 0; i < card->side_count; i++) begin_side(card, &card->sides[i]);
    lw_carded_steps(card);  // some can be done at once
    return true;
}

// --- steps: each pin of each sailor on each course; then those of the outlooks in turn, as long as
// either has more

static size_t flight_steps(const lw_carded *card)
{
    return card->side_count * card->sides[0].outlook.pin_count * LW_COURSE_COUNT;
}

size_t lw_carded_steps(void *it)
{
    lw_carded *card = it;
    size_t most = 0;
    for (size_t i = 0; i < card->side_count && !card->is_season; i++) {
        lw_card_side *side = &card->sides[i];
        side->steps = lw_outlook_steps(&side->outlook);
        if (side->steps > most) most = side->steps;
    }
    return flight_steps(card) + card->side_count * most;
}

// What a step stands for.
typedef struct part {
    size_t side;
    bool is_flights;  // else a step of its outlook, if there are so many
    size_t pin, course, step;
} part;

static part part_of(const lw_carded *card, size_t step)
{
    const size_t flights = flight_steps(card), pins = card->sides[0].outlook.pin_count;
    const size_t rest = step - flights, one = step / LW_COURSE_COUNT;
    if (step >= flights)
        return (part){.side = rest % card->side_count, .step = rest / card->side_count};
    return (part){one / pins, true, one % pins, step % LW_COURSE_COUNT, 0};
}

// The turns that hold most at a knot beside a wind; NAN: none.
static double most_at(const lw_outlook *outlook, const part *p, const lw_range_point *point)
{
    const lw_setup setup = lw_craft_setup(&outlook->craft, &outlook->boat, p->pin);
    const double puff = outlook->gusts.puff - outlook->gusts.mean;
    if (!lw_answer_is_kept(&point->trimmed)) return NAN;
    return lw_range_most_turns(&outlook->craft, &setup, lw_course_of((lw_course_kind)p->course),
                               puff, &point->trimmed);
}

// Straight between knots; with one that keeps its margins, that one.
static double most_in(const lw_outlook *outlook, const part *p, const lw_range *range, double wind)
{
    const lw_range_interval in = lw_range_interval_of(wind);
    const double below = most_at(outlook, p, &range->at[in.below]);
    const double above = most_at(outlook, p, &range->at[in.below + 1]);
    if (isnan(below) || isnan(above)) return isnan(below) ? above : below;
    return below + in.part * (above - below);
}

static void find_flights(lw_carded *card, const part *p)
{
    lw_card_side *side = &card->sides[p->side];
    const lw_outlook *outlook = &side->outlook;
    lw_card_flights *to = &side->of[p->pin][p->course];
    const lw_setup setup = lw_craft_setup(&outlook->craft, &outlook->boat, p->pin);
    lw_range_of(&outlook->craft, &setup, lw_course_of((lw_course_kind)p->course),
                outlook->gusts.puff - outlook->gusts.mean, &to->range);
    for (size_t i = 0; i < card->wind_count; i++)
        to->most[i] = most_in(outlook, p, &to->range, card->winds[i]);
}

void lw_carded_step(void *it, size_t step)
{
    lw_carded *card = it;
    const part p = part_of(card, step);
    if (p.is_flights)
        find_flights(card, &p);
    else if (p.step < card->sides[p.side].steps)
        lw_outlook_step(&card->sides[p.side].outlook, p.step);
}

void lw_carded_give(const void *it, size_t step, void *to)
{
    const lw_carded *card = it;
    const part p = part_of(card, step);
    const lw_card_side *side = &card->sides[p.side];
    lw_card_part *parts = to;
    if (p.is_flights)
        parts->flights = side->of[p.pin][p.course];
    else if (p.step < side->steps)
        lw_outlook_give(&side->outlook, p.step, &parts->outlook);
}

void lw_carded_take(void *it, size_t step, const void *from)
{
    lw_carded *card = it;
    const part p = part_of(card, step);
    lw_card_side *side = &card->sides[p.side];
    const lw_card_part *parts = from;
    if (p.is_flights)
        side->of[p.pin][p.course] = parts->flights;
    else if (p.step < side->steps)
        lw_outlook_take(&side->outlook, p.step, &parts->outlook);
    lw_carded_steps(card);  // it may be the last of a round
}

void lw_carded_end(void *it)
{
    lw_carded *card = it;
    for (size_t i = 0; i < card->side_count; i++) {
        lw_card_side *side = &card->sides[i];
        if (!card->is_season) {
            lw_outlook_end(&side->outlook);
            lw_picked_rank(&side->picked);
        }
        lw_card_climb(card, side);
    }
    lw_card_read_signs(card);
}

bool lw_carded_is_answered(const void *it)
{
    const lw_carded *card = it;
    for (size_t i = 0; i < card->side_count; i++) {
        if (lw_card_flies(&card->sides[i])) return true;
    }
    return false;
}
