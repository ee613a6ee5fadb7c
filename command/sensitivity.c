// sensitivity.c - each measured quantity moved by one tape error, and what becomes of the choice.
// SPDX-License-Identifier: MIT

#include "command/sensitivity.h"

#include <math.h>
#include <stdlib.h>

#include "command/progress.h"
#include "command/shifted.h"
#include "records/record_file.h"
#include "records/record_value.h"

// One question: a boat and a person that can be changed, and the answer as things are.
typedef struct bench {
    const lw_inputs *inputs;
    lw_boat boat;
    lw_person person;
    lw_aim aim;
    lw_shift_base base;
    lw_outlook *outlook, *shifted;
    size_t done, all;  // quantities
    bool is_anew;      // the best pin's range is searched anew
    lw_sensitivity *to;
} bench;

static const lw_prospect *prospect_of(const lw_choice *choice, size_t pin)
{
    size_t i = 0;
    while (i + 1 < choice->count && choice->places[i].pin != pin) i++;
    return &choice->places[i].prospect;
}

static void search_anew(bench *b)
{
    lw_outlook *o = b->shifted;
    lw_setup setup = o->craft.setup;
    setup.incidence = b->boat.pins[b->to->pin].incidence;
    for (size_t c = 0; c < o->course_count; c++) {
        lw_range_of(&o->craft, &setup, o->courses[c], b->base.puff, &o->ranges[b->to->pin][c]);
    }
}

static lw_choice choice_now(bench *b)
{
    lw_shifted(&b->base, &b->boat, &b->person, b->shifted);
    if (b->is_anew) search_anew(b);
    return lw_choice_of(b->shifted, b->aim, 0.0);
}

static bool is_sound(const bench *b)
{
    const char *why;
    return lw_boat_contradiction(&b->boat, &why) == NULL;
}

// The quantity at one side of what was measured; false when it cannot be there.
static bool move(bench *b, const lw_quantity *row, void *data, double si, lw_choice *choice)
{
    if (!lw_quantity_is_in_range(row, si)) return false;
    const double was = lw_quantity_value(row, data);
    lw_quantity_put(row, data, si);
    const bool can = is_sound(b);
    if (can) *choice = choice_now(b);
    lw_quantity_put(row, data, was);
    return can;
}

// How much a change matters: a knot of hold weighs as much as a hundredth of the time.  [judged]
static double weight_of(const lw_sensitivity *s, double hold, double seconds)
{
    return hypot(hold / LW_KN, 100.0 * seconds / s->seconds);
}

// Half of what changes from one error less to one error more. False when neither can be.
static bool try_sides(bench *b, lw_sensitivity_row *to)
{
    const lw_sensitivity *s = b->to;
    const lw_quantity *row = to->row;
    const double error = row->error * lw_unit_in_si(row->unit);
    const double at = lw_quantity_value(row, to->data);
    double sides = 0.0;
    to->hold = to->seconds = 0.0, to->first_instead = -1;
    for (int side = -1; side <= 1; side += 2) {
        lw_choice choice;
        if (!move(b, row, to->data, at + side * error, &choice)) continue;
        const lw_prospect *p = prospect_of(&choice, s->pin);
        to->hold += side * (p->held_up_to - s->held_up_to);
        to->seconds += side * (p->seconds - s->seconds);
        if (choice.places[0].pin != s->pin) to->first_instead = (int)choice.places[0].pin;
        sides += 1.0;
    }
    if (sides == 0.0) return false;
    to->hold /= sides, to->seconds /= sides;
    to->weight = weight_of(s, to->hold, to->seconds);
    return true;
}

static void try_row(bench *b, const char *key, const lw_quantity *row, void *data)
{
    lw_sensitivity *s = b->to;
    if (row->error <= 0.0 || s->count == LW_SENSITIVITIES_MOST) return;
    lw_progress("what each measurement does", b->done++, b->all);
    lw_sensitivity_row *to = &s->rows[s->count];
    *to = (lw_sensitivity_row){.row = row, .data = data};
    LW_FIT(to->key, "%s", key);
    if (try_sides(b, to)) s->count++;
}

