// test_desk_days.c - claims about logged days at the desk: who may read and change them, and how.
// SPDX-License-Identifier: MIT

#define _GNU_SOURCE

#include "desk/days.h"
#include "records/logbook/transfer.h"
#include "test/logged_days.h"
#include "test/visit.h"

static running_desk desk;
static char origin[60];

static int open_desk(void **state)
{
    if (enter_folder(state) != 0) return -1;
    desk = start_desk_with("desk.db", LW_DESK_VISITORS, LW_DESK_SECONDS);
    snprintf(origin, sizeof origin, "Origin: http://127.0.0.1:%u\r\n", (unsigned)desk.port);
    return desk.port ? 0 : -1;
}

static int close_desk(void **state)
{
    return ends_well(desk.process, SIGTERM) ? leave_folder(state) : -1;
}

// Some days as a file; to be freed.
static char *file_of(size_t count)
{
    static char *text;
    static size_t length;
    lw_entries days = {0};
    make_days(&days, count);
    FILE *out = open_memstream(&text, &length);
    CHECK(out && lw_days_write_json(&days, out) && fclose(out) == 0);
    lw_entries_free(&days);
    return text;
}

// The same day twice, the first as the page had it, with other notes then.
static char *file_of_change(const char *was, const char *now)
{
    static char *text;
    static size_t length;
    lw_entries days = {0};
    make_days(&days, 1);
    lw_entries twice = {0};
    FILE *out = open_memstream(&text, &length);
    for (int i = 0; i < 2; i++) {
        const char *notes = i ? now : was;
        if (!notes) continue;
        lw_entry *entry = lw_entries_add(&twice);
        *entry = days.list[0];
        LW_FIT(entry->id, "00000000000000c3");
        entry->notes = strdup(notes);
        entry->boat = strdup(days.list[0].boat), entry->sailor = strdup(days.list[0].sailor);
    }
    CHECK(out && lw_days_write_json(&twice, out) && fclose(out) == 0);
    lw_entries_free(&twice);
    lw_entries_free(&days);
    return text;
}

// The status of POST /days with header lines and a body.
static int status_of_post(const char *headers, const char *body)
{
    char *request = NULL;
    CHECK(asprintf(&request,
                   "POST /days HTTP/1.1\r\nHost: 127.0.0.1:%u\r\n%sContent-Length: %zu\r\n\r\n%s",
                   (unsigned)desk.port, headers, strlen(body), body) > 0);
    const int status = status_of(desk.port, request);
    free(request);
    return status;
}

static size_t day_count(void)
{
    if (access("desk.db", F_OK) != 0) return 0;
    lw_entries days = days_of("desk.db");
    const size_t count = days.count;
    lw_entries_free(&days);
    return count;
}

TEST_FUNCTION(a_logbook_that_is_not_there_has_no_days_and_is_not_made_by_reading)
{
    CHECK(status_at(desk.port, "GET", "/days", "") == 200);
    CHECK(heard_has("application/json") && heard_has("\"days\": []"));
    CHECK(access("desk.db", F_OK) != 0);
}

TEST_FUNCTION(who_names_no_origin_or_another_changes_nothing)
{
    static const char *const headers[] = {"", "Origin: http://evil.example\r\n", "Origin: null\r\n",
                                          "Origin: http://127.0.0.1:1\r\n",
                                          "Host: evil.example\r\n"};
    char *days = file_of(1);
    for (size_t i = 0; i < sizeof headers / sizeof headers[0]; i++) {
        const int status = status_of_post(headers[i], days);
        CHECK(status == 403 || status == 400);
        CHECK(status_at(desk.port, "DELETE", "/days/0123456789abcdef", headers[i]) == status);
    }
    CHECK(status_at(desk.port, "GET", "/days", "Origin: http://evil.example\r\n") == 403);
    CHECK(!heard_has("lullwise_logbook") && access("desk.db", F_OK) != 0);
    free(days);
}

TEST_FUNCTION(what_is_no_day_is_refused_in_words_and_not_kept)
{
    static const char *const bodies[] = {"",
                                         "{",
                                         "{}",
                                         "[]",
                                         "date,pin\r\n2026-05-17,B\r\n",
                                         "{\"lullwise_logbook\": 1, \"days\": [7]}",
                                         "{\"lullwise_logbook\": 1000, \"days\": []}",
                                         "{\"lullwise_logbook\": 1, \"days\": [{\"pin\": \"B\"}]}"};
    for (size_t i = 0; i < sizeof bodies / sizeof bodies[0]; i++) {
        CHECK(status_of_post(origin, bodies[i]) == 400);
        CHECK(heard_body()[0] != '\0' && heard_has("text/plain"));
    }
    CHECK(access("desk.db", F_OK) != 0);
}

