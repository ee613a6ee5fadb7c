// decimal.c - reads a decimal number, in the same way on every machine and in every locale.
// SPDX-License-Identifier: MIT

#include <stdint.h>
#include <string.h>

#include "lullwise/quantity.h"

#define MOST_DIGITS   19   // that surely fit 64 bits
#define MOST_EXPONENT 400  // beyond it a double is infinite or zero anyway
#define EXACT_POWER   22   // largest power of ten that a double holds exactly

// mantissa x 10^exponent
typedef struct decimal {
    uint64_t mantissa;
    int exponent;
    int digits;   // taken into the mantissa, from the first that is not zero
    bool is_any;  // at least one digit was seen
} decimal;

static const double powers[EXACT_POWER + 1] = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                               1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                               1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

static bool is_digit(char c) { return c >= '0' && c <= '9'; }

static void take_digit(decimal *number, char c, bool is_fraction)
{
    number->is_any = true;
    const uint64_t digit = (uint64_t)(c - '0');
    const bool is_leading_zero = number->digits == 0 && digit == 0;
    if (number->digits < MOST_DIGITS) {
        number->mantissa = 10 * number->mantissa + digit;
        if (!is_leading_zero) number->digits++;
        if (is_fraction && number->exponent > -2 * MOST_EXPONENT) number->exponent--;
    } else if (!is_fraction && number->exponent < MOST_EXPONENT) {
        number->exponent++;
    }
}

static const char *take_digits(decimal *number, const char *at)
{
    for (; is_digit(*at); at++) take_digit(number, *at, false);
    if (*at != '.' && *at != ',') return at;
    if (!number->is_any && !is_digit(at[1])) return at;
    for (at++; is_digit(*at); at++) take_digit(number, *at, true);
    return at;
}

// "e-3": only where a digit follows, so that a unit may begin with an e.
static const char *take_exponent(decimal *number, const char *at)
{
    if (*at != 'e' && *at != 'E') return at;
    const char *digit = at + 1;
    const bool is_negative = *digit == '-';
    if (*digit == '-' || *digit == '+') digit++;
    if (!is_digit(*digit)) return at;

    int power = 0;
    for (; is_digit(*digit); digit++) {
        if (power < 4 * MOST_EXPONENT) power = 10 * power + (*digit - '0');
    }
    number->exponent += is_negative ? -power : power;
    return digit;
}

static const char *take_sign(const char *at, bool *is_negative)
{
    static const char minus[] = "\xE2\x88\x92";  // U+2212
    *is_negative = *at == '-' || strncmp(at, minus, 3) == 0;
    if (*at == '-' || *at == '+') return at + 1;
    return *is_negative ? at + 3 : at;
}

static int smaller(int a, int b) { return a < b ? a : b; }

static double value_of(decimal number)
{
    uint64_t mantissa = number.mantissa;
    int exponent = number.exponent;
    for (; exponent < 0 && mantissa && mantissa % 10 == 0; exponent++) mantissa /= 10;

    double value = (double)mantissa;
    for (int left = exponent; left > 0 && value > 0.0 && value <= 1e300; left -= EXACT_POWER) {
        value *= powers[smaller(left, EXACT_POWER)];
    }
    for (int left = -exponent; left > 0 && value > 0.0; left -= EXACT_POWER) {
        value /= powers[smaller(left, EXACT_POWER)];
    }
    return value;
}

bool lw_decimal_read(const char *text, double *value, const char **rest)
{
    bool is_negative;
    decimal number = {0};
    const char *at = take_sign(text, &is_negative);
    at = take_digits(&number, at);
    if (!number.is_any) return false;
    at = take_exponent(&number, at);

    const double size = value_of(number);
    if (!(size <= 1e300)) return false;
    *value = is_negative ? -size : size;
    *rest = at;
    return true;
}
