// judged_table.c - what rides take from judgement, and how far it may be off.
// SPDX-License-Identifier: MIT

#include "lullwise/draw.h"
#include "quantity/tables.h"

// A factor on a preset; the error is one sigma.  [judged] all
#define ROW(member, sym, off, words)                                                               \
    {                                                                                              \
        LW_MEMBER(lw_judged, member), .symbol = sym, .unit = LW_UNIT_NONE, .min = 0.4, .max = 1.6, \
                                      .preset = 1.0, .error = off, .decimals = 2, .doc = words     \
    }

// clang-format off
static const lw_quantity rows[] = {
    ROW(delay,     "tau", 0.2, "time from what is to what the sailor has noticed, / 0.2 s"),
    ROW(hand_lag,  "",    0.2, "lag of her arms on sheet and helm, / 0.1 s"),
    ROW(body_lag,  "",    0.2, "lag of her body, / 0.5 s"),
    ROW(body_pace, "",    0.2, "pace of her body across the boat, / 0.8 m/s"),
    ROW(sheet_out, "",    0.2, "pace at which power is taken off, / 2.5 a second"),
    ROW(sheet_in,  "",    0.2, "pace at which it is put back, / 1.2 a second"),
    ROW(wand_lag,  "",    0.3, "lag of the wand behind the water, / 0.04 s"),
    ROW(heel,      "k_e", 0.2, "effort for heel, / what the crossover model has"),
    ROW(lead,      "T_l", 0.2, "time by which heel is counted ahead, / what that model has"),
    ROW(steer,     "k_h", 0.2, "helm for course, / what that model has"),
    ROW(lean,      "k_x", 0.2, "helm for heel, / what that model has"),
};
// clang-format on
LW_TABLE_COVERS(lw_judged, rows);

const lw_table lw_judged_table = {
    .key = "judged",
    .title = "Judged numbers of rides",
    .rows = rows,
    .count = sizeof rows / sizeof rows[0],
    .doc = "Factors on what nobody measured, drawn for each block of rides within their errors."};
