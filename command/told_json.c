// told_json.c - the teller's face that writes JSON.
// SPDX-License-Identifier: MIT

#include "command/told_json.h"

#include <math.h>

// Into what is open: a list, or an object under a key. Takes the reference.
static void put(lw_told_json *told, const char *key, json_t *value)
{
    json_t *into = told->open[told->depth - 1];
    if (json_is_array(into))
        json_array_append_new(into, value);
    else
        json_object_set_new(into, key, value);
}

static void open(void *to, lw_branch branch, const char *key, const char *head)
{
    lw_told_json *told = to;
    json_t *value = branch == LW_LIST ? json_array() : json_object();
    (void)head;
    put(told, key, value);
    told->open[told->depth++] = value;
}

static void close(void *to, lw_branch branch)
{
    (void)branch;
    ((lw_told_json *)to)->depth--;
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

lw_teller lw_told_json_begin(lw_told_json *told)
{
    told->open[0] = json_object();
    told->depth = 1;
    return lw_teller_of(&face, told);
}

json_t *lw_told_json_end(lw_told_json *told, lw_teller *teller)
{
    lw_teller_finish(teller);
    return told->open[0];
}
