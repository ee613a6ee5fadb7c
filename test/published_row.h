// published_row.h - how a name in test/published/ leads to a function of the engine.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PUBLISHED_ROW_H
#define LW_TEST_PUBLISHED_ROW_H

#define ARGUMENTS_MOST 6

typedef struct published_function {
    const char *name;
    const char *unit;  // of its value; the row must say the same
    int arguments;     // in SI; angles in degrees, temperatures in degC
    double (*value)(const double *arguments);
} published_function;

#endif
