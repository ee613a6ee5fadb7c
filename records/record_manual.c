// record_manual.c - the page on all quantities of a record, in Markdown.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "records/record_file.h"
#include "records/record_value.h"

// A text inside a table's cell: | would end it, < would begin a tag.
static void write_cell(FILE *out, const char *text)
{
    for (; *text; text++) {
        if (*text == '|' || *text == '<' || *text == '_' || *text == '*') fputc('\\', out);
        fputc(*text, out);
    }
}

static void write_row(FILE *out, const lw_quantity *row)
{
    char range[LW_RANGE_LENGTH], usual[LW_RANGE_LENGTH];
    const bool is_banded = row->usual_min != 0.0 || row->usual_max != 0.0;
    lw_quantity_range(row, row->min, row->max, range);
    lw_quantity_range(row, row->usual_min, row->usual_max, usual);
    fprintf(out, "| `%s` | ", row->key);
    write_cell(out, row->symbol);
    fprintf(out, " | %s | %s | ", range, is_banded ? usual : "");
    if (row->required)
        fputs("must be given", out);
    else if (isnan(row->preset))
        fputs("not told", out);
    else
        fprintf(out, "%.10g", row->preset);
    if (row->error > 0.0)
        fprintf(out, " | ±%.10g | ", row->error);
    else
        fputs(" | | ", out);
    write_cell(out, row->doc);
    fputs(" |\n", out);
}

static const char *how_written(lw_section_kind kind)
{
    switch (kind) {
        case LW_SECTION_LABELLED:
            return "Written as `label: value` lines.";
        case LW_SECTION_LIST:
            return "Written as a list: each element begins with `-`.";
        case LW_SECTION_VALUES:
            return "Written as a list: `- value` lines.";
        default:
            return "";
    }
}

void lw_table_manual(FILE *out, const lw_table *table)
{
    fputs("| key | symbol | range | usually | preset | known to | what it is |\n", out);
    fputs("|---|---|---|---|---|---|---|\n", out);
    for (size_t i = 0; i < table->count; i++) write_row(out, &table->rows[i]);
}

static void write_section(FILE *out, const lw_section *section)
{
    const lw_table *table = section->table;
    fprintf(out, "\n### %s: `%s`\n\n", table->title, table->key);
    fprintf(out, "%s %s%s\n\n", table->doc, section->required ? "" : "May be left out. ",
            how_written(section->kind));
    lw_table_manual(out, table);
}

void lw_record_manual(FILE *out, const lw_record *record)
{
    fprintf(out, "\n## %s\n\n%s\n\n", record->title, record->doc);
    for (size_t i = 0; i < record->text_count; i++) {
        const lw_text *text = &record->texts[i];
        fprintf(out, "- `%s`: %s\n", text->key, text->doc);
    }
    for (size_t i = 0; i < record->section_count; i++) write_section(out, &record->sections[i]);
}

void lw_result_manual(FILE *out, const lw_table *table)
{
    fprintf(out, "\n### %s: `%s`\n\n%s\n\n", table->title, table->key, table->doc);
    fputs("| key | symbol | unit | what it is |\n|---|---|---|---|\n", out);
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        fprintf(out, "| `%s` | ", row->key);
        write_cell(out, row->symbol);
        fprintf(out, " | %s | ", lw_unit_sign(row->unit));
        write_cell(out, row->doc);
        fputs(" |\n", out);
    }
}
