// sea.c - looks at an irregular sea in lanes, beside the same sum with the C library's sine,
// cosine and exponential; and gusts.
// SPDX-License-Identifier: MIT

#include "bench/sea.h"

#include <math.h>
#include <stdio.h>

#include "bench/stopwatch.h"
#include "flight/balance.h"
#include "medium/gust_lanes.h"
#include "medium/sea_lanes.h"

#define STEPS 20000
#define STEP  0.02  // [s]

static double sum_of(lw_lanes x)
{
    double sum = 0.0;
    for (int i = 0; i < LW_WIDTH; i++) sum += x[i];
    return sum;
}

// What a ride needs of a step: flow under both foils, the surface there and at the wand.
LW_CLONES
static double look_in_lanes(lw_sea_lanes *sea)
{
    lw_lanes sum = lw_all(0.0);
    for (int i = 0; i < STEPS; i++) {
        const lw_lanes x = lw_all(0.16 * i), y = lw_all(0.05 * i);
        lw_sea_lanes_advance(sea);
        const lw_sea_look a = lw_sea_lanes_look(sea, x, y, lw_all(0.6));
        const lw_sea_look b = lw_sea_lanes_look(sea, x - 2.1, y, lw_all(0.7));
        sum += a.surface + a.u + a.v + a.w + b.surface + b.u + b.v + b.w;
        sum += lw_sea_lanes_surface(sea, x + 1.7, y);
    }
    return sum_of(sum);
}

static double look_written_out(const lw_sea_waves *sea, double x, double y, double t, double depth)
{
    double sum = 0.0;
    for (int c = 0; c < LW_SEA_CHAINS; c++) {
        const lw_sea_chain *chain = &sea->chains[c];
        double k = chain->wavenumber;
        for (int i = 0; i < LW_SEA_OCTAVES; i++, k *= 2.0) {
            const double a = chain->amplitude[i], omega = chain->omega[i];
            const double phi = k * (chain->x * x + chain->y * y) - omega * t + chain->phase[i];
            const double co = cos(phi), speed = a * omega * exp(-k * depth);
            sum += a * co + speed * (sin(phi) + co * (chain->x + chain->y));
        }
    }
    return sum;
}

LW_CLONES
static double blow(lw_gust_lanes *gust, const lw_gust_filter *filter)
{
    lw_lanes sum = lw_all(0.0);
    for (int i = 0; i < STEPS; i++) {
        lw_gust_lanes_advance(gust, filter, lw_all(10.0));
        sum += lw_gust_lanes_wind(gust, filter) + lw_gust_lanes_shift(gust, filter);
    }
    return sum_of(sum);
}

void bench_sea(void)
{
    const lw_sea_kind kind = {.wave = {0.3, 2.0}, .gamma = 3.3, .spread = 0.5};
    const lw_gust_kind gusty = {4.0, 6.0, 9.0, 60.0, 0.1, 2.5, 0.1};
    const lw_gust_filter filter = lw_gust_filter_of(gusty, STEP);
    const lw_sea_waves waves = lw_sea_of(kind, lw_seed_of(0, LW_SEED_SEA));
    lw_sea_lanes sea;
    lw_gust_lanes gust;
    for (int i = 0; i < LW_WIDTH; i++) {
        lw_sea_lanes_put(&sea, i, &waves, STEP);
        lw_gust_lanes_put(&gust, i, lw_seed_of(i, LW_SEED_GUST));
    }
    double ours[REPEATS], theirs[REPEATS], ratio[REPEATS], wind[REPEATS], sum = 0.0;
    for (int k = 0; k < REPEATS; k++) {
        const double start = seconds_now();
        sum += look_in_lanes(&sea);
        const double looked = seconds_now();
        for (int i = 0; i < STEPS; i++) {
            const double x = 0.16 * i, y = 0.05 * i, t = STEP * i;
            sum += look_written_out(&waves, x, y, t, 0.6);
            sum += look_written_out(&waves, x - 2.1, y, t, 0.7);
            sum += look_written_out(&waves, x + 1.7, y, t, 0.0);
        }
        const double middle = seconds_now();
        sum += blow(&gust, &filter);
        wind[k] = (seconds_now() - middle) / STEPS / LW_WIDTH;
        ours[k] = (looked - start) / STEPS / LW_WIDTH;
        theirs[k] = (middle - looked) / STEPS;
        ratio[k] = theirs[k] / ours[k];
    }
    printf("sea and wind of one step of one ride%s\n", isfinite(sum) ? "" : ": no number");
    printf("  sea in lanes    %7.0f ns   (target 20)\n", 1e9 * median_of(ours));
    printf("  sea, C library  %7.0f ns\n", 1e9 * median_of(theirs));
    printf("  gusts in lanes  %7.0f ns\n", 1e9 * median_of(wind));
    printf("  ratio           %7.1f\n\n", median_of(ratio));
}
