// test_command_card.c - claims about `lullwise card` and the files that it writes.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <math.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "test/command_answers.h"

#define SEASON "--season '6:24:3 kn' "
#define SECOND "--second " LW_DEMO_DIR "/heavy.yaml "

// A folder that is there for one test; what the test writes stands in it.
static char folder[] = "/tmp/lullwise-card-XXXXXX";

static int make_folder(void **state)
{
    (void)state;
    snprintf(folder, sizeof folder, "/tmp/lullwise-card-XXXXXX");
    return mkdtemp(folder) ? 0 : 1;
}

static int remove_folder(void **state)
{
    char line[200];
    (void)state;
    snprintf(line, sizeof line, "rm -r '%s'", folder);
    return system(line);
}

// What a command says goes into `answer`; its exit status.
static int shell(const char *format, const char *name)
{
    char line[400], with[600];
    snprintf(line, sizeof line, "%s/%s", folder, name);
    snprintf(with, sizeof with, format, line);
    FILE *pipe = popen(with, "r");
    CHECK(pipe != NULL);
    answer[fread(answer, 1, sizeof answer - 1, pipe)] = '\0';
    return pclose(pipe);
}

static bool is_there(const char *name)
{
    char path[200];
    struct stat about;
    snprintf(path, sizeof path, "%s/%s", folder, name);
    return stat(path, &about) == 0 && about.st_size > 0;
}

static int card_into(const char *options, const char *option, const char *name)
{
    char words[1500];
    snprintf(words, sizeof words, "card %s %s '%s/%s'", options, option, folder, name);
    return lullwise(words);
}

// --- text and JSON

static const json_t *sailor(const json_t *card, size_t i)
{
    return json_array_get(json_object_get(card, "sailors"), i);
}

// "Pin C", as the demo day's best pin stands in a text.
static const char *first_pin(void)
{
    static char words[20];
    if (words[0]) return words;
    json_t *card = json_answer("card" DEMO);
    snprintf(words, sizeof words, "Pin %s", json_text(sailor(card, 0), "pin"));
    json_decref(card);
    return words;
}

TEST_FUNCTION(a_card_is_told_in_text_that_fits)
{
    const char *pin = first_pin();
    CHECK(lullwise("card" DEMO) == 0);
    CHECK(answer_has(pin) && answer_has("Which pin from which lull"));
    CHECK(answer_has("takes off") && answer_has("held to"));
    CHECK(answer_has("bow up, stern low") && answer_has("what to move first"));
    CHECK(answer_has("Take care") && answer_has("How far to trust it") && answer_has("FNV-1a"));
    CHECK(widest_line() <= 80);
}

static double of_row(const json_t *row, const char *key)
{
    const json_t *value = json_object_get(row, key);
    return json_is_number(value) ? json_number_value(value) : NAN;
}

// The day's pin, its winds and its order are those of `lullwise pick`.
TEST_FUNCTION(a_day_is_ranked_as_pick_ranks_it)
{
    json_t *card = json_answer("card" DEMO), *pick = json_answer("pick" DEMO);
    const json_t *best = json_object_get(pick, "best"), *places = json_rows(pick, "places");
    CHECK_TEXT(json_text(sailor(card, 0), "pin"), json_text(best, "pin"));
    const json_t *pins = json_rows(sailor(card, 0), "pins");
    CHECK(json_array_size(pins) == json_array_size(places) && json_array_size(pins) == 4);
    for (size_t i = 0; i < 16; i++) {
        const json_t *a = json_array_get(pins, i % 4), *b = json_array_get(places, i / 4);
        if (strcmp(json_text(a, "pin"), json_text(b, "pin")) != 0) continue;
        CHECK_NEAR(of_row(a, "launches_at"), of_row(b, "launches_at"), 0.0);
        CHECK_NEAR(of_row(a, "held_up_to"), of_row(b, "held_up_to"), 0.0);
    }
    json_decref(card);
    json_decref(pick);
}

// Turns of a pin on a course in a wind of whole knots are those of `lullwise range`.
TEST_FUNCTION(turns_are_those_of_range)
{
    json_t *card = json_answer("card " SEASON DEMO), *range = json_answer("range" DEMO);
    const json_t *rows = json_rows(sailor(card, 0), "turns");
    const json_t *up = json_rows(json_object_get(range, "turns"), "upwind");
    size_t compared = 0;
    for (size_t i = 0; i < json_array_size(rows) * json_array_size(up); i++) {
        const json_t *a = json_array_get(rows, i % json_array_size(rows));
        const json_t *b = json_array_get(up, i / json_array_size(rows));
        if (of_row(a, "wind") != 12.0 || strcmp(json_text(a, "pin"), json_text(b, "pin")) != 0)
            continue;
        const bool is_most = strcmp(json_text(b, "wound_for"), "hold") == 0;
        CHECK_NEAR(of_row(a, is_most ? "upwind_most" : "upwind"), of_row(b, "at_12_kn"), 1e-9);
        compared++;
    }
    CHECK(compared == 8);
    json_decref(card);
    json_decref(range);
}

