// test_logbook.c - claims about the logbook: what is kept is what was told, in every form.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE

#include <dirent.h>
#include <sqlite3.h>

#include "records/logbook/transfer.h"
#include "test/days_claims.h"
#include "test/logged_days.h"

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

// As other systems have ended theirs.
TEST_FUNCTION(lines_end_in_any_of_three_ways)
{
    static const char *const ends[] = {"\r\n", "\n", "\r"};
    for (int i = 0; i < 3; i++) {
        char text[200];
        lw_faults faults = {0};
        lw_entries read = {0};
        snprintf(text, sizeof text, "date,pin%s2026-05-17,B%s2026-05-18%s", ends[i], ends[i],
                 ends[i]);
        const lw_source_text source = {"days", text, strlen(text)};
        CHECK(!lw_days_read(&source, TODAY, &read, &faults));
        const lw_fault *last = &faults.list[faults.count - 1];
        CHECK_TEXT(last->sentence, "this line has not as many cells as the header");
        lw_entries_free(&read);
        lw_faults_free(&faults);
    }
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

TEST_FUNCTION(a_logbook_of_version_1_is_read_and_written)
{
    make_version(1, "first.db");
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

static lw_entries read_of(const char *path, int *version)
{
    lw_logbook book;
    lw_entries days = {0};
    if (!lw_logbook_open(&book, path, false)) fail_msg("%s", book.why);
    CHECK(lw_logbook_days(&book, true, &days));
    *version = book.version;
    lw_logbook_close(&book);
    return days;
}

TEST_FUNCTION(what_only_reads_leaves_a_logbook_of_version_1_as_it_is)
{
    int version;
    make_version(1, "read.db");
    for (int again = 0; again < 2; again++) {
        lw_entries days = read_of("read.db", &version);
        assert_int_equal(version, 1);
        CHECK(days.count == 1 && isnan(days.list[0].day.sailed.upwind_speed));
        lw_entries_free(&days);
    }
}

TEST_FUNCTION(a_logbook_of_version_1_is_of_ours_once_it_is_written)
{
    int version;
    lw_entries one = {0};
    make_days(&one, 1);
    make_version(1, "renewed.db");
    add_all("renewed.db", &one);
    lw_entries days = read_of("renewed.db", &version);
    assert_int_equal(version, LW_LOGBOOK_VERSION);
    const lw_entry *twin = twin_of(&one.list[0], &days);
    CHECK(days.count == 2 && twin && lw_days_are_same(twin, &one.list[0]));
    lw_entries_free(&days);
    lw_entries_free(&one);
}

TEST_FUNCTION(a_logbook_of_version_2_has_what_a_track_told)
{
    int version;
    make_version(2, "second.db");
    lw_entries days = read_of("second.db", &version);
    const lw_sailed *sailed = &days.list[0].day.sailed;
    CHECK(version == 2 && days.count == 1 && isnan(sailed->reach_time));
    CHECK_NEAR(sailed->upwind_speed, 11.2 * LW_KN, 1e-12);
    CHECK_NEAR(sailed->downwind_time, 1080.0, 1e-9);
    CHECK_NEAR(sailed->flying, 0.87, 1e-12);
    lw_entries_free(&days);
}

static size_t removed_of(const char *path, const char *id)
{
    lw_logbook book;
    lw_entries removed = {0};
    CHECK(lw_logbook_open(&book, path, false) && lw_logbook_removed(&book, &removed));
    const size_t count = removed.count;
    if (id) CHECK(lw_entries_find(&removed, id) != NULL);
    lw_entries_free(&removed);
    lw_logbook_close(&book);
    return count;
}

TEST_FUNCTION(a_logbook_of_version_3_tells_which_days_were_taken_out)
{
    make_version(3, "third.db");
    assert_int_equal(removed_of("third.db", "00000000000000b2"), 1);
    make_version(2, "untold.db");
    assert_int_equal(removed_of("untold.db", NULL), 0);
}

static bool change(const char *path, const char *out, const lw_entry *in)
{
    lw_logbook book;
    CHECK(lw_logbook_open(&book, path, true));
    const bool is_done = out ? lw_logbook_remove(&book, out) : lw_logbook_replace(&book, in);
    lw_logbook_close(&book);
    return is_done;
}

TEST_FUNCTION(a_day_taken_out_is_told_until_it_is_put_in_again_and_a_change_takes_none_out)
{
    lw_entries one = {0};
    make_days(&one, 1);
    make_version(2, "out.db");
    add_all("out.db", &one);
    CHECK(change("out.db", NULL, &one.list[0]) && removed_of("out.db", NULL) == 0);
    CHECK(change("out.db", "ffffffffffffffff", NULL) && removed_of("out.db", NULL) == 0);
    CHECK(change("out.db", one.list[0].id, NULL));
    assert_int_equal(removed_of("out.db", one.list[0].id), 1);
    add_all("out.db", &one);
    assert_int_equal(removed_of("out.db", NULL), 0);
    lw_entries_free(&one);
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
    make_version(LW_LOGBOOK_VERSION, "as_kept.db");
    CHECK_TEXT(schema_of("new.db"), schema_of("as_kept.db"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_day_comes_out_of_the_logbook_as_it_went_in),
        TEST(csv_and_json_bring_every_column_back),
        TEST(blank_lines_and_a_mark_of_byte_order_do_not_count),
        TEST(lines_end_in_any_of_three_ways),
        TEST(no_days_are_a_csv_and_a_json_too),
        TEST(what_fuzzing_has_kept_is_read_or_refused),
        TEST(every_quantity_of_a_logged_day_is_a_column),
        TEST(a_record_written_bare_reads_back_to_the_bit),
        TEST(a_change_replaces_a_day_and_removal_takes_its_records_too),
        TEST(an_id_is_taken_once),
        TEST(a_logbook_of_version_1_is_read_and_written),
        TEST(what_only_reads_leaves_a_logbook_of_version_1_as_it_is),
        TEST(a_logbook_of_version_1_is_of_ours_once_it_is_written),
        TEST(a_logbook_of_version_2_has_what_a_track_told),
        TEST(a_logbook_of_version_3_tells_which_days_were_taken_out),
        TEST(a_day_taken_out_is_told_until_it_is_put_in_again_and_a_change_takes_none_out),
        TEST(a_new_logbook_has_the_tables_of_its_version),
    };
    return cmocka_run_group_tests(tests, enter_folder, leave_folder);
}
