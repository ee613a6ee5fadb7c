// signs_table.c - what each sign looks for in the boat's state.
// SPDX-License-Identifier: MIT

#include <stddef.h>
#include <string.h>

#include "lullwise/elementary.h"
#include "lullwise/signs.h"
#include "quantity/tables.h"

#define ROW(member, ...) LW_RESULT(lw_seen, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(bow,        "", DEG,  1, "bow up, more than she should fly"),
    ROW(level,      "", DEG,  1, "bow above level"),
    ROW(height,     "", CM,   0, "ride height, more than she should fly"),
    ROW(travel,     "", DEG,  0, "wand travel left before the linkage's stop, as the puff hits"),
    ROW(tip,        "", NONE, 1, "main foil's higher tip below trough and half a chord, in chords"),
    ROW(stern_tip,  "", NONE, 1, "rudder foil's higher tip, the same"),
    ROW(clearance,  "", CM,   0, "hull above the water in the lull"),
    ROW(lift_left,  "", DEG,  1, "flap travel down that is left in the lull"),
    ROW(power_left, "", NONE, 2, "part of the sail's power that can be taken off in the puff"),
    ROW(sitting,    "", NONE, 2, "the sailor's effort in the lull: 0 sitting in, 1 hiked"),
    ROW(speed,      "", PERCENT, 0, "speed, more than she should go"),
    ROW(hump,       "", MPS,  2, "spare through the hump, each second"),
    ROW(damping,    "", NONE, 2, "of height and pitch"),
};
// clang-format on
LW_TABLE_COVERS(lw_seen, rows);

const lw_table lw_seen_table = {.key = "seen",
                                .title = "What is seen",
                                .rows = rows,
                                .count = sizeof rows / sizeof rows[0],
                                .doc = "What a sailor could see, beside how she should fly."};

// One thing that a sign looks for: `member` at least (or, under, at most) about `from`, told apart
// over `edge`. Edges are those of an eye on a moving boat.  [judged]
typedef struct look {
    size_t member;  // row of lw_seen_table
    enum { NOTHING, OVER, UNDER } side;
    double from, edge;  // in SI
} look;

#define LOOKS 3
#define FOR(member, side, from, edge)                                \
    {                                                                \
        offsetof(lw_seen, member) / sizeof(double), side, from, edge \
    }

typedef struct sign_row {
    look looks[LOOKS];  // all of them
    const char *stop;
    look or_else;  // or this one alone
} sign_row;

#define DEG LW_DEG

// clang-format off
static const sign_row signs[LW_SIGNS] = {
    [LW_SIGN_BOW_UP] = {.looks = {FOR(bow, OVER, 1.5 * DEG, 0.4 * DEG)},
        .stop = "the bow will not come down with two turns more: sit forward, then look at the "
                "pin"},
    [LW_SIGN_BOW_DOWN] = {.looks = {FOR(bow, UNDER, -1.5 * DEG, 0.4 * DEG)},
        .stop = "the bow stays down with two turns off: sit aft, then look at the pin"},
    [LW_SIGN_NOSE_RISES] = {.looks = {FOR(level, UNDER, -1.5 * DEG, 0.5 * DEG),
                                       FOR(travel, UNDER, 11.0 * DEG, 3.0 * DEG)},
        .stop = "it is the sign to give the pin up: she breaches next"},
    [LW_SIGN_RISES] = {.looks = {FOR(height, OVER, 0.05, 0.015),
                                  FOR(travel, UNDER, 14.0 * DEG, 3.0 * DEG),
                                  FOR(bow, OVER, -0.8 * DEG, 0.5 * DEG)},
        .stop = "she rises again with the rudder wound: give the pin up"},
    [LW_SIGN_HOPS] = {.looks = {FOR(damping, UNDER, 0.45, 0.12)},
        .stop = "she hops higher each time: let her down and gear the flap down ashore"},
    [LW_SIGN_LOW] = {.looks = {FOR(height, UNDER, -0.05, 0.015)},
        .stop = "she rides low with the bow level: look at rod and wand, then a pin with more "
                "lift"},
    [LW_SIGN_TOUCHES] = {.looks = {FOR(clearance, UNDER, 0.30, 0.05)},
        .stop = "she touches in every lull: the pin has too little lift for this wind",
        .or_else = FOR(tip, UNDER, -1.0, 0.3)},
    [LW_SIGN_STAYS_DOWN] = {.looks = {FOR(hump, UNDER, 0.02, 0.03)},
        .stop = "no puff lifts her on a reach: a pin with more lift, or sail her on the hull"},
    [LW_SIGN_DROPS] = {.looks = {FOR(lift_left, UNDER, 2.5 * DEG, 1.0 * DEG)},
        .stop = "she drops in every lull: a pin with more lift, if the puffs allow it"},
    [LW_SIGN_BREACHES] = {.looks = {FOR(tip, UNDER, -0.1, 0.15)},
        .stop = "she breaches twice in a leg with the rudder wound: give the pin up"},
    [LW_SIGN_SPINS] = {.looks = {FOR(stern_tip, UNDER, -0.1, 0.15)},
        .stop = "she spins twice in a leg: give the pin up, or go in"},
    [LW_SIGN_BOW_DROPS] = {.looks = {FOR(tip, UNDER, -0.35, 0.15)},
        .stop = "the bow drops twice in a leg: give the pin up, or go in"},
    [LW_SIGN_LEEWARD] = {.looks = {FOR(power_left, UNDER, 0.15, 0.06)},
        .stop = "she lies over with the sheet right out: it is too much wind, go in"},
    [LW_SIGN_WINDWARD] = {.looks = {FOR(sitting, UNDER, 0.15, 0.06)},
        .stop = "she falls to windward though you sit in: sail her flatter"},
    [LW_SIGN_SLOW] = {.looks = {FOR(speed, UNDER, -0.035, 0.012)},
        .stop = "she stays slow with the trim of the table: look at foils for weed and dents"},
};

