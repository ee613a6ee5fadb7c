// test_logbook.c - claims about the logbook: what is kept is what was told, whatever happens.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE

#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <sqlite3.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <time.h>

#include "records/logbook/transfer.h"
#include "test/days_claims.h"
#include "test/logged_days.h"

#define BOOK "book.db"

static void add_all(const char *path, const lw_entries *days)
{
    lw_logbook book;
    CHECK(lw_logbook_open(&book, path, true) && lw_logbook_begin(&book));
    for (size_t i = 0; i < days->count; i++) CHECK(lw_logbook_add(&book, &days->list[i]));
    CHECK(lw_logbook_end(&book, true));
    lw_logbook_close(&book);
}

static const lw_entry *twin_of(const lw_entry *entry, const lw_entries *days)
{
    for (size_t i = 0; i < days->count; i++) {
        if (strcmp(days->list[i].id, entry->id) == 0) return &days->list[i];
    }
    return NULL;
}

static void check_same(const lw_entries *got, const lw_entries *want)
{
    assert_int_equal(got->count, want->count);
    for (size_t i = 0; i < want->count; i++) {
        const lw_entry *entry = &want->list[i], *twin = twin_of(entry, got);
        CHECK(twin && lw_days_are_same(twin, entry));
        CHECK(twin->boat_hash == entry->boat_hash && twin->sailor_hash == entry->sailor_hash);
    }
}

// --- there and back

TEST_FUNCTION(a_day_comes_out_of_the_logbook_as_it_went_in)
{
    lw_entries days = {0};
    make_days(&days, 60);
    add_all("round.db", &days);
    lw_entries read = days_of("round.db");
    check_same(&read, &days);
    lw_entries_free(&read);
    lw_entries_free(&days);
}

// The same double in every column, so that a second time nothing changes either.
static void check_there_and_back(const lw_entries *days, bool (*write)(const lw_entries *, FILE *))
{
    char *text = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&text, &length);
    CHECK(write(days, out) && fclose(out) == 0);
    lw_faults faults = {0};
    lw_entries read = {0};
    const lw_source_text source = {"days", text, length};
    if (!lw_days_read(&source, TODAY, &read, &faults))
        fail_msg("line %zu: %s", faults.list[0].line, faults.list[0].sentence);
    check_same(&read, days);
    lw_entries_free(&read);
    free(text);
}

TEST_FUNCTION(csv_and_json_bring_every_column_back)
{
    lw_entries days = {0};
    make_days(&days, 60);
    check_there_and_back(&days, lw_days_write_csv);
    check_there_and_back(&days, lw_days_write_json);
    lw_entries_free(&days);
}

TEST_FUNCTION(blank_lines_and_a_mark_of_byte_order_do_not_count)
{
    char *text = NULL;
    size_t length = 0;
    lw_faults faults = {0};
    lw_entries days = {0}, read = {0};
    make_days(&days, 2);
    FILE *out = open_memstream(&text, &length);
    fputs("\xEF\xBB\xBF", out);
    CHECK(lw_days_write_csv(&days, out));
    fputs("\r\n\n", out);
    CHECK(fclose(out) == 0);
    const lw_source_text source = {"days", text, length};
    CHECK(lw_days_read(&source, TODAY, &read, &faults));
    check_same(&read, &days);
    lw_entries_free(&read);
    lw_entries_free(&days);
    free(text);
}

TEST_FUNCTION(no_days_are_a_csv_and_a_json_too)
{
    const lw_entries none = {0};
    check_there_and_back(&none, lw_days_write_csv);
    check_there_and_back(&none, lw_days_write_json);
}

// What fuzzing begins with, and what it has found.
static size_t claim_of_folder(const char *path)
{
    static char bytes[1 << 16];
    size_t count = 0;
    DIR *seeds = opendir(path);
    CHECK(seeds != NULL);
    for (const struct dirent *seed; (seed = readdir(seeds));) {
        char file[600];
        if (seed->d_name[0] == '.') continue;
        snprintf(file, sizeof file, "%s/%s", path, seed->d_name);
        FILE *from = fopen(file, "rb");
        CHECK(from != NULL);
        claim_of_days(bytes, fread(bytes, 1, sizeof bytes, from));
        fclose(from);
        count++;
    }
    closedir(seeds);
    return count;
}

