// moment.h - moments of time written as ISO 8601, as seconds since 1970.
// SPDX-License-Identifier: MIT

#ifndef LW_TRACK_MOMENT_H
#define LW_TRACK_MOMENT_H

#include <stdbool.h>

// Days from 1970-01-01 to a day of the Gregorian calendar; and whether there is such a day.
double lw_days_of(int year, int month, int day);
bool lw_is_day(int year, int month, int day);

// Reads "2030-05-17T10:05:09.25Z": T or a blank between, a fraction or none, Z, +02:00 or nothing,
// which is UTC; or a day alone. Into seconds since 1970-01-01 UTC; leap seconds count as the second
// after. False, with nothing set, when it is none.
bool lw_moment_read(const char *text, double *time);

// Reads "10:05:09.25" into seconds of the day.
bool lw_clock_read(const char *text, double *seconds);

// Writes a moment as "2030-05-17T10:05:09.250Z", to the millisecond.
#define LW_MOMENT_LENGTH 40
void lw_moment_text(char text[LW_MOMENT_LENGTH], double time);

#endif
