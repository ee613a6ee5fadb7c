// test_command_track.c - claims about `lullwise track`: text, JSON, picture, map, CSV, refusals.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <time.h>
#include <unistd.h>

#include "records/track/moment.h"
#include "test/command_answers.h"
#include "test/made_track.h"

static made_track made;
static char folder[] = "/tmp/lullwise-track-XXXXXX";
static char words[1400];

// Writes a made track as GPX, on a piece of sea far from any shore; invented.
static void write_track(const char *name, uint64_t seed, double seconds, double hz)
{
    char path[200], moment[LW_MOMENT_LENGTH];
    lw_fix *fixes;
    made_sail(&made, seed, seconds, true);
    const size_t count = made_look(&made, hz, 0.3 * LW_KN, true, &fixes);
    snprintf(path, sizeof path, "%s/%s", folder, name);
    FILE *out = fopen(path, "w");
    CHECK(out != NULL);
    fputs("<gpx version=\"1.0\" creator=\"made\"><trk><trkseg>\n", out);
    for (size_t i = 0; i < count; i++) {
        lw_moment_text(moment, 1589709600.0 + fixes[i].time);
        fprintf(out,
                "<trkpt lat=\"%.8f\" lon=\"%.8f\"><time>%s</time><course>%.2f</course>"
                "<speed>%.3f</speed></trkpt>\n",
                30.0 + fixes[i].north / 110850.0, -40.0 + fixes[i].east / 96490.0, moment,
                fixes[i].course / LW_DEG, fixes[i].speed);
    }
    fputs("</trkseg></trk></gpx>\n", out);
    fclose(out);
    free(fixes);
}

static const char *on_track(const char *rest)
{
    snprintf(words, sizeof words, "track %s/a.gpx %s", folder, rest);
    return words;
}

TEST_FUNCTION(the_answer_fits_80_columns_and_says_how_far_to_trust_it)
{
    CHECK(lullwise(on_track("")) == 0);
    CHECK(answer_has("Best averages") && answer_has("by the sailing"));
    CHECK(answer_has("flown through") && answer_has("How far to trust it"));
    CHECK(answer_has("2020-05-17 10:00 to 10:30 UTC"));
    CHECK(widest_line() <= 80);
}

TEST_FUNCTION(the_wind_and_the_events_are_those_of_the_track_that_was_made)
{
    json_t *json = json_answer(on_track(""));
    double counts[LW_TRACK_EVENTS] = {0.0};
    for (size_t i = 0; i < made.event_count; i++) counts[made.events[i].what] += 1.0;
    const double off = json_number(json, "wind", "from") * LW_DEG - made.wind;
    CHECK(fabs(off - 2.0 * LW_PI * floor(off / (2.0 * LW_PI) + 0.5)) < 5.0 * LW_DEG);
    CHECK_NEAR(json_number(json, "happened", "swim"), counts[LW_TRACK_SWIM], 0.0);
    CHECK_NEAR(json_number(json, "happened", "tack"), counts[LW_TRACK_TACK], 0.05 * 40.0);
    CHECK_NEAR(json_number(json, "happened", "gybe"), counts[LW_TRACK_GYBE], 0.05 * 40.0);
    CHECK(json_number(json, "best", "over_2_s") >= json_number(json, "best", "over_10_s"));
    CHECK(json_number(json, "points", "read") == json_number(json, "points", "kept"));
    CHECK(json_array_size(json_rows(json, "events")) > 10);
    json_decref(json);
}

TEST_FUNCTION(a_given_wind_is_taken)
{
    json_t *json = json_answer(on_track("--wind-from '12 deg'"));
    CHECK_NEAR(json_number(json, "wind", "from"), 12.0, 1e-9);
    json_decref(json);
    CHECK(lullwise(on_track("--wind-from north")) == 2);
    CHECK(lullwise(on_track("--pin A")) == 2 && answer_has("--pin goes with --boat"));
}

