// test_doc_text.c - where a number comes from, in words.
// SPDX-License-Identifier: MIT

#include "answer/words/doc_text.h"

#include <string.h>

#include "lullwise/lullwise.h"
#include "records/record_file.h"
#include "test/check.h"

TEST_FUNCTION(a_doc_is_plain_without_its_brackets_and_they_are_told_in_words)
{
    char text[80];
    lw_doc_plain(text, sizeof text, "By eye. [rp-c205] Used by rides [kn]. [judged]");
    CHECK_TEXT(text, "By eye. Used by rides [kn].");
    CHECK(strncmp(lw_doc_source("By eye. [rp-c205] [judged]", 0), "Det Norske Veritas", 18) == 0);
    CHECK_TEXT(lw_doc_source("By eye. [rp-c205] [judged]", 1), "Judged: nobody has measured it.");
    CHECK(!lw_doc_source("By eye. [judged]", 1));
    CHECK(!lw_doc_source("By eye.", 0));
}

static size_t brackets_left(const lw_table *table)
{
    size_t left = 0;
    char text[900];
    for (size_t i = 0; i < table->count; i++) {
        lw_doc_plain(text, sizeof text, table->rows[i].doc);
        left += strchr(text, '[') != NULL;
    }
    return left;
}

TEST_FUNCTION(every_bracket_of_a_quantity_has_its_words)
{
    for (int r = 0; lw_records[r]; r++) {
        for (size_t i = 0; i < lw_records[r]->section_count; i++) {
            CHECK(brackets_left(lw_records[r]->sections[i].table) == 0);
        }
    }
    CHECK(brackets_left(&lw_flight_table) == 0);
    CHECK(brackets_left(&lw_margins_table) == 0);
    CHECK(brackets_left(&lw_trace_table) == 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_doc_is_plain_without_its_brackets_and_they_are_told_in_words),
        TEST(every_bracket_of_a_quantity_has_its_words),
    };
    return RUN_TESTS(tests);
}
