// sensitivity.c - each measured quantity moved by one tape error, and what becomes of the choice.
// SPDX-License-Identifier: MIT

#include "lullwise/sensitivity.h"

#include <math.h>
#include <string.h>

static const lw_prospect *prospect_of(const lw_choice *choice, size_t pin)
{
    size_t i = 0;
    while (i + 1 < choice->count && choice->places[i].pin != pin) i++;
    return &choice->places[i].prospect;
}

static void search_anew(lw_sensing *b)
{
    lw_outlook *o = b->shifted;
    const size_t pin = b->found.pin;
    const lw_setup setup = lw_craft_setup(&o->craft, &b->boat, pin);
    for (size_t c = 0; c < o->course_count; c++) {
        lw_range_of(&o->craft, &setup, o->courses[c], b->base.puff, &o->ranges[pin][c]);
    }
    lw_shift_pace(b->base.outlook, pin, o);
}

static lw_choice choice_now(lw_sensing *b, bool is_anew)
{
    const lw_sections *sections = lw_section_store_of(b->store, &b->boat);
    lw_shifted(&b->base, &b->boat, sections, &b->person, b->shifted);
    if (is_anew) search_anew(b);
    return lw_choice_of(b->shifted, b->shifted->aim, 0.0);
}

static bool is_sound(const lw_sensing *b)
{
    const char *why;
    return lw_boat_contradiction(&b->boat, &why) == NULL;
}

// The quantity at one side of what was measured; false when it cannot be there.
static bool move(lw_sensing *b, const lw_sensitivity_row *to, double si, bool is_anew,
                 lw_choice *choice)
{
    if (!lw_quantity_is_in_range(to->row, si)) return false;
    const double was = lw_quantity_value(to->row, to->data);
    lw_quantity_put(to->row, to->data, si);
    const bool can = is_sound(b);
    if (can) *choice = choice_now(b, is_anew);
    lw_quantity_put(to->row, to->data, was);
    return can;
}

// How much a change matters: a knot of hold weighs as much as a hundredth of the time.  [judged]
static double weight_of(const lw_sensitivity *s, double hold, double seconds)
{
    const double knots = hold / LW_KN, hundredths = 100.0 * seconds / s->seconds;
    return sqrt(knots * knots + hundredths * hundredths);
}

// Half of what changes from one error less to one error more.
void lw_sensing_row(lw_sensing *b, size_t index, bool is_anew)
{
    const lw_sensitivity *s = &b->found;
    lw_sensitivity_row *to = &b->found.rows[index];
    const double error = to->row->error * lw_unit_in_si(to->row->unit);
    const double at = lw_quantity_value(to->row, to->data);
    double sides = 0.0;
    to->hold = to->seconds = 0.0, to->weight = -1.0, to->first_instead = -1;
    for (int side = -1; side <= 1; side += 2) {
        lw_choice choice;
        if (!move(b, to, at + side * error, is_anew, &choice)) continue;
        const lw_prospect *p = prospect_of(&choice, s->pin);
        to->hold += side * (p->held_up_to - s->held_up_to);
        to->seconds += side * (p->seconds - s->seconds);
        if (choice.places[0].pin != s->pin) to->first_instead = (int)choice.places[0].pin;
        sides += 1.0;
    }
    if (sides == 0.0) return;
    to->hold /= sides, to->seconds /= sides;
    to->weight = weight_of(s, to->hold, to->seconds);
}

// "main_foil.span"; cut where there is no room.
static void put_key(lw_sensitivity_row *to, const char *section, const char *key)
{
    const size_t room = sizeof to->key - 1;
    const char *const parts[] = {section, ".", key};
    size_t at = 0;
    for (int i = 0; i < 3; i++) {
        const size_t left = room - at, length = strlen(parts[i]);
        const size_t taken = length < left ? length : left;
        memcpy(to->key + at, parts[i], taken);
        at += taken;
    }
    to->key[at] = '\0';
}

static void list_row(lw_sensitivity *s, const char *section, const char *key,
                     const lw_quantity *row, void *data)
{
    if (row->error <= 0.0 || s->count == LW_SENSITIVITIES_MOST) return;
    lw_sensitivity_row *to = &s->rows[s->count++];
    *to = (lw_sensitivity_row){.row = row, .data = data, .weight = -1.0, .first_instead = -1};
    put_key(to, section, key);
}

static void list_section(lw_sensitivity *s, const lw_section *section, void *data)
{
    const lw_table *table = section->table;
    if (section->kind == LW_SECTION_PLAIN) {
        for (size_t i = 0; i < table->count; i++) {
            list_row(s, table->key, table->rows[i].key, &table->rows[i],
                     (char *)data + section->offset);
        }
    } else if (section->kind == LW_SECTION_LABELLED) {
        const size_t count = *lw_section_length(section, data);
        for (size_t i = 0; i < count; i++) {
            char *element = lw_section_element(section, data, i);
            list_row(s, table->key, element + section->label_offset, &table->rows[0], element);
        }
    }
}

static void list_all(lw_sensing *b)
{
    const lw_record *boat = &lw_boat_record;
    const lw_table *person = lw_sailor_record.sections[0].table;
    for (size_t i = 0; i < boat->section_count; i++) {
        list_section(&b->found, &boat->sections[i], &b->boat);
    }
    for (size_t i = 0; i < person->count; i++) {
        list_row(&b->found, person->key, person->rows[i].key, &person->rows[i], &b->person);
    }
}

void lw_sensing_begin(lw_sensing *b, const lw_outlook *outlook, lw_outlook *scratch,
                      lw_section_store *store)
{
    *b = (lw_sensing){
        .boat = outlook->boat, .person = outlook->person, .store = store, .shifted = scratch};
    lw_shift_base_prepare(&b->base, outlook);
    const lw_choice choice = choice_now(b, false);
    const lw_placing *first = &choice.places[0];
    b->found.flies = choice.count > 0 && first->flies;
    if (!b->found.flies) return;
    b->found.pin = first->pin;
    b->found.held_up_to = first->prospect.held_up_to;
    b->found.seconds = first->prospect.seconds;
    list_all(b);
}

void lw_sensitivity_sort_first(lw_sensitivity *found, size_t count)
{
    lw_sensitivity_row *rows = found->rows;
    for (size_t i = 1; i < count; i++) {
        const lw_sensitivity_row row = rows[i];
        size_t k = i;
        for (; k > 0 && rows[k - 1].weight < row.weight; k--) rows[k] = rows[k - 1];
        rows[k] = row;
    }
}

void lw_sensitivity_sort(lw_sensitivity *found)
{
    lw_sensitivity_sort_first(found, found->count);
    while (found->count && found->rows[found->count - 1].weight < 0.0) found->count--;
}
