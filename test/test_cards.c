// test_cards.c - of any day a ranking tells nothing that contradicts another thing it tells.
// SPDX-License-Identifier: MIT
//
// Every claim reads what is told, as a person is shown it: all cards of `lullwise pick` and of the
// page. Days of rides that were ridden, and of rides of any kind; gales and calms among them.

#include <regex.h>
#include <string.h>

#include "answer/pick/pick.h"
#include "lullwise/choice_find.h"
#include "test/check.h"
#include "test/random_day.h"
#include "test/told_tree.h"

#ifdef __SANITIZE_ADDRESS__
#define RIDDEN 1
#define DRAWN  40
#define RANGES 12
#else
#define RIDDEN 8
#define DRAWN  300
#define RANGES 60
#endif

// --- days

static lw_range ranges[RANGES];
static lw_outlook outlook;

static void ride_it(void)
{
    outlook.effort.seconds = 10.0;
    for (size_t step = 0; step < lw_outlook_steps(&outlook); step++)
        lw_outlook_step(&outlook, step);
}

// False where the day contradicts itself.
static bool random_picked(lw_picked *picked, int run, random_stream *stream)
{
    lw_inputs *inputs = &picked->inputs;
    if (!random_inputs(inputs, run, stream)) return false;
    picked->outlook = &outlook;
    picked->speed_unit = run % 5 ? LW_UNIT_NONE : LW_UNIT_MPS;
    lw_outlook_begin(&outlook, &inputs->boat, random_sections(stream), &inputs->sailor.person,
                     &inputs->day);
    if (run >= DRAWN * soak_times())
        ride_it();
    else
        draw_outlook(&outlook, &(range_pool){ranges, RANGES}, run, stream);
    lw_outlook_end(&outlook);
    lw_picked_rank(picked);
    return true;
}

// --- what was told

static double number(const json_t *of, const char *key)
{
    const json_t *value = json_object_get(of, key);
    return json_is_number(value) ? json_number_value(value) : NAN;
}

static const char *words(const json_t *of, const char *key)
{
    const json_t *value = json_object_get(of, key);
    return json_is_string(value) ? json_string_value(value) : "";
}

static const char *shown(const json_t *of, const char *key)
{
    char name[80];
    snprintf(name, sizeof name, "%s shown", key);
    return words(of, name);
}

static bool is_so(const json_t *of, const char *key)
{
    return json_is_true(json_object_get(of, key));
}

static const json_t *rows_of(const json_t *told, const char *table)
{
    return json_object_get(json_object_get(told, table), "rows");
}

// The row of a pin; NULL: it has none.
static const json_t *row_of(const json_t *told, const char *table, const char *pin)
{
    size_t i;
    const json_t *row;
    json_array_foreach(rows_of(told, table), i, row)
    {
        if (strcmp(words(row, "pin"), pin) == 0) return row;
    }
    return NULL;
}

static bool has(const char *text, const char *part) { return strstr(text, part) != NULL; }

// Whether a text says "Pin X" or "pin X" of one.
static bool names(const char *text, const char *pin)
{
    char small[80], great[80];
    snprintf(small, sizeof small, "pin %s", pin);
    snprintf(great, sizeof great, "Pin %s", pin);
    return has(text, small) || has(text, great);
}

static double puff_of(const json_t *told) { return number(json_object_get(told, "wind"), "puff"); }

#define TOLD 1e-9  // twelve digits are told: so near, two winds are one

// Whether the place is held in a wind, as its row says.
static bool row_holds(const json_t *place, double wind)
{
    return number(place, "held_up_to") + TOLD >= wind;  // none: NAN, which is not
}

static bool row_stays_up(const json_t *place, double wind)
{
    return is_so(place, "flies") && wind + TOLD >= number(place, "stays_up_at");
}

// --- what no two cards may say

// A row of places with itself.
static void check_place(const json_t *place, double puff)
{
    const bool flies = is_so(place, "flies");
    CHECK(flies == (number(place, "flying") > 0.0));
    CHECK(flies == !isnan(number(place, "swims")));
    CHECK(is_so(place, "can_be_sailed") == !isnan(number(place, "seconds")));
    CHECK(is_so(place, "is_held") == row_holds(place, puff));
    CHECK(isnan(number(place, "held_up_to")) ||
          number(place, "held_up_to") + TOLD >= number(place, "stays_up_at"));
}

