// tables.h - the tables of the boat's sections, gathered into one record by boat_table.c.
// SPDX-License-Identifier: MIT

#ifndef LW_TABLES_H
#define LW_TABLES_H

#include "lullwise/quantity.h"

#define LW_ROW_COUNT(rows) (sizeof(rows) / sizeof(rows)[0])

extern const lw_table lw_hull_table;
extern const lw_table lw_main_foil_table;
extern const lw_table lw_rudder_foil_table;
extern const lw_table lw_main_strut_table;
extern const lw_table lw_rudder_strut_table;
extern const lw_table lw_linkage_table;
extern const lw_table lw_rudder_table;

// Of a day, by day_table.c: a logged day has them too.
extern const lw_table lw_wind_table;
extern const lw_table lw_sea_table;
extern const lw_table lw_water_table;
extern const lw_table lw_air_table;

// A row of a result: nobody writes it, so it has no range, preset or error.
#define LW_RESULT(record, member, sym, u, digits, words)                                        \
    {                                                                                           \
        LW_MEMBER(record, member), .symbol = sym, .unit = LW_UNIT_##u, .min = -1e9, .max = 1e9, \
                                   .decimals = digits, .doc = words                             \
    }

#endif
