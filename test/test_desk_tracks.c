// test_desk_tracks.c - claims about sailed tracks at the desk: who has one read, and what comes.
// SPDX-License-Identifier: MIT

#define _GNU_SOURCE

#include "desk/tracks.h"

#include "test/check.h"
#include "test/visit.h"

static running_desk desk;
static char origin[60];

static int open_desk(void **state)
{
    (void)state;
    desk = start_desk(LW_DESK_VISITORS, LW_DESK_SECONDS);
    snprintf(origin, sizeof origin, "Origin: http://127.0.0.1:%u\r\n", (unsigned)desk.port);
    return desk.port ? 0 : -1;
}

static int close_desk(void **state)
{
    (void)state;
    return ends_well(desk.process, SIGTERM) ? 0 : -1;
}

static int status_of_body(const char *query, const char *headers, const char *body)
{
    char *request = NULL;
    CHECK(
        asprintf(&request,
                 "POST /track?%s HTTP/1.1\r\nHost: 127.0.0.1:%u\r\n%sContent-Length: %zu\r\n\r\n%s",
                 query, (unsigned)desk.port, headers, strlen(body), body) > 0);
    const int status = status_of(desk.port, request);
    free(request);
    return status;
}

// One track of that name, behind other words of the query.
static int status_of_track(const char *words, const char *name, const char *headers,
                           const char *body)
{
    char query[300];
    snprintf(query, sizeof query, "%strack=%zu+%s", words, strlen(body), name);
    return status_of_body(query, headers, body);
}

// Northward for ten minutes at 12 kn: 6.173 m/s x 1 s / 111.32 km = 5.5456e-5 deg a second.
static const char *northward(void)
{
    static char text[40000];
    size_t length = (size_t)sprintf(text, "time [s],latitude,longitude,speed [kn]\n");
    for (int i = 0; i <= 600; i++)
        length += (size_t)sprintf(text + length, "%d,%.8f,10,12\n", i, 54.0 + 5.5456e-5 * i);
    return text;
}

static bool heard_holds(const char *bytes, size_t length)
{
    return memmem(heard, heard_length, bytes, length) != NULL;
}
#define HEARD(text) heard_holds(text, sizeof(text) - 1)

TEST_FUNCTION(a_track_is_told_drawn_and_read_into_columns_of_a_day)
{
    assert_int_equal(status_of_track("unit=m/s&", "my%20way.csv", origin, northward()), 200);
    CHECK(HEARD("application/octet-stream"));
    CHECK(HEARD("my way.csv: "));
    CHECK(
        HEARD("Nflying_share\0\1flying, of the time under way\0"
              "100 %\0"));
    CHECK(HEARD("She flies from 5.1 m/s"));
    CHECK(HEARD("tpicture\0<") && HEARD("</svg>"));
    CHECK(HEARD("tsailed.flying\0"
                "100\0") &&
          HEARD("tsailed.take_offs\0"
                "0\0"));
    CHECK(HEARD("tsailed.upwind_speed\0\0"));  // one tack alone does not tell the wind
    CHECK(HEARD(" my way.csv\0"));
}

TEST_FUNCTION(another_byte_is_another_hash)
{
    CHECK(status_of_track("", "a.csv", origin, northward()) == 200);
    const char *hash = memmem(heard, heard_length, "ttracks\0", 8);
    CHECK(hash != NULL);
    char first[17], second[17];
    memcpy(first, hash + 8, 16), first[16] = '\0';
    char changed[40002];
    snprintf(changed, sizeof changed, "%s\n", northward());
    CHECK(status_of_track("", "a.csv", origin, changed) == 200);
    hash = memmem(heard, heard_length, "ttracks\0", 8);
    CHECK(hash != NULL);
    memcpy(second, hash + 8, 16), second[16] = '\0';
    CHECK(strspn(first, "0123456789abcdef") == 16 && strcmp(first, second) != 0);
}

TEST_FUNCTION(what_is_no_track_is_refused_in_words)
{
    CHECK(status_of_track("", "a.csv", origin, "nothing of the kind") == 400);
    CHECK(heard_has("this is no track that is known"));
    CHECK(status_of_track("", "a.csv", origin, "") == 400 && heard_has("the file is empty"));
    CHECK(status_of_track("", "", origin, northward()) == 400);
    CHECK(is_alive(desk.port));
}

