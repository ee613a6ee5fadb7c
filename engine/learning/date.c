// date.c - whether the calendar has a date.
// SPDX-License-Identifier: MIT

#include "lullwise/logged.h"

// The number in `count` digits; -1: they are none.
static int number_of(const char *digits, int count)
{
    int number = 0;
    for (int i = 0; i < count; i++) {
        if (digits[i] < '0' || digits[i] > '9') return -1;
        number = 10 * number + (digits[i] - '0');
    }
    return number;
}

static int days_of(int year, int month)
{
    static const int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const bool is_leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    return days[month - 1] + (month == 2 && is_leap);
}

// The Gregorian calendar, in the form YYYY-MM-DD of ISO 8601 [iso8601].
bool lw_date_is_sound(const char *text)
{
    static const char form[] = "0000-00-00";
    for (size_t i = 0; i < sizeof form - 1; i++) {
        const bool is_digit = text[i] >= '0' && text[i] <= '9';
        if (form[i] == '0' ? !is_digit : text[i] != form[i]) return false;
    }
    const int year = number_of(text, 4), month = number_of(text + 5, 2);
    const int day = number_of(text + 8, 2);
    return !text[10] && month >= 1 && month <= 12 && day >= 1 && day <= days_of(year, month);
}
