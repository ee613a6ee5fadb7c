// naca.c - outlines of NACA sections by designation.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "foil/section/outline.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"

#define STEPS        100  // points of one side, less one
#define LETTERS_MOST 24

// What a designation says.
typedef struct named {
    char family;       // '4', '5' or '6'
    double m, p;       // four digits: greatest camber and its place
    double r, k_1, k;  // five digits: bend, and for reflexed lines k = k_2 / k_1
    int six;           // 3 to 6
    double a, c_li;    // six series
    double t;          // thickness
} named;

typedef struct line_point {
    double y, slope;
} line_point;

// --- mean lines: those of mean_line.c, with their ordinates

static line_point four_digit_line(const named *n, double x)
{
    if (n->m == 0.0) return (line_point){0.0, 0.0};
    const double part = x < n->p ? n->p : 1.0 - n->p;
    const double scale = n->m / (part * part), p = n->p;
    const double y =
        x < p ? scale * x * (2.0 * p - x) : scale * (1.0 - 2.0 * p + 2.0 * p * x - x * x);
    return (line_point){y, 2.0 * scale * (p - x)};
}

// Reflexed lines have k = k_2 / k_1 above 0 [naca-537].
static line_point five_digit_line(const named *n, double x)
{
    const double r = n->r, k = n->k, scale = n->k_1 / 6.0;
    const double r_3 = r * r * r, q = x - r, s = 1.0 - r;
    const double run = k * s * s * s + r_3;
    const double cube = x < r ? 1.0 : k;
    return (line_point){scale * (cube * q * q * q - run * x + r_3),
                        scale * (3.0 * cube * q * q - run)};
}

static double x_ln_x(double x) { return x > 0.0 ? x * lw_log(x) : 0.0; }

// x^2 ln x and its half, as they stand in the ordinate
static double half_square_ln(double x) { return x > 0.0 ? 0.5 * x * x * lw_log(x) : 0.0; }

//     y = c_li / (2 pi (a + 1)) {[(a-x)^2 ln|a-x| / 2 - (1-x)^2 ln(1-x) / 2 + (1-x)^2/4
//         - (a-x)^2/4] / (1-a) - x ln x + g - h x}                                   [naca-824]
static line_point a_line(const named *n, double x)
{
    const double a = n->a, rest = 1.0 - a, scale = n->c_li / (2.0 * LW_PI * (a + 1.0));
    const double u = 1.0 - x, v = a - x;
    const double x_in = fmin(fmax(x, 1e-9), 1.0 - 1e-9);  // the slope is a logarithm at the ends
    if (rest < 1e-6) {
        return (line_point){-scale * (x_ln_x(u) + x_ln_x(x)),
                            scale * (lw_log(1.0 - x_in) - lw_log(x_in))};
    }
    const double g = -(0.5 * a * x_ln_x(a) - 0.25 * a * a + 0.25) / rest;
    const double h = 0.5 * x_ln_x(rest) - 0.25 * rest + g;
    const double bracket = half_square_ln(fabs(v)) - half_square_ln(u) + 0.25 * (u * u - v * v);
    const double to_a = copysign(1.0, v) * x_ln_x(fabs(v));
    const double bend = (x_ln_x(1.0 - x_in) - to_a) / rest;
    return (line_point){scale * (bracket / rest - x_ln_x(x) + g - h * x),
                        scale * (bend - lw_log(x_in) - 1.0 - h)};
}

static line_point mean_line_at(const named *n, double x)
{
    if (n->family == '4') return four_digit_line(n, x);
    if (n->family == '5') return five_digit_line(n, x);
    return a_line(n, x);
}

// --- reading a designation

static bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Capitals without spaces and without a leading NACA; false when it is too long.
static bool bare_of(const char *text, char bare[LETTERS_MOST])
{
    int length = 0;
    for (; *text != '\0'; text++) {
        if (*text == ' ' || *text == '\t') continue;
        if (length == LETTERS_MOST - 1) return false;
        bare[length++] = (char)(*text >= 'a' && *text <= 'z' ? *text - 'a' + 'A' : *text);
    }
    bare[length] = '\0';
    if (strncmp(bare, "NACA", 4) == 0) memmove(bare, bare + 4, (size_t)length - 3);
    return true;
}