TEST_FUNCTION(what_fuzzing_has_kept_is_read_or_refused)
{
    CHECK(claim_of_folder(LW_TEST_DATA "/../seeds/fuzz_days_csv") >= 3);
    CHECK(claim_of_folder(LW_TEST_DATA "/../seeds/fuzz_days_json") >= 3);
}

TEST_FUNCTION(every_quantity_of_a_logged_day_is_a_column)
{
    const lw_columns columns = lw_columns_of();
    for (size_t i = 0; i < lw_logged_record.section_count; i++) {
        const lw_table *table = lw_logged_record.sections[i].table;
        for (size_t k = 0; k < table->count; k++) {
            char key[100];
            snprintf(key, sizeof key, "%s.%s", table->key, table->rows[k].key);
            const lw_column *column = lw_columns_named(&columns, key);
            CHECK(column && column->row == &table->rows[k]);
        }
    }
}

TEST_FUNCTION(a_record_written_bare_reads_back_to_the_bit)
{
    random_stream stream = {7};
    lw_entry entry = made_day(&stream);
    const uint64_t boat = entry.boat_hash, sailor = entry.sailor_hash;
    const lw_entry_source source = {.file = "again", .today = TODAY};
    lw_faults faults = {0};
    CHECK(lw_entry_settle(&entry, &source, &faults));
    CHECK(entry.boat_hash == boat && entry.sailor_hash == sailor);
    CHECK(strstr(entry.boat, "root_chord: 10.4 cm") != NULL);  // 0.104 m is another double
    lw_entry_free(&entry);
}

TEST_FUNCTION(a_change_replaces_a_day_and_removal_takes_its_records_too)
{
    lw_entries days = {0};
    make_days(&days, 3);
    add_all("change.db", &days);
    lw_logbook book;
    CHECK(lw_logbook_open(&book, "change.db", true));
    days.list[1].day.outing.swims = 12.0;
    CHECK(lw_logbook_replace(&book, &days.list[1]));
    lw_logbook_close(&book);
    lw_entries read = days_of("change.db");
    check_same(&read, &days);
    lw_entries_free(&read);

    CHECK(lw_logbook_open(&book, "change.db", true));
    for (size_t i = 0; i < days.count; i++) CHECK(lw_logbook_remove(&book, days.list[i].id));
    sqlite3_stmt *count;
    CHECK(sqlite3_prepare_v2(book.db,
                             "SELECT (SELECT count(*) FROM record) + (SELECT count(*) FROM "
                             "track)",
                             -1, &count, NULL) == SQLITE_OK);
    CHECK(sqlite3_step(count) == SQLITE_ROW && sqlite3_column_int(count, 0) == 0);
    sqlite3_finalize(count);
    lw_logbook_close(&book);
    lw_entries_free(&days);
}

TEST_FUNCTION(an_id_is_taken_once)
{
    lw_entries days = {0};
    make_days(&days, 1);
    add_all("once.db", &days);
    lw_logbook book;
    CHECK(lw_logbook_open(&book, "once.db", true) && !lw_logbook_add(&book, &days.list[0]));
    CHECK(strstr(book.why, "there already"));
    lw_logbook_close(&book);
    lw_entries_free(&days);
}

// --- versions

// A logbook as the first version made it, written once and left as it was.
static void make_version_1(const char *path)
{
    char sql[20000];
    FILE *file = fopen(LW_TEST_DATA "/../logbook/version_1.sql", "r");
    CHECK(file != NULL);
    sql[fread(sql, 1, sizeof sql - 1, file)] = '\0';
    fclose(file);
    sqlite3 *db;
    CHECK(sqlite3_open(path, &db) == SQLITE_OK);
    if (sqlite3_exec(db, sql, NULL, NULL, NULL)) fail_msg("%s", sqlite3_errmsg(db));
    sqlite3_close(db);
}

