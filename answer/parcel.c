// parcel.c - what is handed to the page's script, byte by byte.
// SPDX-License-Identifier: MIT

#include "answer/parcel.h"

#include <stdlib.h>
#include <string.h>

static struct {
    char *bytes;
    size_t length, room;
    bool is_broken;
} parcel;

static bool has_room(size_t count)
{
    if (parcel.length + count <= parcel.room) return true;
    char *more = realloc(parcel.bytes, 2 * parcel.room + count + 4096);
    if (!more) return false;
    parcel.bytes = more, parcel.room = 2 * parcel.room + count + 4096;
    return true;
}

static void put(const void *bytes, size_t count)
{
    parcel.is_broken = parcel.is_broken || !has_room(count);
    if (parcel.is_broken) return;
    memcpy(parcel.bytes + parcel.length, bytes, count);
    parcel.length += count;
}

static void put_key(char letter, const char *key)
{
    put(&letter, 1);
    put(key, strlen(key) + 1);
}

const char *lw_parcel_bytes(size_t *length)
{
    *length = parcel.length;
    return parcel.is_broken ? NULL : parcel.bytes;
}

void lw_parcel_begin(void) { parcel.length = 0, parcel.is_broken = false; }

void lw_parcel_object(const char *key) { put_key('o', key); }
void lw_parcel_list(const char *key) { put_key('l', key); }
void lw_parcel_end(void) { put("e", 1); }

void lw_parcel_number(const char *key, double x)
{
    put_key('n', key);
    put(&x, sizeof x);
}

void lw_parcel_text(const char *key, const char *text)
{
    put_key('t', key);
    put(text, strlen(text) + 1);
}

void lw_parcel_truth(const char *key, bool is_so)
{
    put_key('b', key);
    put(is_so ? "\1" : "", 1);
}

void lw_parcel_array(const char *key, size_t count)
{
    put_key('a', key);
    lw_parcel_array_number((double)count);
}

void lw_parcel_array_number(double x) { put(&x, sizeof x); }

void lw_parcel_rows(const char *key, const lw_table *table, const void *data)
{
    lw_parcel_object(key);
    for (size_t i = 0; i < table->count; i++) {
        lw_parcel_number(table->rows[i].key, lw_quantity_value(&table->rows[i], data));
    }
    lw_parcel_end();
}

// --- the teller's face

static void put_told(char letter, const char *key, const char *head)
{
    put_key(letter, key);
    if (head)
        put("\1", 1), put(head, strlen(head) + 1);
    else
        put("", 1);
}

static void open(void *to, lw_branch branch, const char *key, const char *head)
{
    (void)to;
    put_told(branch == LW_LIST ? 'L' : 'O', key, head);
}

static void close(void *to, lw_branch branch)
{
    (void)to, (void)branch;
    put("e", 1);
}

static void number(void *to, const lw_item *item, double told, const char *shown)
{
    (void)to;
    put_told('N', item->key, item->head);
    put(shown, strlen(shown) + 1);
    put(&told, sizeof told);
}

static void text(void *to, const lw_item *item, const char *words)
{
    (void)to;
    put_told(words ? 'T' : 'Z', item->key, item->head);
    if (words) put(words, strlen(words) + 1);
}

static void truth(void *to, const lw_item *item, bool is_so)
{
    (void)to;
    put_told('B', item->key, item->head);
    put(is_so ? "\1" : "", 1);
}

lw_teller lw_parcel_teller(lw_unit speed_unit)
{
    static const lw_teller_face face = {true, open, close, NULL, number, text, truth};
    lw_teller teller = lw_teller_of(&face, NULL);
    teller.speed_unit = speed_unit;
    return teller;
}
