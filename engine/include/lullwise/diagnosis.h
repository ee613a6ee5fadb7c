// diagnosis.h - reading the boat: what she is likely to be, what to move.
// SPDX-License-Identifier: MIT
//
//     lw_scene_prepare(&scene, &craft, &boat, &wind, course)   each pin as trimmed for this wind
//     lw_diagnose(&scene, &told, &seen, &found)                causes, the likeliest first
//     lw_remedies_of(&scene, &found, remedies)                 what to move

#ifndef LW_DIAGNOSIS_H
#define LW_DIAGNOSIS_H

#include "lullwise/signs.h"

// What is told of the levers; the rest is taken as it should be.
typedef struct lw_known {
    bool has_pin, has[LW_LEVERS];
    size_t pin;
    lw_levers levers;
} lw_known;

// What an eye, a phone or an instrument reads, in the rows of lw_flight.
typedef enum lw_eye { LW_EYE_BOW, LW_EYE_HEIGHT, LW_EYE_WAND, LW_EYE_SPEED, LW_EYES } lw_eye;
double lw_eye_of(lw_eye eye, const lw_flight *flight);  // what it would read
double lw_eye_error(lw_eye eye);                        // how well, one sigma

// What is seen: signs, and numbers where there are any.
typedef struct lw_signs_seen {
    lw_sign_set set;
    bool has[LW_EYES];
    double read[LW_EYES];  // in the mean wind
} lw_signs_seen;

typedef struct lw_cause {
    lw_lever lever;
    bool is_more;      // more of it than there should be
    double chance;     // of all that was weighed
    double factor;     // Bayes factor against nothing wrong
    double off;        // how far it is off, likeliest, in SI
    lw_stance stance;  // the boat so
} lw_cause;

#define LW_CAUSES_MOST ((size_t)2 * LW_LEVERS)
typedef struct lw_diagnosis {
    bool knows_pin;          // it was told: what is put right starts from it
    lw_stance told, should;  // as told; as she should be sailed
    double nothing;          // chance that nothing is off: it belongs to this wind
    size_t count;
    lw_cause causes[LW_CAUSES_MOST];  // likeliest first
    lw_signs_seen seen;
} lw_diagnosis;

void lw_diagnose(lw_scene *scene, const lw_known *told, const lw_signs_seen *seen,
                 lw_diagnosis *found);

// --- remedies

typedef struct lw_remedy {
    lw_lever lever;
    bool is_more;
    double by;       // how far, in SI
    double turns;    // with LW_LEVER_PIN: turns then, less those now
    bool rights;     // puts right what is likeliest off
    bool is_enough;  // the signs go and the margins are kept
    double left;     // chance of the signs afterwards, of their chance before
    lw_stance before, after;
} lw_remedy;

// What to move, of trim first, then of set-up; the first in each that is enough before those that
// only help. Returns how many.
#define LW_REMEDIES_MOST ((size_t)2 * LW_LEVERS)
size_t lw_remedies_of(lw_scene *scene, const lw_diagnosis *found,
                      lw_remedy remedies[LW_REMEDIES_MOST]);

#endif
