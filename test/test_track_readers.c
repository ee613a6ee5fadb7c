// test_track_readers.c - claims about reading tracks: GPX, NMEA 0183, CSV; counted, refused.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <glob.h>
#include <stdlib.h>
#include <time.h>
#include <unistd.h>

#include "records/track/moment.h"
#include "test/check.h"
#include "test/track_text.h"

static void check_refused(const char *text, const char *sentence)
{
    track_text t = track_of(text);
    CHECK(!t.is_read && t.faults.fault_count > 0);
    if (!strstr(t.faults.list[0].sentence, sentence))
        print_error("%s\n", t.faults.list[0].sentence);
    CHECK(strstr(t.faults.list[0].sentence, sentence) != NULL);
    track_text_free(&t);
}

static void check_counts(const char *text, lw_track_count what, size_t count, size_t kept)
{
    track_text t = track_of(text);
    CHECK(t.is_read && track_text_adds_up(&t.file));
    CHECK(t.file.counts[what] == count);
    CHECK(t.file.count == kept);
    track_text_free(&t);
}

// --- moments

TEST_FUNCTION(moments_are_read_as_iso_8601_has_them)
{
    double time;
    CHECK(lw_moment_read("1970-01-01T00:00:00Z", &time) && time == 0.0);
    CHECK(lw_moment_read("2000-02-29", &time) && time == 951782400.0);
    CHECK(lw_moment_read("2030-05-17T12:00:00.25+02:00", &time));
    CHECK_NEAR(time, 1905242400.25, 1e-6);
    CHECK(lw_moment_read(" 2030-05-17 10:00 \n", &time) && time == 1905242400.0);
    CHECK(!lw_moment_read("1900-02-29T00:00:00Z", &time));
    CHECK(!lw_moment_read("2030-13-01T00:00:00Z", &time));
    CHECK(!lw_moment_read("2030-05-17T24:00:00Z", &time));
    CHECK(!lw_moment_read("2030-05-17T10:00:00Zx", &time));
    CHECK(!lw_moment_read("17.05.2030 10:00", &time));
}

static bool moment_comes_back(const double *x)
{
    char text[LW_MOMENT_LENGTH];
    const double ms = floor(x[0] * 1000.0);
    double time;
    lw_moment_text(text, ms / 1000.0);
    return lw_moment_read(text, &time) && fabs(1000.0 * time - ms) < 0.1;
}

TEST_FUNCTION(moments_written_are_read_back)
{
    CHECK_HOLDS(moment_comes_back, 2000, {-6e10, 2.5e11});
}

// --- NMEA 0183

#define RMC      "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A\r\n"
#define RMC_NEXT "$GPRMC,123520,A,4807.039,N,01131.010,E,022.4,084.4,230394,003.1,W\r\n"
#define GGA      "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n"

// Sentences that are quoted in many public texts on NMEA 0183; 23 March 1994, 12:35:19 UTC.
TEST_FUNCTION(published_sentences_are_read)
{
    track_text t = track_of(RMC GGA RMC_NEXT);
    CHECK(t.is_read && t.file.count == 2 && track_text_adds_up(&t.file));
    CHECK(t.file.counts[LW_TRACK_WRONG_SUMS] == 0);
    CHECK_NEAR(t.file.points[0].latitude_deg, 48.1173, 1e-7);
    CHECK_NEAR(t.file.points[0].longitude_deg, 11.516666667, 1e-8);
    CHECK_NEAR(t.file.points[0].speed, 11.5236, 5e-5);
    CHECK_NEAR(t.file.points[0].course, 84.4 * LW_DEG, 1e-12);
    CHECK_NEAR(t.file.points[0].time, 86400.0 * lw_days_of(1994, 3, 23) + 45319.0, 1e-6);
    CHECK(!t.file.lacks_date);
    track_text_free(&t);
}

TEST_FUNCTION(published_sentences_have_right_checksums)
{
    check_counts(
        "$GPGLL,4916.45,N,12311.12,W,225444,A,*1D\n"
        "$GPRMC,225446,A,4916.45,N,12311.12,W,000.5,054.7,191194,020.3,E*68\n"
        "$GPVTG,054.7,T,034.4,M,005.5,N,010.2,K*48\n"
        "$GPGSA,A,3,04,05,,09,12,,,24,,,,,2.5,1.3,2.1*39\n"
        "$GPRMC,225447,A,4916.45,N,12311.12,W,000.5,054.7,191194,020.3,E*69\n",
        LW_TRACK_WRONG_SUMS, 0, 2);
    check_counts(
        "$GPRMC,081836,A,3751.65,S,14507.36,E,000.0,360.0,130998,011.3,E*62\n"
        "$GPRMC,081837,A,3751.65,S,14507.36,E,000.0,360.0,130998,011.3,E*63\n",
        LW_TRACK_WRONG_SUMS, 0, 2);
}

