// ride.c - rides in gusts and chop: times real time, and CVODE on the same equations.
// SPDX-License-Identifier: MIT

#include "bench/ride.h"

#include <math.h>
#include <stdio.h>

#include "bench/stopwatch.h"
#include "test/integrator.h"
#include "test/ride.h"

#define MINUTE 60.0  // [s]
#define FLEET  64
#define SHORT  3.0  // [s] of the smooth ride

static double apart(const lw_ride_state *a, const lw_ride_state *b)
{
    double sum = 0.0;
    for (size_t k = 0; k < LW_RIDE_STATES; k++) {
        const double d = a->at[k] - b->at[k];
        sum += d * d;
    }
    return sqrt(sum);
}

// In gusts and chop that she can be held in.
static void bench_stirred(flown *f)
{
    static lw_ride rides[FLEET];
    const size_t steps = (size_t)(MINUTE / f->motion.parameters.step);
    double alone[REPEATS], lanes[REPEATS];
    for (int k = 0; k < REPEATS; k++) {
        for (int i = 0; i < FLEET; i++) {
            f->plan.seed = (uint64_t)(i + 1);
            lw_ride_begin(&rides[i], &f->motion, &f->plan);
        }
        const double start = seconds_now();
        lw_rides_advance(&f->motion, rides, 1, steps);
        const double middle = seconds_now();
        lw_rides_advance(&f->motion, rides, FLEET, steps);
        const double end = seconds_now();
        alone[k] = (middle - start) / (double)steps;
        lanes[k] = (end - middle) / (double)steps / FLEET;
    }
    const double a = median_of(alone), b = median_of(lanes), dt = f->motion.parameters.step;
    printf("rides in gusts and chop, a step of %.0f ms\n", 1e3 * dt);
    printf("  one boat        %7.0f times real time   %5.0f ns a step   (target 20000)\n", dt / a,
           1e9 * a);
    printf("  in lanes        %7.0f times real time   %5.0f ns a step   (target 100000)\n", dt / b,
           1e9 * b);
}

// The smooth equations from off the balance; the tolerance at which CVODE comes as near as we do.
static void bench_smooth(flown *f)
{
    f->plan.start.heel += 0.05, f->plan.start.pitch += 0.01, f->plan.start.surge -= 0.5;
    integrator_question q = {&f->motion, &f->plan, 0};
    lw_ride_state exact = f->plan.start, end;
    if (!integrator_go(&q, &exact, SHORT, 1e-11)) printf("CVODE gave up\n");
    const lw_ride_state here = ridden(f, SHORT);
    const double wanted = apart(&here, &exact);
    double tolerance = 1e-2;
    for (; tolerance > 1e-10; tolerance *= 0.5) {
        end = f->plan.start;
        if (integrator_go(&q, &end, SHORT, tolerance) && apart(&end, &exact) <= wanted) break;
    }
    static lw_ride rides[FLEET];
    double ours[REPEATS], lanes[REPEATS], theirs[REPEATS], ratio[REPEATS], ratio_lanes[REPEATS];
    const size_t steps = (size_t)(SHORT / f->motion.parameters.step + 0.5);
    for (int k = 0; k < REPEATS; k++) {
        for (int i = 0; i < FLEET; i++) lw_ride_begin(&rides[i], &f->motion, &f->plan);
        const double start = seconds_now();
        for (int i = 0; i < 20; i++) ridden(f, SHORT);
        const double alone = seconds_now();
        lw_rides_advance(&f->motion, rides, FLEET, steps);
        const double middle = seconds_now();
        q.looks = 0, end = f->plan.start;
        integrator_go(&q, &end, SHORT, tolerance);
        ours[k] = (alone - start) / 20.0;
        lanes[k] = (middle - alone) / FLEET;
        theirs[k] = seconds_now() - middle;
        ratio[k] = theirs[k] / ours[k];
        ratio_lanes[k] = theirs[k] / lanes[k];
    }
    printf("the same equations, smooth, %.0f s to an error of %.1e\n", SHORT, wanted);
    printf("  ours            %7.0f us   %5.0f looks at the forces\n", 1e6 * median_of(ours),
           SHORT / f->motion.parameters.step);
    printf("  ours, in lanes  %7.0f us\n", 1e6 * median_of(lanes));
    printf("  CVODE           %7.0f us   %5ld looks, tolerance %.1e\n", 1e6 * median_of(theirs),
           q.looks, tolerance);
    printf("  ratio           %7.1f, in lanes %.1f   (target 10)\n\n", median_of(ratio),
           median_of(ratio_lanes));
}

void bench_rides(void)
{
    static flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    flown calm = f;
    calm.motion.craft = &calm.craft;
    flown_stir(&f, 0.2);
    f.motion.sea.wave = (lw_wave){0.2, 1.7};
    bench_stirred(&f);
    bench_smooth(&calm);
}