// More wind, less lift (common practice, no source).
TEST_FUNCTION(a_season_goes_from_the_most_lift_to_the_least)
{
    json_t *card = json_answer("card " SEASON DEMO);
    const json_t *rungs = json_rows(sailor(card, 0), "ladder");
    CHECK(json_array_size(rungs) == 7);
    char last = 'A';
    for (size_t i = 0; i < json_array_size(rungs); i++) {
        const char *pin = json_text(json_array_get(rungs, i), "pin");
        if (!pin[0]) continue;
        CHECK(pin[0] >= last);
        last = pin[0];
    }
    CHECK(last == 'D');
    json_decref(card);
}

TEST_FUNCTION(a_second_sailor_has_a_part_of_the_same_card)
{
    json_t *card = json_answer("card " SEASON SECOND DEMO);
    CHECK(json_array_size(json_object_get(card, "sailors")) == 2);
    CHECK(strstr(json_text(sailor(card, 0), "sailor"), "Wren"));
    CHECK(strstr(json_text(sailor(card, 1), "sailor"), "Bear"));
    CHECK(strstr(json_text(card, "made"), "second"));
    json_decref(card);
}

TEST_FUNCTION(the_way_of_the_grip_is_told_or_is_to_be_checked)
{
    CHECK(lullwise("card --set grip=unknown " SEASON DEMO) == 0);
    CHECK(answer_has("Check which way the grip adds rudder lift"));
    CHECK(lullwise("card --set grip=counter-clockwise " SEASON DEMO) == 0);
    CHECK(answer_has("on: grip counter-clockwise") && !answer_has("Check which way"));
    CHECK(lullwise("card --set grip=left " SEASON DEMO) == 2);
    CHECK(answer_has("counter-clockwise"));
}

TEST_FUNCTION(where_nothing_flies_the_card_says_so_first_and_ends_with_1)
{
    CHECK(card_into(CALM DEMO, "--svg", "calm.svg") == 1);
    CHECK(answer_has("Nothing flies in puffs of 5.0 kn"));
    CHECK(is_there("calm.svg") && is_there("calm-2.svg"));
    CHECK(lullwise("card --season '2:4:1 kn'" DEMO) == 1);
    CHECK(answer_has("No pin flies in these winds"));
}

// --- files

TEST_FUNCTION(two_pages_stand_beside_each_other)
{
    CHECK(card_into(SEASON DEMO, "--svg", "card.svg") == 0);
    CHECK(is_there("card.svg") && is_there("card-2.svg"));
    CHECK(shell("cat '%s'", "card.svg") == 0);
    CHECK(answer_has("width=\"105mm\"") && answer_has("height=\"148mm\"") && answer_has(">A:"));
    CHECK(card_into(SEASON DEMO, "--svg", "no.ending/") == 2);
    CHECK(card_into(SEASON DEMO "--paper A5", "--svg", "plain") == 0);
    CHECK(is_there("plain") && is_there("plain-2"));
}

TEST_FUNCTION(a_card_that_is_there_is_replaced_by_force_alone)
{
    CHECK(card_into(SEASON DEMO, "--svg", "card.svg") == 0);
    CHECK(shell("rm '%s'", "card.svg") == 0);
    CHECK(card_into(SEASON DEMO, "--svg", "card.svg") == 2);
    CHECK(answer_has("card-2.svg") && answer_has("--force") && !is_there("card.svg"));
    CHECK(card_into(SEASON DEMO "--force", "--svg", "card.svg") == 0);
    CHECK(is_there("card.svg"));
}

TEST_FUNCTION(what_cannot_be_asked_writes_nothing)
{
    static const char *const wrong[][2] = {
        {"--paper A7", "A6, A5 or half-letter"},
        {"--season '24:6:-3 kn'", "from the least to the most"},
        {"--season '6:24:1 kn'", "8 at most"},
        {"--season '6:24:3'", "kn"},
        {"--date tomorrow", "2030-05-17"},
        {"--second /nowhere.yaml", "no such file"},
    };
    for (size_t i = 0; i < sizeof wrong / sizeof wrong[0]; i++) {
        char options[400];
        snprintf(options, sizeof options, "%s %s", wrong[i][0], DEMO);
        CHECK(card_into(options, "--svg", "card.svg") == 2);
        CHECK(answer_has(wrong[i][1]) && !is_there("card.svg"));
    }
}

// The program is called by its whole path: no other is found.
TEST_FUNCTION(without_rsvg_convert_it_says_what_to_install)
{
    char line[1500];
    snprintf(line, sizeof line,
             "env PATH=/nowhere '" LW_PROGRAM "' card " SEASON DEMO "--pdf '%%s' 2>&1");
    CHECK(WEXITSTATUS(shell(line, "card.pdf")) == 2);
    CHECK(answer_has("librsvg2-bin") && !is_there("card.pdf"));
}

static bool has(const char *program)
{
    char line[100];
    snprintf(line, sizeof line, "command -v %s >/dev/null", program);
    return system(line) == 0;
}

