// modes.c - motions near a balance, from the eigenvalues of its linearised system.
// SPDX-License-Identifier: MIT

#include "lullwise/modes.h"

#include <math.h>

#include "lullwise/elementary.h"
#include "motion/linear/system.h"

#define AS_KEY(name, key, text)  key,
#define AS_TEXT(name, key, text) text,
static const char *const keys[] = {LW_PART_LIST(AS_KEY)};
static const char *const texts[] = {LW_PART_LIST(AS_TEXT)};
const char *lw_part_key(lw_part part) { return keys[part]; }
const char *lw_part_text(lw_part part) { return texts[part]; }

// --- in numbers

static void put_rates(lw_swing *swing, lw_complex value)
{
    const double size = sqrt(value.re * value.re + value.im * value.im);
    swing->growth = value.re;
    swing->natural = size / (2.0 * LW_PI);
    swing->period = value.im > 0.0 ? 2.0 * LW_PI / value.im : INFINITY;
    swing->damping = size > 0.0 ? -value.re / size : 0.0;
    swing->halves = value.re < 0.0 ? lw_log(0.5) / value.re : INFINITY;
    swing->doubles = value.re > 0.0 ? lw_log(2.0) / value.re : INFINITY;
}

// What a sailor just notices.  [judged]
typedef struct noticed {
    size_t state, member;  // in lw_ride_state and lw_swing
    double least;
} noticed;

#define NOTICED(seen, in, least)                                            \
    {                                                                       \
        LW_STATE_AT(seen), offsetof(lw_swing, in) / sizeof(double), (least) \
    }
static const noticed seen[] = {
    NOTICED(surge, speed, 0.5 * LW_KN),  NOTICED(height, height, 0.05),
    NOTICED(pitch, pitch, 1.0 * LW_DEG), NOTICED(heel, heel, 3.0 * LW_DEG),
    NOTICED(bow, course, 3.0 * LW_DEG),  NOTICED(wand, wand, 5.0 * LW_DEG),
    NOTICED(helm, helm, 2.0 * LW_DEG),
};
#define SEEN (sizeof seen / sizeof seen[0])

double lw_swing_noticed(size_t row)
{
    for (size_t i = 0; i < SEEN; i++) {
        if (seen[i].member == row) return seen[i].least;
    }
    return 0.0;
}

// How far each goes, from the vector's sizes by state.
static void put_shape(lw_swing *swing, const double size[LW_RIDE_STATES])
{
    double most = 0.0;
    for (size_t i = 0; i < SEEN; i++) most = fmax(most, size[seen[i].state] / seen[i].least);
    for (size_t i = 0; i < SEEN; i++) {
        ((double *)swing)[seen[i].member] = most > 0.0 ? size[seen[i].state] / most : 0.0;
    }
}

static void put_names(lw_mode *mode)
{
    mode->first = mode->second = (lw_part)0;
    for (int i = 1; i < LW_PARTS; i++) {
        if (mode->share[i] > mode->share[mode->first]) mode->first = (lw_part)i;
    }
    if (mode->first == 0) mode->second = (lw_part)1;
    for (int i = 0; i < LW_PARTS; i++) {
        const bool is_more = mode->share[i] > mode->share[mode->second];
        if (i != (int)mode->first && is_more) mode->second = (lw_part)i;
    }
}

static bool put_mode(const lw_linear_system *linear, lw_complex value, lw_mode *mode)
{
    double size[LW_RIDE_STATES];
    put_rates(&mode->swing, value);
    if (!lw_linear_system_shares(linear, value, size, mode->share)) return false;
    put_shape(&mode->swing, size);
    put_names(mode);
    return true;
}

// A boat that takes longer to double a motion is steady: the wind changes sooner.  [judged]
#define DOUBLES_AT_LEAST 600.0  // [s]

// Slowest to die away first.
static void sort(lw_modes *modes)
{
    for (size_t i = 1; i < modes->count; i++) {
        const lw_mode mode = modes->mode[i];
        size_t k = i;
        for (; k > 0 && modes->mode[k - 1].swing.growth < mode.swing.growth; k--) {
            modes->mode[k] = modes->mode[k - 1];
        }
        modes->mode[k] = mode;
    }
}

void lw_modes_of(const lw_motion *motion, const lw_ride_plan *plan, lw_hands hands, lw_modes *modes)
{
    lw_linear_system linear;
    lw_complex values[LW_EIGEN_MOST];
    modes->count = 0, modes->is_steady = true;
    if (!lw_linear_system_values(motion, plan, hands, &linear, values)) return;
    for (int i = 0; i < linear.count; i++) {
        if (values[i].im < 0.0) continue;  // of a pair one is enough
        lw_mode *mode = &modes->mode[modes->count];
        if (!put_mode(&linear, values[i], mode)) continue;
        if (mode->swing.doubles < DOUBLES_AT_LEAST) modes->is_steady = false;
        modes->count++;
    }
    sort(modes);
}