// The headline is a pin just where one holds the puffs, and it is the first; else what would is
// told of the pin that holds most, or flies soonest.
static void check_headline(const json_t *told)
{
    const json_t *places = rows_of(told, "places"), *place, *most = NULL;
    const char *headline = words(told, "headline"), *would = words(told, "would");
    const json_t *first = json_array_get(places, 0);
    const double puff = puff_of(told);
    size_t i;
    json_array_foreach(places, i, place)
    {
        check_place(place, puff);
        const double held = number(place, "held_up_to");
        if (!isnan(held) && (!most || held > number(most, "held_up_to"))) most = place;
    }
    const bool holds = most && row_holds(most, puff), flies = is_so(told, "any_flies");
    if (flies) CHECK(is_so(told, "any_holds") == holds);
    if (flies) CHECK(names(headline, words(first, "pin")) == holds);
    if (flies) CHECK(has(headline, "No pin holds this wind") == !holds);
    if (!flies) CHECK(has(headline, "Nothing flies") || !holds);
    CHECK((would[0] == '\0') == names(headline, words(first, "pin")));
    if (has(headline, "No pin holds") && most)
        CHECK(names(would, words(most, "pin")) && has(would, shown(most, "held_up_to")));
    if (has(headline, "No pin holds") && !most) CHECK(has(would, "no pin is held in any wind"));
    CHECK(strncmp(words(told, "line"), headline, strlen(headline)) == 0);
}

// The first card is of the first place, and has its numbers.
static void check_best(const json_t *told)
{
    const json_t *best = json_object_get(told, "best");
    const json_t *first = json_array_get(rows_of(told, "places"), 0);
    const json_t *turns = row_of(told, "turns", words(first, "pin"));
    const json_t *own = json_object_get(best, "turns");
    CHECK((best != NULL) == is_so(told, "any_flies"));
    if (!best) return;
    CHECK_TEXT(words(best, "pin"), words(first, "pin"));
    CHECK_TEXT(shown(best, "held_up_to"), shown(first, "held_up_to"));
    CHECK_TEXT(shown(best, "seconds"), shown(first, "seconds"));
    CHECK((own != NULL) == is_so(first, "flies") && (turns != NULL) == is_so(first, "flies"));
    CHECK(isnan(number(best, "under_puffs")) || !row_holds(first, puff_of(told)));
    CHECK(isnan(number(best, "over_puffs")) || row_holds(first, puff_of(told)));
    static const char *const keys[] = {"lull", "mean", "puff", "holds_most"};
    for (int k = 0; k < 4 && own; k++) CHECK_TEXT(shown(own, keys[k]), shown(turns, keys[k]));
}

// Turns are told for a wind in which she stays up, in brackets where the place is not held in it.
static void check_turns_in(const json_t *row, const char *key, const json_t *place, double wind)
{
    const bool stays_up = row_stays_up(place, wind);
    const char *as_shown = shown(row, key);
    if (strcmp(key, "holds_most") != 0) CHECK(stays_up == !isnan(number(row, key)));
    CHECK(stays_up || isnan(number(row, key)));
    CHECK(isnan(number(row, key)) == (strcmp(as_shown, "-") == 0));
    if (!isnan(number(row, key))) CHECK((as_shown[0] == '(') == !row_holds(place, wind));
}

static void check_turns(const json_t *told)
{
    const json_t *place, *wind = json_object_get(told, "wind");
    const double in_knots = is_so(told, "in_knots") ? 1.0 : LW_KN;
    static const char *const keys[] = {"lull", "mean", "puff"};
    size_t i;
    json_array_foreach(rows_of(told, "places"), i, place)
    {
        const char *pin = words(place, "pin"), *key;
        const json_t *row = row_of(told, "turns", pin), *band = row_of(told, "band", pin);
        json_t *value;
        CHECK((row != NULL) == is_so(place, "flies") && (band != NULL) == is_so(place, "flies"));
        if (!row) continue;
        for (int k = 0; k < 3; k++) check_turns_in(row, keys[k], place, number(wind, keys[k]));
        check_turns_in(row, "holds_most", place, number(wind, "mean"));
        json_object_foreach((json_t *)band, key, value)
        {
            int knots;
            if (has(key, "shown") || sscanf(key, "at_%d_kn", &knots) != 1) continue;
            check_turns_in(band, key, place, knots * in_knots);
        }
    }
}

