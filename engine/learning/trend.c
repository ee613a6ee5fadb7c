// trend.c - how what rides tell moves with the hidden quantities.
// SPDX-License-Identifier: MIT

#include "learning/trend.h"

#include <math.h>
#include <string.h>

#include "learning/rides.h"
#include "learning/weight.h"
#include "solve/linear.h"

#define TERMS  LW_TREND_TERMS
#define MIDDLE (12.0 * LW_KN)  // of the winds one sails in
#define WIDE   (4.0 * LW_KN)
#define LIGHT  (11.0 * LW_KN)  // below it a line of its own: she flies in puffs only  [judged]
#define TURNS  10              // after which the weights stay
#define STIFF  1.0             // knots of wind that say she moves alike in all winds  [judged]

static void put_terms(double wind, double terms[TERMS])
{
    terms[0] = 1.0;
    terms[1] = (wind - MIDDLE) / WIDE;
    terms[2] = fmax(LIGHT - wind, 0.0) / WIDE;
}

typedef struct slopes {
    size_t count;
    double wind[LW_PINS_MOST * LW_RIDDEN_WINDS], slope[LW_PINS_MOST * LW_RIDDEN_WINDS];
} slopes;

static void find_slopes(const lw_learning *l, const lw_quantity *row, size_t q, slopes *s)
{
    s->count = 0;
    for (size_t pin = 0; pin < l->season->boat->pin_count; pin++) {
        for (int i = 0; i < LW_RIDDEN_WINDS; i++) {
            const double more = lw_quantity_value(row, &l->more[q].ridden[pin][i]);
            const double less = lw_quantity_value(row, &l->less[q].ridden[pin][i]);
            if (isnan(more - less)) continue;
            s->wind[s->count] = lw_ridden_wind(i);
            s->slope[s->count++] = 0.5 * (more - less);
        }
    }
}

static double value_of(const double line[TERMS], double wind)
{
    double terms[TERMS], sum = 0.0;
    put_terms(wind, terms);
    for (int i = 0; i < TERMS; i++) sum += line[i] * terms[i];
    return sum;
}

// Least squares, with what is far from the line as it was counting less.
static void fit(const slopes *s, double error, double line[TERMS])
{
    double matrix[TERMS * TERMS] = {0.0}, right[TERMS] = {0.0};
    int pivot[TERMS];
    for (size_t n = 0; n < s->count; n++) {
        double terms[TERMS];
        const double off = (s->slope[n] - value_of(line, s->wind[n])) / error;
        const double weight = lw_weight_of(off);
        put_terms(s->wind[n], terms);
        for (int i = 0; i < TERMS; i++) {
            right[i] += weight * terms[i] * s->slope[n];
            for (int j = 0; j < TERMS; j++) matrix[i * TERMS + j] += weight * terms[i] * terms[j];
        }
    }
    for (int i = 0; i < TERMS; i++) matrix[i * TERMS + i] += i > 0 ? STIFF : 1e-9;
    if (!lw_linear_factor(matrix, TERMS, pivot)) return;
    lw_linear_solve(matrix, TERMS, pivot, right);
    memcpy(line, right, TERMS * sizeof *line);
}

void lw_trend_put(lw_learning *learning)
{
    for (size_t row = 0; row < LW_LESSON_COUNT; row++) {
        const lw_quantity *quantity = &lw_lesson_table.rows[row];
        const double error = 0.5 * quantity->error * lw_unit_in_si(quantity->unit);
        for (size_t q = 0; q < LW_HIDDEN_COUNT; q++) {
            slopes s;
            double *line = learning->trend.line[row][q];
            find_slopes(learning, quantity, q, &s);
            memset(line, 0, TERMS * sizeof *line);
            for (int i = 0; i < TURNS; i++) fit(&s, error, line);
        }
    }
}

double lw_trend_slope(const lw_trend *trend, size_t row, size_t quantity, double wind)
{
    return value_of(trend->line[row][quantity], wind);
}