// Where a text stands in the last answer.
static size_t place_of(const char *text)
{
    const char *at = strstr(answer, text);
    CHECK(at != NULL);
    return at ? (size_t)(at - answer) : 0;
}

// A6 is 297.64 x 419.53 points, half a letter 396 x 612.
TEST_FUNCTION(a_pdf_has_two_pages_of_the_paper_and_its_text_in_reading_order)
{
    if (!has("rsvg-convert") || !has("pdfinfo") || !has("pdftotext")) skip();
    const char *pin = first_pin();
    CHECK(card_into(DEMO, "--pdf", "card.pdf") == 0);
    CHECK(shell("pdfinfo '%s'", "card.pdf") == 0);
    CHECK(answer_has("Pages:           2") && answer_has("297.638 x 419.528 pts"));
    CHECK(shell("pdftotext -raw '%s' -", "card.pdf") == 0);
    CHECK(place_of("Grey Heron") < place_of(pin) && place_of(pin) < place_of("mean 12.5"));
    CHECK(place_of("mean 12.5") < place_of("puff 15.5") &&
          place_of("puff 15.5") < place_of("Signs"));
    CHECK(place_of("Signs") < place_of("Take care") &&
          place_of("Take care") < place_of("How far to trust it"));
    CHECK(card_into("--paper half-letter " SEASON DEMO "--force", "--pdf", "card.pdf") == 0);
    CHECK(shell("pdfinfo '%s'", "card.pdf") == 0);
    CHECK(answer_has("396 x 612 pts"));
}

// Boxes of words as they were set, in the letters that are there.
static int read_word(const char **at, double box[4])
{
    *at = strstr(*at, "<word ");
    if (!*at) return 0;
    const int read = sscanf(*at, "<word xMin=\"%lf\" yMin=\"%lf\" xMax=\"%lf\" yMax=\"%lf\"",
                            &box[0], &box[1], &box[2], &box[3]);
    *at += 6;
    return read == 4;
}

// Heights of words come with the letters' leading, so that lines may touch: their middles do not.
TEST_FUNCTION(as_it_is_set_no_word_lies_on_another_or_off_the_page)
{
    static double words[1000][4];
    size_t count = 0;
    if (!has("rsvg-convert") || !has("pdftotext")) skip();
    CHECK(card_into(SECOND DEMO, "--pdf", "card.pdf") == 0);
    CHECK(shell("pdftotext -bbox -l 1 '%s' -", "card.pdf") == 0);
    for (const char *at = answer; count < 1000 && read_word(&at, words[count]);) count++;
    CHECK(count > 80 && count < 1000);
    for (size_t i = 0; i < count; i++) {
        CHECK(words[i][0] >= 0.0 && words[i][2] <= 297.64);
        CHECK(words[i][1] >= 0.0 && words[i][3] <= 419.53);
        for (size_t k = 0; k < i; k++) {
            const double middle = 0.5 * (words[k][1] + words[k][3]);
            const bool is_beside = words[i][0] >= words[k][2] || words[k][0] >= words[i][2];
            CHECK(is_beside || middle < words[i][1] || middle > words[i][3]);
        }
    }
}

TEST_FUNCTION(a_png_has_300_dots_an_inch)
{
    unsigned char bytes[24];
    char path[200];
    if (!has("rsvg-convert")) skip();
    CHECK(card_into(SEASON DEMO, "--png", "card.png") == 0);
    CHECK(is_there("card-2.png"));
    snprintf(path, sizeof path, "%s/card.png", folder);
    FILE *file = fopen(path, "rb");
    CHECK(file && fread(bytes, 1, sizeof bytes, file) == sizeof bytes);
    if (file) fclose(file);
    // The low half of the four bytes of the width.
    const double width = 256.0 * bytes[18] + bytes[19];
    CHECK_NEAR(width, 105.0 / 25.4 * 300.0, 1.0);
}

#define FILES(name) cmocka_unit_test_setup_teardown(name, make_folder, remove_folder)

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_card_is_told_in_text_that_fits),
        TEST(a_day_is_ranked_as_pick_ranks_it),
        TEST(turns_are_those_of_range),
        TEST(a_season_goes_from_the_most_lift_to_the_least),
        TEST(a_second_sailor_has_a_part_of_the_same_card),
        TEST(the_way_of_the_grip_is_told_or_is_to_be_checked),
        FILES(where_nothing_flies_the_card_says_so_first_and_ends_with_1),
        FILES(two_pages_stand_beside_each_other),
        FILES(a_card_that_is_there_is_replaced_by_force_alone),
        FILES(what_cannot_be_asked_writes_nothing),
        FILES(without_rsvg_convert_it_says_what_to_install),
        FILES(a_pdf_has_two_pages_of_the_paper_and_its_text_in_reading_order),
        FILES(as_it_is_set_no_word_lies_on_another_or_off_the_page),
        FILES(a_png_has_300_dots_an_inch),
    };
    return RUN_TESTS(tests);
}