static int digits_of(const char *text)
{
    int count = 0;
    while (is_digit(text[count])) count++;
    return count;
}

static double two_digits(const char *text) { return 10.0 * (text[0] - '0') + (text[1] - '0'); }

static lw_profile_status four_of(const char *text, named *n)
{
    n->family = '4';
    n->m = 0.01 * (text[0] - '0');
    n->p = 0.1 * (text[1] - '0');
    n->t = 0.01 * two_digits(text + 2);
    // camber needs a place, and a place camber
    return (n->m > 0.0) == (n->p > 0.0) ? LW_PROFILE_OK : LW_PROFILE_UNKNOWN;
}

// Bends and k_1 for a lift of 0.3; reflexed lines also have k_2 / k_1.
static lw_profile_status five_of(const char *text, named *n)
{
    static const double plain[6][2] = {{0.0, 0.0},       {0.0580, 361.400}, {0.1260, 51.640},
                                       {0.2025, 15.957}, {0.2900, 6.643},   {0.3910, 3.230}};
    static const double reflexed[6][3] = {
        {0.0, 0.0, 0.0},           {0.0, 0.0, 0.0},         {0.1300, 51.990, 0.000764},
        {0.2170, 15.793, 0.00677}, {0.3180, 6.520, 0.0303}, {0.4410, 3.191, 0.1355}};
    const int lift = text[0] - '0', place = text[1] - '0', kind = text[2] - '0';
    if (lift < 1 || lift > 6 || place < 1 || place > 5 || kind > 1) return LW_PROFILE_UNKNOWN;
    if (kind == 1 && place == 1) return LW_PROFILE_UNKNOWN;
    n->family = '5';
    n->r = kind == 1 ? reflexed[place][0] : plain[place][0];
    n->k_1 = (kind == 1 ? reflexed[place][1] : plain[place][1]) * lift / 2.0;
    n->k = kind == 1 ? reflexed[place][2] : 0.0;
    n->t = 0.01 * two_digits(text + 3);
    return LW_PROFILE_OK;
}

// "a=0.8" or "A=1": the end of an even load.
static bool load_end_of(const char *text, double *a)
{
    if (strncmp(text, "A=", 2) != 0) return false;
    text += 2;
    const int whole = digits_of(text);
    if (whole > 1 || (whole == 1 && text[0] > '1')) return false;
    *a = whole == 1 ? text[0] - '0' : 0.0;
    text += whole;
    if (*text == '.') {
        const int places = digits_of(text + 1);
        double unit = 0.1;
        for (int i = 1; i <= places; i++, unit *= 0.1) *a += unit * (text[i] - '0');
        text += places + 1;
        if (places == 0) return false;
    } else if (whole == 0) {
        return false;
    }
    return *text == '\0' && *a <= 1.0;
}

// "63-412", "63412", "63(1)-412", "632-415", "63,2-415", each with or without "a=..."; text is past
// the 6.
static lw_profile_status six_of(const char *text, named *n)
{
    n->family = '6';
    n->six = *text++ - '0';
    if (n->six < 3 || n->six > 7) return LW_PROFILE_UNKNOWN;
    if (n->six == 7 || *text == 'A' || (text[0] == '-' && text[1] == 'A'))
        return LW_PROFILE_MODIFIED;
    // the width of the low-drag range changes the shape a little, which is left out
    if (text[0] == '(' && is_digit(text[1]) && text[2] == ')') {
        text += 3;
    } else if (text[0] == ',' && is_digit(text[1])) {
        text += 2;
    } else if (is_digit(text[0]) && text[1] == '-') {
        text += 1;
    }
    if (*text == '-') text++;
    if (digits_of(text) != 3) return LW_PROFILE_UNKNOWN;
    n->c_li = 0.1 * (text[0] - '0');
    n->t = 0.01 * two_digits(text + 1);
    n->a = 1.0;
    text += 3;
    return *text == '\0' || load_end_of(text, &n->a) ? LW_PROFILE_OK : LW_PROFILE_UNKNOWN;
}