TEST_FUNCTION(sentences_with_a_wrong_checksum_are_dropped_and_counted)
{
    check_counts(RMC RMC_NEXT
                 "$GPGGA,123521,4807.038,N,01131.000,E,1,08,0.9,545.4,M,,*48\n"
                 "$GPRMC,123522,A,4807.038,N,01131.000,E,1,2,230394,,*\n",
                 LW_TRACK_WRONG_SUMS, 2, 2);
}

TEST_FUNCTION(southern_and_western_places_are_negative_and_speed_comes_from_vtg)
{
    track_text t = track_of(
        "$GPGGA,100000,1030.00,S,03015.00,W,1,8,1,0,M,0,M,,\n"
        "$GPVTG,200.0,T,,M,010.0,N,18.5,K\n"
        "$GPGGA,100001,1030.01,S,03015.00,W,1,8,1,0,M,0,M,,\n");
    CHECK(t.is_read && t.file.count == 2 && t.file.lacks_date);
    CHECK_NEAR(t.file.points[0].latitude_deg, -10.5, 1e-9);
    CHECK_NEAR(t.file.points[0].longitude_deg, -30.25, 1e-9);
    CHECK_NEAR(t.file.points[0].speed, 10.0 * LW_KN, 1e-12);
    CHECK_NEAR(t.file.points[0].course, 200.0 * LW_DEG, 1e-12);
    CHECK(isnan(t.file.points[1].speed));
    track_text_free(&t);
}

TEST_FUNCTION(midnight_is_passed_and_a_late_date_holds_for_what_came_before)
{
    track_text t = track_of(
        "$GPGGA,235958,1030.00,N,03015.00,W,1,8,1,0,M,0,M,,\n"
        "$GPRMC,235959,A,1030.001,N,03015.00,W,1,0,160530,,\n"
        "$GPGGA,000000,1030.002,N,03015.00,W,1,8,1,0,M,0,M,,\n"
        "$GPRMC,000001,A,1030.003,N,03015.00,W,1,0,170530,,\n");
    CHECK(t.is_read && t.file.count == 4 && !t.file.lacks_date);
    for (size_t i = 1; i < 4; i++)
        CHECK_NEAR(t.file.points[i].time - t.file.points[i - 1].time, 1.0, 1e-6);
    CHECK_NEAR(t.file.points[2].time, 86400.0 * lw_days_of(2030, 5, 17), 1e-6);
    track_text_free(&t);
}

TEST_FUNCTION(fixes_that_are_none_and_broken_lines_are_counted)
{
    check_counts(RMC "$GPRMC,123519,V,,,,,,,230394,,\n" RMC_NEXT, LW_TRACK_WITHOUT_FIX, 1, 2);
    check_counts(RMC "$GPRMC,123521,A,4861.038,N,01131.000,E,1,2,230394,,\n" RMC_NEXT,
                 LW_TRACK_BROKEN, 1, 2);
    check_counts(RMC "$GPRMC,993521,A,4801.038,N,01131.000,E,1,2,230394,,\n" RMC_NEXT,
                 LW_TRACK_BROKEN, 1, 2);
    check_counts("log begins\n" RMC RMC_NEXT "\n", LW_TRACK_OTHER, 1, 2);
    check_refused("$GPRMC,123519,V,,,,,,,230394,,\n", "never had a fix");
    check_refused("$GPGSA,A,3,04,05,,09,12,,,24,,,,,2.5,1.3,2.1*39\n", "no place");
}

