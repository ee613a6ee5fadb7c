// over.c - one quantity, word or file that a sweep is taken over.
// SPDX-License-Identifier: MIT

#include "sweep/over.h"

#include <assert.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "records/record_file.h"

// What was given, and with which option.
typedef struct said {
    const char *option, *text;
} said;

static bool refuse(lw_refusal *refusal, const said *given, const char *why)
{
    return lw_refuse(refusal,
                     "--%s '%s': %s; write KEY=from:to:step, or values with a semicolon between, "
                     "as in person.mass=55:100:5kg or 'aim=race; steady'",
                     given->option, given->text, why);
}

static void copy(char *to, size_t room, const char *from, size_t length)
{
    while (length && *from == ' ') from++, length--;
    while (length && from[length - 1] == ' ') length--;
    lw_text_fit(to, room, "%.*s", (int)length, from);
}

// A number with, or without, a unit behind it.
static bool read_number(const char *text, double *value, char unit[24])
{
    const char *rest;
    if (!lw_decimal_read(text + strspn(text, " "), value, &rest)) return false;
    copy(unit, 24, rest, strlen(rest));
    return lw_unit_of(unit) != LW_UNIT_COUNT || !unit[0];
}

// --- even steps

static bool read_steps(lw_over *over, const char *values)
{
    char parts[3][LW_OVER_TEXT], bare[24];
    double to;
    for (int i = 0; i < 3; i++) {
        const size_t length = strcspn(values, ":");
        copy(parts[i], LW_OVER_TEXT, values, length);
        values += length + (values[length] == ':');
    }
    if (*values) return false;
    if (!read_number(parts[0], &over->from, bare) || bare[0]) return false;
    if (!read_number(parts[1], &to, bare) || bare[0]) return false;
    if (!read_number(parts[2], &over->step, over->unit) || over->step == 0.0) return false;
    const double count = floor((to - over->from) / over->step + 1e-6) + 1.0;
    if (!(count >= 1.0) || !(count <= LW_OVER_MOST)) return false;
    over->count = (size_t)count;
    return over->is_number = true;
}

// --- a list

static const char *in_list(const lw_over *over, size_t i)
{
    const char *at = over->list;
    while (i--) at += strlen(at) + 1;
    return at;
}

// The texts between semicolons, a closing zero behind each; NULL without memory.
static char *cut(const char *values, size_t *count)
{
    char *list = malloc(strlen(values) + 2), *at = list;
    if (!list) return NULL;
    for (*count = 0;; ++*count) {
        const size_t length = strcspn(values, ";");
        copy(at, length + 1, values, length);
        at += strlen(at) + 1;
        if (values[length] == '\0') break;
        values += length + 1;
    }
    ++*count;
    return list;
}

// Where all are numbers: the unit, which the last one alone has, is taken off it. False where
// another has one.
static bool take_unit(lw_over *over)
{
    double value;
    char unit[24];
    const char *rest;
    for (size_t i = 0; i < over->count; i++) {
        if (!read_number(in_list(over, i), &value, unit)) return true;  // words
        if (i + 1 < over->count && unit[0]) return false;
    }
    char *last = (char *)in_list(over, over->count - 1);
    lw_decimal_read(last, &value, &rest);
    last[rest - last] = '\0';
    LW_FIT(over->unit, "%s", unit);
    return over->is_number = true;
}

static bool read_files(lw_over *over, lw_refusal *refusal)
{
    const size_t size = over->record->size;
    assert(over->count > 0);
    over->records = calloc(over->count, size);
    if (!over->records) return lw_refuse(refusal, "there is not enough memory");
    for (size_t i = 0; i < over->count; i++) {
        lw_reading reading = lw_reading_of(over->record, over->records + i * size);
        if (!lw_reading_file(&reading, in_list(over, i), &refusal->faults)) return false;
    }
    return true;
}

static bool read_list(lw_over *over, const said *given, const char *values, lw_refusal *refusal)
{
    over->list = cut(values, &over->count);
    if (!over->list) return lw_refuse(refusal, "there is not enough memory");
    if (over->count > LW_OVER_MOST) return refuse(refusal, given, "these are too many values");
    for (size_t i = 0; i < over->count; i++) {
        if (!in_list(over, i)[0]) return refuse(refusal, given, "a value is missing");
    }
    if (over->record) return read_files(over, refusal);
    return take_unit(over) || refuse(refusal, given, "the unit stands behind the last value alone");
}

// --- both

bool lw_over_read(lw_over *over, const char *option, const char *text, lw_refusal *refusal)
{
    const said given = {option, text};
    const char *equals = strchr(text, '=');
    *over = (lw_over){0};
    if (!equals) return refuse(refusal, &given, "a = is missing");
    copy(over->key, sizeof over->key, text, (size_t)(equals - text));
    over->record = lw_record_named(over->key);
    const bool has_steps = !over->record && strchr(equals, ':') && !strchr(equals, ';');
    if (!over->key[0]) return refuse(refusal, &given, "the key is missing");
    if (has_steps)
        return read_steps(over, equals + 1) || refuse(refusal, &given, "these are no steps");
    return read_list(over, &given, equals + 1, refusal);
}

void lw_over_release(lw_over *over)
{
    free(over->list);
    free(over->records);
    *over = (lw_over){0};
}

void lw_over_value(const lw_over *over, size_t i, char text[LW_OVER_TEXT])
{
    if (over->list) {
        lw_text_tame(text, LW_OVER_TEXT, in_list(over, i));
        return;
    }
    const double value = over->from + (double)i * over->step;
    lw_text_fit(text, LW_OVER_TEXT, "%.12g", fabs(value) < 1e-9 * fabs(over->step) ? 0.0 : value);
}

void lw_over_assignment(const lw_over *over, size_t i, char text[LW_OVER_TEXT])
{
    char value[LW_OVER_TEXT];
    lw_over_value(over, i, value);
    lw_text_fit(text, LW_OVER_TEXT, "%s=%s%s%s", over->key, value, over->unit[0] ? " " : "",
                over->unit);
}