TEST_FUNCTION(a_logbook_of_version_1_is_read_and_written)
{
    make_version_1("first.db");
    lw_entries days = {0};
    make_days(&days, 2);
    add_all("first.db", &days);
    lw_entries read = days_of("first.db");
    assert_int_equal(read.count, 3);
    const lw_entry *old = NULL;
    for (size_t i = 0; i < read.count; i++) {
        if (strcmp(read.list[i].id, "00000000000000a1") == 0) old = &read.list[i];
    }
    CHECK(old && strcmp(old->day.waters, "Reed Lake (invented)") == 0);
    CHECK_NEAR(old->day.wind.mean, 12.5 * LW_KN, 1e-12);
    CHECK(isnan(old->day.used.reach) && old->day.outing.swims == 2.0);
    CHECK(old->day.signs == (LW_SIGN_BIT(LW_SIGN_BOW_UP) | LW_SIGN_BIT(LW_SIGN_HOPS)));
    CHECK(old->track_count == 1 && old->tracks[0].hash == UINT64_C(0xa7dbb1f818011560));
    lw_entries_free(&read);
    lw_entries_free(&days);
}

static char *schema_of(const char *path)
{
    static char text[2][20000];
    static int turn;
    char *to = text[turn++ % 2];
    sqlite3 *db;
    sqlite3_stmt *row;
    to[0] = '\0';
    CHECK(sqlite3_open(path, &db) == SQLITE_OK);
    CHECK(sqlite3_prepare_v2(db, "SELECT sql FROM sqlite_schema WHERE sql NOT NULL ORDER BY name",
                             -1, &row, NULL) == SQLITE_OK);
    while (sqlite3_step(row) == SQLITE_ROW)
        strncat(to, (const char *)sqlite3_column_text(row, 0), sizeof text[0] - strlen(to) - 1);
    sqlite3_finalize(row);
    sqlite3_close(db);
    return to;
}

// A table that grows asks for another version, and for a way there from this one.
TEST_FUNCTION(a_new_logbook_has_the_tables_of_its_version)
{
    const lw_entries none = {0};
    add_all("new.db", &none);
    make_version_1("as_first.db");
    CHECK_TEXT(schema_of("new.db"), schema_of("as_first.db"));
}

// --- what is refused, with nothing written

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

static void write_bytes(const char *path, const char *bytes, size_t length)
{
    FILE *file = fopen(path, "wb");
    CHECK(file && fwrite(bytes, 1, length, file) == length && fclose(file) == 0);
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
    make_version_1("newer.db");
    do_sql("newer.db", "PRAGMA user_version = 2");
    check_refused("newer.db", "version 2");
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
    make_version_1("long.db");
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
        make_version_1("lie.db");
        do_sql("lie.db", lies[i]);
        CHECK(lw_logbook_open(&book, "lie.db", false));
        CHECK(!lw_logbook_days(&book, false, &days) && strstr(book.why, "damaged"));
        lw_logbook_close(&book);
        lw_entries_free(&days);
    }
}

// --- hard times: what was confirmed is there

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
        TEST(a_day_comes_out_of_the_logbook_as_it_went_in),
        TEST(csv_and_json_bring_every_column_back),
        TEST(blank_lines_and_a_mark_of_byte_order_do_not_count),
        TEST(no_days_are_a_csv_and_a_json_too),
        TEST(what_fuzzing_has_kept_is_read_or_refused),
        TEST(every_quantity_of_a_logged_day_is_a_column),
        TEST(a_record_written_bare_reads_back_to_the_bit),
        TEST(a_change_replaces_a_day_and_removal_takes_its_records_too),
        TEST(an_id_is_taken_once),
        TEST(a_logbook_of_version_1_is_read_and_written),
        TEST(a_new_logbook_has_the_tables_of_its_version),
        TEST(a_newer_version_is_refused_in_words),
        TEST(what_is_no_logbook_is_refused),
        TEST(folders_pipes_and_what_is_missing_are_refused),
        TEST(sparse_files_of_a_gigabyte_are_refused_at_once),
        TEST(a_logbook_cut_anywhere_is_refused_and_stays_as_it_is),
        TEST(a_logbook_with_bytes_changed_does_no_harm),
        TEST(a_lying_logbook_is_called_damaged),
        TEST(days_that_were_confirmed_survive_a_kill_at_any_moment),
        TEST(two_writers_at_once_both_get_their_days_in),
        TEST(a_full_disk_is_told_and_loses_no_day),
        TEST(in_a_read_only_folder_days_are_read_and_none_is_added),
    };
    return cmocka_run_group_tests(tests, enter_folder, leave_folder);
}