// A hold is the lesser of its two limits; what ends it is one of them.
static void check_holds(const json_t *told)
{
    const json_t *place;
    size_t i;
    json_array_foreach(rows_of(told, "places"), i, place)
    {
        const json_t *row = row_of(told, "holds", words(place, "pin"));
        const double held = number(place, "held_up_to"), margins = number(row, "margins_to");
        const bool by_rides = is_so(row, "ends_by_rides"),
                   by_margin = words(row, "ends_by")[0] != 0;
        const bool by_balance = has(words(row, "end"), "no steady balance");
        if (isnan(held)) CHECK(!by_margin && !is_so(row, "ends_in_puff"));
        if (isnan(held)) continue;
        CHECK(held <= margins + 1e-9);
        CHECK(by_rides + by_margin + by_balance == 1);
        CHECK(by_rides == has(words(row, "end"), "swim in five minutes"));
    }
}

// Every reason is one that the numbers of its place bear out.
static void check_why(const json_t *told)
{
    const json_t *place, *wind = json_object_get(told, "wind");
    size_t i;
    json_array_foreach(rows_of(told, "places"), i, place)
    {
        const json_t *row = json_array_get(rows_of(told, "why"), i);
        const char *sentence = words(row, "sentence"), *reason = words(row, "reason");
        const bool is_down = strcmp(reason, "never") == 0 || strcmp(reason, "hull") == 0;
        CHECK_TEXT(words(row, "pin"), words(place, "pin"));
        CHECK(is_down <= !is_so(place, "flies"));
        if (has(sentence, "cannot be held in the puffs")) CHECK(!row_holds(place, puff_of(told)));
        if (has(sentence, "over the puffs")) CHECK(row_holds(place, puff_of(told)));
        if (has(sentence, "lulls ")) CHECK(number(wind, "lull") < number(place, "stays_up_at"));
        if (has(sentence, "held in no wind")) CHECK(isnan(number(place, "held_up_to")));
    }
}

// A difference told has the sign of the numbers.
static void check_less_lift(const json_t *told)
{
    const json_t *row;
    size_t i;
    json_array_foreach(rows_of(told, "less_lift"), i, row)
    {
        const char *sentence = words(row, "sentence");
        const double gained = number(row, "hold_gained");
        if (isnan(gained)) CHECK(has(sentence, "no wind"));
        if (isnan(gained)) continue;
        const double from = number(row_of(told, "places", words(row, "from")), "held_up_to");
        const double to = number(row_of(told, "places", words(row, "to")), "held_up_to");
        CHECK_NEAR(gained, to - from, 1e-9);
        CHECK(has(sentence, gained < 0.0 ? " less." : " more.") || has(sentence, "holds as much"));
        CHECK(!has(sentence, "holds 0.0"));
    }
}

// Cautions and the line beside the first card say what the places say.
static void check_cautions(const json_t *told)
{
    const json_t *line, *first = json_array_get(rows_of(told, "places"), 0);
    const json_t *best = json_object_get(told, "best"), *place;
    const double puff = puff_of(told);
    bool says_none = false;
    size_t i, k;
    json_array_foreach(json_object_get(told, "cautions"), i, line)
    {
        const char *text = json_string_value(line);
        says_none |= has(text, "No pin holds this wind");
        if (has(text, "swims in one lap")) CHECK(names(text, words(first, "pin")));
        if (!has(text, "holds them")) continue;
        CHECK(!row_holds(first, puff) && has(words(best, "unheld"), "holds them"));
        json_array_foreach(rows_of(told, "places"), k, place)
        {
            char says[80];
            snprintf(says, sizeof says, "; pin %s holds them", words(place, "pin"));
            if (has(text, says)) CHECK(row_holds(place, puff));
            if (has(text, says)) CHECK(has(text, "does not fly") == !is_so(place, "flies"));
        }
    }
    CHECK(says_none == has(words(told, "headline"), "No pin holds this wind"));
}

