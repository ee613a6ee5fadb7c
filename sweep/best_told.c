// best_told.c - the hardware that a search came to, told.
// SPDX-License-Identifier: MIT

#include "sweep/best_told.h"

#include "answer/words/number_text.h"

#define CASE_TEXT 300

// "main_foil.span 1.04 m"
static void add_over(char *text, size_t room, const lw_over *over, size_t i)
{
    char value[LW_OVER_TEXT];
    lw_over_value(over, i, value);
    lw_text_add(text, room, "%s%s %s%s%s", text[0] ? ", " : "", over->key, value,
                over->unit[0] ? " " : "", over->unit);
}

// "wind.mean 12 kn, person.mass 60 kg"
static void case_text(const lw_sweep *sweep, size_t i, char text[CASE_TEXT])
{
    text[0] = '\0';
    for (size_t k = 0; k < sweep->over_count; k++) {
        add_over(text, CASE_TEXT, &sweep->overs[k], lw_sweep_at(sweep, i, k));
    }
    if (sweep->draws)
        lw_text_add(text, CASE_TEXT, "%sdraw %zu", text[0] ? ", " : "",
                    lw_sweep_at(sweep, i, sweep->over_count));
    if (!text[0]) lw_text_fit(text, CASE_TEXT, "the day");
}

static bool is_timed(const lw_best *best) { return best->sweep->answer->worth->unit == LW_UNIT_S; }

// "27 s", "0.31 kn"
static void measure(const lw_best *best, double si, char text[LW_CELL_LENGTH])
{
    if (is_timed(best))
        lw_cell_time(text, si);
    else
        lw_measure_text(text, si, 2, best->sweep->answer->worth->unit);
}

// "27 s ± 6 s"
static void add_gain(const lw_best *best, lw_gain gain, char *text, size_t room)
{
    char mean[LW_CELL_LENGTH], error[LW_CELL_LENGTH];
    measure(best, gain.mean, mean);
    measure(best, gain.error, error);
    lw_text_add(text, room, "%s", mean);
    if (best->is_checked) lw_text_add(text, room, " ± %s", error);
}

static bool is_sure(lw_gain gain) { return gain.mean > LW_CLOSE * gain.error; }

// The search of one quantity that gains most alone; 0, all together, where one is sought.
static size_t first_bought(const lw_best *best)
{
    size_t first = best->found_count > 1 ? 1 : 0;
    for (size_t i = 2; i < best->found_count; i++) {
        const double gain = lw_best_gain(best, best->found[i], LW_ALL_CASES).mean;
        if (gain > lw_best_gain(best, best->found[first], LW_ALL_CASES).mean) first = i;
    }
    return first;
}

// --- the question

static void tell_question(const lw_best *best, lw_teller *t)
{
    char text[900];
    const lw_sweep *sweep = best->sweep;
    const size_t cases = lw_sweep_cases(sweep);
    LW_FIT(text, "%s: ", sweep->inputs.boat.name);
    for (size_t i = 0; i < sweep->sought_count; i++) {
        lw_text_add(text, sizeof text, "%s%s", i ? " and " : "", sweep->sought[i].over.key);
    }
    lw_text_add(text, sizeof text,
                " sought within bounds, by the %s with the best pin, in %zu case%s.",
                sweep->answer->worth->what, cases, cases == 1 ? "" : "s");
    lw_tell_sentence(t, "question", text);
    lw_tell_name(t, "boat", sweep->inputs.boat.name);
    lw_tell_name(t, "by", sweep->answer->name);
}

// --- the answer

// Where it loses, and how much.
static void tell_cost(const lw_best *best, size_t candidate, lw_teller *t)
{
    char text[1200] = "";
    const size_t cases = lw_sweep_cases(best->sweep);
    for (size_t i = 0; i < cases; i++) {
        char where[CASE_TEXT];
        const lw_gain gain = lw_best_gain(best, candidate, i);
        if (!(gain.mean < 0.0)) continue;
        case_text(best->sweep, i, where);
        lw_text_add(text, sizeof text, "%s", text[0] ? "; " : "It costs elsewhere: ");
        add_gain(best, (lw_gain){-gain.mean, gain.error}, text, sizeof text);
        lw_text_add(text, sizeof text, " at %s", where);
    }
    if (text[0])
        lw_text_add(text, sizeof text, ".");
    else
        LW_FIT(text, "It costs nothing in %s.", cases == 1 ? "the case asked" : "any of the cases");
    lw_tell_sentence(t, "cost", text);
}

static void tell_gain(const lw_best *best, lw_gain gain, lw_teller *t)
{
    char text[300], all[LW_CELL_LENGTH];
    measure(best, fabs(lw_best_own_worth(best, LW_ALL_CASES)), all);
    LW_FIT(text, "%s ", best->found_count > 1 ? "All together gain" : "The best gains");
    add_gain(best, gain, text, sizeof text);
    lw_text_add(text, sizeof text, " of %s%s%s.", all,
                lw_sweep_cases(best->sweep) > 1 ? ", on average over the cases" : "",
                is_sure(gain) ? "" : ": too close to call");
    lw_tell_sentence(t, "gain", text);
}

static void tell_first(const lw_best *best, size_t which, lw_teller *t)
{
    char text[400], value[LW_OVER_TEXT];
    const lw_sweep *sweep = best->sweep;
    const size_t candidate = best->found[which], sought = which ? which - 1 : 0;
    const lw_gain gain = lw_best_gain(best, candidate, LW_ALL_CASES);
    const size_t at = lw_sought_at(sweep->sought, sweep->sought_count, candidate, sought);
    lw_sought_text(&sweep->sought[sought], at, value);
    LW_FIT(text, "Buy first: %s of %s", sweep->sought[sought].over.key, value);
    if (which) {
        lw_text_add(text, sizeof text, ": alone it gains ");
        add_gain(best, gain, text, sizeof text);
    }
    lw_text_add(text, sizeof text, ".");
    lw_tell_sentence(t, "first", text);
    tell_cost(best, candidate, t);
}

