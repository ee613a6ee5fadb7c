// invent.h - `lullwise invent`: a season that nobody sailed, of a boat not quite as measured.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_INVENT_H
#define LW_ANSWER_INVENT_H

#include "answer/question.h"
#include "lullwise/flown.h"
#include "lullwise/hidden.h"
#include "records/logbook/entry.h"

// Asked by the program, which writes files; the page has none.
extern const lw_question lw_question_invent;

#define LW_INVENTED_MOST 200                    // days
#define LW_INVENTED_LEGS (2 * LW_COURSE_COUNT)  // of a day: each course on both tacks
#define LW_INVENTED_LEG  150                    // [s], a fix each

// One fix of a track: how far she goes, and over ground where.
typedef struct lw_invented_fix {
    double speed, angle;  // [m/s], [rad] from the wind, clockwise
} lw_invented_fix;

typedef struct lw_invented_day {
    bool is_sailed;
    double from;  // [rad] where the wind came from
    lw_entry entry;
    lw_invented_fix fixes[LW_INVENTED_LEGS * LW_INVENTED_LEG];
} lw_invented_day;

typedef struct lw_inventing {
    const lw_inputs *inputs;  // as measured
    const lw_sections *sections;
    const char *folder, *why;  // a sentence once a file could not be written
    uint64_t seed;
    bool may_replace, is_written;
    lw_hidden truth;
    size_t count;
    lw_invented_day *days;
} lw_inventing;

// The faces of the question.
bool lw_inventing_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                        lw_refusal *refusal);
size_t lw_inventing_steps(void *it);
void lw_inventing_step(void *it, size_t step);
bool lw_inventing_are_apart(const void *it);
void lw_inventing_end(void *it);
bool lw_inventing_is_answered(const void *it);
void lw_inventing_release(void *it);
void lw_inventing_tell(const void *it, lw_teller *teller);

// One day sailed: rides, what is noted of them with its errors, a track.
void lw_invented_sail(const lw_inventing *inventing, size_t number, lw_invented_day *day);

// Tracks, days.csv and truth.yaml into the folder; false with a sentence in inventing->why.
bool lw_invented_write(lw_inventing *inventing);

#endif
