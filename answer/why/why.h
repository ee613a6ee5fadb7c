// why.h - `lullwise why`: what the boat is doing, what that is likely to be, and what to move.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_WHY_H
#define LW_ANSWER_WHY_H

#include "answer/question.h"
#include "lullwise/diagnosis.h"

typedef struct lw_why {
    const lw_inputs *inputs;
    lw_craft craft;
    lw_wind wind;
    lw_course course;
    lw_course_kind kind;
    bool has_heading;
    lw_known known;
    lw_signs_seen seen;
    double width;  // [px] of the picture; 0: as it comes
    // answered
    lw_scene scene;
    lw_diagnosis found;
    lw_remedy remedies[LW_REMEDIES_MOST];
    size_t remedy_count;
    double takes_off;  // [m/s] least wind on a reach, where she stays down; 0: none
    size_t taken_off;  // the pin that does
    lw_stance eased;   // the likeliest state with a tenth of the sail's power in use taken off
} lw_why;

// The faces of the question.
bool lw_why_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                  lw_refusal *refusal);
void lw_why_end(void *it);
bool lw_why_is_answered(const void *it);
void lw_why_tell(const void *it, lw_teller *teller);
void lw_why_draw(const void *it, FILE *out);

// Some pin flies in this wind on this heading, so that a flight can be read at all.
bool lw_why_flies(const lw_why *why);
bool lw_why_stays_down(const lw_why *why);  // it is told that she does

// Before and after the first remedy; where there is one.
void lw_why_tell_change(const lw_why *why, lw_teller *teller);

// The likeliest state: what the remedies start from.
const lw_stance *lw_why_state(const lw_why *why);

// "too little rudder lift is on, by about 2.0 turns". No full stop.
#define LW_WHY_LENGTH 300
void lw_why_cause(const lw_why *why, const lw_cause *cause, char text[LW_WHY_LENGTH]);

#endif
