// test_command_new_check.c - claims about the program's face, `new`, `check` and `quantities`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <sys/stat.h>
#include <unistd.h>

#include "test/check.h"
#include "test/program.h"

static char folder[] = "/tmp/lullwise-test-XXXXXX";

static int enter_folder(void **state)
{
    (void)state;
    return mkdtemp(folder) && chdir(folder) == 0 ? 0 : -1;
}

static int leave_folder(void **state)
{
    (void)state;
    char line[100];
    snprintf(line, sizeof line, "rm -r '%s'", folder);
    return system(line);
}

static void write_file(const char *path, const char *text)
{
    FILE *file = fopen(path, "w");
    CHECK(file && fputs(text, file) >= 0 && fclose(file) == 0);
}

static char *file_text(const char *path)
{
    static char text[ANSWER_LENGTH];
    FILE *file = fopen(path, "r");
    CHECK(file != NULL);
    text[fread(text, 1, sizeof text - 1, file)] = '\0';
    fclose(file);
    return text;
}

TEST_FUNCTION(help_ends_fine_and_a_wrong_word_does_not)
{
    CHECK(lullwise("--help") == 0 && answer_has("usage: lullwise"));
    CHECK(lullwise("check --help") == 0 && answer_has("--json"));
    CHECK(lullwise("--version") == 0 && answer_has("lullwise "));
    CHECK(lullwise("") == 2);
    CHECK(lullwise("chekc") == 2 && answer_has("did you mean \"check\"?"));
}

TEST_FUNCTION(help_lists_no_hidden_command)
{
    CHECK(lullwise("--help") == 0 && !answer_has("quantities"));
}

TEST_FUNCTION(wrong_options_name_the_nearest)
{
    CHECK(lullwise("new boat --forse") == 2 && answer_has("--force"));
    CHECK(lullwise("new boat --json") == 2 && answer_has("there is no option --json"));
    CHECK(lullwise("new boat --force=yes") == 2 && answer_has("--force takes no value"));
    CHECK(lullwise("new boat --output") == 2 && answer_has("--output needs a value"));
    CHECK(lullwise("new boat -x") == 2 && answer_has("there is no option -x"));
    CHECK(lullwise("new") == 2);
    CHECK(lullwise("new boat day") == 2 && answer_has("\"day\" is one word too many"));
    CHECK(lullwise("new baot") == 2 && answer_has("did you mean \"boat\"?"));
}

TEST_FUNCTION(a_new_file_is_sound)
{
    static const char *const names[] = {"boat", "sailor", "day"};
    for (size_t i = 0; i < 3; i++) {
        char words[100];
        snprintf(words, sizeof words, "new %s | '%s' check -", names[i], LW_PROGRAM);
        CHECK(lullwise(words) == 0);
        CHECK(answer_has(names[i]) && answer_has("is sound"));
    }
}

TEST_FUNCTION(a_link_keeps_leading_to_the_file_that_is_replaced)
{
    CHECK(lullwise("--version; ln -s led-to.yaml link.yaml; : >led-to.yaml") == 0);
    CHECK(lullwise("new boat -o link.yaml --force") == 0);
    CHECK(lullwise("--version; [ -L link.yaml ] && [ -s led-to.yaml ]") == 0);
    unlink("link.yaml"), unlink("led-to.yaml");
}

TEST_FUNCTION(a_pipe_without_a_reader_is_refused_at_once)
{
    CHECK(mkfifo("pipe.yaml", 0600) == 0);
    CHECK(lullwise("new boat -o pipe.yaml --force") == 2 && answer_has("pipe"));
    unlink("pipe.yaml");
}

TEST_FUNCTION(a_pipe_is_read_when_somebody_writes_into_it)
{
    CHECK(mkfifo("pipe.yaml", 0600) == 0);
    CHECK(lullwise("--version; '" LW_PROGRAM "' new boat >pipe.yaml & '" LW_PROGRAM
                   "' check pipe.yaml") == 0);
    CHECK(answer_has("is sound"));
    unlink("pipe.yaml");
}

TEST_FUNCTION(utf_16_without_its_mark_is_called_so)
{
    CHECK(lullwise("new sailor | iconv -f utf8 -t utf16le | '" LW_PROGRAM "' check -") == 2);
    CHECK(answer_has("UTF-16"));
    CHECK(lullwise("new sailor | iconv -f utf8 -t utf16be | '" LW_PROGRAM "' check -") == 2);
    CHECK(answer_has("UTF-16"));
}

TEST_FUNCTION(a_file_name_cannot_steer_the_terminal)
{
    CHECK(lullwise("new sailor -o 'a\033[31mb.yaml' --force") == 0);
    CHECK(lullwise("check 'a\033[31mb.yaml'") == 0 && !answer_has("\033"));
    unlink("a\033[31mb.yaml");
}

