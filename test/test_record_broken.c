// test_record_broken.c - claims about files that are broken, no YAML, too much or none.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

#include "test/record_checks.h"

// clang-format off
// --- YAML that is refused, and what is no YAML

TEST_FUNCTION(anchors_aliases_tags_and_documents_are_refused)
{
    check_fault(&lw_sailor_record, "person:\n  mass: &m 75 kg\n",
                (lw_fault){.sentence = "an anchor (&): write the value out", .line = 2,
                .column = 9});
    check_fault(&lw_sailor_record, "person:\n  mass: 75 kg\n  gear: *m\n",
                (lw_fault){.sentence = "an alias (*): write the value out", .line = 3,
                .column = 9});
    check_fault(&lw_sailor_record, "person:\n  mass: !!str 75 kg\n",
                (lw_fault){ .sentence = "a tag (!): values are texts, and need none", .line = 2,
                .column = 9});
    check_fault(&lw_sailor_record, "person:\n  mass: 75 kg\n---\nname: B\n",
                (lw_fault){ .sentence = "a second document (---): one record, one file", .line = 3,
                .column = 1});
}

#define BRACKET "in brackets, put a text with : or ? in quotes"
#define ESCAPE "in a text in quotes, this behind \\ means nothing"

TEST_FUNCTION(what_releases_of_the_yaml_library_read_differently_is_refused_in_our_words)
{
    check_fault(&lw_sailor_record, "person: {mass:75 kg}\n",
                (lw_fault){.sentence = BRACKET, .line = 1, .column = 10});
    check_fault(&lw_sailor_record, "person: {mass: 75 kg?}\n",
                (lw_fault){.sentence = BRACKET, .line = 1, .column = 16});
    check_fault(&lw_sailor_record, "name: \"A \\/ B\"\nperson:\n  mass: 75 kg\n",
                (lw_fault){.sentence = ESCAPE, .line = 1, .column = 7});
    check_fault(&lw_sailor_record, "name: \"A \\' B\"\nperson:\n  mass: 75 kg\n",
                (lw_fault){.sentence = ESCAPE, .line = 1, .column = 7});
    check_fault(&lw_sailor_record, "%YAML 1.2\n---\nperson:\n  mass: 75 kg\n",
                (lw_fault){.sentence = "a directive (%): a record needs none", .line = 1,
                .column = 1});
}

TEST_FUNCTION(signs_that_are_refused_in_brackets_are_read_outside_and_in_quotes)
{
    check_reads(&lw_sailor_record, "name: Why:not? \\/ \\'\nperson:\n  mass: 75 kg\n");
    check_reads(&lw_sailor_record, "{\"name\": \"Why: not?\", person: {mass: 75 kg}}\n");
    check_reads(&lw_sailor_record, "person: {'mass':'75 kg', gear: 5 kg}  # why: not?\n");
}

TEST_FUNCTION(fractions_written_as_one_sign_are_asked_for_as_decimals)
{
    check_fault(&lw_sailor_record, "person:\n  mass: 64½ kg\n",
                (lw_fault){.sentence = "write \"½\" with a decimal point", .read = "64½ kg",
                .hint = "64.5 kg", .key = "person.mass",
                .expected = "25 to 150 kg", .line = 2, .column = 9});
    check_fault(&lw_sailor_record, "person:\n  mass: 75 kg\n  most_bow_down: 2 ¼ deg\n",
                (lw_fault){.sentence = "write \"¼\" with a decimal point", .read = "2 ¼ deg",
                .hint = "2.25 deg", .key = "person.most_bow_down",
                .expected = "0 to 10°", .line = 3, .column = 18});
}

TEST_FUNCTION(tabs_binary_bytes_and_broken_utf8_are_refused_at_their_place)
{
    check_fault(&lw_sailor_record, "person:\n\tmass: 75 kg\n",
                (lw_fault){.sentence = "a tab: indent with spaces", .line = 2, .column = 1});
    check_fault(&lw_sailor_record, "person:\n  mass: 75\x01 kg\n",
                (lw_fault){ .sentence = "a control character: this is not a text file", .line = 2,
                .column = 11});
    check_fault(&lw_sailor_record, "name: Zo\xEB\n",
                (lw_fault){ .sentence = "this is not UTF-8: save the file as UTF-8 text", .line = 1,
                .column = 9});
}

TEST_FUNCTION(a_text_that_breaks_off_is_refused)
{
    check_fault(&lw_sailor_record, "person:\n  mass: \"75 k",
                (lw_fault){.sentence = "this text in quotes has no end", .line = 2, .column = 9});
    check_fault(&lw_sailor_record, "person:\n  mass: 75 kg\n  gea",
                (lw_fault){.sentence = "a colon and a value are missing, or the file breaks off",
                .line = 3, .column = 3});
    check_fault(&lw_sailor_record, "person:\n  mass: 7",
                (lw_fault){.sentence = "the number has no unit", .line = 2, .column = 9,
                .key = "person.mass", .read = "7", .expected = "25 to 150 kg"});
}

