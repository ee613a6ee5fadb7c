// section_file.c - coordinates of a foil section read from text, with the place of every fault.
// SPDX-License-Identifier: MIT

#include "records/section_file.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "lullwise/quantity.h"
#include "records/source_text.h"

#define LENGTH_MOST 1000000  // bytes
#define EXPECTED    "x and y, as in 0.95 0.0114"
#define LARGEST     1e6  // of a coordinate

typedef struct reading {
    lw_section_file *file;
    const char *path;
    lw_faults *faults;
    size_t line;
    bool has_begun;  // a line that is not empty was seen
} reading;

static const char *blanks_over(const char *at) { return at + strspn(at, " \t\r"); }

static bool is_over(const char *at) { return *at == '\0' || *at == '#'; }

static lw_fault *fault_at(const reading *r, const char *start, const char *at)
{
    char word[64];
    LW_FIT(word, "%.*s", (int)strcspn(at, " \t\r#,;"), at);
    const lw_written written = {.file = r->path,
                                .line = r->line,
                                .column = (size_t)(at - start) + 1,
                                .key = "",
                                .text = word};
    lw_fault *fault = lw_faults_add(r->faults, &written);
    LW_FIT(fault->expected, EXPECTED);
    return fault;
}

// Between two numbers: blanks, with a comma or semicolon among them. NULL when there is nothing.
static const char *gap_over(const char *at)
{
    const char *rest = blanks_over(at);
    if (*rest == ',' || *rest == ';') rest = blanks_over(rest + 1);
    return rest > at ? rest : NULL;
}

// Two numbers and no more; otherwise *fault stands where it stops, for `why`.
static bool read_pair(const char *at, double *x, double *y, const char **fault, const char **why)
{
    const char *rest, *second;
    *fault = at;
    *why = "this is not a number";
    if (!lw_decimal_read(at, x, &rest)) return false;
    *fault = rest;
    *why = "one number only: a point has two";
    if (is_over(blanks_over(rest))) return false;
    *why = "this does not belong to a number";
    second = gap_over(rest);
    if (!second) return false;
    *fault = second;
    *why = is_over(second) ? "one number only: a point has two" : "this is not a number";
    if (is_over(second) || !lw_decimal_read(second, y, &rest)) return false;
    *fault = blanks_over(rest);
    *why = "more than two numbers on a line";
    return is_over(*fault);
}

// A designation without a word: "2412", "63-412", "63(1)-412"; no number of a coordinate has four
// digits, or a stroke behind one.
static bool is_designation(const char *at)
{
    const size_t length = strcspn(at, " \t\r"), digits = strspn(at, "0123456789");
    if (!is_over(blanks_over(at + length)) || digits < 2) return false;
    return digits == length ? digits >= 4 : strcspn(at, ".") >= length && strchr("-(,", at[digits]);
}

// A line of words; numbers and what somebody's program writes for "no number" are none.
static bool is_title(const char *at)
{
    double value;
    if (is_designation(at)) return true;
    const char *rest = at;
    const char *word = at + (*at == '-' || *at == '+');
    const size_t length = strcspn(word, " \t\r,;");
    if (length == 3 && (strncmp(word, "nan", 3) == 0 || strncmp(word, "NaN", 3) == 0 ||
                        strncmp(word, "NAN", 3) == 0 || strncmp(word, "inf", 3) == 0))
        return false;
    if (!lw_decimal_read(at, &value, &rest)) return true;
    rest = blanks_over(rest);
    return !is_over(rest) && !strchr("0123456789+-.,;", *rest);
}

static void keep_title(reading *r, const char *at)
{
    size_t length = strlen(at);
    while (length > 0 && strchr(" \t\r", at[length - 1])) length--;
    char text[256];
    LW_FIT(text, "%.*s", (int)length, at);
    lw_text_tame(r->file->title, sizeof r->file->title, text);
}

static void keep_point(reading *r, const char *start, const char *at, double x, double y)
{
    lw_section_file *f = r->file;
    if (!(fabs(x) <= LARGEST) || !(fabs(y) <= LARGEST)) {
        LW_FIT(fault_at(r, start, at)->sentence, "a coordinate is too large");
    } else if (f->count < LW_OUTLINE_MOST) {
        f->x[f->count] = x;
        f->y[f->count] = y;
        f->line[f->count++] = r->line;
    } else if (f->count == LW_OUTLINE_MOST) {
        f->count++;  // said once
        LW_FIT(fault_at(r, start, at)->sentence, "%s", lw_profile_status_text(LW_PROFILE_TOO_MANY));
    }
}

static void read_line(reading *r, const char *start)
{
    double x, y;
    const char *at = blanks_over(start), *fault, *why;
    if (is_over(at)) return;
    const bool is_first = !r->has_begun;
    r->has_begun = true;
    if (read_pair(at, &x, &y, &fault, &why))
        keep_point(r, start, at, x, y);
    else if (is_first && is_title(at))
        keep_title(r, at);
    else
        LW_FIT(fault_at(r, start, fault)->sentence, "%s", why);
}

