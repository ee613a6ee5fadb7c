// modes_text.c - what is said of small motions about a balance.
// SPDX-License-Identifier: MIT

#include "answer/words/modes_text.h"

#include <math.h>

#include "records/fault.h"

#define SECOND_LEAST 0.5   // of the first part's share: less is not named         [judged]
#define SHAPE_LEAST  0.25  // of what is just noticed: less is not told            [judged]
#define SEEN_LEAST   0.3   // [s] what halves sooner is over before it is seen       [judged]
#define DAMPED       0.98  // a swing so damped shows no swing                     [judged]

void lw_mode_name(const lw_mode *mode, char text[LW_CELL_LENGTH])
{
    const bool has_second = mode->share[mode->second] >= SECOND_LEAST * mode->share[mode->first];
    lw_text_fit(text, LW_CELL_LENGTH, "%s%s%s", lw_part_text(mode->first), has_second ? ", " : "",
                has_second ? lw_part_text(mode->second) : "");
}

static double noticed(const lw_swing *swing, size_t row)
{
    const double least = lw_swing_noticed(row);
    return least > 0.0 ? lw_quantity_value(&lw_swing_table.rows[row], swing) / least : 0.0;
}

// The row that is noticed most of those noticed less than `below`.
static size_t next_noticed(const lw_swing *swing, double below)
{
    size_t best = 0;
    for (size_t i = 0; i < lw_swing_table.count; i++) {
        const double n = noticed(swing, i);
        if (n < below && n > noticed(swing, best)) best = i;
    }
    return best;
}

void lw_mode_shape(const lw_mode *mode, char text[LW_MODES_LENGTH])
{
    double below = INFINITY;
    text[0] = '\0';
    for (int i = 0; i < 2; i++) {
        const size_t row = next_noticed(&mode->swing, below);
        char value[LW_CELL_LENGTH];
        below = noticed(&mode->swing, row);
        if (below < SHAPE_LEAST) return;
        lw_cell_value(value, &lw_swing_table.rows[row], &mode->swing);
        lw_text_add(text, LW_MODES_LENGTH, "%s%s %s", text[0] ? ", " : "",
                    lw_swing_table.rows[row].key, value);
    }
}

bool lw_mode_is_seen(const lw_mode *mode)
{
    const lw_swing *s = &mode->swing;
    return s->growth >= 0.0 || s->halves >= SEEN_LEAST ||
           (isfinite(s->period) && s->damping < DAMPED && s->halves >= 0.5 * SEEN_LEAST);
}

static void fit_fate(const lw_mode *mode, char text[LW_MODES_LENGTH])
{
    char name[LW_CELL_LENGTH], swing[LW_CELL_LENGTH] = "", time[LW_CELL_LENGTH];
    const lw_swing *s = &mode->swing;
    const bool grows = s->growth > 0.0;
    const double rate = grows ? s->doubles : s->halves;
    lw_mode_name(mode, name);
    if (rate >= 600.0) {
        lw_text_fit(text, LW_MODES_LENGTH, "%s neither grows nor fades within ten minutes", name);
        return;
    }
    if (s->period < LW_SWING_LONG) LW_FIT(swing, ", a swing of %.1f s,", s->period);
    if (rate < 60.0)
        LW_FIT(time, "%.1f s", rate);
    else
        lw_cell_time(time, rate);
    lw_text_fit(text, LW_MODES_LENGTH, "%s%s %s in %s", name, swing, grows ? "doubles" : "halves",
                time);
}

void lw_modes_verdict(const lw_modes *sailed, const lw_modes *alone, char text[LW_MODES_LENGTH])
{
    char one[LW_MODES_LENGTH], other[LW_MODES_LENGTH];
    if (!sailed->count || !alone->count) {
        lw_text_fit(text, LW_MODES_LENGTH, "The motions about this balance could not be found.");
        return;
    }
    fit_fate(&sailed->mode[0], one);
    fit_fate(&alone->mode[0], other);
    lw_text_fit(
        text, LW_MODES_LENGTH, "%s: %s. Left alone she is %s: %s.",
        sailed->is_steady ? "Steady as sailed; what lasts longest" : "Not steady, even as sailed",
        one, alone->is_steady ? "steady" : "not", other);
}

static void fit_period(double period, char text[LW_CELL_LENGTH])
{
    lw_text_fit(text, LW_CELL_LENGTH, "swings by itself, every %.2f s", period);
}

void lw_wand_more(const lw_wand_margin *margin, char text[LW_MODES_LENGTH])
{
    char swing[LW_CELL_LENGTH];
    fit_period(margin->gearing_period, swing);
    if (!isfinite(margin->gearing))
        lw_text_fit(text, LW_MODES_LENGTH, "no swing up to %.0f times the gearing",
                    LW_MARGIN_SOUGHT);
    else if (margin->gearing > 1.0)
        lw_text_fit(text, LW_MODES_LENGTH, "from %.1f times the gearing it %s", margin->gearing,
                    swing);
    else
        lw_text_fit(text, LW_MODES_LENGTH, "as it is it %s", swing);
}

void lw_wand_less(const lw_wand_margin *margin, char text[LW_MODES_LENGTH])
{
    if (margin->least_gearing >= 1.0)
        lw_text_fit(text, LW_MODES_LENGTH, "as it is it does not hold ride height");
    else if (margin->least_gearing > 0.0)
        lw_text_fit(text, LW_MODES_LENGTH, "below %.2f times the gearing ride height is not held",
                    margin->least_gearing);
    else
        lw_text_fit(text, LW_MODES_LENGTH, "ride height is held down to a tenth of the gearing");
}

void lw_wand_late(const lw_wand_margin *margin, char text[LW_MODES_LENGTH])
{
    char swing[LW_CELL_LENGTH];
    fit_period(margin->lag_period, swing);
    if (isfinite(margin->lag))
        lw_text_fit(text, LW_MODES_LENGTH, "from a lag of %.2f s it %s; %.2f s is assumed",
                    margin->lag, swing, margin->lag_now);
    else
        lw_text_fit(text, LW_MODES_LENGTH, "no swing up to a lag of %.2f s; %.2f s is assumed",
                    LW_MARGIN_SOUGHT * margin->lag_now, margin->lag_now);
}

const char *const lw_modes_trust[LW_MODES_TRUST] = {
    "Small motions in even wind on plain water: no stop is met, no tip comes out.",
    "Foils take up their lift at once here. In truth half of it comes so, and most of the rest "
    "within a tenth of a second: swings quicker than half a second begin at less gearing than "
    "told.",
    "Play in wand and rod is left out; within it a flap can hunt at any gearing.",
};
