// signs.h - reading the boat: what a sailor sees of her, what it is likely to be, what to move.
// SPDX-License-Identifier: MIT
//
//     lw_scene_prepare(&scene, &craft, &boat, &wind, course)   each pin as trimmed for this wind
//     lw_diagnose(&scene, &told, &seen, &found)                causes, the likeliest first
//     lw_remedies_of(&scene, &found, remedies)                 what to move
//
// All states are steady flights in the lull, the mean wind and the puff, with nothing moved from
// one to the next but heel, sheet and body: what trim and set-up make of her by themselves.

#ifndef LW_SIGNS_H
#define LW_SIGNS_H

#include <stdint.h>

#include "lullwise/day.h"
#include "lullwise/range.h"

// --- levers: what is moved afloat, and what is set ashore

typedef struct lw_levers {
    double turns;    // [turns] rudder lift on from the mark
    double place;    // [m]     sailor's, from the transom
    double heel;     // [rad]   windward, in the mean wind; in lull and puff as far off it as usual
    double sail;     // [-]     fullness: lift that the sail can give / the measured sail's
    double pin;      // [rad]   main foil's incidence
    double rod;      // [rad]   flap added by the ride-height rod
    double wand;     // [m]     its length
    double gearing;  // [-]
    double wind;     // [-]     true / as told: nobody moves it, but it may be what is off
} lw_levers;

// clang-format off
#define LW_LEVER_LIST(X) \
    X(TURNS) X(PLACE) X(HEEL) X(SAIL) X(PIN) X(ROD) X(WAND) X(GEARING) X(WIND)
// clang-format on
#define LW_AS_LEVER(name) LW_LEVER_##name,
typedef enum lw_lever { LW_LEVER_LIST(LW_AS_LEVER) LW_LEVERS } lw_lever;

extern const lw_table lw_levers_table;

// What is known of a lever beside its quantity.
typedef struct lw_lever_row {
    double often;          // prior odds that it is the one thing wrong, beside the others' [judged]
    double usual;          // how far it then is off, one sigma, in SI                     [judged]
    double doubt;          // chance that what is told of it is as wrong as if nothing were [judged]
    double step, most;     // by which it is moved, and how far at most, in SI             [judged]
    double trouble;        // of moving it by `usual`, beside the others                   [judged]
    bool is_trim;          // moved afloat
    const char *too_much;  // "too much rudder lift is on"
    const char *too_little;
    const char *more;  // "wind rudder lift on"
    const char *less;
    const char *check;  // how to see whether it is off: "count the turns back to the mark"
} lw_lever_row;

const lw_lever_row *lw_lever_of(lw_lever lever);
double lw_lever_get(const lw_levers *levers, lw_lever lever);
void lw_lever_put(lw_levers *levers, lw_lever lever, double si);

// What of the levers is fixed while sailing; and the craft with the sail as full as they say, in
// the room given where it is not the craft itself. Lift and drag go with fullness.  [judged]
lw_setup lw_levers_setup(const lw_levers *levers);
const lw_craft *lw_levers_craft(const lw_levers *levers, const lw_craft *craft, lw_craft *room);

// --- a stance: how the levers stand, and what comes of it in lull, mean and puff

enum { LW_IN_LULL, LW_IN_MEAN, LW_IN_PUFF, LW_IN_WINDS };

// An answer without balance has the flight and margins that were reached on the way to it.
typedef struct lw_stance {
    lw_levers levers;
    size_t pin;  // sought from this pin's own trim, the pin in the boat
    lw_answer at[LW_IN_WINDS];
    double hump;     // [m/s^2] spare through the hump on a reach, in the mean wind; NAN: not sought
    double damping;  // [-]     of the swing of height and pitch; NAN: not sought
} lw_stance;

// Flies in the lull, keeps its margins in the mean wind, and rides the puff out.
bool lw_stance_is_kept(const lw_stance *stance);

