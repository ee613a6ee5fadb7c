// unit.c - the units that people write, and the sentences of the status codes.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/base.h"

typedef enum dimension {
    NUMBER,
    LENGTH,
    AREA,
    VOLUME,
    ANGLE,
    SPEED,
    TIME,
    MASS,
    FORCE,
    POWER,
    DENSITY,
    VISCOSITY,
    PRESSURE,
    TEMPERATURE,
    SALINITY,
    ANGLE_PER_TURN,
    TURNS,
    CHORDS,
    RATE,
} dimension;

#define AS_STATUS_TEXT(name, text)                     text,
#define AS_UNIT_TEXT(name, text, behind, dim, si)      text,
#define AS_UNIT_BEHIND(name, text, behind, dim, si)    behind,
#define AS_UNIT_DIMENSION(name, text, behind, dim, si) dim,
#define AS_UNIT_SI(name, text, behind, dim, si)        si,

static const char *const status_texts[] = {LW_STATUS_LIST(AS_STATUS_TEXT)};
static const char *const unit_texts[] = {LW_UNIT_LIST(AS_UNIT_TEXT)};
static const char *const unit_behinds[] = {LW_UNIT_LIST(AS_UNIT_BEHIND)};
static const dimension unit_dimensions[] = {LW_UNIT_LIST(AS_UNIT_DIMENSION)};
static const double unit_si[] = {LW_UNIT_LIST(AS_UNIT_SI)};

// Other ways to write a unit. "M" for a nautical mile is left out: it reads like metres.
static const struct {
    const char *text;
    lw_unit unit;
} other_texts[] = {
    {"knots", LW_UNIT_KN},     {"knot", LW_UNIT_KN},     {"kt", LW_UNIT_KN},
    {"kts", LW_UNIT_KN},       {"degrees", LW_UNIT_DEG}, {"degree", LW_UNIT_DEG},
    {"m^2", LW_UNIT_M2},       {"litres", LW_UNIT_L},    {"litre", LW_UNIT_L},
    {"turn", LW_UNIT_TURN},    {"sec", LW_UNIT_S},       {"NM", LW_UNIT_NMI},
    {"nm", LW_UNIT_NMI},       {"mbar", LW_UNIT_HPA},    {"metre", LW_UNIT_M},
    {"metres", LW_UNIT_M},     {"meter", LW_UNIT_M},     {"meters", LW_UNIT_M},
    {"kg/m^3", LW_UNIT_KGPM3},
};

const char *lw_status_text(lw_status status) { return status_texts[status]; }
const char *lw_unit_text(lw_unit unit) { return unit_texts[unit]; }
const char *lw_unit_behind(lw_unit unit) { return unit_behinds[unit]; }
double lw_unit_in_si(lw_unit unit) { return unit_si[unit]; }

const char *lw_unit_sign(lw_unit unit)
{
    return unit_behinds[unit] + (unit_behinds[unit][0] == ' ');
}

bool lw_unit_same_dimension(lw_unit a, lw_unit b)
{
    return unit_dimensions[a] == unit_dimensions[b];
}

static bool is_written(const char *unit, const char *text, size_t length)
{
    return strlen(unit) == length && memcmp(unit, text, length) == 0;
}

lw_unit lw_unit_of(const char *text)
{
    while (*text == ' ' || *text == '\t') text++;
    size_t length = strlen(text);
    while (length && (text[length - 1] == ' ' || text[length - 1] == '\t')) length--;

    for (int unit = 0; unit < LW_UNIT_COUNT; unit++) {
        if (is_written(unit_texts[unit], text, length)) return (lw_unit)unit;
        if (is_written(lw_unit_sign((lw_unit)unit), text, length)) return (lw_unit)unit;
    }
    for (size_t i = 0; i < sizeof other_texts / sizeof other_texts[0]; i++) {
        if (is_written(other_texts[i].text, text, length)) return other_texts[i].unit;
    }
    return LW_UNIT_COUNT;
}
