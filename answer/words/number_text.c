// number_text.c - numbers as sailors say them.
// SPDX-License-Identifier: MIT

#include "answer/words/number_text.h"

#include <math.h>
#include <string.h>

#include "records/fault.h"

// The whole number nearest to a number and the error that it was rounded by; a half goes to even.
static double nearest_whole(double number, double error)
{
    const double below = floor(number), over = number - below - 0.5 + error;
    const bool is_odd = 2.0 * floor(0.5 * below) != below;
    return over > 0.0 || (over == 0.0 && is_odd) ? below + 1.0 : below;
}

double lw_told(double x)
{
    const double size = fabs(x);
    if (!(size > 0.0)) return isnan(x) ? x : 0.0;
    if (isinf(x)) return x;
    double up = 1.0, down = 1.0;  // powers of ten up to 10^22 are exact
    for (int i = 0; i < 22 && size * up < 1e11; i++) up *= 10.0;
    for (int i = 0; i < 22 && size / down >= 1e12; i++) down *= 10.0;
    const double shifted = size * up / down;  // one of the two is 1
    const double error = up > 1.0 ? fma(size, up, -shifted) : -fma(shifted, down, -size) / down;
    const double whole = nearest_whole(shifted, error);
    return copysign(up > 1.0 ? whole / up : whole * down, x);
}

double lw_ten_to(int decimals)
{
    double power = 1.0;
    for (int i = 0; i < decimals; i++) power *= 10.0;
    return power;
}

void lw_cell_number(char text[LW_CELL_LENGTH], double value, int decimals, bool is_signed)
{
    const double unit = lw_ten_to(decimals);
    const double rounded = round(lw_told(value) * unit) / unit;
    lw_text_fit(text, LW_CELL_LENGTH, is_signed && rounded != 0.0 ? "%+.*f" : "%.*f", decimals,
                rounded == 0.0 ? 0.0 : rounded);
}

void lw_cell_value(char text[LW_CELL_LENGTH], const lw_quantity *row, const void *data)
{
    char number[LW_CELL_LENGTH];
    lw_cell_number(number, lw_quantity_shown(row, data), row->decimals, false);
    lw_text_fit(text, LW_CELL_LENGTH, "%s%s", number, lw_unit_behind(row->unit));
}

void lw_cell_time(char text[LW_CELL_LENGTH], double seconds)
{
    const long whole = lround(fmin(fabs(seconds), 1e7));
    const long minutes = (whole + 30) / 60;
    const char *sign = seconds < 0.0 && whole > 0 ? "-" : "";
    if (whole < 60)
        lw_text_fit(text, LW_CELL_LENGTH, "%s%ld s", sign, whole);
    else if (whole < 3600)
        lw_text_fit(text, LW_CELL_LENGTH, "%s%ld min %02ld s", sign, whole / 60, whole % 60);
    else
        lw_text_fit(text, LW_CELL_LENGTH, "%s%ld h %02ld min", sign, minutes / 60, minutes % 60);
}

lw_unit lw_speed_unit(lw_unit wanted)
{
    return lw_unit_same_dimension(wanted, LW_UNIT_KN) ? wanted : LW_UNIT_KN;
}

const char *lw_measure_text(char text[LW_CELL_LENGTH], double si, int decimals, lw_unit unit)
{
    char number[LW_CELL_LENGTH];
    lw_cell_number(number, si / lw_unit_in_si(unit), decimals, false);
    lw_text_fit(text, LW_CELL_LENGTH, "%s%s", number, lw_unit_behind(unit));
    return text;
}

const char *lw_speed_text(char text[LW_CELL_LENGTH], double speed, int decimals, lw_unit unit)
{
    return lw_measure_text(text, speed, decimals, lw_speed_unit(unit));
}

const char *lw_apart_text(char text[LW_CELL_LENGTH], double apart, lw_unit unit)
{
    lw_speed_text(text, fabs(apart), 1, unit);
    if (!strpbrk(text, "123456789")) lw_text_fit(text, LW_CELL_LENGTH, "a shade");
    return text;
}

void lw_chance_text(char text[LW_CELL_LENGTH], double chance)
{
    if (chance > 0.95)
        lw_text_fit(text, LW_CELL_LENGTH, "over 95 %%");
    else if (chance < 0.05)
        lw_text_fit(text, LW_CELL_LENGTH, "under 5 %%");
    else
        lw_text_fit(text, LW_CELL_LENGTH, "%.0f %%", 100.0 * chance);
}