TEST_FUNCTION(with_a_boat_the_model_stands_beside_and_says_from_where_she_flies)
{
    CHECK(lullwise(on_track(DEMO)) == 0);
    CHECK(answer_has("model") && answer_has("where the model lifts her"));
    CHECK(widest_line() <= 80);
}

TEST_FUNCTION(geojson_has_lines_with_longitude_first_and_events_as_points)
{
    CHECK(lullwise(on_track("--geojson -")) == 0);
    snprintf(words, sizeof words, "track %s/a.gpx --geojson %s/a.json >/dev/null", folder, folder);
    CHECK(lullwise(words) == 0);
    char path[200];
    snprintf(path, sizeof path, "%s/a.json", folder);
    json_t *json = json_load_file(path, 0, NULL);
    CHECK(json != NULL);
    CHECK_TEXT(json_text(json, "type"), "FeatureCollection");
    const json_t *features = json_object_get(json, "features");
    const json_t *shape = json_object_get(json_array_get(features, 0), "geometry");
    CHECK_TEXT(json_text(shape, "type"), "LineString");
    const json_t *place = json_array_get(json_object_get(shape, "coordinates"), 0);
    CHECK_NEAR(json_number_value(json_array_get(place, 0)), -40.0, 0.1);
    CHECK_NEAR(json_number_value(json_array_get(place, 1)), 30.0, 0.1);
    CHECK(json_array_size(features) > 10);
    json_decref(json);
}

TEST_FUNCTION(the_points_written_as_csv_give_the_same_answer)
{
    snprintf(words, sizeof words, "track %s/a.gpx --csv %s/a.csv >/dev/null", folder, folder);
    CHECK(lullwise(words) == 0);
    json_t *a = json_answer(on_track(""));
    snprintf(words, sizeof words, "track %s/a.csv", folder);
    json_t *b = json_answer(words);
    CHECK_NEAR(json_number(a, "sum", "run"), json_number(b, "sum", "run"), 0.01);
    CHECK_NEAR(json_number(a, "wind", "from"), json_number(b, "wind", "from"), 0.1);
    CHECK_NEAR(json_number(a, "happened", "drop"), json_number(b, "happened", "drop"), 0.0);
    json_decref(a);
    json_decref(b);
}

TEST_FUNCTION(the_same_file_twice_is_one_track_and_its_points_are_repeats)
{
    json_t *one = json_answer(on_track(""));
    snprintf(words, sizeof words, "track %s/a.gpx %s/a.gpx", folder, folder);
    json_t *two = json_answer(words);
    const double count = json_number(one, "points", "kept");
    CHECK_NEAR(json_number(two, "points", "repeats"), count, 0.0);
    CHECK_NEAR(json_number(two, "points", "kept"), count, 0.0);
    CHECK_NEAR(json_number(two, "sum", "run"), json_number(one, "sum", "run"), 1e-9);
    json_decref(one);
    json_decref(two);
}

// Forty readings from 200 deg, while she goes east at 10 kn along a parallel.
TEST_FUNCTION(wind_of_instruments_is_taken_before_that_of_the_sailing)
{
    char path[200];
    snprintf(path, sizeof path, "%s/wind.nmea", folder);
    FILE *out = fopen(path, "w");
    CHECK(out != NULL);
    for (int i = 0; i < 40; i++) {
        fprintf(out, "$GPRMC,1000%02d,A,3000.000,N,0%.4f,W,10.0,090.0,170520,,\n", i,
                4030.0 - 0.0032 * i);
        fprintf(out, "$WIMWD,200.0,T,,M,12.0,N,6.2,M\n");
    }
    fclose(out);
    snprintf(words, sizeof words, "track %s", path);
    json_t *json = json_answer(words);
    CHECK_NEAR(json_number(json, "wind", "from"), 200.0, 1e-6);
    CHECK_NEAR(json_number(json, "wind", "told_speed"), 12.0, 1e-6);
    CHECK_NEAR(json_number(json, "best", "over_10_s"), 10.0, 1e-6);
    json_decref(json);
    CHECK(lullwise(words) == 0 && answer_has("mean of 40 readings on board"));
}

