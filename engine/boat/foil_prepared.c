// foil_prepared.c - largest errors of what the force kernel reads of a foil.
// SPDX-License-Identifier: MIT

#include "lullwise/prepared.h"

// clang-format off
static const lw_prepared rows[] = {
    {"foil: lift slope",       0.35,  "%",        "0.1 m deep"},
    {"foil: induced drag",     0.15,  "%",        "0.1 m deep"},
    {"foil: downwash",         0.25,  "%",        "0.1 m deep"},
    {"foil: lift, heeled",     1.2,   "%",        "tip 5 cm deep"},
    {"foil: lift, tip out",    9.0,   "%",        "tip 12 cm out"},
    {"foil: most loaded part", 2.5,   "%",        "tip 5 cm deep"},
    {"section: lift",          0.05,  "of c_l",   "flap +8, at -7°"},
    {"section: drag",          13.0,  "%",        "63-412, flap +9"},
    {"section: moment",        0.012, "of c_m",   "flap +9, Re 2.6e5"},
    {"section: low pressure",  0.28,  "of C_p",   "63-412, at -4°"},
};
// clang-format on

lw_prepared_list lw_prepared_foils(void)
{
    return (lw_prepared_list){rows, sizeof rows / sizeof rows[0]};
}
