// test_command_sweep_choice.c - a sweep's answers from rides are those of the questions by
// themselves: `pick` and `swims`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <math.h>

#include "test/command_answers.h"

#define SAILOR "--set person.mass='80 kg' "
#define POINT  "sweep" DEMO "--over 'person.mass=80 kg' --over 'wind.mean=12.5 kn' "
#define MAP    "test_command_sweep_choice.svg"
#define MOST   12  // lines of a point

// The lines of a sweep, one object each; the caller drops them.
static size_t lines_of(const char *words, json_t *lines[MOST])
{
    size_t count = 0;
    CHECK(lullwise(words) == 0);
    for (const char *at = answer; *at && count < MOST; at = strchr(at, '\n') + 1)
        if (*at == '{') CHECK(lines[count++] = json_loads(at, JSON_DISABLE_EOF_CHECK, NULL));
    return count;
}

static void check_alike(const json_t *line, const char *name, const json_t *row, const char *key)
{
    const double swept = json_number_value(json_object_get(line, name));
    const double asked = json_number_value(json_object_get(row, key));
    CHECK(json_is_number(json_object_get(line, name)) && json_is_number(json_object_get(row, key)));
    CHECK(fabs(swept - asked) <= 1e-10 * fabs(asked));
}

TEST_FUNCTION(a_point_of_choices_ranks_as_pick_does_and_a_map_shows_the_first)
{
    static const char *const same[][2] = {{"seconds [s]", "seconds"},
                                          {"flying [%]", "flying"},
                                          {"swims", "swims"},
                                          {"swims_error", "swims_error"},
                                          {"launches_at [kn]", "launches_at"},
                                          {"held_up_to [kn]", "held_up_to"}};
    json_t *lines[MOST], *pick = json_answer("pick" DEMO SAILOR);
    const json_t *rows = json_rows(pick, "places");
    char map[4000] = "", first[40];
    const size_t count = lines_of(POINT "--ask choice --json --svg " MAP, lines);
    CHECK(count == json_array_size(rows) && count == 4);
    for (size_t i = 0; i < count; i++) {
        const json_t *row = json_array_get(rows, i);
        CHECK(strcmp(json_text(lines[i], "pin"), json_text(row, "pin")) == 0);
        for (size_t k = 0; k < sizeof same / sizeof same[0]; k++)
            check_alike(lines[i], same[k][0], row, same[k][1]);
    }
    FILE *file = fopen(MAP, "r");
    CHECK(file && fread(map, 1, sizeof map - 1, file) > 0 && fclose(file) == 0);
    CHECK(remove(MAP) == 0 && strstr(map, "person.mass [kg]") && strstr(map, "wind.mean [kn]"));
    snprintf(first, sizeof first, ">%s</text>", json_text(lines[0], "pin"));
    CHECK(strstr(map, first));
    for (size_t i = 0; i < count; i++) json_decref(lines[i]);
    json_decref(pick);
}

TEST_FUNCTION(a_point_of_swims_tells_what_swims_tells_in_that_wind)
{
    json_t *lines[MOST], *swims = json_answer("swims" DEMO SAILOR);
    const json_t *wind = json_array_get(json_rows(swims, "winds"), 1);
    CHECK(json_number_value(json_object_get(wind, "mean")) == 12.5);
    const size_t count = lines_of(POINT "--ask swims --pin C --json", lines);
    CHECK(count == 3);
    for (size_t i = 0; i < count; i++) {
        const json_t *row = json_array_get(json_rows(swims, json_text(lines[i], "course")), 2);
        CHECK(strcmp(json_text(row, "pin"), "C") == 0);
        check_alike(lines[i], "swims [/h]", row, "swims_2");
        check_alike(lines[i], "factor", row, "factor_2");
        check_alike(lines[i], "rides_to [kn]", row, "rides_to");
        json_decref(lines[i]);
    }
    json_decref(swims);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_point_of_choices_ranks_as_pick_does_and_a_map_shows_the_first),
        TEST(a_point_of_swims_tells_what_swims_tells_in_that_wind),
    };
    return RUN_TESTS(tests);
}
