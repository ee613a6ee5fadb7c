// tables.c - the rows of every quantity and the words of every list, for forms and headings.
// SPDX-License-Identifier: MIT

#include "answer/parcel.h"
#include "answer/question.h"
#include "answer/words/doc_text.h"
#include "answer/words/flight_text.h"
#include "answer/words/margin_text.h"
#include "lullwise/choice.h"
#include "lullwise/order.h"
#include "lullwise/ride.h"
#include "lullwise/signs.h"
#include "picture/card_page.h"
#include "records/logbook/transfer.h"
#include "records/record_value.h"
#include "web/page.h"

// In plain words, and beside it where it comes from.
static void put_doc(const char *doc)
{
    char plain[900];
    const char *source;
    lw_doc_plain(plain, sizeof plain, doc);
    lw_parcel_text("doc", plain);
    lw_parcel_list("sources");
    for (size_t i = 0; (source = lw_doc_source(doc, i)); i++) lw_parcel_text("", source);
    lw_parcel_end();
}

static void put_row(const lw_quantity *row)
{
    char range[LW_RANGE_LENGTH], usual[LW_RANGE_LENGTH];
    lw_quantity_range(row, row->min, row->max, range);
    lw_quantity_range(row, row->usual_min, row->usual_max, usual);
    lw_parcel_object("");
    lw_parcel_text("key", row->key);
    lw_parcel_text("symbol", row->symbol);
    lw_parcel_text("unit", lw_unit_text(row->unit));
    lw_parcel_text("sign", lw_unit_sign(row->unit));
    lw_parcel_number("in_si", lw_unit_in_si(row->unit));
    lw_parcel_number("min", row->min);
    lw_parcel_number("max", row->max);
    lw_parcel_number("preset", row->preset);
    lw_parcel_number("error", row->error);
    lw_parcel_number("decimals", row->decimals);
    lw_parcel_truth("required", row->required);
    lw_parcel_text("range", range);
    lw_parcel_text("usual", row->usual_min < row->usual_max ? usual : "");
    put_doc(row->doc);
    lw_parcel_end();
}

static void put_table(const char *key, const lw_table *table)
{
    lw_parcel_object(key);
    lw_parcel_text("key", table->key);
    lw_parcel_text("title", table->title);
    lw_parcel_text("doc", table->doc);
    lw_parcel_list("rows");
    for (size_t i = 0; i < table->count; i++) put_row(&table->rows[i]);
    lw_parcel_end();
    lw_parcel_end();
}

static void put_section(const lw_section *section)
{
    static const char *const kinds[] = {
        [LW_SECTION_PLAIN] = "plain",
        [LW_SECTION_LABELLED] = "labelled",
        [LW_SECTION_LIST] = "list",
        [LW_SECTION_VALUES] = "values",
    };
    lw_parcel_object("");
    lw_parcel_text("kind", kinds[section->kind]);
    lw_parcel_truth("required", section->required);
    lw_parcel_number("most", (double)section->most);
    put_table("table", section->table);
    lw_parcel_end();
}

static void put_text(const lw_text *text)
{
    lw_parcel_object("");
    lw_parcel_text("key", text->key);
    lw_parcel_text("doc", text->doc);
    lw_parcel_list("words");
    for (size_t i = 0; text->words && text->words[i]; i++) lw_parcel_text("", text->words[i]);
    lw_parcel_end();
    lw_parcel_end();
}

static void put_orders(const lw_record *record)
{
    lw_parcel_list("orders");
    for (const lw_order *order = lw_orders_of(record); order->lesser; order++) {
        lw_parcel_object("");
        lw_parcel_text("lesser", order->lesser);
        lw_parcel_text("greater", order->greater);
        lw_parcel_truth("may_be_alike", order->may_be_alike);
        lw_parcel_truth("zero_is_none", order->zero_is_none);
        lw_parcel_end();
    }
    lw_parcel_end();
}

static void put_record(const lw_record *record)
{
    lw_parcel_object(record->name);
    lw_parcel_text("title", record->title);
    lw_parcel_text("doc", record->doc);
    lw_parcel_list("texts");
    for (size_t i = 0; i < record->text_count; i++) put_text(&record->texts[i]);
    lw_parcel_end();
    lw_parcel_list("sections");
    for (size_t i = 0; i < record->section_count; i++) put_section(&record->sections[i]);
    lw_parcel_end();
    put_orders(record);
    lw_parcel_end();
}

// What a table's rows are called on the water.
static void put_names(const char *key, const lw_table *table, const char *(*name)(const char *))
{
    lw_parcel_object(key);
    for (size_t i = 0; i < table->count; i++) {
        lw_parcel_text(table->rows[i].key, name(table->rows[i].key));
    }
    lw_parcel_end();
}