TEST_FUNCTION(a_query_that_does_not_tell_the_body_is_refused)
{
    static const char *const queries[] = {
        "",
        "track=5",
        "track=4+a",
        "track=6+a",
        "track=-5+a",
        "track=x+a",
        "pin=B",
        "unit=kg&track=5+a",
        "nonsense=1&track=5+a",
        "boat=9&track=5+a",
        "boat=99999999999999999999&track=5+a",
    };
    for (size_t i = 0; i < sizeof queries / sizeof queries[0]; i++) {
        CHECK(status_of_body(queries[i], origin, "12345") == 400);
        CHECK(heard_has("the query does not tell what was sent"));
    }
}

TEST_FUNCTION(the_wind_that_is_given_is_taken_and_one_that_is_none_refused)
{
    CHECK(status_of_track("wind-from=45+deg&", "a.csv", origin, northward()) == 200);
    CHECK(HEARD("Wind from 45°, as given.") && HEARD("40-50°"));
    CHECK(status_of_track("wind-from=north&", "a.csv", origin, northward()) == 400);
    CHECK(!heard_has("--"));
}

TEST_FUNCTION(several_tracks_are_one_and_all_are_named)
{
    char query[80], *both = NULL;
    const size_t length = strlen(northward());
    snprintf(query, sizeof query, "track=%zu+a.csv&track=%zu+b.csv", length, length);
    CHECK(asprintf(&both, "%s%s", northward(), northward()) > 0);
    CHECK(status_of_body(query, origin, both) == 200);
    CHECK(HEARD(" and 1 more") && HEARD(" a.csv") && HEARD(" b.csv"));
    free(both);
}

static char *file_of(const char *name)
{
    char path[200], *text = calloc(1, 20000);
    snprintf(path, sizeof path, LW_DEMO_DIR "/%s.yaml", name);
    FILE *file = fopen(path, "r");
    CHECK(file && text && fread(text, 1, 19999, file) > 0 && fclose(file) == 0);
    return text;
}

TEST_FUNCTION(with_boat_sailor_and_day_the_model_stands_beside)
{
    char query[200], *body = NULL, *boat = file_of("heron"), *sailor = file_of("light");
    char *day = file_of("breeze");
    snprintf(query, sizeof query, "wind-from=45+deg&pin=B&boat=%zu&sailor=%zu&day=%zu&track=%zu+a",
             strlen(boat), strlen(sailor), strlen(day), strlen(northward()));
    CHECK(asprintf(&body, "%s%s%s%s", boat, sailor, day, northward()) > 0);
    CHECK(status_of_body(query, origin, body) == 200);
    CHECK(HEARD("where the model lifts her off") && HEARD("with pin B in the day's mean wind"));
    snprintf(query, sizeof query, "boat=%zu&track=%zu+a", strlen(boat),
             strlen(body) - strlen(boat));
    CHECK(status_of_body(query, origin, body) == 400 && heard_has("go together"));
    free(body), free(boat), free(sailor), free(day);
}

TEST_FUNCTION(who_names_no_origin_or_another_has_nothing_read)
{
    CHECK(status_of_track("", "a.csv", "", northward()) == 403);
    CHECK(status_of_track("", "a.csv", "Origin: http://evil.example\r\n", northward()) == 403);
    CHECK(status_at(desk.port, "GET", "/track?track=0+a", "") == 405);
    CHECK(status_at(desk.port, "DELETE", "/track?track=0+a", origin) == 405);
}

TEST_FUNCTION(a_track_that_is_too_long_is_refused_and_survived)
{
    char header[200];
    snprintf(header, sizeof header, "%sContent-Length: %d\r\n", origin, LW_TRACK_BYTES_MOST + 1);
    CHECK(status_at(desk.port, "POST", "/track?track=0+a", header) == 413);
    CHECK(is_alive(desk.port));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_track_is_told_drawn_and_read_into_columns_of_a_day),
        TEST(another_byte_is_another_hash),
        TEST(what_is_no_track_is_refused_in_words),
        TEST(a_query_that_does_not_tell_the_body_is_refused),
        TEST(the_wind_that_is_given_is_taken_and_one_that_is_none_refused),
        TEST(several_tracks_are_one_and_all_are_named),
        TEST(with_boat_sailor_and_day_the_model_stands_beside),
        TEST(who_names_no_origin_or_another_has_nothing_read),
        TEST(a_track_that_is_too_long_is_refused_and_survived),
    };
    return cmocka_run_group_tests(tests, open_desk, close_desk);
}