// A boat that heads and goes east at 10 kn. True wind from north at 10 kn is felt from 45 deg to
// the left of the bow at 14.142 kn: 315 deg.
TEST_FUNCTION(wind_of_instruments_is_true_whichever_way_it_is_told)
{
    static const char *const told[] = {"$WIMWD,000.0,T,,M,10.0,N,5.1,M\n",
                                       "$WIMWV,270.0,T,10.0,N,A\n", "$WIMWV,315.0,R,14.1421,N,A\n"};
    for (int i = 0; i < 3; i++) {
        char text[600];
        snprintf(text, sizeof text, "%s%s%s%s",
                 "$GPRMC,100000,A,1030.00,N,03015.00,W,10.0,90.0,170530,,\n"
                 "$IIVHW,090.0,T,,M,10.0,N,18.5,K\n",
                 told[i], "$GPRMC,100001,A,1030.00,N,03014.99,W,10.0,90.0,170530,,\n",
                 "$WIMWV,315.0,R,14.1,N,V\n");
        track_text t = track_of(text);
        CHECK(t.is_read && t.file.wind.count == 1);
        CHECK_NEAR(t.file.wind.east, 0.0, 1e-4);
        CHECK_NEAR(t.file.wind.north, 1.0, 1e-4);
        CHECK_NEAR(t.file.wind.speed, 10.0 * LW_KN, 1e-3);
        track_text_free(&t);
    }
}

// --- GPX

#define GPX(version, inside)                           \
    "<?xml version=\"1.0\"?>\n<gpx version=\"" version \
    "\" creator=\"made\""                              \
    " xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>" inside "</trkseg></trk></gpx>\n"
#define PT(lat, second, more) \
    "<trkpt lat=\"" lat "\" lon=\"-40\"><time>2030-05-17T10:00:" second "Z</time>" more "</trkpt>"

TEST_FUNCTION(gpx_of_both_versions_is_read)
{
    track_text t = track_of(GPX(
        "1.0", PT("30", "00", "<course>90</course><speed>5.5</speed>") PT("30.00001", "01", "")));
    CHECK(t.is_read && t.file.count == 2 && track_text_adds_up(&t.file));
    CHECK_NEAR(t.file.points[0].speed, 5.5, 1e-12);
    CHECK_NEAR(t.file.points[0].course, 90.0 * LW_DEG, 1e-12);
    CHECK(isnan(t.file.points[1].speed));
    CHECK_NEAR(t.file.points[0].time, 1905242400.0, 1e-6);
    track_text_free(&t);
    t = track_of(GPX("1.1", PT("30", "00",
                               "<ele>1</ele><extensions><a><speed>9</speed></a>"
                               "<time>x</time></extensions>") PT("30.00001", "01", "")));
    CHECK(t.is_read && t.file.count == 2 && isnan(t.file.points[0].speed));
    track_text_free(&t);
}

TEST_FUNCTION(segments_of_gpx_are_pieces)
{
    track_text t =
        track_of(GPX("1.1", PT("30", "00", "") PT("30.00001", "01", "") "</trkseg><trkseg>" PT(
                                "30.00002", "02", "")));
    CHECK(t.is_read && t.file.count == 3);
    CHECK(t.file.fixes[0].starts && !t.file.fixes[1].starts && t.file.fixes[2].starts);
    track_text_free(&t);
}

TEST_FUNCTION(gpx_points_without_time_or_place_are_counted)
{
    check_counts(
        GPX("1.1", PT("30", "00", "") "<trkpt lat=\"30\" lon=\"-40\"/>" PT("30.00001", "01", "")),
        LW_TRACK_WITHOUT_TIME, 1, 2);
    check_counts(GPX("1.1", PT("30", "00", "") PT("95", "01", "") PT("north", "02", "")
                                PT("30.00001", "03", "")),
                 LW_TRACK_BROKEN, 2, 2);
    check_refused(GPX("1.1", "<trkpt lat=\"30\" lon=\"-40\"/>"), "speeds cannot be told");
    check_refused(GPX("1.1", ""), "no track");
    check_refused("<gpx><rte><rtept lat=\"1\" lon=\"2\"/></rte></gpx>", "route");
}

TEST_FUNCTION(a_gpx_that_ends_too_early_is_taken_and_counted)
{
    const char *whole =
        GPX("1.1", PT("30", "00", "") PT("30.00001", "01", "") PT("30.00002", "02", ""));
    char cut[2000];
    const char *third = strstr(whole, "30.00002");
    snprintf(cut, sizeof cut, "%.*s", (int)(third - whole), whole);
    check_counts(cut, LW_TRACK_CUT, 1, 2);
}

