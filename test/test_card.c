// test_card.c - claims about cards: no two pieces of text overlap, none is off the page or too
// small, whatever boat, sailors and day; which pin a season names; hashes.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "answer/card/card.h"
#include "picture/card_picture.h"
#include "picture/letter_width.h"
#include "records/record_hash.h"
#include "test/check.h"
#include "test/random_day.h"

#ifdef __SANITIZE_ADDRESS__
#define CARDS  60
#define RANGES 12
#else
#define CARDS  500
#define RANGES 60
#endif

static lw_carded card;
static lw_card_page page;
static lw_card_sheet sheet;

// --- random cards

// Letters of any width, some outside ASCII; `most` letters at most.
static void random_name(char *name, size_t room, size_t most, random_stream *stream)
{
    static const char *const letters[] = {"W", "i", "a", "M", "0", "_", "é", "Å", "ж", "漢"};
    const size_t count = 1 + random_bits(stream) % most;
    name[0] = '\0';
    for (size_t i = 0; i < count; i++) {
        const char *letter = letters[random_bits(stream) % LW_COUNT_OF(letters)];
        if (strlen(name) + strlen(letter) < room) strcat(name, letter);
    }
}

// One to as many pins as a boat may have, from the most lift to the least.
static void random_pins(lw_boat *boat, random_stream *stream)
{
    boat->pin_count = 1 + random_bits(stream) % LW_PINS_MOST;
    for (size_t i = 0; i < boat->pin_count; i++) {
        char name[LW_LABEL_LENGTH - 1];
        random_name(name, sizeof name, random_bits(stream) % 2 ? 11 : 2, stream);
        boat->pins[i].incidence = (6.0 - 0.5 * (double)i) * LW_DEG;
        snprintf(boat->pins[i].label, sizeof boat->pins[i].label, "%s%c", name, (int)('A' + i));
    }
}

static void random_side(lw_card_side *side, const lw_inputs *inputs, const range_pool *pool,
                        int run, random_stream *stream)
{
    lw_inputs *own = &side->picked.inputs;
    *own = *inputs;
    own->sailor.person = random_person(kind_of(run), stream);
    random_name(own->sailor.name, sizeof own->sailor.name, run % 4 ? 12 : 60, stream);
    side->picked.outlook = &side->outlook;
    side->picked.speed_unit = card.speed_unit;
    lw_outlook_begin(&side->outlook, &own->boat, random_sections(stream), &own->sailor.person,
                     &own->day);
    draw_outlook(&side->outlook, pool, run, stream);
    for (size_t k = 0; k < LW_PINS_MOST * LW_COURSE_COUNT; k++) {
        lw_card_flights *on = &side->of[k / LW_COURSE_COUNT][k % LW_COURSE_COUNT];
        on->range = pool->ranges[random_bits(stream) % pool->count];
        for (size_t i = 0; i < LW_CARD_WINDS; i++)
            on->most[i] = random_bits(stream) % 8 ? random_between(stream, -12.0, 12.0) : NAN;
    }
}

static void random_winds(const lw_wind *wind, random_stream *stream)
{
    const double from = random_between(stream, 3.0, 10.0), step = random_between(stream, 0.5, 4.0);
    card.wind_count = card.is_season ? 1 + random_bits(stream) % LW_CARD_WINDS : 3;
    for (size_t i = 0; i < card.wind_count; i++)
        card.winds[i] = card.is_season ? (from + step * (double)i) * LW_KN
                        : i == 0       ? wind->lull
                        : i == 1       ? wind->mean
                                       : wind->puff;
}

// False where the day contradicts itself.
static bool random_card(int run, const range_pool *pool, random_stream *stream)
{
    static lw_inputs inputs;
    memset(&card, 0, sizeof card);
    if (!random_inputs(&inputs, run, stream)) return false;
    random_pins(&inputs.boat, stream);
    random_name(inputs.boat.name, sizeof inputs.boat.name, run % 4 ? 12 : 60, stream);
    random_name(inputs.day.name, sizeof inputs.day.name, run % 4 ? 12 : 60, stream);
    inputs.day_as_given = inputs.day;
    card.paper = (lw_paper)(run % LW_PAPER_COUNT);
    card.is_season = run / 2 % 2;
    card.speed_unit = run % 5 ? LW_UNIT_NONE : LW_UNIT_MPS;
    card.side_count = 1 + random_bits(stream) % LW_CARD_SAILORS;
    snprintf(card.date, sizeof card.date, "2030-05-17");
    random_winds(&inputs.day.wind, stream);
    for (size_t i = 0; i < card.side_count; i++)
        random_side(&card.sides[i], &inputs, pool, run, stream);
    lw_carded_end(&card);
    return true;
}