TEST_FUNCTION(a_file_is_replaced_only_by_force)
{
    write_file("mine.yaml", "precious");
    CHECK(lullwise("new boat -o mine.yaml") == 2 && answer_has("--force"));
    CHECK_TEXT(file_text("mine.yaml"), "precious");
    CHECK(lullwise("new boat --output=mine.yaml --force") == 0);
    CHECK(strstr(file_text("mine.yaml"), "main_foil:"));
    CHECK(lullwise("new boat -o /dev/null --force") == 0);
    CHECK(lullwise("new boat -o no/such/folder.yaml") == 2 && answer_has("no such folder"));
    CHECK(lullwise("new boat -o . --force") == 2 && answer_has("folder"));
    CHECK(lullwise("new boat -o /nowhere/boat.yaml") == 2 && answer_has("no such folder"));
}

TEST_FUNCTION(an_answer_that_cannot_be_written_is_no_answer)
{
    CHECK(lullwise("new boat >/dev/full") == 1);
    CHECK(lullwise("--help >/dev/full") == 1);
    CHECK(lullwise("check --json " LW_DEMO_DIR "/light.yaml >/dev/full") == 1);
}

TEST_FUNCTION(check_names_faults_by_place_and_counts_them)
{
    write_file("s.yaml", "name: A\nperson:\n  mass: 75\n  hike: 70 cm\n");
    CHECK(lullwise("check s.yaml") == 2);
    CHECK(answer_has("s.yaml:3:9: fault: Sailor: mass (person.mass): the number has no unit"));
    CHECK(answer_has("    expected  25 to 150 kg\n    perhaps   75 kg\n"));
    CHECK(answer_has("s.yaml:4:9: doubt: Sailor: hike (person.hike): unusual, but taken"));
    CHECK(answer_has("s.yaml: 1 fault, 1 doubt."));
    CHECK(!answer_has("\033"));
}

TEST_FUNCTION(a_doubt_alone_is_fine)
{
    write_file("s.yaml", "person:\n  mass: 110 kg\n");
    CHECK(lullwise("check s.yaml") == 0);
    CHECK(answer_has("1 doubt.") && answer_has("presets"));
}

TEST_FUNCTION(check_goes_on_after_a_file_that_is_none)
{
    write_file("s.yaml", "person:\n  mass: 75 kg\n");
    CHECK(lullwise("check nothing.yaml s.yaml") == 2);
    CHECK(answer_has("nothing.yaml: fault: there is no such file"));
    CHECK(answer_has("s.yaml: the sailor \"Unnamed sailor\" is sound."));
    CHECK(lullwise("check .") == 2 && answer_has("this is a folder"));
    write_file("other.yaml", "spam: 3\n");
    CHECK(lullwise("check other.yaml") == 2 && answer_has("none of its sections is known"));
}

TEST_FUNCTION(check_answers_in_json)
{
    write_file("s.yaml", "person:\n  mass: 75\n");
    CHECK(lullwise("check --json s.yaml") == 2);
    CHECK(answer_has("\"record\": \"sailor\"") && answer_has("\"hint\": \"75 kg\""));
}

TEST_FUNCTION(all_that_check_says_stays_within_eighty_columns)
{
    write_file("s.yaml", "persn: 1\nperson:\n  mass: [1, 2]\n  hike: 70 cm\n  gear: 1 kn\n");
    CHECK(lullwise("check s.yaml") == 2);
    for (const char *line = answer; *line; line += strcspn(line, "\n") + 1) {
        CHECK(strcspn(line, "\n") <= 80);
    }
}

TEST_FUNCTION(the_page_on_quantities_is_not_stale)
{
    CHECK(lullwise("quantities") == 0);
    if (strcmp(answer, file_text(LW_DEMO_DIR "/../doc/quantities.md")) == 0) return;
    fail_msg("doc/quantities.md is stale: lullwise quantities >doc/quantities.md");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(help_ends_fine_and_a_wrong_word_does_not),
        TEST(help_lists_no_hidden_command),
        TEST(wrong_options_name_the_nearest),
        TEST(a_new_file_is_sound),
        TEST(a_file_is_replaced_only_by_force),
        TEST(a_link_keeps_leading_to_the_file_that_is_replaced),
        TEST(a_pipe_without_a_reader_is_refused_at_once),
        TEST(a_pipe_is_read_when_somebody_writes_into_it),
        TEST(utf_16_without_its_mark_is_called_so),
        TEST(a_file_name_cannot_steer_the_terminal),
        TEST(an_answer_that_cannot_be_written_is_no_answer),
        TEST(check_names_faults_by_place_and_counts_them),
        TEST(a_doubt_alone_is_fine),
        TEST(check_goes_on_after_a_file_that_is_none),
        TEST(check_answers_in_json),
        TEST(all_that_check_says_stays_within_eighty_columns),
        TEST(the_page_on_quantities_is_not_stale),
    };
    return cmocka_run_group_tests(tests, enter_folder, leave_folder);
}
