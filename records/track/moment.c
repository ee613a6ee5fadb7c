// moment.c - moments of time written as ISO 8601, as seconds since 1970.
// SPDX-License-Identifier: MIT

#include "records/track/moment.h"

#include <math.h>
#include <string.h>

#include "records/fault.h"

#define DAY 86400.0  // [s]

static bool is_leap(int year) { return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0); }

static int days_in(int year, int month)
{
    static const int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    return days[month - 1] + (month == 2 && is_leap(year));
}

bool lw_is_day(int year, int month, int day)
{
    return year >= 1 && year <= 9999 && month >= 1 && month <= 12 && day >= 1 &&
           day <= days_in(year, month);
}

// Leap days up to the end of a year.
static int leap_days(int year) { return year / 4 - year / 100 + year / 400; }

double lw_days_of(int year, int month, int day)
{
    int days = 365 * (year - 1970) + leap_days(year - 1) - leap_days(1969) + day - 1;
    for (int m = 1; m < month; m++) days += days_in(year, m);
    return days;
}

// So many digits, and no fewer; *at moves behind them.
static bool digits(const char **at, int count, int *value)
{
    *value = 0;
    for (int i = 0; i < count; i++, ++*at) {
        if (**at < '0' || **at > '9') return false;
        *value = 10 * *value + (**at - '0');
    }
    return true;
}

static bool sign(const char **at, char sign)
{
    if (**at != sign) return false;
    ++*at;
    return true;
}

// ".25", or nothing.
static double fraction(const char **at)
{
    double value = 0.0, part = 0.1;
    if (**at != '.' && **at != ',') return 0.0;
    for (++*at; **at >= '0' && **at <= '9'; ++*at, part *= 0.1) value += part * (**at - '0');
    return value;
}

// "10:05:09.25" or "10:05".
static bool clock_at(const char **at, double *seconds)
{
    int hour, minute, second = 0;
    if (!digits(at, 2, &hour) || !sign(at, ':') || !digits(at, 2, &minute)) return false;
    if (sign(at, ':') && !digits(at, 2, &second)) return false;
    if (hour > 23 || minute > 59 || second > 60) return false;
    *seconds = 3600.0 * hour + 60.0 * minute + second + fraction(at);
    return true;
}

// "Z", "+02:00", "-0530" or nothing: seconds to take away.
static bool zone_at(const char **at, double *seconds)
{
    int hour, minute;
    *seconds = 0.0;
    if (sign(at, 'Z') || sign(at, 'z')) return true;
    if (**at != '+' && **at != '-') return true;
    const double way = **at == '-' ? -1.0 : 1.0;
    ++*at;
    if (!digits(at, 2, &hour)) return false;
    sign(at, ':');
    if (!digits(at, 2, &minute) || hour > 14 || minute > 59) return false;
    *seconds = way * (3600.0 * hour + 60.0 * minute);
    return true;
}

static bool is_end(const char *at) { return at[strspn(at, " \t\r\n")] == '\0'; }

bool lw_clock_read(const char *text, double *seconds)
{
    double value;
    text += strspn(text, " \t\r\n");
    if (!clock_at(&text, &value)) return false;
    sign(&text, 'Z');
    if (!is_end(text)) return false;
    *seconds = value;
    return true;
}

bool lw_moment_read(const char *text, double *time)
{
    int year, month, day;
    double seconds = 0.0, zone = 0.0;
    text += strspn(text, " \t\r\n");
    if (!digits(&text, 4, &year) || !sign(&text, '-')) return false;
    if (!digits(&text, 2, &month) || !sign(&text, '-') || !digits(&text, 2, &day)) return false;
    if (!lw_is_day(year, month, day)) return false;
    if ((*text == 'T' || *text == 't' || *text == ' ') && !is_end(text)) {
        text++;
        if (!clock_at(&text, &seconds) || !zone_at(&text, &zone)) return false;
    }
    if (!is_end(text)) return false;
    *time = DAY * lw_days_of(year, month, day) + seconds - zone;
    return true;
}

void lw_moment_text(char text[LW_MOMENT_LENGTH], double time)
{
    const double ms = floor(1000.0 * time + 0.5), days = floor(ms / (1000.0 * DAY));
    const long in_day = (long)(ms - 1000.0 * DAY * days);
    int year = 1970, month = 1;
    double left = days;
    if (!(fabs(days) < 2.9e6)) {
        text[0] = '\0';
        return;
    }
    year += (int)floor(days / 365.2425);
    while (lw_days_of(year, 1, 1) > days) year--;
    while (lw_days_of(year + 1, 1, 1) <= days) year++;
    left -= lw_days_of(year, 1, 1);
    while (left >= days_in(year, month)) left -= days_in(year, month++);
    lw_text_fit(text, LW_MOMENT_LENGTH, "%04d-%02d-%02dT%02ld:%02ld:%02ld.%03ldZ", year, month,
                (int)left + 1, in_day / 3600000, in_day / 60000 % 60, in_day / 1000 % 60,
                in_day % 1000);
}