TEST_FUNCTION(days_are_kept_once_and_taken_out)
{
    char *days = file_of(3), target[40];
    CHECK(status_of_post(origin, days) == 200 && status_of_post(origin, days) == 200);
    assert_int_equal(day_count(), 3);
    CHECK(status_at(desk.port, "GET", "/days", "") == 200);
    assert_int_equal(strlen(heard_body()), strlen(days));  // in the order of their dates
    snprintf(target, sizeof target, "/days/%.16s", strstr(days, "\"id\": \"") + 7);
    CHECK(status_at(desk.port, "DELETE", target, origin) == 200);
    assert_int_equal(day_count(), 2);
    CHECK(status_at(desk.port, "DELETE", target, origin) == 200);
    assert_int_equal(day_count(), 2);
    free(days);
}

static int status_of_change(const char *was, const char *now)
{
    char *body = file_of_change(was, now);
    const int status = status_of_post(origin, body);
    free(body);
    return status;
}

TEST_FUNCTION(a_day_that_the_logbook_has_otherwise_than_the_page_knew_is_not_changed)
{
    const size_t before = day_count();
    CHECK(status_of_change(NULL, "first") == 200 && status_of_change(NULL, "first") == 200);
    assert_int_equal(day_count(), before + 1);
    assert_int_equal(status_of_change(NULL, "other"), 409);
    assert_int_equal(status_of_change("never so", "other"), 409);
    CHECK(status_of_change("first", "second") == 200 && status_of_change("first", "second") == 200);
    assert_int_equal(status_of_change("first", "third"), 409);
    CHECK(status_at(desk.port, "GET", "/days", "") == 200 && heard_has("\"second\""));
    CHECK(status_at(desk.port, "DELETE", "/days/00000000000000c3", origin) == 200);
    assert_int_equal(status_of_change("second", "third"), 409);
    CHECK(status_at(desk.port, "GET", "/days/removed", "") == 200 && heard_has("00000000000000c3"));
    CHECK(status_at(desk.port, "DELETE", "/days/removed", origin) == 405);
    CHECK(status_at(desk.port, "GET", "/days/removed", "Origin: http://evil.example\r\n") == 403);
}

TEST_FUNCTION(what_is_too_long_is_refused_and_survived)
{
    const size_t before = day_count(), length = LW_DAYS_MOST + 1;
    char *body = malloc(length + 1);
    CHECK(body != NULL);
    memset(body, ' ', length);
    body[length] = '\0';
    const int status = status_of_post(origin, body);
    free(body);
    CHECK(status != 200 && is_alive(desk.port));
    assert_int_equal(day_count(), before);
}

TEST_FUNCTION(other_methods_and_other_addresses_are_refused)
{
    CHECK(status_at(desk.port, "PUT", "/days", origin) == 405);
    CHECK(status_at(desk.port, "DELETE", "/days", origin) == 405);
    CHECK(status_at(desk.port, "GET", "/days/0123456789abcdef", origin) == 405);
    static const char *const targets[] = {"/days/",
                                          "/days/../etc/passwd",
                                          "/days/0123456789ABCDEF",
                                          "/days/0123456789abcde",
                                          "/days?all",
                                          "/DAYS"};
    for (size_t i = 0; i < sizeof targets / sizeof targets[0]; i++)
        CHECK(status_at(desk.port, "GET", targets[i], origin) == 404);
}

TEST_FUNCTION(a_logbook_that_is_none_is_told_of_and_left_as_it_is)
{
    static const char text[] = "this is no logbook";
    const running_desk other = start_desk_with("none.db", 10, 20.0);
    FILE *file = fopen("none.db", "w");
    CHECK(other.port && file && fputs(text, file) > 0 && fclose(file) == 0);
    CHECK(status_at(other.port, "GET", "/days", "") == 500 && heard_has("no logbook"));
    char left[40] = "";
    file = fopen("none.db", "r");
    CHECK(file && fgets(left, sizeof left, file) && fclose(file) == 0);
    CHECK_TEXT(left, text);
    CHECK(ends_well(other.process, SIGTERM));
}

TEST_FUNCTION(a_desk_without_a_logbook_has_no_days)
{
    const running_desk other = start_desk(10, 20.0);
    CHECK(status_at(other.port, "GET", "/days", "") == 404);
    CHECK(status_at(other.port, "POST", "/days", "Content-Length: 0\r\n") == 405);
    CHECK(ends_well(other.process, SIGTERM));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_logbook_that_is_not_there_has_no_days_and_is_not_made_by_reading),
        TEST(who_names_no_origin_or_another_changes_nothing),
        TEST(what_is_no_day_is_refused_in_words_and_not_kept),
        TEST(days_are_kept_once_and_taken_out),
        TEST(a_day_that_the_logbook_has_otherwise_than_the_page_knew_is_not_changed),
        TEST(what_is_too_long_is_refused_and_survived),
        TEST(other_methods_and_other_addresses_are_refused),
        TEST(a_logbook_that_is_none_is_told_of_and_left_as_it_is),
        TEST(a_desk_without_a_logbook_has_no_days),
    };
    return cmocka_run_group_tests(tests, open_desk, close_desk);
}