TEST_FUNCTION(a_track_of_one_tack_says_that_its_wind_cannot_be_told)
{
    char path[200];
    snprintf(path, sizeof path, "%s/one.csv", folder);
    FILE *out = fopen(path, "w");
    CHECK(out != NULL);
    fputs("time [s],lat,lon\n", out);
    for (int i = 0; i < 600; i++) fprintf(out, "%d,%.7f,-40\n", i, 30.0 + 6e-5 * i);
    fclose(out);
    snprintf(words, sizeof words, "track %s", path);
    CHECK(lullwise(words) == 0);
    CHECK(answer_has("hardly more than one tack") && answer_has("the day not told"));
    CHECK(!answer_has("Speed by the angle"));
    snprintf(words, sizeof words, "track %s --wind-from '90 deg'", path);
    CHECK(lullwise(words) == 0 && answer_has("Speed by the angle"));
}

TEST_FUNCTION(the_picture_is_svg_with_a_key_to_its_colours)
{
    CHECK(lullwise(on_track("--svg -")) == 0);
    CHECK(answer_has("<svg ") && answer_has("speed over ground [kn]") && answer_has("north"));
    CHECK(!answer_has("nan") && !answer_has("inf"));
}

TEST_FUNCTION(files_that_cannot_be_read_end_with_2_and_a_word)
{
    CHECK(lullwise("track") == 2 && answer_has("something is missing"));
    CHECK(lullwise("track /none.gpx") == 2 && answer_has("there is no such file"));
    CHECK(lullwise("track /tmp") == 2 && answer_has("folder"));
    CHECK(lullwise("track " LW_DEMO_DIR "/heron.yaml") == 2 &&
          answer_has("no track that is known"));
}

// Six hours at 10 Hz, read and summarised: target 1 s for the release build on one core.
TEST_FUNCTION(six_hours_at_10_hz_are_told_quickly)
{
    struct timespec from, to;
    write_track("long.gpx", 3, 21600.0, 10.0);
    snprintf(words, sizeof words, "track %s/long.gpx", folder);
    clock_gettime(CLOCK_MONOTONIC, &from);
    CHECK(lullwise(words) == 0);
    clock_gettime(CLOCK_MONOTONIC, &to);
    const double seconds =
        (double)(to.tv_sec - from.tv_sec) + 1e-9 * (double)(to.tv_nsec - from.tv_nsec);
    print_message("6 h at 10 Hz: %.2f s\n", seconds);
    CHECK(answer_has("read"));
    CHECK(seconds < 20.0);  // what hangs; the time itself is for a quiet machine
}

static int begin(void **state)
{
    (void)state;
    if (!mkdtemp(folder)) return -1;
    write_track("a.gpx", 11, 1800.0, 1.0);
    return 0;
}

static int end(void **state)
{
    static const char *const names[] = {"a.gpx",    "a.json",    "a.csv",
                                        "long.gpx", "wind.nmea", "one.csv"};
    char path[200];
    (void)state;
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        snprintf(path, sizeof path, "%s/%s", folder, names[i]);
        unlink(path);
    }
    return rmdir(folder);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_answer_fits_80_columns_and_says_how_far_to_trust_it),
        TEST(the_wind_and_the_events_are_those_of_the_track_that_was_made),
        TEST(a_given_wind_is_taken),
        TEST(with_a_boat_the_model_stands_beside_and_says_from_where_she_flies),
        TEST(geojson_has_lines_with_longitude_first_and_events_as_points),
        TEST(the_points_written_as_csv_give_the_same_answer),
        TEST(the_same_file_twice_is_one_track_and_its_points_are_repeats),
        TEST(wind_of_instruments_is_taken_before_that_of_the_sailing),
        TEST(a_track_of_one_tack_says_that_its_wind_cannot_be_told),
        TEST(the_picture_is_svg_with_a_key_to_its_colours),
        TEST(files_that_cannot_be_read_end_with_2_and_a_word),
        TEST(six_hours_at_10_hz_are_told_quickly),
    };
    return cmocka_run_group_tests(tests, begin, end);
}