// False: there is nothing to buy.
static bool tell_answer(const lw_best *best, lw_teller *t)
{
    const size_t first = best->found_count && best->searched ? first_bought(best) : 0;
    const bool is_sailed = isfinite(lw_best_own_worth(best, LW_ALL_CASES));
    const lw_gain gain = lw_best_gain(best, best->found[0], LW_ALL_CASES);
    lw_tell_object(t, "answer", "What to buy");
    if (!is_sailed) {
        lw_tell_sentence(t, "gain",
                         "As she is there is no answer in any of the cases: nothing to "
                         "compare with.");
    } else if (best->found[0] == lw_sweep_own(best->sweep)) {
        lw_tell_sentence(t, "gain",
                         "Nothing: no step of these sizes from what she has, up or "
                         "down, was better on average.");
    } else {
        tell_gain(best, gain, t);
        if (lw_best_gain(best, best->found[first], LW_ALL_CASES).mean > 0.0)
            tell_first(best, first, t);
        else
            lw_tell_sentence(t, "first",
                             "By other seeds nothing that was found is better than "
                             "what she has: buy nothing for it.");
    }
    lw_tell_end(t);
    return is_sailed && best->found[0] != lw_sweep_own(best->sweep);
}

// --- tables

static void tell_quantities(const lw_best *best, lw_teller *t)
{
    const lw_sweep *sweep = best->sweep;
    const size_t count = sweep->sought_count;
    const bool are_more = count > 1;
    const lw_item columns[] = {
        {"quantity", "quantity", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"hers", "hers", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"together", are_more ? "all together" : NULL, LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"alone", are_more ? "alone" : "best", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"gain", are_more ? "alone gains" : "gains", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
    };
    lw_tell_table(t, "quantities", "Within the bounds", columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < count; i++) {
        char text[LW_OVER_TEXT];
        const lw_sought *sought = &sweep->sought[i];
        const size_t alone = best->found[are_more ? i + 1 : 0];
        lw_tell_row(t);
        lw_tell_text(t, NULL, sought->over.key);
        lw_sought_text(sought, sought->own, text);
        lw_tell_text(t, NULL, text);
        lw_sought_text(sought, lw_sought_at(sweep->sought, count, best->found[0], i), text);
        lw_tell_text(t, NULL, text);
        lw_sought_text(sought, lw_sought_at(sweep->sought, count, alone, i), text);
        lw_tell_text(t, NULL, text);
        text[0] = '\0';
        add_gain(best, lw_best_gain(best, alone, LW_ALL_CASES), text, sizeof text);
        lw_tell_text(t, NULL, text);
    }
    lw_tell_end(t);
}

// Of a column of gains and its errors: in time or in speed.
static lw_item item_of(const lw_best *best, const char *key, const char *head, bool is_signed)
{
    const bool is_time = is_timed(best);
    return (lw_item){.key = key,
                     .head = head,
                     .form = is_time     ? LW_AS_TIME
                             : is_signed ? LW_AS_SIGNED
                                         : LW_AS_NUMBER,
                     .unit = best->sweep->answer->worth->unit,
                     .digits = is_time ? 0 : 2};
}

static void tell_cases(const lw_best *best, lw_teller *t)
{
    const size_t first = first_bought(best);
    const lw_item columns[] = {
        {"case", "case", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        item_of(best, "hers", "hers", false),
        item_of(best, "together", "gains", true),
        item_of(best, "together_error", best->is_checked ? "±" : NULL, false),
        item_of(best, "first", first ? "first alone" : NULL, true),
        item_of(best, "first_error", first && best->is_checked ? "±" : NULL, false),
    };
    lw_tell_table(t, "cases", "Case by case", columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < lw_sweep_cases(best->sweep); i++) {
        char text[CASE_TEXT];
        const lw_gain all = lw_best_gain(best, best->found[0], i);
        const lw_gain alone = lw_best_gain(best, best->found[first], i);
        case_text(best->sweep, i, text);
        lw_tell_row(t);
        lw_tell_text(t, NULL, text);
        lw_tell_number(t, NULL, fabs(lw_best_own_worth(best, i)));
        lw_tell_number(t, NULL, all.mean);
        lw_tell_number(t, NULL, all.error);
        lw_tell_number(t, NULL, alone.mean);
        lw_tell_number(t, NULL, alone.error);
    }
    lw_tell_end(t);
}

static void tell_trust(const lw_best *best, lw_teller *t)
{
    lw_tell_note(
        t, "trust",
        best->is_checked
            ? "Gains: means over rides with seeds that the search had not; ± one standard "
              "error by four sets of them. What is not known of the boat counts "
              "only where --draws has it drawn. The search ends at the first place that "
              "no step betters: there may be a better one beyond."
            : "By steady flight there is no error of rides; how she is held in gusts does not "
              "count. The search ends at the first place that no step betters: there may "
              "be a better one beyond.");
}

void lw_best_tell(const void *it, lw_teller *t)
{
    const lw_best *best = it;
    tell_question(best, t);
    if (!tell_answer(best, t)) return;
    tell_quantities(best, t);
    tell_cases(best, t);
    tell_trust(best, t);
}
