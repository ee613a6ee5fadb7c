// parcel.h - what is handed to the page's script: named numbers, texts, truths, objects and lists.
// SPDX-License-Identifier: MIT
//
// One parcel at a time, written front to back and read by script/parcel.js. Each entry is a letter,
// its key closed by a zero (empty in a list), and for n the eight bytes of a double, for t a text
// closed by a zero, for b one byte, for z nothing (it is not there); for a how many doubles follow,
// as a double, and those; o and l open an object or a list, e closes it (without a key).
//
// Of what a teller tells the letters are capitals. Behind the key stands the head, a one before it
// and a zero behind, or a zero alone where there is none; before the double how it is shown, closed
// by a zero.

#ifndef LW_PARCEL_H
#define LW_PARCEL_H

#include "answer/teller.h"

// Begins a new one; what was in the last is gone. All goes into one object.
void lw_parcel_begin(void);

// So far; it stands until more is put. NULL: there was not enough memory.
const char *lw_parcel_bytes(size_t *length);

void lw_parcel_object(const char *key);
void lw_parcel_list(const char *key);
void lw_parcel_end(void);  // of the object or list opened last

void lw_parcel_number(const char *key, double x);
void lw_parcel_text(const char *key, const char *text);
void lw_parcel_truth(const char *key, bool is_so);

// Many numbers in a row: as many calls of the second follow as the first says.
void lw_parcel_array(const char *key, size_t count);
void lw_parcel_array_number(double x);

// The teller whose face the parcel is: it tells into what is open.
lw_teller lw_parcel_teller(lw_unit speed_unit);

// Every member of a struct under its row's key, in SI.
void lw_parcel_rows(const char *key, const lw_table *table, const void *data);

#endif