TEST_FUNCTION(xml_that_swells_or_goes_too_deep_is_refused)
{
    check_refused(
        "<?xml version=\"1.0\"?><!DOCTYPE gpx [<!ENTITY a \"aaaaaaaaaa\">"
        "<!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]><gpx>&b;</gpx>",
        "a DOCTYPE is declared");
    check_refused("<!DOCTYPE gpx [<!ENTITY a SYSTEM \"file:///etc/hostname\">]><gpx>&a;</gpx>",
                  "a DOCTYPE is declared");
    char deep[4000] = "<gpx>";
    for (int i = 0; i < 200; i++) strcat(deep, "<a>");
    check_refused(deep, "too deep");
    check_refused("<html><body/></html>", "no GPX");
    check_refused("<gpx><trk></gpx>", "no XML from here on");
    check_refused("<gpx><trk><name>\xff\xfe</name></trk></gpx>", "no XML from here on");
}

TEST_FUNCTION(a_word_of_megabytes_is_refused_and_not_kept)
{
    const size_t length = 4000000;
    char *text = malloc(length);
    CHECK(text != NULL);
    static const char *const heads[] = {"<gpx><!--", "<gpx creator=\""};
    for (int i = 0; i < 2; i++) {
        memset(text, 'x', length);
        memcpy(text, heads[i], strlen(heads[i]));
        track_text t = track_bytes(text, length, 0.0);
        CHECK(!t.is_read);
        CHECK(strstr(t.faults.list[0].sentence, "megabyte") != NULL);
        track_text_free(&t);
    }
    free(text);
}

// --- CSV

TEST_FUNCTION(csv_is_read_by_its_header_with_units)
{
    track_text t = track_of(
        "time,lat,lon,depth,\"Speed [km/h]\",course\n"
        "2030-05-17T10:00:00Z,30,-40,1,18.52,90\n"
        "\"2030-05-17T10:00:01Z\",30.00001,-40,,,\n");
    CHECK(t.is_read && t.file.count == 2 && track_text_adds_up(&t.file));
    CHECK_NEAR(t.file.points[0].speed, 10.0 * LW_KN, 1e-9);
    CHECK_NEAR(t.file.points[0].course, 90.0 * LW_DEG, 1e-12);
    CHECK(isnan(t.file.points[1].speed));
    track_text_free(&t);
    t = track_of(
        "Date;Time;Latitude [deg];Longitude (deg);speed_m/s\n"
        "2030-05-17;10:00:00,5;30,5;-40,25;5,5\n2030-05-17;10:00:01.5;30,50001;-40,25;5\n");
    CHECK(t.is_read && t.file.count == 2);
    CHECK_NEAR(t.file.points[0].time, 1905242400.5, 1e-6);
    CHECK_NEAR(t.file.points[0].latitude_deg, 30.5, 1e-12);
    CHECK_NEAR(t.file.points[0].speed, 5.5, 1e-12);
    track_text_free(&t);
    t = track_of(
        "time [ms]\tlatitude\tlongitude\n1905242400500\t30\t-40\n1905242401500\t30\t-40\n");
    CHECK(t.is_read && t.file.count == 2 && !t.file.lacks_date);
    CHECK_NEAR(t.file.points[0].time, 1905242400.5, 1e-6);
    track_text_free(&t);
}

TEST_FUNCTION(csv_without_its_columns_or_units_is_refused)
{
    check_refused("time,lat,lon,speed\n2030-05-17T10:00:00Z,30,-40,5\n", "no unit");
    check_refused("time,lat,lon,speed [s]\n2030-05-17T10:00:00Z,30,-40,5\n", "no such unit");
    check_refused("lat,lon\n30,-40\n", "lacks a column");
    check_refused("a,b\n1,2\n", "no track that is known");
    check_refused("time,lat,lon\nyesterday,30,-40\n", "no row could be read");
    check_counts(
        "time,lat,lon\n2030-05-17T10:00:00Z,30,-40\nx\n2030-05-17T10:00:01Z,x,-40\n"
        "2030-05-17T10:00:02Z,30,-40\n",
        LW_TRACK_BROKEN, 2, 2);
}

static void check_same(const lw_track_file *a, const lw_track_file *b)
{
    CHECK(a->count == b->count);
    for (size_t i = 0; i < a->count; i++) {
        CHECK_NEAR(a->points[i].time, b->points[i].time, 5.1e-4);
        CHECK_NEAR(a->points[i].latitude_deg, b->points[i].latitude_deg, 5.1e-8);
        CHECK_NEAR(a->points[i].longitude_deg, b->points[i].longitude_deg, 5.1e-8);
        CHECK(isnan(a->points[i].speed) == isnan(b->points[i].speed));
    }
}