static void put_units(void)
{
    lw_parcel_list("units");
    for (int i = 0; i < LW_UNIT_COUNT; i++) {
        lw_parcel_text("", lw_unit_text((lw_unit)i));
        lw_parcel_text("", lw_unit_sign((lw_unit)i));
    }
    lw_parcel_end();
}

static void put_words(void)
{
    lw_parcel_list("aims");
    for (int i = 0; i < LW_AIM_COUNT; i++) {
        lw_parcel_object("");
        lw_parcel_text("key", lw_aim_text((lw_aim)i));
        lw_parcel_text("doc", lw_aim_doc((lw_aim)i));
        lw_parcel_end();
    }
    lw_parcel_end();
    lw_parcel_list("courses");
    for (int i = 0; i < LW_COURSE_COUNT; i++) lw_parcel_text("", lw_course_text((lw_course_kind)i));
    lw_parcel_end();
    lw_parcel_list("papers");
    for (int i = 0; i < LW_PAPER_COUNT; i++) {
        char size[60];  // as a style sheet has it
        const lw_paper paper = (lw_paper)i;
        LW_FIT(size, "%.1fmm %.1fmm", lw_paper_width(paper), lw_paper_height(paper));
        lw_parcel_object("");
        lw_parcel_text("key", lw_paper_text(paper));
        lw_parcel_text("size", size);
        lw_parcel_end();
    }
    lw_parcel_end();
    lw_parcel_list("margins");
    for (size_t i = 0; i <= LW_MARGIN_COUNT; i++) {
        lw_parcel_object("");
        lw_parcel_text("name", lw_margin_name(i));
        lw_parcel_text("end", lw_margin_end(i));
        lw_parcel_end();
    }
    lw_parcel_end();
}

// What a boat may be seen to do.
static void put_signs(void)
{
    lw_parcel_list("signs");
    for (int s = 0; s < LW_SIGNS; s++) {
        lw_parcel_object("");
        lw_parcel_text("key", lw_sign_key((lw_sign)s));
        lw_parcel_text("words", lw_sign_text((lw_sign)s));
        lw_parcel_end();
    }
    lw_parcel_end();
}

// What can be asked, and the options that are numbers or words.
static void put_questions(void)
{
    const lw_question *question;
    const lw_option *option;
    lw_parcel_list("questions");
    for (size_t i = 0; (question = lw_question_at(i)); i++) {
        lw_parcel_object("");
        lw_parcel_text("name", question->name);
        lw_parcel_text("summary", question->summary);
        lw_parcel_text("takes", question->takes);
        lw_parcel_end();
    }
    lw_parcel_end();
    lw_parcel_object("options");
    for (size_t i = 0; (option = lw_option_at(i)); i++) {
        lw_parcel_object(option->name);
        lw_parcel_text("argument", option->argument ? option->argument : "");
        lw_parcel_text("unit", option->row ? lw_unit_text(option->row->unit) : "");
        lw_parcel_text("sign", option->row ? lw_unit_sign(option->row->unit) : "");
        lw_parcel_truth("is_number", option->row != NULL);
        lw_parcel_text("help", option->help);
        lw_parcel_end();
    }
    lw_parcel_end();
}

// A file of logged days, and their columns.
static void put_log(void)
{
    const lw_columns columns = lw_columns_of();
    lw_parcel_object("log");
    lw_parcel_text("format", LW_TRANSFER_FORMAT);
    lw_parcel_number("version", LW_TRANSFER_VERSION);
    lw_parcel_number("most", LW_TRANSFER_MOST);
    lw_parcel_list("columns");
    for (size_t i = 0; i < columns.count; i++) {
        const lw_column *column = &columns.list[i];
        lw_parcel_object("");
        lw_parcel_text("key", column->key);
        lw_parcel_text("unit", column->row ? lw_unit_text(column->row->unit) : "");
        lw_parcel_truth("is_number", column->row != NULL);
        lw_parcel_end();
    }
    lw_parcel_end();
    lw_parcel_end();
}

LW_EXPORT(lw_web_tables) void lw_web_tables(void)
{
    lw_parcel_begin();
    lw_parcel_object("records");
    for (int i = 0; lw_records[i]; i++) put_record(lw_records[i]);
    put_record(&lw_logged_record);
    lw_parcel_end();
    lw_parcel_object("results");
    put_table("flight", &lw_flight_table);
    put_table("margins", &lw_margins_table);
    put_table("trace", &lw_trace_table);
    lw_parcel_end();
    put_names("flight_names", &lw_flight_table, lw_flight_name);
    put_names("moment_names", &lw_trace_table, lw_moment_name);
    put_units();
    put_words();
    put_signs();
    put_questions();
    put_log();
}
