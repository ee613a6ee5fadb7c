// test_logbook_kept.c - claims about hard times: a day that was confirmed is there afterwards.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE

#include <signal.h>
#include <sqlite3.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <time.h>

#include "test/logged_days.h"

// Adds days until it is killed, and tells each that is confirmed.
static void add_for_ever(const char *path, const lw_entry *model, int tell)
{
    lw_entry entry = *model;
    lw_logbook book;
    if (!lw_logbook_open(&book, path, true)) _exit(1);
    while (lw_entry_draw_id(entry.id) && lw_logbook_add(&book, &entry)) {
        if (write(tell, entry.id, LW_ID_LENGTH) != LW_ID_LENGTH) break;
    }
    _exit(1);
}

static void wait_ms(double ms)
{
    const struct timespec time = {.tv_sec = 0, .tv_nsec = (long)(ms * 1e6)};
    nanosleep(&time, NULL);
}

// Up to `most` ids that were told, or all before the end.
static size_t take_told(int from, char told[][LW_ID_LENGTH], size_t most)
{
    size_t count = 0;
    while (count < most && read(from, told[count], LW_ID_LENGTH) == LW_ID_LENGTH) count++;
    return count;
}

static void check_integrity(const char *path)
{
    sqlite3 *db;
    sqlite3_stmt *row;
    CHECK(sqlite3_open(path, &db) == SQLITE_OK);
    CHECK(sqlite3_prepare_v2(db, "PRAGMA integrity_check", -1, &row, NULL) == SQLITE_OK);
    CHECK(sqlite3_step(row) == SQLITE_ROW);
    CHECK_TEXT((const char *)sqlite3_column_text(row, 0), "ok");
    sqlite3_finalize(row);
    sqlite3_close(db);
}

static void check_told(const char *path, char told[][LW_ID_LENGTH], size_t count)
{
    lw_entries days = days_of(path);
    for (size_t i = 0; i < count; i++) {
        lw_entry told_one = {0};
        memcpy(told_one.id, told[i], LW_ID_LENGTH);
        CHECK(twin_of(&told_one, &days) != NULL);
    }
    CHECK(days.count == count || days.count == count + 1);  // one may be in and not yet told
    lw_entries_free(&days);
}

// Kills it some time after it has told so many days: a moment of opening, or of adding.
#define TOLD_MOST 4000
static size_t kill_while_adding(const char *path, const lw_entry *model, size_t days, double ms)
{
    static char told[TOLD_MOST][LW_ID_LENGTH];
    int ends[2], status;
    lw_logbook book;
    CHECK(pipe(ends) == 0);
    const pid_t child = fork();
    if (child == 0) add_for_ever(path, model, ends[1]);
    close(ends[1]);
    size_t count = take_told(ends[0], told, days);
    wait_ms(ms);
    CHECK(kill(child, SIGKILL) == 0 && waitpid(child, &status, 0) == child);
    CHECK(WIFSIGNALED(status) && count == days);
    count += take_told(ends[0], told + count, TOLD_MOST - count);
    close(ends[0]);
    CHECK(lw_logbook_open(&book, path, true));  // as the next `log add` would
    lw_logbook_close(&book);
    check_integrity(path);
    check_told(path, told, count);
    return count;
}

#define KILLS 25
TEST_FUNCTION(days_that_were_confirmed_survive_a_kill_at_any_moment)
{
    random_stream stream = {3};
    lw_entry model = made_day(&stream);
    size_t confirmed = 0;
    for (int run = 0; run < KILLS * soak_times(); run++) {
        char path[40];
        snprintf(path, sizeof path, "killed-%d.db", run);
        const size_t days = (size_t)random_between(&stream, 0.0, 12.0);
        confirmed += kill_while_adding(path, &model, days, random_between(&stream, 0.0, 8.0));
        unlink(path);
    }
    print_message("%zu days confirmed over %d kills\n", confirmed, KILLS * soak_times());
    lw_entry_free(&model);
}

static pid_t add_in_child(const char *path, const lw_entry *model, int count)
{
    const pid_t child = fork();
    if (child != 0) return child;
    lw_entry entry = *model;
    for (int i = 0; i < count; i++) {
        lw_logbook book;
        const bool is_added = lw_entry_draw_id(entry.id) && lw_logbook_open(&book, path, true) &&
                              lw_logbook_add(&book, &entry);
        if (!is_added) _exit(1);
        lw_logbook_close(&book);
    }
    _exit(0);
}