// What a sailor could see of a stance, beside how she should fly: the bow as with that pin, height
// and speed as with the pin that fits the wind best.
typedef struct lw_seen {
    double bow;         // [rad]    up, more than she should
    double level;       // [rad]    bow above level
    double height;      // [m]      higher than she should
    double travel;      // [rad]    wand travel left before the linkage's stop, as the puff hits
    double tip;         // [chords] margin of the main foil's tip, as the puff hits
    double stern_tip;   // [chords] the same of the rudder foil
    double clearance;   // [m]      hull above the water, in the lull
    double lift_left;   // [rad]    flap travel down that is left, in the lull
    double power_left;  // [-]      of the sail's power that can be taken off, as the puff hits
    double sitting;     // [-]      effort in the lull: below 0 she would sit to leeward
    double speed;       // [-]      of what it should be, less 1
    double hump;        // [m/s^2]  spare through the hump
    double damping;     // [-]      of height and pitch
} lw_seen;
extern const lw_table lw_seen_table;

// --- signs: one table says what each looks for

// clang-format off
// One line makes the code, the key and the words of a sign.
#define LW_SIGN_LIST(X)                                                                      \
    X(BOW_UP,     "bow-up",      "bow up, stern low")                                        \
    X(BOW_DOWN,   "bow-down",    "bow down")                                                 \
    X(NOSE_RISES, "nose-rises",  "bow down and still rising, wand at its stop")              \
    X(RISES,      "rises",       "rises bodily, wand near its stop")                         \
    X(HOPS,       "hops",        "hops")                                                     \
    X(LOW,        "low",         "rides low")                                                \
    X(TOUCHES,    "touches",     "touches down")                                             \
    X(STAYS_DOWN, "stays-down",  "won't take off")                                           \
    X(DROPS,      "drops",       "drops in lulls")                                           \
    X(BREACHES,   "breaches",    "breaches in puffs")                                        \
    X(SPINS,      "spins",       "the stern lets go and she spins")                          \
    X(BOW_DROPS,  "bow-drops",   "the bow drops suddenly")                                   \
    X(LEEWARD,    "leeward",     "heels to leeward")                                         \
    X(WINDWARD,   "windward",    "heels to windward in lulls")                               \
    X(SLOW,       "slow",        "slow though she flies")
// clang-format on
#define LW_AS_SIGN(name, key, text) LW_SIGN_##name,
typedef enum lw_sign { LW_SIGN_LIST(LW_AS_SIGN) LW_SIGNS } lw_sign;
const char *lw_sign_key(lw_sign sign);
const char *lw_sign_text(lw_sign sign);
const char *lw_sign_stop(lw_sign sign);   // what says: give the pin up, or go in
lw_sign lw_sign_named(const char *text);  // its key or its words, in any case; LW_SIGNS: none
lw_sign lw_sign_nearest(const char *key);

typedef uint32_t lw_sign_set;  // 1 << sign
#define LW_SIGN_BIT(sign) ((lw_sign_set)1 << (sign))

// How likely a sailor calls it so when she sees this: 0 to 1.
double lw_sign_chance(lw_sign sign, const lw_seen *seen);

// Two that cannot both be told of one boat; false: there are none.
bool lw_signs_clash(lw_sign_set set, lw_sign *one, lw_sign *other);

// --- a scene: boat, sailor and wind, each pin as it should be trimmed

typedef struct lw_scene {
    const lw_craft *craft;
    const lw_boat *boat;
    lw_wind wind;
    lw_course course;
    bool wants_hump, wants_damping;          // sought too
    lw_stance own[LW_PINS_MOST];             // each pin, trimmed for the mean wind
    lw_ask asks[LW_PINS_MOST][LW_IN_WINDS];  // that give them
    size_t proper;                           // the pin that fits this wind best
    lw_craft fuller;                         // room to work in
} lw_scene;

// About 10 ms a pin. `craft` and `boat` must outlive it.
void lw_scene_prepare(lw_scene *scene, const lw_craft *craft, const lw_boat *boat,
                      const lw_wind *wind, lw_course course);

// Stances from their pins and levers, n side by side.
void lw_scene_stances(lw_scene *scene, lw_stance *stances, size_t n);

lw_seen lw_seen_of(const lw_scene *scene, const lw_stance *stance);

// Least mean wind [m/s], as told or more, that lifts a stance through the hump on a reach; 0: none
// up to 8 kn more.
double lw_scene_takes_off(lw_scene *scene, const lw_stance *stance);

// --- a diagnosis

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