static void try_section(bench *b, const lw_section *section, void *data)
{
    const lw_table *table = section->table;
    char key[80];
    if (section->kind == LW_SECTION_PLAIN) {
        for (size_t i = 0; i < table->count; i++) {
            LW_FIT(key, "%s.%s", table->key, table->rows[i].key);
            try_row(b, key, &table->rows[i], (char *)data + section->offset);
        }
    } else if (section->kind == LW_SECTION_LABELLED) {
        const size_t count = *lw_section_length(section, data);
        for (size_t i = 0; i < count; i++) {
            char *element = lw_section_element(section, data, i);
            LW_FIT(key, "%s.%s", table->key, element + section->label_offset);
            try_row(b, key, &table->rows[0], element);
        }
    }
}

static size_t measured_in(const lw_table *table)
{
    size_t count = 0;
    for (size_t i = 0; i < table->count; i++) count += table->rows[i].error > 0.0;
    return count;
}

static int heavier(const void *a, const void *b)
{
    const double x = ((const lw_sensitivity_row *)a)->weight;
    const double y = ((const lw_sensitivity_row *)b)->weight;
    return (x < y) - (x > y);
}

static void count_all(bench *b, const lw_table *person)
{
    const lw_record *boat = &lw_boat_record;
    b->all = measured_in(person) + b->boat.pin_count;
    for (size_t i = 0; i < boat->section_count; i++) {
        const lw_section *section = &boat->sections[i];
        if (section->kind == LW_SECTION_PLAIN) b->all += measured_in(section->table);
    }
}

static void sort(lw_sensitivity_row *rows, size_t count)
{
    qsort(rows, count, sizeof rows[0], heavier);
}

static void try_all(bench *b)
{
    const lw_record *boat = &lw_boat_record;
    const lw_table *person = lw_sailor_record.sections[0].table;
    lw_sensitivity *s = b->to;
    count_all(b, person);
    for (size_t i = 0; i < boat->section_count; i++) try_section(b, &boat->sections[i], &b->boat);
    for (size_t i = 0; i < person->count; i++) {
        char key[80];
        LW_FIT(key, "%s.%s", person->key, person->rows[i].key);
        try_row(b, key, &person->rows[i], &b->person);
    }
    sort(s->rows, s->count);
    const size_t most = s->count < LW_SEARCHED_ANEW ? s->count : LW_SEARCHED_ANEW;
    b->is_anew = true;
    for (size_t i = 0; i < most; i++) {
        lw_progress("those that matter most", i, most);
        try_sides(b, &s->rows[i]);
    }
    sort(s->rows, most);
}

static void work_out(bench *b)
{
    const lw_inputs *inputs = b->inputs;
    lw_progress("every pin on every leg", 0, 1);
    lw_outlook_prepare(b->outlook, &b->boat, &b->person, &inputs->day);
    lw_shift_base_prepare(&b->base, b->outlook, inputs);
    const lw_choice choice = choice_now(b);
    const lw_placing *first = &choice.places[0];
    b->to->flies = choice.count > 0 && first->prospect.flying > 0.0;
    if (b->to->flies) {
        b->to->pin = first->pin;
        b->to->held_up_to = first->prospect.held_up_to;
        b->to->seconds = first->prospect.seconds;
        try_all(b);
    }
    lw_progress_over();
}

bool lw_sensitivity_of(const lw_inputs *inputs, lw_sensitivity *sensitivity)
{
    static bench b;
    *sensitivity = (lw_sensitivity){0};
    b = (bench){.inputs = inputs,
                .boat = inputs->boat,
                .person = inputs->sailor.person,
                .aim = lw_aim_of(inputs->day.aim),
                .to = sensitivity};
    b.outlook = malloc(sizeof *b.outlook);
    b.shifted = malloc(sizeof *b.shifted);
    const bool has_room = b.outlook && b.shifted;
    if (has_room) work_out(&b);
    free(b.outlook);
    free(b.shifted);
    return has_room;
}
