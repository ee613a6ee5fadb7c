// parcel.c - what a call hands to the script, byte by byte.
// SPDX-License-Identifier: MIT

#include "web/parcel.h"

#include <stdlib.h>
#include <string.h>

#include "web/page.h"

static struct {
    char *bytes;
    size_t length, room;
} parcel;

static void put(const void *bytes, size_t count)
{
    if (parcel.length + count > parcel.room) {
        parcel.room = 2 * parcel.room + count + 4096;
        parcel.bytes = realloc(parcel.bytes, parcel.room);
        if (!parcel.bytes) abort();  // the script starts the engine anew
    }
    memcpy(parcel.bytes + parcel.length, bytes, count);
    parcel.length += count;
}

static void put_key(char letter, const char *key)
{
    put(&letter, 1);
    put(key, strlen(key) + 1);
}

LW_EXPORT(lw_web_parcel) const char *lw_web_parcel(void) { return parcel.bytes; }
LW_EXPORT(lw_web_parcel_length) size_t lw_web_parcel_length(void) { return parcel.length; }

void lw_parcel_begin(void) { parcel.length = 0; }

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

void lw_parcel_rows(const char *key, const lw_table *table, const void *data)
{
    lw_parcel_object(key);
    for (size_t i = 0; i < table->count; i++) {
        lw_parcel_number(table->rows[i].key, lw_quantity_value(&table->rows[i], data));
    }
    lw_parcel_end();
}