TEST_FUNCTION(points_written_as_csv_are_read_back)
{
    char *text = NULL;
    size_t length;
    track_text a = track_of(
        GPX("1.0", PT("30.1234567", "00.125", "<speed>5.5</speed>") PT("30.1234568", "01", "")));
    FILE *out = open_memstream(&text, &length);
    CHECK(a.is_read && out != NULL);
    lw_track_file_write(&a.file, out);
    fclose(out);
    track_text b = track_bytes(text, length, 0.0);
    CHECK(b.is_read);
    check_same(&a.file, &b.file);
    free(text);
    track_text_free(&a);
    track_text_free(&b);
}

// --- order, repeats, wild points

#define CSV "time [s],lat,lon\n"

TEST_FUNCTION(points_are_put_in_order_and_repeats_are_dropped_and_both_are_counted)
{
    check_counts(CSV "0,30,-40\n2,30.00002,-40\n1,30.00001,-40\n2,30.00002,-40\n3,30.00003,-40\n",
                 LW_TRACK_REPEATS, 1, 4);
    track_text t = track_of(CSV "0,30,-40\n2,30.00002,-40\n1,30.00001,-40\n3,30.00003,-40\n");
    CHECK(t.is_read && t.file.counts[LW_TRACK_OUT_OF_ORDER] == 1);
    for (size_t i = 0; i < 4; i++) CHECK_NEAR(t.file.fixes[i].time, (double)i, 1e-9);
    track_text_free(&t);
}

TEST_FUNCTION(a_wild_point_is_dropped_and_a_jump_that_stays_begins_a_piece)
{
    check_counts(CSV "0,30,-40\n1,31,-40\n2,30.00002,-40\n3,30.00003,-40\n", LW_TRACK_WILD, 1, 3);
    check_counts(CSV "0,0,0\n1,0,0\n2,30,-40\n3,30,-40\n4,30,-40\n5,30,-40\n6,30,-40\n7,30,-40\n",
                 LW_TRACK_WILD, 2, 6);
    track_text t = track_of(CSV
                            "0,30,-40\n1,30,-40\n2,30,-40\n3,30,-40\n4,30,-40\n5,30,-40\n"
                            "6,31,-40\n7,31,-40\n8,31,-40\n9,31,-40\n10,31,-40\n11,31,-40\n");
    CHECK(t.is_read && t.file.count == 12 && t.file.counts[LW_TRACK_JUMPS] == 1);
    CHECK(t.file.fixes[6].starts && !t.file.fixes[7].starts);
    track_text_free(&t);
    check_counts("time [s],lat,lon,speed [kn]\n0,30,-40,5\n1,30,-40,500\n2,30,-40,5\n",
                 LW_TRACK_WILD_SPEEDS, 1, 3);
}

TEST_FUNCTION(points_later_than_today_are_taken_and_counted)
{
    const char *text = GPX("1.1", PT("30", "00", "") PT("30.00001", "01", ""));
    track_text t = track_bytes(text, strlen(text), 1905242400.5);
    CHECK(t.is_read && t.file.count == 2 && t.file.counts[LW_TRACK_LATER] == 1);
    track_text_free(&t);
}

TEST_FUNCTION(a_track_across_the_line_of_dates_lies_together)
{
    track_text t = track_of(CSV "0,0,179.9999\n10,0,-179.9999\n");
    CHECK(t.is_read && t.file.count == 2 && t.file.counts[LW_TRACK_WILD] == 0);
    CHECK_NEAR(t.file.fixes[1].east - t.file.fixes[0].east, 22.264, 0.01);
    track_text_free(&t);
}

// --- files that are something else

TEST_FUNCTION(files_that_are_no_tracks_are_refused_with_a_word_what_they_are)
{
    check_refused("", "empty");
    check_refused("\n \n", "no track that is known");
    check_refused("hello\n", "no track that is known");
    check_refused("PK\3\4rest", "unpack");
    check_refused("\x1F\x8Brest", "unpack");
    check_refused("\xFF\xFE<", "UTF-16");
    track_text t = track_bytes("\x0e\x10\0\0\0\0\0\0.FIT\0\0", 14, 0.0);
    CHECK(!t.is_read && strstr(t.faults.list[0].sentence, "FIT file") != NULL);
    track_text_free(&t);
    t = track_bytes("time,lat,lon\n1,2\0,3\n", 20, 0.0);
    CHECK(!t.is_read && strstr(t.faults.list[0].sentence, "zero byte") != NULL);
    track_text_free(&t);
    check_refused(CSV "0,30,-40\n", "one point only");
}

