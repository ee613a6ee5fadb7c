// test_logbook_refused.c - claims about files that are no logbook, or none that can be trusted.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE

#include "test/logged_days.h"

static size_t bytes_of(const char *path, char *bytes, size_t room)
{
    FILE *file = fopen(path, "rb");
    CHECK(file != NULL);
    const size_t length = fread(bytes, 1, room, file);
    fclose(file);
    return length;
}

static void check_refused(const char *path, const char *word)
{
    static char before[1 << 18], after[1 << 18];
    lw_logbook book;
    const size_t length = bytes_of(path, before, sizeof before);
    for (int writes = 0; writes < 2; writes++) {
        CHECK(!lw_logbook_open(&book, path, writes));
        CHECK(book.db == NULL);
        if (!strstr(book.why, word)) fail_msg("%s: no \"%s\" in: %s", path, word, book.why);
        assert_int_equal(bytes_of(path, after, sizeof after), length);
        CHECK(memcmp(before, after, length) == 0);
    }
}

static void do_sql(const char *path, const char *sql)
{
    sqlite3 *db;
    CHECK(sqlite3_open(path, &db) == SQLITE_OK);
    if (sqlite3_exec(db, sql, NULL, NULL, NULL)) fail_msg("%s", sqlite3_errmsg(db));
    sqlite3_close(db);
}

TEST_FUNCTION(a_newer_version_is_refused_in_words)
{
    make_version(1, "newer.db");
    do_sql("newer.db", "PRAGMA user_version = 4");
    check_refused("newer.db", "version 4");
}

TEST_FUNCTION(what_is_no_logbook_is_refused)
{
    static char zeros[4096];
    write_bytes("text", "name: Blue boat\n", 16);
    check_refused("text", "no logbook");
    write_bytes("zeros", zeros, sizeof zeros);
    check_refused("zeros", "no logbook");
    do_sql("other.db", "CREATE TABLE day (id); INSERT INTO day VALUES (1)");
    check_refused("other.db", "no logbook");
    do_sql("wal.db", "PRAGMA journal_mode = WAL; CREATE TABLE day (id)");
    check_refused("wal.db", "no logbook");
}

TEST_FUNCTION(folders_pipes_and_what_is_missing_are_refused)
{
    lw_logbook book;
    CHECK(mkdir("folder", 0777) == 0 && mkfifo("pipe", 0666) == 0);
    CHECK(!lw_logbook_open(&book, "folder", true) && strstr(book.why, "no plain file"));
    CHECK(!lw_logbook_open(&book, "pipe", false) && strstr(book.why, "no plain file"));
    CHECK(!lw_logbook_open(&book, "missing.db", false) && strstr(book.why, "log add"));
    CHECK(access("missing.db", F_OK) != 0);
    CHECK(!lw_logbook_open(&book, "text.db/book.db", false));
    write_bytes("text.db", "x", 1);
    CHECK(!lw_logbook_open(&book, "text.db/book.db", true));
    write_bytes("empty.db", "", 0);
    CHECK(!lw_logbook_open(&book, "empty.db", false) && strstr(book.why, "empty"));
}

// A file of 1 GB that takes no room: by itself, and behind the head of a logbook.
TEST_FUNCTION(sparse_files_of_a_gigabyte_are_refused_at_once)
{
    lw_logbook book;
    lw_entries days = {0};
    write_bytes("sparse", "", 0);
    CHECK(truncate("sparse", 1 << 30) == 0);
    CHECK(!lw_logbook_open(&book, "sparse", true) && strstr(book.why, "no logbook"));
    make_version(1, "long.db");
    CHECK(truncate("long.db", 1 << 30) == 0);
    const bool is_read =
        lw_logbook_open(&book, "long.db", false) && lw_logbook_days(&book, true, &days);
    CHECK(!is_read || days.count == 1);  // what stands behind its pages is none of it
    lw_logbook_close(&book);
    lw_entries_free(&days);
}

// Reads what can be read; no crash, and a sentence when there is something wrong.
static void check_survives(const char *path)
{
    lw_logbook book;
    lw_entries days = {0};
    if (!lw_logbook_open(&book, path, false)) {
        CHECK(book.why[0] && book.db == NULL);
        return;
    }
    if (!lw_logbook_days(&book, true, &days)) CHECK(book.why[0]);
    lw_logbook_close(&book);
    lw_entries_free(&days);
}

TEST_FUNCTION(a_logbook_cut_anywhere_is_refused_and_stays_as_it_is)
{
    static char whole[1 << 18], after[1 << 18];
    lw_entries days = {0};
    make_days(&days, 40);
    add_all("whole.db", &days);
    const size_t length = bytes_of("whole.db", whole, sizeof whole);
    CHECK(length > 20000 && length < sizeof whole);
    for (size_t cut = 1; cut < length; cut += length / 23) {
        lw_logbook book;
        lw_entries read = {0};
        write_bytes("cut.db", whole, cut);
        const bool is_read =
            lw_logbook_open(&book, "cut.db", false) && lw_logbook_days(&book, true, &read);
        if (is_read) fail_msg("%zu of %zu bytes read as %zu days", cut, length, read.count);
        CHECK(book.why[0]);
        lw_logbook_close(&book);
        lw_entries_free(&read);
        CHECK(bytes_of("cut.db", after, sizeof after) == cut && memcmp(whole, after, cut) == 0);
    }
    lw_entries_free(&days);
}

TEST_FUNCTION(a_logbook_with_bytes_changed_does_no_harm)
{
    static char whole[1 << 18];
    random_stream stream = {11};
    lw_entries days = {0};
    make_days(&days, 20);
    add_all("sound.db", &days);
    const size_t length = bytes_of("sound.db", whole, sizeof whole);
    for (int run = 0; run < 200 * soak_times(); run++) {
        const size_t at = (size_t)random_between(&stream, 0.0, (double)length);
        const char kept = whole[at];
        whole[at] = (char)random_bits(&stream);
        write_bytes("changed.db", whole, length);
        check_survives("changed.db");
        whole[at] = kept;
    }
    lw_entries_free(&days);
}

// Values that only another program can have put there.
TEST_FUNCTION(a_lying_logbook_is_called_damaged)
{
    static const char *const lies[] = {
        "UPDATE day SET wind_mean = 1e9", "UPDATE day SET signs = 'bow-up nonsense'",
        "UPDATE day SET verdict = 'great'", "UPDATE day SET id = '../../x'",
        "UPDATE day SET notes = char(27) || '[2J'"};
    for (size_t i = 0; i < sizeof lies / sizeof lies[0]; i++) {
        lw_logbook book;
        lw_entries days = {0};
        unlink("lie.db");
        make_version(1, "lie.db");
        do_sql("lie.db", lies[i]);
        CHECK(lw_logbook_open(&book, "lie.db", false));
        CHECK(!lw_logbook_days(&book, false, &days) && strstr(book.why, "damaged"));
        lw_logbook_close(&book);
        lw_entries_free(&days);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_newer_version_is_refused_in_words),
        TEST(what_is_no_logbook_is_refused),
        TEST(folders_pipes_and_what_is_missing_are_refused),
        TEST(sparse_files_of_a_gigabyte_are_refused_at_once),
        TEST(a_logbook_cut_anywhere_is_refused_and_stays_as_it_is),
        TEST(a_logbook_with_bytes_changed_does_no_harm),
        TEST(a_lying_logbook_is_called_damaged),
    };
    return cmocka_run_group_tests(tests, enter_folder, leave_folder);
}