TEST_FUNCTION(an_empty_text_and_one_without_sections_are_refused)
{
    check_fault(&lw_sailor_record, " \n\n",
                (lw_fault){.sentence = "the file is empty"});
    check_fault(&lw_sailor_record, "# nothing\n",
                (lw_fault){.sentence = "the section is missing", .line = 1, .column = 1,
                .key = "person",
                .expected = "person: and its values, as `lullwise new sailor` writes them"});
}

TEST_FUNCTION(deep_nesting_is_cut_short)
{
    static char text[200000];
    strcpy(text, "person:\n  mass: ");
    memset(text + strlen(text), '[', 100000);
    lw_faults faults = {0};
    CHECK(!read_text(&lw_sailor_record, text, &faults));
    lw_faults_free(&faults);
}

TEST_FUNCTION(all_faults_of_a_text_come_at_once_in_order)
{
    lw_faults faults = {0};
    CHECK(!read_text(&lw_sailor_record,
                     "nmae: A\nperson:\n  hike: 35\n  gear: 99 kg\n  body_height: tall\n",
                     &faults));
    assert_int_equal(faults.count, 5);
    const size_t lines[] = {1, 2, 3, 4, 5};
    for (size_t i = 0; i < 5; i++) assert_int_equal(faults.list[i].line, lines[i]);
    lw_faults_free(&faults);
}

TEST_FUNCTION(the_list_of_faults_is_bounded)
{
    static char text[100000];
    strcpy(text, "person:\n  mass: 75 kg\n");
    for (int i = 0; i < 1000; i++) strcat(text, "  bad: 1\n");
    lw_faults faults = {0};
    CHECK(!read_text(&lw_sailor_record, text, &faults));
    CHECK(faults.count == LW_FAULTS_MOST && faults.left_out == 1000 - LW_FAULTS_MOST);
    CHECK(faults.fault_count == 1000);
    lw_faults_free(&faults);
}

// --- files

static void check_file_fault(const char *path, const char *sentence)
{
    lw_faults faults = {0};
    lw_sailor sailor;
    CHECK(!lw_record_read_file(&lw_sailor_record, path, &sailor, &faults));
    assert_int_equal(faults.count, 1);
    CHECK_TEXT(faults.list[0].file, path);
    CHECK_TEXT(faults.list[0].sentence, sentence);
    lw_faults_free(&faults);
}

static void write_file(const char *path, const char *bytes, size_t length)
{
    FILE *file = fopen(path, "wb");
    CHECK(file && fwrite(bytes, 1, length, file) == length && fclose(file) == 0);
}

TEST_FUNCTION(files_that_are_none_or_too_much_are_refused)
{
    char folder[] = "/tmp/lullwise-test-XXXXXX", path[64];
    CHECK(mkdtemp(folder));
    snprintf(path, sizeof path, "%s/a.yaml", folder);
    check_file_fault(path, "there is no such file");
    check_file_fault(folder, "this is a folder, not a file");

    write_file(path, "", 0);
    check_file_fault(path, "the file is empty");
    write_file(path, "a\0b", 3);
    check_file_fault(path, "a control character: this is not a text file");

    static char much[LW_FILE_MOST + 1];
    memset(much, '#', sizeof much);
    write_file(path, much, sizeof much);
    check_file_fault(path, "the file is too long: 1 MB is the most");

    if (geteuid() != 0) {  // root may read everything
        chmod(path, 0);
        check_file_fault(path, "this file may not be read");
    }
    unlink(path);
    rmdir(folder);
}

// Which record a text is, when it brings that many faults.
static const lw_record *recognised(const char *text, size_t count)
{
    lw_faults none = {0};
    const lw_source_text source = {"file", text, strlen(text)};
    const lw_record *record = lw_record_recognise(&source, &none);
    CHECK(none.fault_count == count);
    lw_faults_free(&none);
    return record;
}

TEST_FUNCTION(a_text_is_recognised_by_its_sections)
{
    static const char *const texts[] = {"hull: {}", "name: x\nperson: {}", "wind: {}\nlegs: []"};
    for (size_t i = 0; i < 3; i++) {
        CHECK(recognised(texts[i], 0) == lw_records[i]);
    }
    CHECK(recognised("name: x", 1) == NULL);
    CHECK(recognised("[[[", 1) == NULL);
    CHECK(recognised("", 1) == NULL);
    CHECK(recognised("hull: \xff", 1) == NULL);
}
// clang-format on

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(anchors_aliases_tags_and_documents_are_refused),
        TEST(what_releases_of_the_yaml_library_read_differently_is_refused_in_our_words),
        TEST(signs_that_are_refused_in_brackets_are_read_outside_and_in_quotes),
        TEST(fractions_written_as_one_sign_are_asked_for_as_decimals),
        TEST(tabs_binary_bytes_and_broken_utf8_are_refused_at_their_place),
        TEST(a_text_that_breaks_off_is_refused),
        TEST(an_empty_text_and_one_without_sections_are_refused),
        TEST(deep_nesting_is_cut_short),
        TEST(all_faults_of_a_text_come_at_once_in_order),
        TEST(the_list_of_faults_is_bounded),
        TEST(files_that_are_none_or_too_much_are_refused),
        TEST(a_text_is_recognised_by_its_sections),
    };
    return RUN_TESTS(tests);
}
