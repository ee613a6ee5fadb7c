// page.h - the engine behind the page: records held between calls, and what the script may call.
// SPDX-License-Identifier: MIT

#ifndef LW_WEB_PAGE_H
#define LW_WEB_PAGE_H

#include "answer/question.h"
#include "records/record_file.h"

// Names a function for the script; in a native build it is an ordinary function.
#ifdef __wasm__
#define LW_EXPORT(name) __attribute__((export_name(#name)))
#else
#define LW_EXPORT(name)
#endif

enum { LW_WEB_BOAT, LW_WEB_SAILOR, LW_WEB_DAY, LW_WEB_RECORDS };  // in the order of lw_records

// Boat, sailor and day that questions are asked of. Two can be compared.
#define LW_WEB_SLOTS 2
typedef struct lw_web_slot {
    lw_inputs inputs;
    lw_unit speed_unit;  // of winds and speeds in sentences; LW_UNIT_NONE: knots
    bool is_settled;     // the day's lull, mean and puff are there
    unsigned changes;    // counts the records read into it
} lw_web_slot;

extern lw_web_slot lw_web_slots[LW_WEB_SLOTS];

// Where the script writes what a call reads, and some calls leave bytes: so many of them. Never
// NULL; what is there stays when it grows.
char *lw_web_room(size_t bytes);

// Rows, units, words: all that forms and tables are made of. Once, when the page opens.
void lw_web_tables(void);

// Reads a file from the room: its name, a zero, its text. record: its index, or -1: found out.
// Parcel: record, is_sound, faults (doubts too), `written` as the file has it, `values` in SI.
void lw_web_read(int slot, int record, size_t length);

// Puts what was learned of a boat, a file of --learned in the room, into the slot's boat, sailor
// and day as they were just read, if it was learned of her. Parcel: is_sound, faults, told.
void lw_web_learn(int slot, size_t length);

// The unit of speeds in sentences; its name stands in the room.
void lw_web_speak(int slot);

// Parcel: text, the file that explains every value.
void lw_web_write(int slot, int record);

// The sections of a slot's boat, which take longest. Parcel: size [bytes] of a polar; sections,
// main foil first, each with a key that is another where the polar is, and its number of rows. A
// row stands in the room after it was worked out; with all rows in the room `polar` leaves there
// the polar; with both polars in the room the boat is taken to have them. Any worker may do any of
// it.
void lw_web_sections(int slot);
size_t lw_web_row_size(void);
size_t lw_web_polar_size(void);
void lw_web_row(int slot, int name, int number);
void lw_web_polar(int slot, int name);
void lw_web_sections_take(int slot);

// A question of answer/question.h asked of a slot: in the room its name, then options and their
// texts in turn, each closed by a zero. Returns whether it is taken; parcel: is_taken, refusal,
// faults. Then in steps: how many can be done now; one; so many bytes of what it worked out are
// left in the room, if any, and another worker's engine that was asked the same takes them from its
// own. When all are done or taken and no more have come, the answer as one parcel, told as --json
// tells it; or its picture. Each slot has its own.
int lw_web_ask(int slot, size_t length);
int lw_web_ask_steps(int slot);
void lw_web_ask_step(int slot, int step);
size_t lw_web_ask_part(int slot);
void lw_web_ask_take(int slot, int step);
void lw_web_ask_tell(int slot);
void lw_web_ask_draw(int slot);

// What was asked of a slot last, if it was this question; or NULL.
const void *lw_web_asked(int slot, const lw_question *question);

// What differs between what both slots were told to the question `pick`. The room has a pin's label
// for each slot with a zero between them; empty: the first place. Parcel: as `lullwise pick
// --against` tells it.
void lw_web_compare(size_t length);

// Parcel: lull, mean, puff of the day in SI; origin, how they came about, empty where as given.
void lw_web_wind(int slot);

// Parcel: side, foils, drag, each an SVG.
void lw_web_pictures(int slot);

// One flight: what is asked stands in the room as doubles (pin, wind, heading, heel, place, turns),
// NAN for what is to be chosen, and the width of its picture, NAN: none. Parcel: `drawn`, what the
// small pictures need, in SI; picture, an SVG; the rest as `lullwise fly` tells it.
void lw_web_fly(int slot);
// The flight asked last, told with what to try where she does not fly; and the motions about it, as
// `lullwise modes` tells them.
void lw_web_fly_advice(void);
void lw_web_fly_modes(void);

// One ride: what is asked stands in the room as doubles (pin, wind, heading, turns, course, seed,
// seconds, every), NAN for what is to be chosen. Parcel: `drawn`, what the moving picture needs, in
// SI, with its history, rows of a trace and the water along the boat, and the boat's parts; the
// rest as `lullwise ride` tells it.
void lw_web_ride(int slot);

// Winds of some pins as a picture, `picture` in the parcel: what is asked stands in the room
// (web/chart.c).
void lw_web_chart(int slot, size_t length);

// An SVG into the parcel: where it is drawn, and then its key.
FILE *lw_web_drawing(void);
void lw_web_put_drawing(const char *key, FILE *out);

// Into the parcel: faults, left_out; values, a record's texts and numbers in SI.
void lw_parcel_faults(const lw_faults *faults);
void lw_parcel_values(const lw_record *record, void *data);

// Logged days. They are held from one call to the next; the script keeps them, as the columns of
// records/logbook/column.h: key and text in turn, each closed by a zero, what is not told left out.
// In the room stands today's date as in 2030-05-17 and a zero, and behind it
//   take    a day; with `holds` it is held, in the place of the one of its id;
//   begin   an id, then options as of `lullwise log add`, for a slot's boat, sailor and day;
//   change  the id of one that is held, then options as of `lullwise log edit`;
//   csv     a file as `lullwise log export --csv` writes it.
// Parcel: is_sound, faults, `days`: each as its columns. None but `take` changes what is held.
void lw_web_log_take(size_t length, int holds);
void lw_web_log_begin(int slot, size_t length);
void lw_web_log_change(size_t length);
void lw_web_log_csv(size_t length);
void lw_web_log_drop(size_t length);  // the day whose id is in the room

// Told: all that are held, newest first, in the room where they are kept; one, its id in the room:
// `values` in SI, `pins` of the boat as it was, `told`; those most like a slot's day; what an
// import into the place in the room has done.
void lw_web_log_days(size_t length);
void lw_web_log_show(size_t length);
void lw_web_log_near(int slot);
void lw_web_log_imported(size_t length, int added, int known, int different);

// Options and their texts in turn, each closed by a zero. False when one is none.
bool lw_web_options(lw_options *options, const char *at, const char *end);

// What the script reads when a call has ended.
const char *lw_web_parcel(void);
size_t lw_web_parcel_length(void);

#endif
