// draw.c - boat, sailor and judged numbers drawn within their errors.
// SPDX-License-Identifier: MIT

#include "lullwise/draw.h"

#include <math.h>
#include <string.h>

#include "lullwise/weather.h"

#define HALVINGS 6

// Middles, in probability, of as many equal parts of a half normal as there are pairs; scaled to a
// variance of one.
static const double middles[LW_DRAW_PAIRS] = {0.040, 0.120, 0.201, 0.283, 0.367, 0.454,
                                              0.544, 0.639, 0.739, 0.847, 0.966, 1.099,
                                              1.254, 1.446, 1.709, 2.197};

// Moves of one draw: where chance comes from, the same for all pairs; which pair; what part of
// them is taken, and to which side.
typedef struct moves {
    lw_seed seed;
    unsigned pair;
    double part;
} moves;

// In errors. The parts are dealt out anew for each quantity: each pair gets another one, to a side
// by chance.
static double move_of(moves *m)
{
    unsigned dealt[LW_DRAW_PAIRS];
    for (unsigned i = 0; i < LW_DRAW_PAIRS; i++) {
        const unsigned k = (unsigned)(lw_seed_uniform(&m->seed) * (i + 1));
        if (k < i) dealt[i] = dealt[k];
        dealt[k] = i;
    }
    const uint64_t sides = lw_seed_bits(&m->seed);
    const double side = sides >> m->pair & 1 ? -1.0 : 1.0;
    return m->part * side * middles[dealt[m->pair]];
}

static void move_row(const lw_quantity *row, void *data, moves *m)
{
    if (row->error <= 0.0) return;
    const double unit = lw_unit_in_si(row->unit), at = lw_quantity_value(row, data) / unit;
    const double to = fmin(fmax(at + row->error * move_of(m), row->min), row->max);
    lw_quantity_put(row, data, to * unit);
}

static void move_table(const lw_table *table, void *data, moves *m)
{
    for (size_t i = 0; i < table->count; i++) move_row(&table->rows[i], data, m);
}

static void move_section(const lw_section *section, char *record, moves *m)
{
    if (section->kind == LW_SECTION_PLAIN) move_table(section->table, record + section->offset, m);
    if (section->kind != LW_SECTION_LABELLED) return;
    size_t count;
    char *const counted = record + section->count_offset;
    memcpy(&count, counted, sizeof count);
    for (size_t i = 0; i < count; i++) {
        move_table(section->table, record + section->offset + i * section->stride, m);
    }
}

static void move_record(const lw_record *record, void *data, moves *m)
{
    for (size_t i = 0; i < record->section_count; i++) move_section(&record->sections[i], data, m);
}

lw_judged lw_judged_preset(void)
{
    lw_judged judged;
    lw_table_preset(&lw_judged_table, &judged);
    return judged;
}

// One side of a pair, moved by a part of the errors.
static void move_to(const lw_boat *boat, const lw_person *person, unsigned pair, double part,
                    lw_draw *draw)
{
    moves m = {lw_seed_of(pair / LW_DRAW_PAIRS, LW_SEED_DRAW), pair % LW_DRAW_PAIRS, part};
    *draw = (lw_draw){.boat = *boat, .person = *person, .judged = lw_judged_preset()};
    move_table(&lw_judged_table, &draw->judged, &m);
    move_table(lw_sailor_record.sections[0].table, &draw->person, &m);
    move_record(&lw_boat_record, &draw->boat, &m);
}

void lw_draw_of(const lw_boat *boat, const lw_person *person, unsigned number, lw_draw *draw)
{
    const char *why;
    const double side = number % 2 ? -1.0 : 1.0;
    lw_draw other;
    for (int k = 0; k < HALVINGS; k++) {
        move_to(boat, person, number / 2, side / (1 << k), draw);
        move_to(boat, person, number / 2, -side / (1 << k), &other);
        if (!lw_boat_contradiction(&draw->boat, &why) && !lw_boat_contradiction(&other.boat, &why))
            return;
    }
    draw->boat = *boat;
}

void lw_judged_put_parameters(const lw_judged *judged, lw_ride_parameters *parameters)
{
    parameters->delay *= judged->delay;
    parameters->hand_lag *= judged->hand_lag;
    parameters->body_lag *= judged->body_lag;
    parameters->body_pace *= judged->body_pace;
    parameters->sheet_out *= judged->sheet_out;
    parameters->sheet_in *= judged->sheet_in;
    parameters->wand_lag *= judged->wand_lag;
}

static void scale_gains(const lw_judged *judged, lw_gains *gains)
{
    gains->heel *= judged->heel;
    gains->lead_time *= judged->lead;
    gains->heading *= judged->steer;
    gains->heel_to_helm *= judged->lean;
}

void lw_judged_put_pilot(const lw_judged *judged, lw_pilot *pilot)
{
    scale_gains(judged, &pilot->rest);
    scale_gains(judged, &pilot->rising);
    for (int k = 0; k < LW_WISHES; k++) scale_gains(judged, &pilot->wish[k].gains);
}
