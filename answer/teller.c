// teller.c - an answer is told once, as a tree: what all faces have in common.
// SPDX-License-Identifier: MIT

#include "answer/teller.h"

#include <assert.h>
#include <math.h>

#include "answer/words/number_text.h"
#include "records/fault.h"

lw_item lw_item_of(const lw_quantity *row, const char *head)
{
    return (lw_item){
        .key = row->key, .head = head, .unit = row->unit, .digits = row->decimals, .none = "-"};
}

void lw_item_show(const lw_item *item, double told, char text[LW_SHOWN_LENGTH])
{
    char number[LW_CELL_LENGTH];
    const bool is_bare = item->form == LW_AS_BARE || item->form == LW_AS_CHANGE;
    const bool is_signed = item->form == LW_AS_SIGNED || item->form == LW_AS_CHANGE;
    const char *unit = is_bare ? "" : lw_unit_behind(item->unit);
    if (isnan(told)) {
        lw_text_fit(text, LW_SHOWN_LENGTH, "%s", item->none ? item->none : "-");
        return;
    }
    switch (item->form) {
        case LW_AS_TIME:
            lw_cell_time(text, told);
            return;
        case LW_AS_CHANCE:
            lw_chance_text(text, told / 100.0);
            return;
        default:
            lw_cell_number(number, told, item->digits, is_signed);
            lw_text_fit(text, LW_SHOWN_LENGTH, "%s%s%s", item->form == LW_AS_ERROR ? "± " : "",
                        number, unit);
    }
}

// --- levels

static struct lw_level *level_of(lw_teller *teller) { return &teller->levels[teller->depth - 1]; }

static void open_level(lw_teller *teller, lw_branch branch, const char *key, const char *head)
{
    assert(teller->depth < LW_TELLER_DEPTH);
    struct lw_level *level = &teller->levels[teller->depth++];
    const bool is_inside_hidden = teller->depth > 1 && level[-1].is_hidden;
    level->branch = branch, level->at = 0, level->unit_count = 0;
    level->is_hidden = is_inside_hidden || !head;
    teller->face->open(teller->to, branch, key, head);
}

static void close_level(lw_teller *teller)
{
    const lw_branch branch = level_of(teller)->branch;
    teller->depth--;
    teller->face->close(teller->to, branch);
}

// The units of the object's own numbers, which come to its end.
static void tell_units(lw_teller *teller)
{
    const struct lw_level *level = level_of(teller);
    if (level->branch != LW_OBJECT || level->unit_count == 0) return;
    teller->face->open(teller->to, LW_OBJECT, "units", NULL);
    for (size_t i = 0; i < level->unit_count; i++) {
        const lw_item item = {.key = level->unit_keys[i]};
        teller->face->text(teller->to, &item, lw_unit_sign(level->units[i]));
    }
    teller->face->close(teller->to, LW_OBJECT);
}

lw_teller lw_teller_of(const lw_teller_face *face, void *to)
{
    lw_teller teller = {.face = face, .to = to, .depth = 1};
    teller.levels[0] = (struct lw_level){.branch = LW_OBJECT};
    return teller;
}

bool lw_teller_is_for_people(const lw_teller *teller) { return teller->face->columns != NULL; }

void lw_teller_finish(lw_teller *teller)
{
    assert(teller->depth == 1);
    tell_units(teller);
}

void lw_tell_object(lw_teller *teller, const char *key, const char *head)
{
    open_level(teller, LW_OBJECT, key, head);
}

void lw_tell_list(lw_teller *teller, const char *key, const char *head)
{
    open_level(teller, LW_LIST, key, head);
}

void lw_tell_end(lw_teller *teller)
{
    if (level_of(teller)->branch == LW_ROW) {
        const bool is_whole = level_of(teller)->at == level_of(teller)->column_count;
        assert(is_whole);
        (void)is_whole;
        close_level(teller);
    }
    const bool is_table = level_of(teller)->branch == LW_TABLE;
    if (is_table && !teller->face->columns) teller->face->close(teller->to, LW_LIST);
    tell_units(teller);
    close_level(teller);
}

// --- tables

static lw_unit unit_told(const lw_teller *teller, lw_unit unit)
{
    const bool is_speed = unit == LW_UNIT_KN && teller->speed_unit != LW_UNIT_NONE;
    return is_speed ? teller->speed_unit : unit;
}

static const char *const form_names[] = {
    [LW_AS_NUMBER] = "number", [LW_AS_SIGNED] = "signed", [LW_AS_BARE] = "bare",
    [LW_AS_CHANGE] = "change", [LW_AS_TIME] = "time",     [LW_AS_CHANCE] = "chance",
    [LW_AS_ERROR] = "error",   [LW_AS_TEXT] = "text",     [LW_AS_TRUTH] = "truth",
};

static void tell_column(lw_teller *teller, const lw_item *column)
{
    const lw_teller_face *face = teller->face;
    face->open(teller->to, LW_OBJECT, "", NULL);
    face->text(teller->to, &(lw_item){.key = "key"}, column->key);
    face->text(teller->to, &(lw_item){.key = "head"}, column->head);
    face->text(teller->to, &(lw_item){.key = "unit"},
               lw_unit_sign(unit_told(teller, column->unit)));
    face->number(teller->to, &(lw_item){.key = "digits"}, column->digits, "");
    face->text(teller->to, &(lw_item){.key = "form"}, form_names[column->form]);
    face->close(teller->to, LW_OBJECT);
}

