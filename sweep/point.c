// point.c - one point of a sweep worked out.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>

#include "sweep/sweep.h"

lw_sweep_worker *lw_sweep_worker_new(const lw_sweep *sweep)
{
    lw_sweep_worker *worker = calloc(1, sizeof *worker);
    if (worker) worker->sweep = sweep;
    return worker;
}

void lw_sweep_worker_free(lw_sweep_worker *worker)
{
    if (worker) lw_lines_free(&worker->lines);
    free(worker);
}

void lw_sweep_pins(const lw_sweep_worker *worker, size_t *first, size_t *count)
{
    const lw_boat *boat = &worker->inputs.boat;
    const char *label = worker->sweep->pin;
    const int pin = label ? lw_boat_pin(boat, label) : 0;
    *first = pin < 0 ? 0 : (size_t)pin;
    *count = pin < 0 ? 0 : label ? 1 : boat->pin_count;
}

void lw_sweep_line(lw_sweep_worker *worker, const char *outcome)
{
    const lw_sweep *sweep = worker->sweep;
    char value[LW_OVER_TEXT];
    lw_lines_begin(&worker->lines);
    lw_lines_number(&worker->lines, (double)worker->point + 1.0);
    const size_t candidate = lw_sweep_candidate(sweep, worker->point);
    for (size_t i = 0; i < sweep->sought_count; i++) {
        lw_over_value(&sweep->sought[i].over,
                      lw_sought_at(sweep->sought, sweep->sought_count, candidate, i), value);
        lw_lines_text(&worker->lines, value);
    }
    if (sweep->sought_count) lw_lines_number(&worker->lines, lw_sweep_seed(sweep, worker->point));
    for (size_t i = 0; i < sweep->over_count; i++) {
        lw_over_value(&sweep->overs[i], lw_sweep_at(sweep, worker->point, i), value);
        lw_lines_text(&worker->lines, value);
    }
    if (sweep->draws)
        lw_lines_number(&worker->lines,
                        (double)lw_sweep_at(sweep, worker->point, sweep->over_count));
    lw_lines_text(&worker->lines, outcome);
}

void lw_sweep_rows(lw_sweep_worker *worker, const lw_table *table, const void *data)
{
    for (size_t i = 0; i < table->count; i++) {
        lw_lines_number(&worker->lines, lw_quantity_shown(&table->rows[i], data));
    }
}

const char *lw_sweep_gap(lw_sweep_worker *worker, size_t point, const char *why)
{
    const lw_sweep_column *column = worker->sweep->answer->columns;
    worker->point = point;
    lw_lines_clear(&worker->lines);
    lw_sweep_line(worker, why);
    for (column++; column->key || column->table; column++) {
        const size_t cells = column->table ? column->table->count : 1;
        for (size_t i = 0; i < cells; i++) lw_lines_text(&worker->lines, "");
    }
    return worker->lines.is_short ? NULL : worker->lines.text;
}

static const char *refused(lw_sweep_worker *worker, size_t point, const lw_faults *faults)
{
    char why[300] = "refused";
    for (size_t i = 0; i < faults->count; i++) {
        if (faults->list[i].is_doubt) continue;
        LW_FIT(why, "refused: %s: %s", faults->list[i].key, faults->list[i].sentence);
        break;
    }
    return lw_sweep_gap(worker, point, why);
}

// Sections are found anew from those of the boat as she is, so that they do not hang on the points
// before; those of a draw are the boat's as measured, as choices take them.
static void prepare(lw_sweep_worker *worker)
{
    const lw_sweep *sweep = worker->sweep;
    lw_inputs *inputs = &worker->inputs;
    const lw_medium medium = lw_medium_of(&inputs->day);
    worker->store.first.is_ready = worker->store.other.is_ready = false;
    lw_section_store_take(&worker->store, &sweep->inputs.boat, &sweep->sections);
    worker->sections = lw_section_store_of(&worker->store, &inputs->boat);
    if (sweep->draws) lw_sweep_draw(sweep, worker->point, inputs);
    lw_craft_prepare(&worker->craft, &inputs->boat, worker->sections, &inputs->sailor.person,
                     &medium);
}

const char *lw_sweep_point(lw_sweep_worker *worker, size_t point)
{
    lw_faults faults = {0};
    const char *text;
    worker->point = point;
    if (lw_sweep_inputs(worker->sweep, point, &worker->inputs, &faults)) {
        prepare(worker);
        lw_lines_clear(&worker->lines);
        worker->sweep->answer->work(worker);
        text = worker->lines.is_short ? NULL : worker->lines.text;
    } else {
        text = refused(worker, point, &faults);
    }
    lw_faults_free(&faults);
    return text;
}