// --- what is measured

static bool are_apart(const lw_card_box *a, const lw_card_box *b)
{
    const double touch = 1e-6;
    return a->x + a->width <= b->x + touch || b->x + b->width <= a->x + touch ||
           a->y + a->height <= b->y + touch || b->y + b->height <= a->y + touch;
}

static void box_is_on_the_page(const lw_card_box *box)
{
    const double width = lw_letters_width(box->text, box->length, box->is_bold) * box->size;
    CHECK(box->size >= LW_CARD_LETTERS_LEAST);
    CHECK(box->width >= width - 1e-9);
    CHECK(box->x >= 0.0 && box->x + box->width <= page.width);
    CHECK(box->y >= 0.0 && box->y + box->height <= page.height);
}

static void nothing_overlaps(int run)
{
    for (size_t i = 0; i < page.box_count; i++) {
        box_is_on_the_page(&page.boxes[i]);
        for (size_t k = 0; k < i; k++) {
            if (are_apart(&page.boxes[i], &page.boxes[k])) continue;
            print_error("card %d: \"%.*s\" and \"%.*s\"\n", run, (int)page.boxes[i].length,
                        page.boxes[i].text, (int)page.boxes[k].length, page.boxes[k].text);
            fail();
        }
    }
}

static bool page_has(const char *text)
{
    for (size_t i = 0; i < page.box_count; i++) {
        const lw_card_box *box = &page.boxes[i];
        if (box->length == strlen(text) && strncmp(box->text, text, box->length) == 0) return true;
    }
    return false;
}

// A line that begins so, which may be broken further on.
static bool page_begins_a_line(const char *text)
{
    for (size_t i = 0; i < page.box_count; i++) {
        if (strncmp(page.boxes[i].text, text, strlen(text)) == 0) return true;
    }
    return false;
}

// The size of the headline's letters, and of the largest others; 0: there are none.
static double headline_size(double *others)
{
    double size = 0.0;
    *others = 0.0;
    for (size_t i = 0; i < page.box_count; i++) {
        const lw_card_box *box = &page.boxes[i];
        bool is_headline = false;
        for (size_t k = 0; k < sheet.count; k++) {
            const lw_card_line *of = &sheet.lines[k];
            const bool is_its = box->text >= of->text && box->text < of->text + sizeof of->text;
            is_headline |= is_its && of->is_single && of->scale > 2.0;
        }
        if (is_headline) size = fmax(size, box->size);
        if (!is_headline) *others = fmax(*others, box->size);
    }
    return size;
}

// That nothing flies stands in the largest letters; a pin in large ones, however long its label.
static void the_headline_is_large(void)
{
    double others;
    const double size = headline_size(&others);
    if (!lw_carded_is_answered(&card)) CHECK(size > others);
    if (!card.is_season) CHECK(size >= 10.0);
}

static void the_card_is_sound(int run, size_t *whole)
{
    lw_carded_front(&card, &sheet);
    CHECK(sheet.count < LW_CARD_LINES_MOST);
    CHECK(lw_card_set(&sheet, &page));
    nothing_overlaps(run);
    the_headline_is_large();
    CHECK(page_begins_a_line("Helmet, buoyancy aid, dressed"));
    *whole += page.left_out == 0;
    lw_carded_back(&card, &sheet);
    CHECK(sheet.count < LW_CARD_LINES_MOST);
    CHECK(lw_card_set(&sheet, &page));
    nothing_overlaps(run);
}

TEST_FUNCTION(on_any_card_no_text_overlaps_or_leaves_the_page_or_is_under_8_points)
{
    static lw_range ranges[RANGES];
    random_stream stream = {77};
    size_t whole = 0, cards = 0;
    work_out_ranges(ranges, RANGES, &stream);
    for (int run = 0; cards < CARDS * (size_t)soak_times(); run++) {
        if (!random_card(run, &(range_pool){ranges, RANGES}, &stream)) continue;
        the_card_is_sound(run, &whole);
        cards++;
    }
    print_message("%zu of %zu first pages hold all that is told\n", whole, cards);
    CHECK(whole > cards / 4 && whole < cards);  // with room to spare, and without
}