// Both begin with a logbook that is not there yet.
TEST_FUNCTION(two_writers_at_once_both_get_their_days_in)
{
    random_stream stream = {5};
    lw_entry model = made_day(&stream);
    pid_t writers[2];
    int status;
    for (int i = 0; i < 2; i++) writers[i] = add_in_child("shared.db", &model, 40);
    for (int i = 0; i < 2; i++) {
        CHECK(waitpid(writers[i], &status, 0) == writers[i]);
        CHECK(WIFEXITED(status) && WEXITSTATUS(status) == 0);
    }
    lw_entries days = days_of("shared.db");
    assert_int_equal(days.count, 80);
    lw_entries_free(&days);
    check_integrity("shared.db");
    lw_entry_free(&model);
}

// In a child that may write files of 60 kB at most: the disk is full for it.
static void add_until_full(const char *path, const lw_entry *model, int tell)
{
    const struct rlimit limit = {60000, 60000};
    lw_entry entry = *model;
    lw_logbook book;
    signal(SIGXFSZ, SIG_IGN);
    if (setrlimit(RLIMIT_FSIZE, &limit) != 0 || !lw_logbook_open(&book, path, true)) _exit(2);
    while (lw_entry_draw_id(entry.id) && lw_logbook_add(&book, &entry)) {
        if (write(tell, entry.id, LW_ID_LENGTH) != LW_ID_LENGTH) _exit(3);
    }
    _exit(strstr(book.why, "room") ? 0 : 4);
}

TEST_FUNCTION(a_full_disk_is_told_and_loses_no_day)
{
    static char told[TOLD_MOST][LW_ID_LENGTH];
    random_stream stream = {6};
    lw_entry model = made_day(&stream);
    int ends[2], status;
    CHECK(pipe(ends) == 0);
    const pid_t child = fork();
    if (child == 0) add_until_full("full.db", &model, ends[1]);
    close(ends[1]);
    const size_t count = take_told(ends[0], told, TOLD_MOST);
    close(ends[0]);
    CHECK(waitpid(child, &status, 0) == child && WIFEXITED(status));
    assert_int_equal(WEXITSTATUS(status), 0);
    lw_entries days = days_of("full.db");
    CHECK(count > 0 && days.count == count);
    lw_entries_free(&days);
    check_integrity("full.db");
    lw_entry_free(&model);
}

// As somebody who may not write there. 0: as it should be.
static int in_read_only_folder(const lw_entry *model)
{
    lw_logbook book;
    lw_entries days = {0};
    if (geteuid() == 0 && (setgid(65534) != 0 || setuid(65534) != 0)) return 1;
    if (lw_logbook_open(&book, "locked/new.db", true) || !strstr(book.why, "may not be written"))
        return 2;
    if (!lw_logbook_open(&book, "locked/book.db", false)) return 3;
    if (!lw_logbook_days(&book, true, &days) || days.count != 2) return 4;
    lw_logbook_close(&book);
    if (lw_logbook_open(&book, "locked/more.db", false)) return 6;  // days stand beside it
    const bool is_added =
        lw_logbook_open(&book, "locked/book.db", true) && lw_logbook_add(&book, model);
    return is_added || !strstr(book.why, "may not be written") ? 5 : 0;
}

TEST_FUNCTION(in_a_read_only_folder_days_are_read_and_none_is_added)
{
    lw_entries days = {0};
    int status;
    make_days(&days, 2);
    CHECK(mkdir("locked", 0777) == 0);
    add_all("locked/book.db", &days);
    add_all("locked/more.db", &days);
    write_bytes("locked/more.db-wal", "days", 4);
    CHECK(chmod(".", 0755) == 0 && chmod("locked/book.db", 0444) == 0);
    CHECK(chmod("locked", 0555) == 0);
    const pid_t child = fork();
    if (child == 0) _exit(in_read_only_folder(&days.list[0]));
    CHECK(waitpid(child, &status, 0) == child && WIFEXITED(status));
    CHECK(chmod("locked", 0755) == 0);
    assert_int_equal(WEXITSTATUS(status), 0);
    lw_entries_free(&days);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(days_that_were_confirmed_survive_a_kill_at_any_moment),
        TEST(two_writers_at_once_both_get_their_days_in),
        TEST(a_full_disk_is_told_and_loses_no_day),
        TEST(in_a_read_only_folder_days_are_read_and_none_is_added),
    };
    return cmocka_run_group_tests(tests, enter_folder, leave_folder);
}
