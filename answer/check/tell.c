// tell.c - the answer of `lullwise check` told.
// SPDX-License-Identifier: MIT

#include "answer/check/check.h"
#include "lullwise/prepared.h"
#include "records/record_file.h"
#include "records/source_text.h"

// --- files

// clang-format off
static const lw_item file_columns[] = {
    {"file",      NULL, LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"record",    NULL, LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"is_sound",  NULL, LW_AS_TRUTH,  LW_UNIT_NONE, 0, NULL},
    {"faults",    NULL, LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"doubts",    NULL, LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"values",    NULL, LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"at_preset", NULL, LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"says",      "",   LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
};

static const lw_item fault_columns[] = {
    {"file",      "file",     LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"line",      "line",     LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"column",    "column",   LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"key",       "key",      LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"read",      "read",     LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"expected",  "expected", LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"hint",      "perhaps",  LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"is_doubt",  "doubt",    LW_AS_TRUTH,  LW_UNIT_NONE, 0, NULL},
    {"sentence",  "",         LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
};

static const lw_item prepared_columns[] = {
    {"function", "curve",         LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"error",    "error",         LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"unit",     "",              LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"where",    "where",         LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
};
// clang-format on

static const char *plural(size_t count) { return count == 1 ? "" : "s"; }

static void say_file(const lw_checked_file *file, char text[500])
{
    char name[300], presets[80] = "", doubts[40] = "no doubts";
    lw_text_tame(name, sizeof name, lw_source_name(file->path));
    if (file->at_preset) LW_FIT(presets, ", of which %zu stand at their presets", file->at_preset);
    if (file->doubts) LW_FIT(doubts, "%zu doubt%s", file->doubts, plural(file->doubts));
    if (file->is_sound)
        lw_text_fit(text, 500, "%s: the %s \"%s\" is sound. %zu values%s; %s.", name,
                    file->record->name, file->name, file->values, presets, doubts);
    else
        lw_text_fit(text, 500, "%s: %zu fault%s, %s.", name, file->faults, plural(file->faults),
                    doubts);
}

static void tell_file(const lw_checked_file *file, lw_teller *t)
{
    char path[512], text[500];
    lw_text_tame(path, sizeof path, file->path);
    say_file(file, text);
    lw_tell_row(t);
    lw_tell_text(t, NULL, path);
    lw_tell_text(t, NULL, file->record ? file->record->name : NULL);
    lw_tell_truth(t, NULL, file->is_sound);
    lw_tell_number(t, NULL, (double)file->faults);
    lw_tell_number(t, NULL, (double)file->doubts);
    lw_tell_number(t, NULL, (double)file->values);
    lw_tell_number(t, NULL, (double)file->at_preset);
    lw_tell_text(t, NULL, text);
}

static void tell_fault(const lw_fault *fault, lw_teller *t)
{
    char file[512];
    lw_text_tame(file, sizeof file, fault->file);
    lw_tell_row(t);
    lw_tell_text(t, NULL, file);
    lw_tell_number(t, NULL, (double)fault->line);
    lw_tell_number(t, NULL, (double)fault->column);
    lw_tell_text(t, NULL, fault->key);
    lw_tell_text(t, NULL, fault->read);
    lw_tell_text(t, NULL, fault->expected);
    lw_tell_text(t, NULL, fault->hint);
    lw_tell_truth(t, NULL, fault->is_doubt);
    lw_tell_text(t, NULL, fault->sentence);
}

// --- what forces read from curves of a boat, and how far those are off

static bool has_boat(const lw_checked *checked)
{
    for (size_t i = 0; i < checked->count; i++) {
        const lw_checked_file *file = &checked->files[i];
        if (file->is_sound && file->record == &lw_boat_record) return true;
    }
    return false;
}

static void tell_prepared(lw_prepared_list list, lw_teller *t)
{
    for (size_t i = 0; i < list.count; i++) {
        const lw_prepared *row = &list.rows[i];
        char error[40];
        LW_FIT(error, "%.4g", row->error);
        lw_tell_row(t);
        lw_tell_text(t, NULL, row->function);
        lw_tell_number_as(t, NULL, row->error, error);
        lw_tell_text(t, NULL, row->unit);
        lw_tell_text(t, NULL, row->where);
    }
}

static void tell_all_prepared(const lw_checked *checked, lw_teller *t)
{
    static const char *const head =
        "Read from curves that are worked out once for a boat, and the largest error of each "
        "against the full computation, on the generic boat";
    lw_tell_table(t, "prepared", has_boat(checked) ? head : NULL, prepared_columns,
                  LW_COUNT_OF(prepared_columns));
    tell_prepared(lw_prepared_foils(), t);
    tell_prepared(lw_prepared_hull(), t);
    lw_tell_end(t);
}

static void tell_sensitivity(const lw_checked *checked, lw_teller *t)
{
    if (!checked->sensitivity) return;
    lw_tell_object(t, "sensitivity", "What matters most to measure better");
    lw_sensed_tell(checked->sensitivity, t);
    lw_tell_end(t);
}

void lw_checked_tell(const void *it, lw_teller *t)
{
    const lw_checked *checked = it;
    lw_tell_table(t, "files", "", file_columns, LW_COUNT_OF(file_columns));
    for (size_t i = 0; i < checked->count; i++) tell_file(&checked->files[i], t);
    lw_tell_end(t);
    lw_tell_table(t, "faults", NULL, fault_columns, LW_COUNT_OF(fault_columns));
    for (size_t i = 0; i < checked->faults.count; i++) tell_fault(&checked->faults.list[i], t);
    lw_tell_end(t);
    tell_all_prepared(checked, t);
    tell_sensitivity(checked, t);
}