// Two that nobody sees at once.
static const lw_sign clashes[][2] = {
    {LW_SIGN_BOW_UP, LW_SIGN_BOW_DOWN},     {LW_SIGN_BOW_UP, LW_SIGN_NOSE_RISES},
    {LW_SIGN_NOSE_RISES, LW_SIGN_RISES},    {LW_SIGN_STAYS_DOWN, LW_SIGN_SLOW},
    {LW_SIGN_STAYS_DOWN, LW_SIGN_BREACHES}, {LW_SIGN_STAYS_DOWN, LW_SIGN_HOPS},
    {LW_SIGN_STAYS_DOWN, LW_SIGN_RISES},    {LW_SIGN_STAYS_DOWN, LW_SIGN_NOSE_RISES},
    {LW_SIGN_STAYS_DOWN, LW_SIGN_SPINS},    {LW_SIGN_STAYS_DOWN, LW_SIGN_BOW_DROPS},
    {LW_SIGN_STAYS_DOWN, LW_SIGN_DROPS},    {LW_SIGN_STAYS_DOWN, LW_SIGN_TOUCHES},
    {LW_SIGN_BOW_DOWN, LW_SIGN_RISES},      {LW_SIGN_LOW, LW_SIGN_RISES},
    {LW_SIGN_LOW, LW_SIGN_NOSE_RISES},      {LW_SIGN_STAYS_DOWN, LW_SIGN_LOW},
};
// clang-format on
#define CLASHES (sizeof clashes / sizeof clashes[0])

#define AS_KEY(name, key, text)  key,
#define AS_TEXT(name, key, text) text,
static const char *const keys[] = {LW_SIGN_LIST(AS_KEY)};
static const char *const texts[] = {LW_SIGN_LIST(AS_TEXT)};
const char *lw_sign_key(lw_sign sign) { return keys[sign]; }
const char *lw_sign_text(lw_sign sign) { return texts[sign]; }
const char *lw_sign_stop(lw_sign sign) { return signs[sign].stop; }

lw_sign lw_sign_named(const char *text)
{
    for (int s = 0; s < LW_SIGNS; s++) {  // as the logbook has it, for each of its days
        if (strcmp(text, keys[s]) == 0) return (lw_sign)s;
    }
    for (int s = 0; s < LW_SIGNS; s++) {
        const lw_sign sign = (lw_sign)s;
        if (lw_text_distance(text, lw_sign_key(sign)) == 0) return sign;
        if (lw_text_distance(text, lw_sign_text(sign)) == 0) return sign;
    }
    return LW_SIGNS;
}

lw_sign lw_sign_nearest(const char *key)
{
    int nearest = 0;
    for (int sign = 1; sign < LW_SIGNS; sign++) {
        if (lw_text_distance(key, keys[sign]) < lw_text_distance(key, keys[nearest]))
            nearest = sign;
    }
    return (lw_sign)nearest;
}

static double logistic(double z)
{
    return 1.0 / (1.0 + lw_exp(-(z < -40.0 ? -40.0 : z > 40.0 ? 40.0 : z)));
}

static double look_chance(const look *at, const lw_seen *seen)
{
    const double value = lw_quantity_value(&rows[at->member], seen);
    if (value != value) return 0.0;  // not sought
    const double over = (value - at->from) / at->edge;
    return logistic(1.7 * (at->side == OVER ? over : -over));
}

double lw_sign_chance(lw_sign sign, const lw_seen *seen)
{
    const sign_row *row = &signs[sign];
    double chance = 1.0;
    for (int i = 0; i < LOOKS && row->looks[i].side != NOTHING; i++) {
        chance *= look_chance(&row->looks[i], seen);
    }
    if (row->or_else.side == NOTHING) return chance;
    return 1.0 - (1.0 - chance) * (1.0 - look_chance(&row->or_else, seen));
}

bool lw_signs_clash(lw_sign_set set, lw_sign *one, lw_sign *other)
{
    for (size_t i = 0; i < CLASHES; i++) {
        const lw_sign_set both = LW_SIGN_BIT(clashes[i][0]) | LW_SIGN_BIT(clashes[i][1]);
        if ((set & both) != both) continue;
        *one = clashes[i][0], *other = clashes[i][1];
        return true;
    }
    return false;
}
