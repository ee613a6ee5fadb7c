// test_side_picture.c - claims about the boat from the side in flight.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "picture/side_picture.h"

#include <stdlib.h>

#include "test/drawn_words.h"
#include "test/preset.h"
#include "test/random_boat.h"

static drawn_words drawn;

// The words of so many flights in a picture so wide; the picture's text, which the caller frees.
static char *draw_in(double width, const lw_side_drawn *sides, size_t count)
{
    char *svg = NULL;
    size_t length;
    FILE *out = open_memstream(&svg, &length);
    CHECK(out != NULL);
    lw_sides_draw(out, &(lw_sides_drawn){sides, count, width, "a test"});
    fclose(out);
    read_words(svg, &drawn);
    return svg;
}

static char *draw(const lw_side_drawn *sides, size_t count) { return draw_in(0.0, sides, count); }

// Any balance of a boat, in so many tries.
static lw_answer random_answer(const lw_craft *craft, random_stream *stream)
{
    lw_answer answer = {.outcome = LW_NO_BALANCE};
    for (int i = 0; i < 20 && answer.outcome == LW_NO_BALANCE; i++) {
        const lw_ask ask = random_flight(craft, stream);
        lw_balance(craft, &ask, &answer, 1);
    }
    return answer;
}

TEST_FUNCTION(words_stand_apart_and_on_the_page_in_any_flight)
{
    const lw_boat boat = preset_boat();
    const lw_craft craft = preset_craft();
    static const double widths[] = {0.0, 304.0, 420.0, 760.0};
    random_stream stream = {1};
    for (int i = 0; i < 200; i++) {
        const lw_answer one = random_answer(&craft, &stream), two = random_answer(&craft, &stream);
        const lw_side_drawn sides[] = {{&boat, &craft, 1, &one.flight, "Before."},
                                       {&boat, &craft, 2, &two.flight, "After."}};
        free(draw_in(widths[i / 2 % 4], sides, 1 + (size_t)i % 2));
        CHECK(words_that_collide(&drawn) == 0 && words_that_leave(&drawn) == 0);
    }
}

TEST_FUNCTION(words_stand_apart_on_any_usual_boat)
{
    random_stream stream = {2};
    long again = 0;
    int drawn_boats = 0;
    for (int i = 0; i < 60; i++) {
        const lw_boat boat = random_boat(BOAT_USUAL, &stream, &again);
        const lw_person person = random_person(BOAT_USUAL, &stream);
        const lw_medium medium = preset_medium();
        lw_craft craft;
        lw_craft_prepare(&craft, &boat, preset_sections(), &person, &medium);
        const lw_answer answer = random_answer(&craft, &stream);
        const lw_side_drawn side = {&boat, &craft, 0, &answer.flight, "Any boat."};
        if (answer.outcome == LW_NO_BALANCE) continue;
        drawn_boats++;
        free(draw(&side, 1));
        CHECK(words_that_collide(&drawn) == 0 && words_that_leave(&drawn) == 0);
    }
    CHECK(drawn_boats > 40);
}

// Weights and lifts are one balance: the words say the numbers of the flight.
TEST_FUNCTION(the_forces_that_are_told_are_those_of_the_flight)
{
    char text[40];
    const lw_boat boat = preset_boat();
    const lw_craft craft = preset_craft();
    random_stream stream = {3};
    const lw_answer answer = random_answer(&craft, &stream);
    const lw_flight *f = &answer.flight;
    const lw_side_drawn side = {&boat, &craft, 1, f, "One."};
    free(draw(&side, 1));
    snprintf(text, sizeof text, "lift %.0f N", f->main_lift);
    CHECK(words_have(&drawn, text));
    snprintf(text, sizeof text, "drive %.0f N", f->drive);
    CHECK(words_have(&drawn, text));
    snprintf(text, sizeof text, "drag %.0f N", f->drive);  // steady: as much as the drive
    CHECK(words_have(&drawn, text));
    snprintf(text, sizeof text, "%.0f cm up", 100.0 * f->ride_height);
    CHECK(words_have(&drawn, text) && words_have(&drawn, "sailor") && words_have(&drawn, "boat"));
}

// A depth of the main foil in the picture is what its strut and the ride height leave.
TEST_FUNCTION(a_foil_that_rides_higher_is_told_less_deep)
{
    char text[40];
    const lw_boat boat = preset_boat();
    const lw_craft craft = preset_craft();
    lw_flight f = {.ride_height = 0.4, .place_x = 1.0, .drive = 60.0};
    for (int i = 0; i < 3; i++) {
        const lw_side_drawn side = {&boat, &craft, 1, &f, "One."};
        f.ride_height = 0.3 + 0.1 * i;
        free(draw(&side, 1));
        snprintf(text, sizeof text, "%.0f cm deep",
                 100.0 * (boat.main_strut.length - f.ride_height));
        CHECK(words_have(&drawn, text));
    }
}

TEST_FUNCTION(without_a_balance_only_its_words_are_drawn)
{
    const lw_boat boat = preset_boat();
    const lw_craft craft = preset_craft();
    const lw_side_drawn side = {&boat, &craft, 1, NULL, "No steady balance was found."};
    free(draw(&side, 1));
    CHECK(drawn.count == 1 && words_have(&drawn, "No steady balance"));
}

// What the page moves: each part once, in a group of its name.
TEST_FUNCTION(the_boat_by_herself_is_drawn_part_by_part)
{
    static const char *const parts[] = {"rig", "main", "rudder", "hull", "sailor", "racks", "wand"};
    const lw_boat boat = preset_boat();
    const lw_craft craft = preset_craft();
    char *svg = NULL, text[40];
    size_t length;
    FILE *out = open_memstream(&svg, &length);
    CHECK(out != NULL);
    lw_side_parts_draw(out, &boat, &craft);
    fclose(out);
    CHECK(!strstr(svg, "nan") && !strstr(svg, "<text"));
    for (size_t i = 0; i < sizeof parts / sizeof *parts; i++) {
        snprintf(text, sizeof text, "<g class=\"%s\">", parts[i]);
        const char *first = strstr(svg, text);
        CHECK(first && !strstr(first + 1, text));
    }
    // the wand hangs straight down from its pivot
    snprintf(text, sizeof text, "M%.2f %.2fL%.2f ", 100.0 * boat.linkage.wand_x,
             -100.0 * boat.linkage.wand_height, 100.0 * boat.linkage.wand_x);
    CHECK(strstr(svg, text));
    free(svg);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(words_stand_apart_and_on_the_page_in_any_flight),
        TEST(words_stand_apart_on_any_usual_boat),
        TEST(the_forces_that_are_told_are_those_of_the_flight),
        TEST(a_foil_that_rides_higher_is_told_less_deep),
        TEST(without_a_balance_only_its_words_are_drawn),
        TEST(the_boat_by_herself_is_drawn_part_by_part),
    };
    return RUN_TESTS(tests);
}
