// told_json.c - the teller's face that writes JSON.
// SPDX-License-Identifier: MIT

#include "command/told_json.h"

#include <jansson.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#define DIGITS 12  // so that 0.98 m does not come out as 0.97999999999999998

typedef struct told_json {
    json_t *open[2 * LW_TELLER_DEPTH];  // a table opens two
    size_t depth;
} told_json;

// Into what is open: a list, or an object under a key. Takes the reference.
static void put(told_json *told, const char *key, json_t *value)
{
    json_t *into = told->open[told->depth - 1];
    if (json_is_array(into))
        json_array_append_new(into, value);
    else
        json_object_set_new(into, key, value);
}

static void open(void *to, lw_branch branch, const char *key, const char *head)
{
    told_json *told = to;
    json_t *value = branch == LW_LIST ? json_array() : json_object();
    (void)head;
    put(told, key, value);
    told->open[told->depth++] = value;
}

static void close(void *to, lw_branch branch)
{
    (void)branch;
    ((told_json *)to)->depth--;
}

static void number(void *to, const lw_item *item, double number, const char *shown)
{
    (void)shown;
    put(to, item->key, isfinite(number) ? json_real(number) : json_null());
}

static void text(void *to, const lw_item *item, const char *text)
{
    put(to, item->key, text ? json_string(text) : json_null());
}

static void truth(void *to, const lw_item *item, bool is_so)
{
    put(to, item->key, json_boolean(is_so));
}

static const lw_teller_face face = {false, open, close, NULL, number, text, truth};

// All of it with a closing newline; drops the reference.
static bool write_all(json_t *json, FILE *out)
{
    char *text = json ? json_dumps(json, JSON_INDENT(2) | JSON_REAL_PRECISION(DIGITS)) : NULL;
    json_decref(json);
    if (!text) return false;
    const size_t length = strlen(text);
    const bool is_written =
        fwrite(text, 1, length, out) == length && fputc('\n', out) != EOF && fflush(out) == 0;
    free(text);
    return is_written;
}

bool lw_told_json_write(lw_tell *tell, const void *it, FILE *out)
{
    told_json told = {.open = {json_object()}, .depth = 1};
    lw_teller teller = lw_teller_of(&face, &told);
    tell(it, &teller);
    lw_teller_finish(&teller);
    return write_all(told.open[0], out);
}
