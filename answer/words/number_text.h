// number_text.h - numbers as sailors say them.
// SPDX-License-Identifier: MIT

#ifndef LW_NUMBER_TEXT_H
#define LW_NUMBER_TEXT_H

#include "lullwise/quantity.h"

#define LW_CELL_LENGTH 48

// "12.3 kn", "41 cm", "-0.5 turns": a member with its unit, never "-0.0".
void lw_cell_value(char text[LW_CELL_LENGTH], const lw_quantity *row, const void *data);

// Twelve digits of a number: what more there is is noise, and would round a half now up, now down.
// The double nearest to them, so that "%.12g" writes just these [IEEE 754], from 1e-10 to 1e22.
double lw_told(double x);

// 10^decimals, what the last digit shown counts from: exact from 0 to 22.
double lw_ten_to(int decimals);

// The number alone, with so many decimals; `is_signed`: a plus too.
void lw_cell_number(char text[LW_CELL_LENGTH], double value, int decimals, bool is_signed);

// "6 min 05 s", "48 s", "1 h 05 min"; "-12 s" when negative.
void lw_cell_time(char text[LW_CELL_LENGTH], double seconds);

// "78 %"; never a certainty: eight blocks know none.
void lw_chance_text(char text[LW_CELL_LENGTH], double chance);

// "-0.5 turns", "23°": so many decimals of a unit. Returns text; the macros have room of their own
// to the end of the block.
const char *lw_measure_text(char text[LW_CELL_LENGTH], double si, int decimals, lw_unit unit);
#define LW_MEASURE_TEXT(si, decimals, unit) \
    lw_measure_text((char[LW_CELL_LENGTH]){0}, (si), (decimals), (unit))
#define LW_ANGLE_TEXT(angle, decimals) LW_MEASURE_TEXT(angle, decimals, LW_UNIT_DEG)

// "10.1 kn", "5.2 m/s" in a unit of speed; knots for LW_UNIT_NONE.
lw_unit lw_speed_unit(lw_unit wanted);
const char *lw_speed_text(char text[LW_CELL_LENGTH], double speed, int decimals, lw_unit unit);
// How far two are apart: likewise, "a shade" where that would read 0.0.
const char *lw_apart_text(char text[LW_CELL_LENGTH], double apart, lw_unit unit);
#define LW_APART_TEXT(apart, unit) lw_apart_text((char[LW_CELL_LENGTH]){0}, (apart), (unit))
#define LW_SPEED_TEXT(speed, decimals, unit) \
    lw_speed_text((char[LW_CELL_LENGTH]){0}, (speed), (decimals), (unit))

#endif