// --- the setting by itself

static const lw_card_line line = {.scale = 1.0};

TEST_FUNCTION(a_sheet_with_room_is_set_in_the_largest_letters)
{
    sheet = (lw_card_sheet){.paper = LW_PAPER_A6};
    lw_card_add(&sheet, line, "Few words");
    CHECK(lw_card_set(&sheet, &page));
    CHECK_NEAR(page.size, LW_CARD_LETTERS_MOST, 0.0);
    CHECK(page.box_count == 1 && page_has("Few words"));
}

// A6 has 391.5 points between its margins: 40 lines of 8 points with 1.2 from one to the next.
TEST_FUNCTION(what_can_be_spared_is_left_out_the_least_needed_first_and_that_is_told)
{
    sheet = (lw_card_sheet){.paper = LW_PAPER_A6};
    for (int i = 0; i < 36; i++) lw_card_add(&sheet, line, "needed");
    for (int i = 1; i <= 6; i++) {
        lw_card_line spare = line;
        spare.spare = i;
        lw_card_add(&sheet, spare, "spare %d", i);
    }
    lw_card_add(&sheet, (lw_card_line){.scale = 1.0, .tells_of_spare = true}, "more elsewhere");
    CHECK(lw_card_set(&sheet, &page));
    CHECK_NEAR(page.size, LW_CARD_LETTERS_LEAST, 0.0);
    CHECK(page_has("spare 1") && page_has("spare 3") && !page_has("spare 4"));
    CHECK(page_has("more elsewhere") && page.left_out == 3);
}

TEST_FUNCTION(a_sheet_that_cannot_be_spared_enough_is_refused)
{
    sheet = (lw_card_sheet){.paper = LW_PAPER_A6};
    for (int i = 0; i < 60; i++) lw_card_add(&sheet, line, "needed");
    CHECK(!lw_card_set(&sheet, &page));
}

TEST_FUNCTION(a_long_word_is_broken_and_a_single_line_shrinks)
{
    char text[120];
    memset(text, 'W', sizeof text);
    text[sizeof text - 1] = '\0';
    sheet = (lw_card_sheet){.paper = LW_PAPER_A6};
    lw_card_add(&sheet, line, "%s", text);
    lw_card_add(&sheet, (lw_card_line){.scale = 4.0, .is_single = true}, "Pin WWWWWWWWWWWW");
    CHECK(lw_card_set(&sheet, &page));
    CHECK(page.box_count > 3 && page_has("Pin WWWWWWWWWWWW"));
    nothing_overlaps(0);
}

// 105 x 148 mm and 148 x 210 mm by ISO 216 (from memory); 5.5 x 8.5 in.
TEST_FUNCTION(paper_has_its_size)
{
    CHECK(lw_paper_of("A6") == LW_PAPER_A6 && lw_paper_of("A7") == LW_PAPER_COUNT);
    CHECK_NEAR(lw_paper_width(LW_PAPER_A6), 105.0, 0.0);
    CHECK_NEAR(lw_paper_height(LW_PAPER_A5), 210.0, 0.0);
    CHECK_NEAR(lw_paper_width(LW_PAPER_HALF_LETTER), 5.5 * 25.4, 1e-9);
    CHECK_NEAR(lw_paper_height(LW_PAPER_HALF_LETTER), 8.5 * 25.4, 1e-9);
}

// --- which pin a season names

// Three pins: launching at 8, staying up at 7, held to 12, 16 and 20 kn.
static void prepare_season(void)
{
    memset(&card, 0, sizeof card);
    card.is_season = true, card.side_count = 1, card.wind_count = 4;
    const double winds[] = {6.0, 9.0, 12.0, 30.0};
    for (int i = 0; i < 4; i++) card.winds[i] = winds[i] * LW_KN;
    lw_card_side *side = &card.sides[0];
    side->outlook.pin_count = 3;
    side->outlook.gusts = (lw_gusts){8.0 * LW_KN, 10.0 * LW_KN, 12.0 * LW_KN, 60.0};
    for (size_t k = 0; k < 3 * LW_COURSE_COUNT; k++) {
        lw_range *range = &side->of[k / LW_COURSE_COUNT][k % LW_COURSE_COUNT].range;
        range->has_launch = range->has_flight = range->has_hold = true;
        range->launches_at = 8.0 * LW_KN, range->stays_up_at = 7.0 * LW_KN;
        range->held_up_to = (12.0 + 4.0 * (double)(k / LW_COURSE_COUNT)) * LW_KN;
    }
    lw_card_climb(&card, side);
}

