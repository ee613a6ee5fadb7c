// work.c - the answer of `lullwise learn` worked out.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>

#include "answer/learn/learn.h"
#include "answer/learned.h"
#include "answer/words/sections.h"
#include "records/record_file.h"
#include "records/record_hash.h"

#define WEIGHT_APART 4.0  // [kg] a sailor that heavier or lighter is another  [judged]

// --- days that count

static size_t numbers_of(const lw_lesson *told)
{
    size_t count = 0;
    for (size_t row = 0; row < LW_LESSON_COUNT; row++)
        count += !isnan(lw_quantity_value(&lw_lesson_table.rows[row], told));
    return count;
}

static void take_days(lw_taking *t)
{
    const lw_boat *boat = &t->inputs->boat;
    const lw_person *person = &t->inputs->sailor.person;
    const uint64_t hash = lw_record_hash(&lw_boat_record, boat);
    for (size_t i = 0; i < t->entries.count; i++) {
        const lw_entry *entry = &t->entries.list[i];
        const lw_logged *day = &entry->day;
        const int pin = lw_boat_pin(boat, day->pin);
        const bool is_hers = entry->boat_hash == hash && pin >= 0;
        const bool is_other = fabs(day->outing.mass - person->mass - person->gear) > WEIGHT_APART;
        t->of_others += !is_hers;
        t->of_weights += is_hers && is_other;
        if (!is_hers || is_other) continue;
        lw_season_day_add(&t->season.day, t->season.count, day);
        t->days[t->season.count] = lw_lesson_of(day, (size_t)pin);
        t->told += numbers_of(&t->days[t->season.count++].told);
    }
}

static bool read_logbook(lw_taking *t, lw_refusal *refusal)
{
    lw_logbook book;
    if (!lw_logbook_open(&book, t->path, false)) return lw_refuse(refusal, "%s", book.why);
    const bool is_read = lw_logbook_days(&book, false, &t->entries);
    lw_logbook_close(&book);
    return is_read || lw_refuse(refusal, "%s", book.why);
}

static bool is_enough(const lw_taking *t) { return t->told >= LW_LEARNED_LEAST; }

// The day's wind at the height of the season's.
static lw_day day_of(const lw_taking *t)
{
    lw_day day = t->inputs->day;
    const lw_conditions at = lw_conditions_of(&day.wind, &day.sea, NAN);
    day.wind.lull = at.lull, day.wind.mean = at.mean, day.wind.puff = at.puff;
    day.wind.height = t->season.day.wind.height;
    return day;
}

bool lw_taking_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                     lw_refusal *refusal)
{
    lw_taking *t = it;
    t->inputs = inputs;
    t->asks_day = lw_options_has(options, "day");
    t->path = lw_options_text(options, "logbook");
    if (!lw_options_has(options, "boat"))
        return lw_refuse(refusal, "of which boat? lullwise learn --boat FILE");
    if (!t->path && lw_logbook_home(t->home)) t->path = t->home;
    if (!t->path) return lw_refuse(refusal, "no home folder is known; say --logbook FILE");
    if (!read_logbook(t, refusal)) return false;
    t->days = calloc(t->entries.count + 1, sizeof *t->days);
    if (!t->days) return lw_refuse(refusal, "there is not enough memory");
    take_days(t);
    t->season.boat = &inputs->boat;
    t->season.person = &inputs->sailor.person;
    t->season.days = t->days;
    t->season.leg = LW_SEASON_LEG;
    if (t->asks_day) t->season.asked = day_of(t).wind.mean;
    if (!is_enough(t)) return true;
    t->season.sections = lw_sections_of(&inputs->boat);
    lw_learning_begin(&t->learning, &t->season);
    return true;
}

// --- steps

size_t lw_taking_steps(void *it)
{
    lw_taking *t = it;
    return is_enough(t) ? lw_learning_steps(&t->learning) : 0;
}

void lw_taking_step(void *it, size_t step)
{
    lw_taking *t = it;
    lw_learning_step(&t->learning, step);
}

bool lw_taking_are_apart(const void *it)
{
    (void)it;
    return true;
}

void lw_taking_end(void *it)
{
    lw_taking *t = it;
    t->is_whole = is_enough(t) && lw_learning_is_whole(&t->learning) &&
                  t->learning.round == t->learning.rounds;
    if (!t->is_whole) return;
    t->learned = lw_learning_end(&t->learning);
    t->left_out = lw_learning_left_out(&t->learning);
    const lw_day day = day_of(t);
    if (t->asks_day) t->next = lw_learning_next(&t->learning, &day);
}

bool lw_taking_is_answered(const void *it)
{
    const lw_taking *t = it;
    return t->is_whole && t->learned.numbers >= LW_LEARNED_LEAST;
}

void lw_taking_release(void *it)
{
    lw_taking *t = it;
    lw_entries_free(&t->entries);
    free(t->days);
}

// --- what is kept

void lw_taking_write(const void *it, FILE *out)
{
    const lw_taking *t = it;
    lw_learned_boat kept = {.values = t->learned.values,
                            .errors = t->learned.errors,
                            .from = {(double)t->learned.days, (double)t->learned.numbers}};
    char hash[LW_HASH_TEXT];
    if (!lw_taking_is_answered(t)) return;
    lw_boat_hash_text(&t->inputs->boat, hash);
    LW_FIT(kept.boat, "%s", t->inputs->boat.name);
    LW_FIT(kept.hash, "%s", hash);
    lw_record_write(&lw_learned_record, &kept, out);
}
