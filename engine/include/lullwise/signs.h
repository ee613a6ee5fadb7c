// signs.h - what a sailor calls what he sees of her: one table says what each sign looks for.
// SPDX-License-Identifier: MIT

#ifndef LW_SIGNS_H
#define LW_SIGNS_H

#include <stdint.h>

#include "lullwise/scene.h"

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

#endif