// "17. 17." before both sides: how many points each of them has.
static void drop_counts(lw_section_file *f)
{
    const double a = f->x[0], b = f->y[0];
    if (f->count < 3 || f->count > LW_OUTLINE_MOST) return;
    if (a < 3.0 || b < 3.0 || a != floor(a) || b != floor(b) || a + b != f->count - 1) return;
    f->count--;
    memmove(f->x, f->x + 1, (size_t)f->count * sizeof f->x[0]);
    memmove(f->y, f->y + 1, (size_t)f->count * sizeof f->y[0]);
    memmove(f->line, f->line + 1, (size_t)f->count * sizeof f->line[0]);
}

// Tabs become blanks, and a byte order mark goes; columns stay as an editor counts them.
static void tidy(char *text, size_t *length)
{
    static const char mark[] = "\xEF\xBB\xBF";
    if (strncmp(text, mark, 3) == 0) {
        *length -= 3;
        memmove(text, text + 3, *length + 1);
    }
    for (size_t i = 0; i < *length; i++) {
        if (text[i] == '\t') text[i] = ' ';
    }
}

static void read_lines(reading *r, char *text)
{
    while (text) {
        char *end = strchr(text, '\n');
        if (end) *end = '\0';
        r->line++;
        read_line(r, text);
        text = end ? end + 1 : NULL;
    }
}

// --- what is wrong with the whole

static double side_of(const lw_section_file *f, int i, int p)
{
    return (f->x[i + 1] - f->x[i]) * (f->y[p] - f->y[i]) -
           (f->x[p] - f->x[i]) * (f->y[i + 1] - f->y[i]);
}

// The point behind which the outline meets an earlier part of itself, and that part; false when
// the crossing shows only once the points are put in order.
static bool crossing_of(const lw_section_file *f, double chord, int *first, int *second)
{
    for (int j = 2; j < f->count - 1; j++) {
        for (int i = 0; i < j - 1; i++) {
            if (fabs(f->x[j + 1] - f->x[j]) > 0.5 * chord) continue;  // on to the other side
            if (fabs(f->x[i + 1] - f->x[i]) > 0.5 * chord) continue;
            const double a = side_of(f, i, j), b = side_of(f, i, j + 1);
            const double c = side_of(f, j, i), d = side_of(f, j, i + 1);
            if (!(a * b < 0.0) || !(c * d < 0.0)) continue;
            *first = i;
            *second = j;
            return true;
        }
    }
    return false;
}

static bool runs_clockwise(const lw_section_file *f)
{
    double area = 0.0;
    for (int i = 0; i < f->count; i++) {
        const int j = i + 1 < f->count ? i + 1 : 0;
        area += f->x[i] * f->y[j] - f->x[j] * f->y[i];
    }
    return area < 0.0;
}

static double chord_of(const lw_section_file *f)
{
    double least = f->x[0], most = f->x[0];
    for (int i = 1; i < f->count; i++) {
        least = fmin(least, f->x[i]);
        most = fmax(most, f->x[i]);
    }
    return most - least;
}

static void say_status(const reading *r, lw_profile_status status)
{
    const lw_section_file *f = r->file;
    int first, second;
    char text[64];
    lw_written written = {.file = r->path, .key = "", .text = text};
    LW_FIT(text, "%d points", f->count);
    if (status == LW_PROFILE_CROSSED && crossing_of(f, chord_of(f), &first, &second)) {
        written.line = f->line[second];
        written.column = 1;
        LW_FIT(text, "%g %g", f->x[second], f->y[second]);
        lw_fault *fault = lw_faults_add(r->faults, &written);
        LW_FIT(fault->sentence, "from here the outline crosses what runs from line %zu to %zu",
               f->line[first], f->line[first + 1]);
        LW_FIT(fault->expected, "points once around, from the tail or both sides from the nose");
        return;
    }
    lw_fault *fault = lw_faults_add(r->faults, &written);
    LW_FIT(fault->sentence, "%s", lw_profile_status_text(status));
    if (status == LW_PROFILE_TOO_FEW) LW_FIT(fault->expected, "20 to %d points", LW_OUTLINE_MOST);
}

bool lw_section_file_text(lw_section_file *file, const char *path, char *text, size_t length,
                          lw_faults *faults)
{
    const size_t before = faults->fault_count;
    reading r = {.file = file, .path = path, .faults = faults};
    file->count = 0;
    file->title[0] = '\0';
    tidy(text, &length);
    if (lw_source_is_clean(&(lw_source_text){path, text, length}, faults)) read_lines(&r, text);
    if (faults->fault_count > before) return false;
    drop_counts(file);
    return true;
}

bool lw_section_file_outline(lw_section_file *file, const char *path, lw_outline *outline,
                             lw_faults *faults)
{
    const lw_profile_status status = lw_outline_of_points(file->x, file->y, file->count, outline);
    if (status != LW_PROFILE_OK) {
        say_status(&(reading){.file = file, .path = path, .faults = faults}, status);
        return false;
    }
    file->is_lower_first = !outline->was_reversed && runs_clockwise(file);
    return true;
}

bool lw_section_file_read(lw_section_file *file, const char *path, lw_outline *outline,
                          lw_faults *faults)
{
    size_t length;
    char *text = lw_source_fetch(path, LENGTH_MOST, &length, faults);
    if (!text) return false;
    const bool is_read = lw_section_file_text(file, path, text, length, faults);
    free(text);
    return is_read && lw_section_file_outline(file, path, outline, faults);
}