// Five digits that begin with 63 to 66 are of the six series, written without their stroke: a lift
// digit of 6 is unknown in five-digit sections.
static bool is_six(const char *text, int digits)
{
    return text[0] == '6' && (digits <= 3 || (digits == 5 && text[1] >= '3' && text[1] <= '6'));
}

static lw_profile_status named_of(const char *designation, named *n)
{
    char text[LETTERS_MOST] = "";
    if (designation == NULL || !bare_of(designation, text)) return LW_PROFILE_UNKNOWN;
    const int digits = digits_of(text);
    lw_profile_status status = LW_PROFILE_UNKNOWN;
    if (is_six(text, digits)) {
        status = six_of(text + 1, n);
    } else if (strncmp(text, "16-", 3) == 0 || (digits == 4 && text[4] == '-')) {
        return LW_PROFILE_MODIFIED;
    } else if (text[digits] == '\0') {
        if (digits == 4) status = four_of(text, n);
        if (digits == 5) status = five_of(text, n);
    }
    if (status != LW_PROFILE_OK) return status;
    return n->t >= 0.01 && n->t <= 0.24 ? LW_PROFILE_OK : LW_PROFILE_UNKNOWN;
}

// --- points

// y = 5 t (0.2969 sqrt(x) - 0.1260 x - 0.3516 x^2 + 0.2843 x^3 - 0.1036 x^4): closed at the tail
double lw_thickness_four_digit(double t, double x)
{
    return 5.0 * t * (0.2969 * sqrt(x) + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - x * 0.1036))));
}

static lw_profile_status outline_of(const named *n, lw_outline *outline)
{
    double x[STEPS + 1], half[STEPS + 1];
    if (n->family == '6') {
        if (!lw_thickness_six(n->six, n->t, STEPS, x, half)) return LW_PROFILE_UNKNOWN;
    } else {
        for (int i = 0; i <= STEPS; i++) {
            x[i] = 0.5 * (1.0 - lw_cos(LW_PI * i / STEPS));
            half[i] = lw_thickness_four_digit(n->t, x[i]);
        }
    }
    half[0] = half[STEPS] = 0.0;
    for (int i = 0; i <= STEPS; i++) {
        const line_point line = mean_line_at(n, x[i]);
        const double per = 1.0 / sqrt(1.0 + line.slope * line.slope);
        const double dx = half[i] * line.slope * per, dy = half[i] * per;
        outline->x[STEPS + i] = x[i] - dx;
        outline->y[STEPS + i] = line.y + dy;
        outline->x[STEPS - i] = x[i] + dx;
        outline->y[STEPS - i] = line.y - dy;
    }
    outline->count = 2 * STEPS + 1;
    outline->given = 0;
    outline->was_reversed = outline->was_open = outline->was_scaled = false;
    lw_outline_smooth(outline);
    return LW_PROFILE_OK;
}

lw_profile_status lw_outline_naca(const char *designation, lw_outline *outline)
{
    named n = {0};
    outline->count = 0;
    const lw_profile_status status = named_of(designation, &n);
    return status == LW_PROFILE_OK ? outline_of(&n, outline) : status;
}

lw_profile_status lw_outline_four_digit(double camber, double place, double thickness,
                                        lw_outline *outline)
{
    outline->count = 0;
    const named n = {.family = '4', .m = camber, .p = place, .t = thickness};
    const bool is_within = fabs(camber) <= 0.095 && place >= 0.1 && place <= 0.9 &&
                           thickness >= 0.01 && thickness <= 0.4;
    return is_within ? outline_of(&n, outline) : LW_PROFILE_UNKNOWN;
}