void lw_tell_table(lw_teller *teller, const char *key, const char *head, const lw_item *columns,
                   size_t count)
{
    const lw_teller_face *face = teller->face;
    open_level(teller, LW_TABLE, key, head);
    level_of(teller)->columns = columns, level_of(teller)->column_count = count;
    if (face->columns) {
        face->columns(teller->to, columns, count);
        return;
    }
    face->open(teller->to, LW_LIST, "columns", NULL);
    for (size_t i = 0; i < count; i++) tell_column(teller, &columns[i]);
    face->close(teller->to, LW_LIST);
    face->open(teller->to, LW_LIST, "rows", NULL);
}

static void open_row(lw_teller *teller, const char *head)
{
    if (level_of(teller)->branch == LW_ROW) {
        assert(level_of(teller)->at == level_of(teller)->column_count);
        close_level(teller);
    }
    const struct lw_level *table = level_of(teller);
    assert(table->branch == LW_TABLE);
    open_level(teller, LW_ROW, "", head);
    level_of(teller)->columns = table->columns;
    level_of(teller)->column_count = table->column_count;
}

void lw_tell_row(lw_teller *teller) { open_row(teller, ""); }

void lw_tell_hidden_row(lw_teller *teller) { open_row(teller, NULL); }

// The item meant: the one given, or the row's next column; nameless in a list.
static const lw_item *item_meant(lw_teller *teller, const lw_item *item)
{
    static const lw_item nameless = {.key = "", .head = ""};
    struct lw_level *level = level_of(teller);
    if (level->branch == LW_ROW) {
        assert(!item && level->at < level->column_count);
        return &level->columns[level->at++];
    }
    return item ? item : &nameless;
}

// --- members

static void note_unit(struct lw_level *level, const lw_item *item)
{
    if (level->branch != LW_OBJECT || !lw_unit_sign(item->unit)[0]) return;
    if (level->unit_count == LW_UNITS_MOST) return;
    level->unit_keys[level->unit_count] = item->key;
    level->units[level->unit_count++] = item->unit;
}

// What is meant, told in its unit. False when it concerns nobody: hidden, and a face for people.
static bool mean_number(lw_teller *teller, const lw_item *item, double si, lw_item *it,
                        double *told)
{
    *it = *item_meant(teller, item);
    if (lw_teller_is_for_people(teller) && level_of(teller)->is_hidden) return false;
    it->unit = unit_told(teller, it->unit);
    note_unit(level_of(teller), it);
    *told = lw_told((isfinite(si) ? si : NAN) / lw_unit_in_si(it->unit));
    return true;
}

void lw_tell_number(lw_teller *teller, const lw_item *item, double si)
{
    char shown[LW_SHOWN_LENGTH] = "";
    lw_item it;
    double told;
    if (!mean_number(teller, item, si, &it, &told)) return;
    if (teller->face->shows) lw_item_show(&it, told, shown);
    teller->face->number(teller->to, &it, told, shown);
}

void lw_tell_number_as(lw_teller *teller, const lw_item *item, double si, const char *shown)
{
    lw_item it;
    double told;
    if (!mean_number(teller, item, si, &it, &told)) return;
    teller->face->number(teller->to, &it, told, shown);
}

void lw_tell_bracketed(lw_teller *teller, const lw_item *item, double si)
{
    char shown[LW_SHOWN_LENGTH], bracketed[LW_SHOWN_LENGTH + 2];
    lw_item it;
    double told;
    if (!mean_number(teller, item, si, &it, &told)) return;
    lw_item_show(&it, told, shown);
    LW_FIT(bracketed, "(%s)", shown);
    teller->face->number(teller->to, &it, told, bracketed);
}

void lw_tell_text(lw_teller *teller, const lw_item *item, const char *text)
{
    teller->face->text(teller->to, item_meant(teller, item), text);
}

void lw_tell_truth(lw_teller *teller, const lw_item *item, bool is_so)
{
    teller->face->truth(teller->to, item_meant(teller, item), is_so);
}

void lw_tell_sentence(lw_teller *teller, const char *key, const char *text)
{
    teller->face->text(teller->to, &(lw_item){.key = key, .head = ""}, text);
}

void lw_tell_note(lw_teller *teller, const char *key, const char *text)
{
    teller->face->text(teller->to, &(lw_item){.key = key, .head = LW_NOTE}, text);
}

void lw_tell_name(lw_teller *teller, const char *key, const char *text)
{
    teller->face->text(teller->to, &(lw_item){.key = key}, text);
}

void lw_tell_flag(lw_teller *teller, const char *key, bool is_so)
{
    teller->face->truth(teller->to, &(lw_item){.key = key}, is_so);
}

void lw_tell_rows(lw_teller *teller, const char *key, const lw_table *table, const void *data)
{
    lw_tell_object(teller, key, NULL);
    for (size_t i = 0; i < table->count; i++) {
        const lw_item item = lw_item_of(&table->rows[i], NULL);
        lw_tell_number(teller, &item, lw_quantity_value(&table->rows[i], data));
    }
    lw_tell_end(teller);
}
