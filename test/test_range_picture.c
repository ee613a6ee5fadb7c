// test_range_picture.c - claims about the picture of the winds of each pin.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "picture/range_picture.h"

#include <stdlib.h>

#include "test/drawn_words.h"

static drawn_words drawn;

static void draw(const lw_range_drawn *of)
{
    char *svg = NULL;
    size_t length;
    FILE *out = open_memstream(&svg, &length);
    CHECK(out != NULL);
    lw_range_draw(out, of);
    fclose(out);
    read_words(svg, &drawn);
    free(svg);
}

// Two headings and one pin, on a day of 10, 12 and 15 kn.
static lw_range_drawn one_pin(lw_range_bar bar)
{
    lw_range_drawn of = {.head = "A boat, a sailor.",
                         .panel_count = 2,
                         .lull = 10.0 * LW_KN,
                         .mean = 12.0 * LW_KN,
                         .puff = 15.0 * LW_KN,
                         .unit = LW_UNIT_KN};
    for (size_t i = 0; i < of.panel_count; i++) {
        of.panels[i] = (lw_range_panel){.heading = "upwind", .bars = {bar}, .count = 1};
    }
    return of;
}

TEST_FUNCTION(the_winds_at_which_a_pin_changes_are_told_in_the_unit)
{
    lw_range_drawn of = one_pin((lw_range_bar){"B", 9.0 * LW_KN, 7.5 * LW_KN, 17.6 * LW_KN, "tip"});
    draw(&of);
    CHECK(words_have(&drawn, "9.0") && words_have(&drawn, "7.5") && words_have(&drawn, "17.6"));
    CHECK(words_have(&drawn, "kn") && words_have(&drawn, "tip") && words_have(&drawn, "upwind"));
    of.unit = LW_UNIT_MPS;
    draw(&of);
    CHECK(words_have(&drawn, "9.1") && words_have(&drawn, "m/s") && !words_have(&drawn, "17.6"));
}

// Held to less than she takes off in: no wind in which she takes off and is held.
TEST_FUNCTION(a_pin_that_takes_off_in_more_than_it_is_held_in_has_no_such_wind)
{
    const lw_range_drawn of =
        one_pin((lw_range_bar){"A", 14.8 * LW_KN, 7.4 * LW_KN, 13.2 * LW_KN, "tip"});
    draw(&of);
    CHECK(words_have(&drawn, "7.4") && words_have(&drawn, "13.2") && !words_have(&drawn, "14.8"));
}

TEST_FUNCTION(a_pin_that_does_not_fly_has_its_row_without_a_number)
{
    const lw_range_drawn of = one_pin((lw_range_bar){"A", 0.0, 0.0, 0.0, "does not fly"});
    draw(&of);
    CHECK(words_have(&drawn, "does not fly"));
    for (size_t i = 0; i < drawn.count; i++) {  // numbers along the wind are whole
        const bool is_number = strspn(drawn.texts[i], "0123456789.") == strlen(drawn.texts[i]);
        CHECK(!is_number || !strchr(drawn.texts[i], '.'));
    }
}

static double some_wind(random_stream *stream)
{
    return random_between(stream, 0.0, 1.0) < 0.2 ? 0.0 : random_between(stream, 3.0, 34.0) * LW_KN;
}

TEST_FUNCTION(words_stand_apart_and_on_the_page_whatever_the_winds_and_the_width)
{
    static const double widths[] = {0.0, 300.0, 420.0, 700.0};
    random_stream stream = {7};
    for (int run = 0; run < 500; run++) {
        const double a = random_between(&stream, 2.0, 25.0), b = random_between(&stream, 0.0, 8.0);
        lw_range_drawn of = one_pin((lw_range_bar){0});
        of.lull = a * LW_KN, of.mean = (a + b) * LW_KN, of.puff = (a + 2.0 * b + 1.0) * LW_KN;
        of.panels[0].count = 1 + (size_t)run % LW_PINS_MOST;
        for (size_t i = 0; i < of.panels[0].count; i++) {
            of.panels[0].bars[i] = (lw_range_bar){
                run % 3 ? "label" : "a label of many letters, of a pin", some_wind(&stream),
                some_wind(&stream), some_wind(&stream), "main foil's tip in the chop"};
        }
        of.panels[1] = of.panels[0];
        of.width = widths[run % 4];
        draw(&of);
        CHECK(words_that_collide(&drawn) == 0 && words_that_leave(&drawn) == 0);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_winds_at_which_a_pin_changes_are_told_in_the_unit),
        TEST(a_pin_that_takes_off_in_more_than_it_is_held_in_has_no_such_wind),
        TEST(a_pin_that_does_not_fly_has_its_row_without_a_number),
        TEST(words_stand_apart_and_on_the_page_whatever_the_winds_and_the_width),
    };
    return RUN_TESTS(tests);
}
