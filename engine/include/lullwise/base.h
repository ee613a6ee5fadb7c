// base.h - status codes, units and constants that every engine header shares.
// SPDX-License-Identifier: MIT

#ifndef LW_BASE_H
#define LW_BASE_H

#include <stdbool.h>
#include <stddef.h>

#define LW_PI      3.14159265358979323846
#define LW_DEG     (LW_PI / 180.0)    // [rad]   one degree
#define LW_KN      (1852.0 / 3600.0)  // [m/s]   one knot
#define LW_NMI     1852.0             // [m]     one nautical mile
#define LW_GRAVITY 9.80665            // [m/s^2] standard gravity [iso80000-3]

#define LW_NAME_LENGTH   64  // room for a name, with its closing zero
#define LW_LABEL_LENGTH  16  // room for a pin's label, with its closing zero
#define LW_PINS_MOST     12
#define LW_LEGS_MOST     12
#define LW_READINGS_MOST 600

// clang-format off
// Outcome of a call that can fail: one line here makes the code and its sentence.
#define LW_STATUS_LIST(X)                                      \
    X(OK,             "ok")                                    \
    X(UNKNOWN_KEY,    "no quantity has this key")              \
    X(BAD_NUMBER,     "the text is not a number")              \
    X(UNIT_MISSING,   "the number has no unit")                \
    X(BAD_UNIT,       "the unit does not measure this quantity") \
    X(OUT_OF_RANGE,   "the value lies outside its range")

// Units that people read and write; the engine itself stores SI and radians only.
// A value may be written in any unit of the same dimension, by its text or its sign.
//    name         text        behind a number  dimension  one of it, in SI
#define LW_UNIT_LIST(X)                                            \
    X(NONE,     "",         "",         NUMBER,         1.0)           \
    X(PERCENT,  "%",        " %",       NUMBER,         0.01)          \
    X(M,        "m",        " m",       LENGTH,         1.0)           \
    X(CM,       "cm",       " cm",      LENGTH,         0.01)          \
    X(MM,       "mm",       " mm",      LENGTH,         0.001)         \
    X(KM,       "km",       " km",      LENGTH,         1000.0)        \
    X(NMI,      "nmi",      " nmi",     LENGTH,         1852.0)        \
    X(M2,       "m2",       " m²",      AREA,           1.0)           \
    X(L,        "l",        " l",       VOLUME,         0.001)         \
    X(DEG,      "deg",      "°",        ANGLE,          LW_DEG)        \
    X(RAD,      "rad",      " rad",     ANGLE,          1.0)           \
    X(KN,       "kn",       " kn",      SPEED,          LW_KN)         \
    X(MPS,      "m/s",      " m/s",     SPEED,          1.0)           \
    X(KMPH,     "km/h",     " km/h",    SPEED,          1.0 / 3.6)     \
    X(S,        "s",        " s",       TIME,           1.0)           \
    X(MIN,      "min",      " min",     TIME,           60.0)          \
    X(KG,       "kg",       " kg",      MASS,           1.0)           \
    X(N,        "N",        " N",       FORCE,          1.0)           \
    X(W,        "W",        " W",       POWER,          1.0)           \
    X(KGPM3,    "kg/m3",    " kg/m³",   DENSITY,        1.0)           \
    X(M2PS,     "m2/s",     " m²/s",    VISCOSITY,      1.0)           \
    X(PA,       "Pa",       " Pa",      PRESSURE,       1.0)           \
    X(HPA,      "hPa",      " hPa",     PRESSURE,       100.0)         \
    X(DEGC,     "degC",     " °C",      TEMPERATURE,    1.0)           \
    X(GPKG,     "g/kg",     " g/kg",    SALINITY,       1.0)           \
    X(DEGPTURN, "deg/turn", "°/turn",   ANGLE_PER_TURN, LW_DEG)        \
    X(TURN,     "turns",    " turns",   TURNS,          1.0)           \
    X(CHORD,    "chords",   " chords",  CHORDS,         1.0)           \
    X(PERH,     "/h",       " /h",      RATE,           1.0 / 3600.0)  \
    X(PERS,     "/s",       " /s",      RATE,           1.0)           \
    X(HZ,       "Hz",       " Hz",      RATE,           1.0)
// clang-format on

#define LW_AS_STATUS(name, text) LW_##name,
#define LW_AS_UNIT(name, ...)    LW_UNIT_##name,

typedef enum lw_status { LW_STATUS_LIST(LW_AS_STATUS) LW_STATUS_COUNT } lw_status;
typedef enum lw_unit { LW_UNIT_LIST(LW_AS_UNIT) LW_UNIT_COUNT } lw_unit;

const char *lw_status_text(lw_status status);
const char *lw_unit_text(lw_unit unit);    // as it is typed: "deg", "m2"
const char *lw_unit_sign(lw_unit unit);    // as it is read: "°", "m²"
const char *lw_unit_behind(lw_unit unit);  // the same as it stands behind a number: "°", " m²"
double lw_unit_in_si(lw_unit unit);        // how much SI one of it is; degC stays degC
bool lw_unit_same_dimension(lw_unit a, lw_unit b);

// The unit that is written so, spaces around it aside; also by its sign, "knots", "kt" and the
// like. LW_UNIT_COUNT when there is none.
lw_unit lw_unit_of(const char *text);

#endif