// Every sentence, whatever it is about: nothing longer than a minute in seconds, nor longer than an
// hour in minutes; nothing is minus or is "more" by nothing; no number is none.
static void check_text(const char *text)
{
    static const char *const never[] = {
        "[[:digit:]]{3,} s\\b",
        "\\b[6789][[:digit:]] s\\b",
        "[[:digit:]]{3,} min",
        "\\b(6[123456789]|[789][[:digit:]]) min",
        "-[[:digit:].]+ (s|min) more",
        "\\b0 s (more|less)",
        "\\bnan\\b",
        "\\binf\\b",
        "\\b0\\.0 (kn|m/s) (more|less|over|under)",
    };
    for (size_t i = 0; i < sizeof never / sizeof *never; i++) {
        regex_t pattern;
        CHECK(regcomp(&pattern, never[i], REG_EXTENDED | REG_NOSUB) == 0);
        const bool is_found = regexec(&pattern, text, 0, NULL, 0) == 0;
        regfree(&pattern);
        if (is_found) print_error("%s in: %s\n", never[i], text);
        CHECK(!is_found);
    }
}

static void check_texts(const json_t *of)
{
    const char *key;
    json_t *value;
    size_t i;
    if (json_is_string(of)) check_text(json_string_value(of));
    if (json_is_array(of)) json_array_foreach(of, i, value) check_texts(value);
    if (json_is_object(of)) json_object_foreach((json_t *)of, key, value)
        {
            if (strcmp(key, "period shown") != 0) check_texts(value);  // of gusts: hidden
        }
}

// "the first 8.6 kn" beside 8.6 kn of its own is no reason.
static void check_beside_first(const json_t *told)
{
    const json_t *row;
    size_t i;
    json_array_foreach(rows_of(told, "why"), i, row)
    {
        char own[60], first[60];
        const char *text = words(row, "sentence");
        const char *at = strstr(text, "made good under way, the first ");
        if (!at) continue;
        CHECK(sscanf(at, "made good under way, the first %59[.0123456789]", first) == 1);
        while (at > text && at[-1] != ':') at--;
        CHECK(sscanf(at, " %59[.0123456789]", own) == 1 && strcmp(own, first) != 0);
    }
}

static void tell(const void *it, lw_teller *t)
{
    const lw_picked *picked = it;
    t->speed_unit = picked->speed_unit;
    lw_tell_picked(t, picked);
    lw_tell_flag(t, "in_knots", picked->speed_unit == LW_UNIT_NONE);
}

static void check_day(const json_t *told)
{
    check_headline(told);
    check_best(told);
    check_turns(told);
    check_holds(told);
    check_why(told);
    check_beside_first(told);
    check_less_lift(told);
    check_cautions(told);
    check_texts(told);
}

TEST_FUNCTION(no_two_things_told_of_a_day_contradict_each_other)
{
    static lw_picked picked;
    random_stream stream = {31};
    long days = 0, unheld = 0, calm = 0;
    work_out_ranges(ranges, RANGES, &stream);
    for (int run = 0; run < (DRAWN + RIDDEN) * soak_times(); run++) {
        if (!random_picked(&picked, run, &stream)) continue;
        json_t *told = tree_of(tell, &picked);
        check_day(told);
        days++;
        unheld += has(words(told, "headline"), "No pin holds");
        calm += has(words(told, "headline"), "Nothing flies");
        json_decref(told);
    }
    print_message("of %ld days: %ld hold no pin, on %ld nothing flies\n", days, unheld, calm);
    CHECK(unheld > days / 20 && unheld + calm < 9 * days / 10);
    CHECK(calm > days / 50 || days < 100);  // of few days none may be calm
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(no_two_things_told_of_a_day_contradict_each_other),
    };
    return RUN_TESTS(tests);
}
