// track.h - `lullwise track`: what a sailed track tells.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_TRACK_H
#define LW_ANSWER_TRACK_H

#include "answer/question.h"
#include "lullwise/range.h"
#include "lullwise/track_summary.h"
#include "records/track/track_file.h"

#define LW_TRACKED_EVENTS 4000  // kept; more are only counted

// Asked by the program, which has files, and by the desk, which is sent them.
extern const lw_question lw_question_track;

// What the model has for the boat that was given.
typedef struct lw_tracked_model {
    bool is_asked;
    size_t pin;
    double wind;  // [m/s] the day's mean
    lw_craft craft;
    lw_setup setup;
    double lifts_off;               // [m/s] speed at which she does on a reach; NAN: she does not
    double slowest;                 // [m/s] steady flight upwind with all margins kept; NAN: none
    double speed[LW_TRACK_ANGLES];  // [m/s] in the middle of each angle; NAN: no margins kept
} lw_tracked_model;

typedef struct lw_tracked {
    const lw_inputs *inputs;
    lw_unit speed_unit;
    FILE *const *streams;  // of the operands, put there before; NULL: they are paths
    const char *name;      // of the first file
    size_t file_count;
    lw_track_file file;
    lw_track track;
    double asked;  // [rad] where the wind comes from, as given; NAN: not given
    lw_tracked_model model;
    lw_track_event list[LW_TRACKED_EVENTS];
    lw_track_events events;
    lw_track_room *room;
    lw_track_summary found;
} lw_tracked;

// The faces of the question.
bool lw_tracked_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                      lw_refusal *refusal);
size_t lw_tracked_steps(void *it);
void lw_tracked_step(void *it, size_t step);
bool lw_tracked_are_apart(const void *it);
void lw_tracked_end(void *it);
void lw_tracked_release(void *it);
void lw_tracked_tell(const void *it, lw_teller *teller);
void lw_tracked_draw(const void *it, FILE *out);
void lw_tracked_map(const void *it, FILE *out);
void lw_tracked_log(const void *it, FILE *out);

// Where the wind comes from as instruments tell it [rad]; NAN: they do not, or too seldom.
double lw_tracked_told_wind(const lw_track_told_wind *told);

// What was sailed, when and for how long; and where the wind is from, how it is known.
#define LW_TRACKED_LENGTH 400
void lw_tracked_head(const lw_tracked *tracked, char text[LW_TRACKED_LENGTH]);
void lw_tracked_wind_text(const lw_tracked *tracked, char text[LW_TRACKED_LENGTH]);

#endif