// Puffs are 1.2 of the mean: 7.2, 10.8, 14.4 and 36 kn.
TEST_FUNCTION(a_season_names_the_pin_with_most_lift_that_is_held)
{
    prepare_season();
    const lw_card_rung *rungs = card.sides[0].rungs;
    CHECK(card.sides[0].rung_count == 4);
    CHECK(!rungs[0].flies);
    CHECK(rungs[1].flies && rungs[1].pin == 0 && rungs[1].is_held);
    CHECK(rungs[2].flies && rungs[2].pin == 1 && rungs[2].is_held);
    CHECK(rungs[3].flies && rungs[3].pin == 2 && !rungs[3].is_held);
    CHECK_NEAR(rungs[1].gusts.lull, 7.2 * LW_KN, 1e-12);
}

TEST_FUNCTION(a_pin_that_stays_up_on_two_courses_alone_flies_in_no_season)
{
    prepare_season();
    for (size_t pin = 0; pin < 3; pin++) card.sides[0].of[pin][LW_REACH].range.has_flight = false;
    lw_card_climb(&card, &card.sides[0]);
    CHECK(!lw_card_flies(&card.sides[0]));
}

// --- hashes

// Published with the function: of nothing, "a" and "foobar" [fnv].
TEST_FUNCTION(the_hash_is_the_published_one)
{
    CHECK(lw_hash_add(LW_HASH_EMPTY, "", 0) == UINT64_C(0xcbf29ce484222325));
    CHECK(lw_hash_add(LW_HASH_EMPTY, "a", 1) == UINT64_C(0xaf63dc4c8601ec8c));
    CHECK(lw_hash_add(LW_HASH_EMPTY, "foobar", 6) == UINT64_C(0x85944171f73967e8));
}

TEST_FUNCTION(a_record_has_another_hash_once_a_number_a_label_or_a_text_is_another)
{
    static lw_boat boat, other;
    random_stream stream = {5};
    long again = 0;
    boat = random_boat(BOAT_USUAL, &stream, &again);
    const uint64_t hash = lw_record_hash(&lw_boat_record, &boat);
    CHECK(lw_record_hash(&lw_boat_record, &boat) == hash);
    other = boat, other.rudder.turn = nextafter(boat.rudder.turn, 9.0);
    CHECK(lw_record_hash(&lw_boat_record, &other) != hash);
    other = boat, other.main_foil.waves = nextafter(boat.main_foil.waves, 9.0);
    CHECK(lw_record_hash(&lw_boat_record, &other) != hash);
    other = boat, strcpy(other.pins[1].label, "b");
    CHECK(lw_record_hash(&lw_boat_record, &other) != hash);
    other = boat, strcpy(other.grip, "clockwise");
    CHECK(lw_record_hash(&lw_boat_record, &other) != hash);
    other = boat, other.pin_count--;
    CHECK(lw_record_hash(&lw_boat_record, &other) != hash);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(on_any_card_no_text_overlaps_or_leaves_the_page_or_is_under_8_points),
        TEST(a_sheet_with_room_is_set_in_the_largest_letters),
        TEST(what_can_be_spared_is_left_out_the_least_needed_first_and_that_is_told),
        TEST(a_sheet_that_cannot_be_spared_enough_is_refused),
        TEST(a_long_word_is_broken_and_a_single_line_shrinks),
        TEST(paper_has_its_size),
        TEST(a_season_names_the_pin_with_most_lift_that_is_held),
        TEST(a_pin_that_stays_up_on_two_courses_alone_flies_in_no_season),
        TEST(the_hash_is_the_published_one),
        TEST(a_record_has_another_hash_once_a_number_a_label_or_a_text_is_another),
    };
    return RUN_TESTS(tests);
}
