// test_published.c - the engine against other people's numbers, which lie in test/published/.
// SPDX-License-Identifier: MIT
//
// A row of such a file:  function | arguments | value | tolerance | unit | source | how | comment
// tolerance: "0.1 %" of the value, or in the unit. source: a key of doc/sources.md. how: one of the
// words below.

#define _POSIX_C_SOURCE 200809L  // glob

#include <ctype.h>
#include <glob.h>
#include <math.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "test/published_boat.h"
#include "test/published_face.h"
#include "test/published_foil.h"
#include "test/published_hull.h"
#include "test/published_layer.h"
#include "test/published_medium.h"
#include "test/published_profile.h"
#include "test/published_series.h"
#include "test/published_track.h"
#include "test/published_wing.h"

#define ROWS_LEAST    80
#define COLUMNS       8
#define COLUMNS_LEAST 7

static const published_function functions[] = {
    PUBLISHED_MEDIUM,  PUBLISHED_FOIL,  PUBLISHED_BOAT,   PUBLISHED_WING, PUBLISHED_HULL,
    PUBLISHED_PROFILE, PUBLISHED_LAYER, PUBLISHED_SERIES, PUBLISHED_FACE, PUBLISHED_TRACK};
static const char *const hows[] = {"seen", "quoted second-hand", "from memory", "computed"};

#define COUNT_OF(array) (sizeof(array) / sizeof(array)[0])

typedef struct tally {
    int rows, failed, by_how[COUNT_OF(hows)];
} count_of_rows;

static char *trimmed(char *text)
{
    while (isspace((unsigned char)*text)) text++;
    size_t length = strlen(text);
    while (length > 0 && isspace((unsigned char)text[length - 1])) text[--length] = '\0';
    return text;
}

static int split(char *line, char *columns[COLUMNS])
{
    int count = 0;
    char *rest = line;
    while (rest != NULL && count < COLUMNS) {
        char *bar = strchr(rest, '|');
        if (bar != NULL) *bar = '\0';
        columns[count++] = trimmed(rest);
        rest = bar == NULL ? NULL : bar + 1;
    }
    return count;
}

static const published_function *function_of(const char *name)
{
    for (size_t i = 0; i < COUNT_OF(functions); i++) {
        if (strcmp(functions[i].name, name) == 0) return &functions[i];
    }
    return NULL;
}

// doc/sources.md, read once; a key stands there between back quotes.
static char sources[1 << 16];

static bool sources_are_read(void)
{
    FILE *file = fopen(LW_TEST_DATA "/../../doc/sources.md", "r");
    if (file == NULL) return false;
    const size_t length = fread(sources, 1, sizeof sources - 1, file);
    sources[length] = '\0';
    fclose(file);
    return length > 0 && length < sizeof sources - 1;
}

static bool source_is_known(const char *key)
{
    char quoted[64];
    snprintf(quoted, sizeof quoted, "`%s`", key);
    return strstr(sources, quoted) != NULL;
}

static int how_of(const char *how)
{
    for (size_t i = 0; i < COUNT_OF(hows); i++) {
        if (strcmp(hows[i], how) == 0) return (int)i;
    }
    return -1;
}

static bool number(const char *text, double *value)
{
    char *end;
    *value = strtod(text, &end);
    return end != text && *end == '\0';
}

// Reads "0.1 %" or "0.002".
static bool tolerance_of(char *text, double value, double *tolerance)
{
    char *percent = strchr(text, '%');
    if (percent != NULL) *percent = '\0';
    if (!number(trimmed(text), tolerance)) return false;
    if (percent != NULL) *tolerance *= 0.01 * fabs(value);
    return true;
}

static int arguments_of(const char *text, double arguments[ARGUMENTS_MOST])
{
    int count = 0;
    char *end;
    for (; count < ARGUMENTS_MOST; count++, text = end) {
        const double value = strtod(text, &end);
        if (end == text) break;
        arguments[count] = value;
    }
    while (isspace((unsigned char)*text)) text++;
    return *text == '\0' ? count : -1;
}

// What is wrong with a row as written, or NULL; its value against the engine's otherwise.
static const char *check_row(char *columns[COLUMNS], int count, count_of_rows *tally)
{
    if (count < COLUMNS_LEAST) return "fewer than seven columns";
    const published_function *function = function_of(columns[0]);
    if (function == NULL) return "no function has this name";
    double arguments[ARGUMENTS_MOST] = {0}, want, tolerance;
    if (arguments_of(columns[1], arguments) != function->arguments) return "wrong arguments";
    if (!number(columns[2], &want)) return "the value is not a number";
    if (!tolerance_of(columns[3], want, &tolerance)) return "the tolerance is not a number";
    if (strcmp(columns[4], function->unit) != 0) return "the unit is another";
    if (!source_is_known(columns[5])) return "the source is not in doc/sources.md";
    const int how = how_of(columns[6]);
    if (how < 0) return "how it is known: seen, quoted second-hand, from memory or computed";

    const double got = function->value(arguments), off = got - want;
    const bool holds = fabs(off) <= tolerance;  // false for NaN
    tally->by_how[how]++;
    printf("%-22.22s %-17.17s %11.6g %11.6g %9.2g %s\n", columns[0], columns[1], got, want, off,
           holds ? "ok" : "OFF");
    return holds ? NULL : "outside the tolerance";
}

static void check_file(const char *path, count_of_rows *tally)
{
    FILE *file = fopen(path, "r");
    if (file == NULL) {
        printf("%s: cannot be read\n", path);
        tally->failed++;
        return;
    }
    const char *name = strrchr(path, '/');
    printf("\n%s\n%-22s %-17s %11s %11s %9s\n", name == NULL ? path : name + 1, "function",
           "arguments", "got", "published", "off");
    char line[512];
    for (int place = 1; fgets(line, sizeof line, file) != NULL; place++) {
        const char *text = trimmed(line);
        if (*text == '\0' || *text == '#') continue;
        char *columns[COLUMNS];
        const int count = split(line, columns);
        const char *fault = check_row(columns, count, tally);
        tally->rows++;
        if (fault == NULL) continue;
        tally->failed++;
        printf("%s:%d: %s\n", path, place, fault);
    }
    fclose(file);
}

int main(void)
{
    glob_t found;
    count_of_rows tally = {0};
    if (!sources_are_read()) {
        printf("doc/sources.md cannot be read\n");
        return 1;
    }
    if (glob(LW_TEST_DATA "/*.txt", 0, NULL, &found) != 0) {
        printf("no files in %s\n", LW_TEST_DATA);
        return 1;
    }
    for (size_t i = 0; i < found.gl_pathc; i++) check_file(found.gl_pathv[i], &tally);
    globfree(&found);

    printf("\n%d rows:", tally.rows);
    for (size_t i = 0; i < COUNT_OF(hows); i++) printf(" %d %s,", tally.by_how[i], hows[i]);
    printf(" %d off\n", tally.failed);
    if (tally.rows < ROWS_LEAST) printf("fewer than %d rows\n", ROWS_LEAST);
    return tally.failed > 0 || tally.rows < ROWS_LEAST;
}
