// teller.h - an answer is told once, as a tree; a face writes it down: text, JSON or the page.
// SPDX-License-Identifier: MIT
//
//     lw_tell_object(teller, "wind", "Wind");             a heading where it is shown
//     lw_tell_number(teller, &mean, day->wind.mean);      SI in; told in the item's unit
//     lw_tell_end(teller);
//     lw_tell_table(teller, "pins", "Pins", columns, 2);
//     lw_tell_row(teller);                                then a member for each column, in order
//     lw_tell_text(teller, NULL, label);
//     lw_tell_number(teller, NULL, held_up_to);
//     lw_tell_end(teller);
//
// Key, head, unit and digits stand in an item, once. A face adds layout, never a word or a digit.
// Every face is told the same members with the same bits; a person is shown those that have a head.

#ifndef LW_TELLER_H
#define LW_TELLER_H

#include "lullwise/quantity.h"

// How a number is shown.
typedef enum lw_form {
    LW_AS_NUMBER,  // "12.3 kn"
    LW_AS_SIGNED,  // "+1.2 turns"
    LW_AS_BARE,    // "12.3", its unit under the head
    LW_AS_CHANGE,  // "+1.2", the unit in the heading
    LW_AS_TIME,    // "6 min 05 s"
    LW_AS_CHANCE,  // "78 %", "over 95 %"
    LW_AS_ERROR,   // "± 0.2": stands behind the number before it
    LW_AS_TEXT,    // no number
    LW_AS_TRUTH,   // yes or no
} lw_form;

// A member: what it is called and how it is shown.
typedef struct lw_item {
    const char *key;   // in JSON and in the parcel
    const char *head;  // over its column, or before it; "": shown bare; NULL: not shown
    lw_form form;
    lw_unit unit;      // told and shown in it; of speeds: the teller's
    int digits;        // behind the point
    const char *none;  // shown for what is not there; NULL: "-"
} lw_item;

// What a quantity table knows of one; the head is the caller's.
lw_item lw_item_of(const lw_quantity *row, const char *head);

typedef enum lw_branch { LW_OBJECT, LW_LIST, LW_TABLE, LW_ROW } lw_branch;

// A face. `key` is "" in a list and for a row. What is not there is NAN, or a text that is NULL.
typedef struct lw_teller_face {
    bool shows;  // it wants numbers as they are shown, too; else `shown` may be empty
    void (*open)(void *to, lw_branch branch, const char *key, const char *head);
    void (*close)(void *to, lw_branch branch);
    void (*columns)(void *to, const lw_item *columns, size_t count);  // for a face that tells
        // people alone; NULL: all is told, the columns as members
    void (*number)(void *to, const lw_item *item, double told, const char *shown);
    void (*text)(void *to, const lw_item *item, const char *text);
    void (*truth)(void *to, const lw_item *item, bool is_so);
} lw_teller_face;

#define LW_TELLER_DEPTH       12
#define LW_TABLE_COLUMNS_MOST 40
#define LW_UNITS_MOST         64

typedef struct lw_teller {
    const lw_teller_face *face;
    void *to;            // the face's own
    lw_unit speed_unit;  // of speeds; LW_UNIT_NONE: as each item says
    size_t depth;
    struct lw_level {
        lw_branch branch;
        bool is_hidden;          // not shown, nor what stands inside
        const lw_item *columns;  // of a table and its rows
        size_t column_count, at;
        const char *unit_keys[LW_UNITS_MOST];  // of an object: numbers that have a unit
        lw_unit units[LW_UNITS_MOST];
        size_t unit_count;
    } levels[LW_TELLER_DEPTH];
} lw_teller;

// Tells an answer.
typedef void lw_tell(const void *it, lw_teller *teller);

lw_teller lw_teller_of(const lw_teller_face *face, void *to);  // opens the root
void lw_teller_finish(lw_teller *teller);                      // closes it

// Nothing that is hidden need be told: long tables for programs may be left out.
bool lw_teller_is_for_people(const lw_teller *teller);

// Opened and closed in turn. A list holds texts or objects; `head` as in an item. The units of an
// object's own numbers are told at its end, as "units".
void lw_tell_object(lw_teller *teller, const char *key, const char *head);
void lw_tell_list(lw_teller *teller, const char *key, const char *head);
void lw_tell_table(lw_teller *teller, const char *key, const char *head, const lw_item *columns,
                   size_t count);
#define LW_COUNT_OF(list) (sizeof(list) / sizeof(list)[0])  // of columns
void lw_tell_row(lw_teller *teller);                        // of a table; the row before it ends
void lw_tell_hidden_row(lw_teller *teller);                 // one that nobody is shown
void lw_tell_end(lw_teller *teller);

// One member; in a table's row `item` is NULL and the next column is meant.
void lw_tell_number(lw_teller *teller, const lw_item *item, double si);
void lw_tell_text(lw_teller *teller, const lw_item *item, const char *text);
void lw_tell_truth(lw_teller *teller, const lw_item *item, bool is_so);

// A number shown in other words than its item's: "(+1.2)" where it does not count.
void lw_tell_number_as(lw_teller *teller, const lw_item *item, double si, const char *shown);

#define LW_NOTE "\n"  // the head of a note

// A number that does not count here: shown in brackets.
void lw_tell_bracketed(lw_teller *teller, const lw_item *item, double si);

// A sentence: shown bare, under a key. A note stands close behind what it is about.
void lw_tell_sentence(lw_teller *teller, const char *key, const char *text);
void lw_tell_note(lw_teller *teller, const char *key, const char *text);

// Members that nobody is shown.
void lw_tell_name(lw_teller *teller, const char *key, const char *text);
void lw_tell_flag(lw_teller *teller, const char *key, bool is_so);
void lw_tell_rows(lw_teller *teller, const char *key, const lw_table *table, const void *data);

// As it is shown, unit and all.
#define LW_SHOWN_LENGTH 48
void lw_item_show(const lw_item *item, double told, char text[LW_SHOWN_LENGTH]);

#endif
