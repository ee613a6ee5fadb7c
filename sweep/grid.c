// grid.c - the points of a sweep: which values each has, and what boat, sailor and day they make.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/draw.h"
#include "records/record_value.h"
#include "sweep/sweep.h"

// --- the wind, which goes as a whole

// The row of lull, mean or puff that is varied while the other two are not; NULL: they stand by
// themselves, and *which stays.
static const lw_quantity *wind_alone(const lw_sweep *sweep, size_t *which)
{
    size_t at = *which;
    static const char *const parts[] = {"lull", "mean", "puff"};
    const lw_quantity *row = NULL;
    for (size_t i = 0; i < sweep->over_count; i++) {
        const char *key = sweep->overs[i].key;
        if (strncmp(key, "day.", 4) == 0) key += 4;
        for (size_t k = 0; k < LW_COUNT_OF(parts); k++) {
            if (strncmp(key, "wind.", 5) != 0 || strcmp(key + 5, parts[k]) != 0) continue;
            if (row) return NULL;
            row = lw_table_find(lw_record_section(&lw_day_record, "wind")->table, parts[k]);
            at = i;
        }
    }
    *which = at;
    return row;
}

// Lull, mean and puff in proportion, so that the one that `row` is of becomes this.
static bool put_wind(lw_inputs *inputs, const lw_quantity *row, const char *text, lw_faults *faults)
{
    double value;
    const char *why;
    const lw_written written = {.file = "--over", .line = 1, .key = row->key, .text = text};
    if (!lw_written_quantity(&written, row, &value, faults)) return false;
    lw_day *day = &inputs->day_as_given;
    lw_wind wind = inputs->day.wind;
    const double factor = value / lw_quantity_value(row, &wind);
    wind.lull *= factor, wind.mean *= factor, wind.puff *= factor;
    lw_quantity_put(row, &wind, value);
    day->wind = wind;
    day->has_wind = true, day->has_forecast = false, day->reading_count = 0;
    inputs->day = *day;
    if (lw_day_settle(&inputs->day, &why)) return true;
    LW_FIT(lw_faults_add(faults, &written)->sentence, "%s", why);
    return false;
}

// --- points

size_t lw_sweep_cases(const lw_sweep *sweep)
{
    size_t cases = sweep->draws ? sweep->draws : 1;
    for (size_t i = 0; i < sweep->over_count; i++) cases *= sweep->overs[i].count;
    return cases;
}

size_t lw_sweep_sets(const lw_sweep *sweep)
{
    const bool has_rides = sweep->sought_count && sweep->answer->worth->has_rides;
    return has_rides ? 1 + LW_SWEEP_CHECKS : 1;
}

size_t lw_sweep_set(const lw_sweep *sweep, size_t point)
{
    return point / lw_sweep_cases(sweep) % lw_sweep_sets(sweep);
}

size_t lw_sweep_candidate(const lw_sweep *sweep, size_t point)
{
    return point / lw_sweep_cases(sweep) / lw_sweep_sets(sweep);
}

size_t lw_sweep_own(const lw_sweep *sweep)
{
    size_t at[LW_SOUGHT_MOST] = {0};
    for (size_t i = 0; i < sweep->sought_count; i++) at[i] = sweep->sought[i].own;
    return lw_sought_candidate(sweep->sought, sweep->sought_count, at);
}

size_t lw_sweep_first(const lw_sweep *sweep, size_t candidate, size_t set)
{
    return (candidate * lw_sweep_sets(sweep) + set) * lw_sweep_cases(sweep);
}

#define SET_APART 1e6  // seeds from one set to the next: more than a choice has

double lw_sweep_seed(const lw_sweep *sweep, size_t point)
{
    return sweep->seed + SET_APART * (double)lw_sweep_set(sweep, point);
}

size_t lw_sweep_at(const lw_sweep *sweep, size_t point, size_t over)
{
    point %= lw_sweep_cases(sweep);
    if (sweep->draws) {
        if (over == sweep->over_count) return point % sweep->draws;
        point /= sweep->draws;
    }
    for (size_t i = sweep->over_count; --i > over;) point /= sweep->overs[i].count;
    return point % sweep->overs[over].count;
}

static void put_record(const lw_over *over, size_t i, lw_inputs *inputs)
{
    const char *data = over->records + i * over->record->size;
    if (over->record == &lw_boat_record) memcpy(&inputs->boat, data, sizeof inputs->boat);
    if (over->record == &lw_sailor_record) memcpy(&inputs->sailor, data, sizeof inputs->sailor);
    if (over->record == &lw_day_record)
        memcpy(&inputs->day_as_given, data, sizeof inputs->day_as_given);
}

void lw_sweep_draw(const lw_sweep *sweep, size_t point, lw_inputs *inputs)
{
    lw_draw drawn;
    const size_t number = lw_sweep_at(sweep, point, sweep->over_count);
    lw_draw_of(&inputs->boat, &inputs->sailor.person, (unsigned)number, &drawn);
    inputs->boat = drawn.boat;
    inputs->sailor.person = drawn.person;
}

// What a candidate has that the boat has not.
static size_t assign_hardware(const lw_sweep *sweep, size_t point, char texts[][LW_OVER_TEXT])
{
    size_t count = 0;
    const size_t candidate = lw_sweep_candidate(sweep, point);
    for (size_t i = 0; i < sweep->sought_count; i++) {
        const lw_sought *sought = &sweep->sought[i];
        const size_t at = lw_sought_at(sweep->sought, sweep->sought_count, candidate, i);
        if (at != sought->own) lw_over_assignment(&sought->over, at, texts[count++]);
    }
    return count;
}

#define ASSIGNED_MOST (LW_SWEEP_OVERS_MOST + LW_SOUGHT_MOST)

bool lw_sweep_inputs(const lw_sweep *sweep, size_t point, lw_inputs *inputs, lw_faults *faults)
{
    char texts[ASSIGNED_MOST][LW_OVER_TEXT], value[LW_OVER_TEXT];
    const char *set[ASSIGNED_MOST];
    size_t wind = sweep->over_count, count = assign_hardware(sweep, point, texts);
    const lw_quantity *row = wind_alone(sweep, &wind);
    *inputs = sweep->inputs;
    for (size_t i = 0; i < sweep->over_count; i++) {
        const lw_over *over = &sweep->overs[i];
        const size_t at = lw_sweep_at(sweep, point, i);
        if (over->record) put_record(over, at, inputs);
        if (over->record || i == wind) continue;
        lw_over_assignment(over, at, texts[count++]);
    }
    for (size_t i = 0; i < count; i++) set[i] = texts[i];
    const lw_assignments more = {"--over", set, count};
    if (!lw_inputs_put(inputs, sweep->options, &more, faults)) return false;
    if (!row) return true;
    const lw_over *over = &sweep->overs[wind];
    lw_over_value(over, lw_sweep_at(sweep, point, wind), value);
    lw_text_add(value, sizeof value, " %s", over->unit);
    return put_wind(inputs, row, value, faults);
}