static bool at_once(void) { return true; }

TEST_FUNCTION(reading_is_given_up_when_it_is_wanted)
{
    static const char *const texts[] = {RMC RMC_NEXT, CSV "0,30,-40\n1,30,-40\n", "<gpx>"};
    for (int i = 0; i < 3; i++) {
        track_text t = {.file = {.wants_end = at_once}};
        FILE *stream = fmemopen((void *)texts[i], strlen(texts[i]), "rb");
        CHECK(!lw_track_file_stream(&t.file, stream, "file", &t.faults));
        CHECK(strstr(t.faults.list[0].sentence, "stopped from the keyboard") != NULL);
        fclose(stream);
        track_text_free(&t);
    }
}

// What the fuzzer begins with, and what it once found.
TEST_FUNCTION(seeds_of_the_fuzzer_are_read_or_refused)
{
    glob_t seeds;
    CHECK(glob(LW_TEST_DATA "/../seeds/fuzz_track_*/*", 0, NULL, &seeds) == 0);
    for (size_t i = 0; i < seeds.gl_pathc; i++) {
        track_text t = {.is_read = false};
        t.is_read = lw_track_file_read(&t.file, seeds.gl_pathv[i], &t.faults) &&
                    lw_track_file_settle(&t.file, "file", &t.faults);
        CHECK(t.is_read == (t.faults.fault_count == 0));
        CHECK(!t.is_read || track_text_adds_up(&t.file));
        track_text_free(&t);
    }
    globfree(&seeds);
}

static double seconds_of(clock_t since) { return (double)(clock() - since) / CLOCKS_PER_SEC; }

// A gigabyte of nothing behind the head of each kind; sparse, so that it takes no disk.
TEST_FUNCTION(a_gigabyte_of_nothing_is_refused_at_once)
{
    static const char *const heads[] = {"", "<gpx>", "time,lat,lon\n", RMC};
    for (int i = 0; i < 4; i++) {
        char path[] = "/tmp/lullwise-track-XXXXXX";
        const int file = mkstemp(path);
        CHECK(file >= 0 && write(file, heads[i], strlen(heads[i])) == (ssize_t)strlen(heads[i]));
        CHECK(ftruncate(file, 1 << 30) == 0);
        close(file);
        track_text t = {.is_read = false};
        const clock_t since = clock();
        CHECK(!lw_track_file_read(&t.file, path, &t.faults) && t.faults.fault_count > 0);
        CHECK(seconds_of(since) < 1.0);
        unlink(path);
        track_text_free(&t);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(moments_are_read_as_iso_8601_has_them),
        TEST(moments_written_are_read_back),
        TEST(published_sentences_are_read),
        TEST(published_sentences_have_right_checksums),
        TEST(sentences_with_a_wrong_checksum_are_dropped_and_counted),
        TEST(southern_and_western_places_are_negative_and_speed_comes_from_vtg),
        TEST(midnight_is_passed_and_a_late_date_holds_for_what_came_before),
        TEST(fixes_that_are_none_and_broken_lines_are_counted),
        TEST(wind_of_instruments_is_true_whichever_way_it_is_told),
        TEST(gpx_of_both_versions_is_read),
        TEST(segments_of_gpx_are_pieces),
        TEST(gpx_points_without_time_or_place_are_counted),
        TEST(a_gpx_that_ends_too_early_is_taken_and_counted),
        TEST(xml_that_swells_or_goes_too_deep_is_refused),
        TEST(a_word_of_megabytes_is_refused_and_not_kept),
        TEST(csv_is_read_by_its_header_with_units),
        TEST(csv_without_its_columns_or_units_is_refused),
        TEST(points_written_as_csv_are_read_back),
        TEST(points_are_put_in_order_and_repeats_are_dropped_and_both_are_counted),
        TEST(a_wild_point_is_dropped_and_a_jump_that_stays_begins_a_piece),
        TEST(points_later_than_today_are_taken_and_counted),
        TEST(a_track_across_the_line_of_dates_lies_together),
        TEST(files_that_are_no_tracks_are_refused_with_a_word_what_they_are),
        TEST(reading_is_given_up_when_it_is_wanted),
        TEST(seeds_of_the_fuzzer_are_read_or_refused),
        TEST(a_gigabyte_of_nothing_is_refused_at_once),
    };
    return RUN_TESTS(tests);
}
