// work.c - boat, sailor and day files looked over.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "answer/check/check.h"
#include "records/record_file.h"
#include "records/record_value.h"
#include "records/source_text.h"

static void *place_of(lw_inputs *inputs, const lw_record *record)
{
    if (record == &lw_boat_record) return &inputs->boat;
    if (record == &lw_sailor_record) return &inputs->sailor;
    return &inputs->day_as_given;
}

static void read_record(lw_checked_file *file, const lw_source_text *source, lw_checked *checked)
{
    void *data = place_of(&checked->inputs, file->record);
    lw_reading reading = lw_reading_of(file->record, data);
    file->is_sound = lw_reading_text(&reading, source, &checked->faults) &&
                     lw_reading_check(&reading, &checked->faults);
    if (file->is_sound) file->values = lw_reading_count(&reading, &file->at_preset);
    const lw_text *name = lw_record_text(file->record, "name");
    if (file->is_sound && name) LW_FIT(file->name, "%s", (const char *)data + name->offset);
}

static void check_file(lw_checked_file *file, lw_checked *checked)
{
    lw_faults *faults = &checked->faults;
    const size_t faults_before = faults->fault_count;
    const size_t all_before = faults->count + faults->left_out;
    size_t length = 0;
    char *text = lw_source_fetch(file->path, LW_FILE_MOST, &length, faults);
    const lw_source_text source = {file->path, text, length};
    if (text) file->record = lw_record_recognise(&source, faults);
    if (file->record) read_record(file, &source, checked);
    free(text);
    file->faults = faults->fault_count - faults_before;
    file->doubts = faults->count + faults->left_out - all_before - file->faults;
}

void lw_checked_read(lw_checked *checked, const lw_options *options)
{
    for (size_t i = 0; lw_records[i]; i++) {
        lw_record_example(lw_records[i], place_of(&checked->inputs, lw_records[i]));
    }
    checked->count = options->operand_count;
    for (size_t i = 0; i < checked->count; i++) {
        checked->files[i].path = options->operands[i];
        check_file(&checked->files[i], checked);
    }
}
