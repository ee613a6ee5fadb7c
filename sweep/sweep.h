// sweep.h - a table of answers over any quantities of boat, sailor and day: its points and columns.
// SPDX-License-Identifier: MIT
//
//     lw_sweep_begin(sweep, options, refusal)
//     lw_sweep_worker_new(sweep)                one for each thread
//     lw_sweep_point(worker, k)                 any k below sweep->points, in any order
//
// What a point comes to hangs on the question and its number alone: not on the worker, nor on what
// the worker did before.

#ifndef LW_SWEEP_H
#define LW_SWEEP_H

#include "lullwise/choice_find.h"
#include "lullwise/flown.h"
#include "sweep/lines.h"
#include "sweep/over.h"
#include "sweep/sought.h"

#define LW_SWEEP_OVERS_MOST 8
#define LW_SWEEP_OPTIONS                                                        \
    LW_INPUT_OPTIONS                                                            \
    " over best draws ask pin course seed threads resume svg map output force " \
    "json"

// Of `lullwise-sweep`, on many machines, too.
#define LW_RANKS_OPTIONS LW_SWEEP_OPTIONS " patience"
#define LW_RANKS_DOC                                                                              \
    "On many machines the root hands points out in chunks, works itself, and keeps what comes "   \
    "back. The same table to the bit, whatever the number of ranks and threads. Points of a "     \
    "rank that dies are worked out by others; what takes two ranks down is left as a gap with a " \
    "name, and --resume comes back to it. One thread a rank without --threads."

typedef struct lw_sweep lw_sweep;
typedef struct lw_sweep_worker lw_sweep_worker;

// A column of its own, or all rows of a table.
typedef struct lw_sweep_column {
    const char *key;
    lw_unit unit;
    bool is_text;
    const lw_table *table;  // or NULL
} lw_sweep_column;

#define LW_SWEEP_COLUMNS_MOST 16

// What hardware is the better for: a column on each course, times the sign.
typedef struct lw_sweep_worth {
    const char *what;  // "expected time round the course"
    const char *column[LW_COURSE_COUNT];
    double sign[LW_COURSE_COUNT];
    lw_unit unit;
    bool has_rides;  // so that it hangs on their seeds
} lw_sweep_worth;

// What is asked at every point: its columns, the first of which tells how it came out.
typedef struct lw_sweep_answer {
    const char *name, *doc;
    lw_sweep_column columns[LW_SWEEP_COLUMNS_MOST];  // up to one without key and table
    const char *map;                                 // the column that a map shows
    // What hardware is sought by: the best of a point's lines. NULL: nothing is sought by it.
    const lw_sweep_worth *worth;
    void (*work)(lw_sweep_worker *worker);
} lw_sweep_answer;

extern const lw_sweep_answer *const lw_sweep_answers[];  // NULL behind the last
extern const lw_sweep_answer lw_sweep_choice, lw_sweep_range, lw_sweep_swims, lw_sweep_flight,
    lw_sweep_balance;

struct lw_sweep {
    const lw_options *options;
    lw_inputs inputs;      // where nothing is varied
    lw_sections sections;  // of that boat
    size_t over_count;
    lw_over overs[LW_SWEEP_OVERS_MOST];  // the last goes fastest
    size_t draws;                        // of boat and sailor at each; 0: as measured
    size_t sought_count;
    lw_sought sought[LW_SOUGHT_MOST];  // hardware; the points are those of all its candidates
    const lw_sweep_answer *answer;
    const char *pin;  // label; NULL: all
    lw_course_kind course;
    double seed;
    size_t points;
    uint64_t hash;  // of all that is asked: two that differ have other answers
};

struct lw_sweep_worker {
    const lw_sweep *sweep;
    struct lw_crew *crew;  // that it is of (crew.h)
    size_t point;
    lw_section_store store;
    lw_inputs inputs;  // of the point
    const lw_sections *sections;
    lw_craft craft;
    lw_outlook outlook;
    lw_flown flown;
    lw_range range;
    lw_lines lines;
};

// False: refused. lw_sweep_end either way, behind what was told of the refusal.
bool lw_sweep_begin(lw_sweep *sweep, const lw_options *options, lw_refusal *refusal);
void lw_sweep_end(lw_sweep *sweep);

lw_sweep_worker *lw_sweep_worker_new(const lw_sweep *sweep);  // NULL: no memory
void lw_sweep_worker_free(lw_sweep_worker *worker);

// Works a point out: its lines (lines.h), which stand until the worker's next. NULL: no memory.
const char *lw_sweep_point(lw_sweep_worker *worker, size_t point);

// The lines of a point that is not worked out, with the reason in place of the outcome.
const char *lw_sweep_gap(lw_sweep_worker *worker, size_t point, const char *why);

// Boat, sailor and day of a point. False: they contradict each other, as the faults have it. Then
// boat and sailor as the point draws them.
bool lw_sweep_inputs(const lw_sweep *sweep, size_t point, lw_inputs *inputs, lw_faults *faults);
void lw_sweep_draw(const lw_sweep *sweep, size_t point, lw_inputs *inputs);

// Which value of an axis a point has; of the draws, behind the last.
size_t lw_sweep_at(const lw_sweep *sweep, size_t point, size_t over);

// Where hardware is sought, points are cases (values of --over and draws) of candidates, each with
// the rides of several sets of seeds, of which the search has the first; one where there are no
// rides.
#define LW_SWEEP_CHECKS 4  // sets behind it, by which what was found is judged
size_t lw_sweep_cases(const lw_sweep *sweep);
size_t lw_sweep_sets(const lw_sweep *sweep);
size_t lw_sweep_set(const lw_sweep *sweep, size_t point);
size_t lw_sweep_candidate(const lw_sweep *sweep, size_t point);
double lw_sweep_seed(const lw_sweep *sweep, size_t point);
size_t lw_sweep_own(const lw_sweep *sweep);  // the candidate that the boat is
size_t lw_sweep_first(const lw_sweep *sweep, size_t candidate, size_t set);  // point of it

// What a point's lines are worth: the more the better; NAN: nothing.
double lw_sweep_worth_of(const lw_sweep *sweep, const char *lines);

// For an answer's work: the point's pins, from the first asked for; and a line begun, with the
// point's own cells and the outcome.
void lw_sweep_pins(const lw_sweep_worker *worker, size_t *first, size_t *count);
void lw_sweep_line(lw_sweep_worker *worker, const char *outcome);
void lw_sweep_rows(lw_sweep_worker *worker, const lw_table *table, const void *data);

#endif
