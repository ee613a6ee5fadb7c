// sea_lanes.h - irregular seas side by side, a sea in each lane, looked at step by step.
// SPDX-License-Identifier: MIT
//
// The waves of a chain have the wavenumbers k, 2k, 4k: one sine, cosine and exponential serve all
// of them, by squaring. Time is turned on by a fixed step; the place is free at every look. Against
// lw_sea_at: within 1e-5 of the height and of the speed at the surface.

#ifndef LW_SEA_LANES_H
#define LW_SEA_LANES_H

#include "lullwise/elementary.h"
#include "lullwise/weather.h"
#include "solve/rough.h"

typedef struct lw_sea_chain_lanes {
    lw_lanes wavenumber, x, y;
    lw_lanes turns_x, turns_y;  // k / (2 pi) along x and y [1/m]
    lw_lanes omega[LW_SEA_OCTAVES];
    lw_lanes re[LW_SEA_OCTAVES], im[LW_SEA_OCTAVES];            // a e^(i (epsilon - omega t))
    lw_lanes turn_re[LW_SEA_OCTAVES], turn_im[LW_SEA_OCTAVES];  // e^(-i omega dt)
} lw_sea_chain_lanes;

typedef struct lw_sea_lanes {
    lw_sea_chain_lanes chains[LW_SEA_CHAINS];
} lw_sea_lanes;

// Puts a sea into a lane, at time 0; step: dt of lw_sea_lanes_advance [s].
LW_INLINE void lw_sea_lanes_put(lw_sea_lanes *sea, int lane, const lw_sea_waves *from, double step)
{
    for (int c = 0; c < LW_SEA_CHAINS; c++) {
        lw_sea_chain_lanes *to = &sea->chains[c];
        const lw_sea_chain *chain = &from->chains[c];
        to->wavenumber[lane] = chain->wavenumber;
        to->x[lane] = chain->x, to->y[lane] = chain->y;
        const double per_metre = chain->wavenumber / (2.0 * LW_PI);
        to->turns_x[lane] = per_metre * chain->x, to->turns_y[lane] = per_metre * chain->y;
        for (int i = 0; i < LW_SEA_OCTAVES; i++) {
            to->omega[i][lane] = chain->omega[i];
            to->re[i][lane] = chain->amplitude[i] * lw_cos(chain->phase[i]);
            to->im[i][lane] = chain->amplitude[i] * lw_sin(chain->phase[i]);
            to->turn_re[i][lane] = lw_cos(chain->omega[i] * step);
            to->turn_im[i][lane] = -lw_sin(chain->omega[i] * step);
        }
    }
}

// Lets one step of time pass. Rounding moves a wave by less than 1e-9 rad in 10^6 steps.
LW_INLINE void lw_sea_lanes_advance(lw_sea_lanes *sea)
{
    LW_UNROLLED
    for (int c = 0; c < LW_SEA_CHAINS; c++) {
        lw_sea_chain_lanes *chain = &sea->chains[c];
        for (int i = 0; i < LW_SEA_OCTAVES; i++) {
            const lw_lanes re = chain->re[i], im = chain->im[i];
            chain->re[i] = re * chain->turn_re[i] - im * chain->turn_im[i];
            chain->im[i] = re * chain->turn_im[i] + im * chain->turn_re[i];
        }
    }
}

// Height of the surface at a place [m].
LW_INLINE lw_lanes lw_sea_lanes_surface(const lw_sea_lanes *sea, lw_lanes x, lw_lanes y)
{
    lw_lanes surface = lw_all(0.0);
    LW_UNROLLED
    for (int c = 0; c < LW_SEA_CHAINS; c++) {
        const lw_sea_chain_lanes *chain = &sea->chains[c];
        lw_lanes s, co;
        lw_rough_of_turns(chain->turns_x * x + chain->turns_y * y, &s, &co);
        for (int i = 0; i < LW_SEA_OCTAVES; i++) {
            surface += chain->re[i] * co - chain->im[i] * s;
            const lw_lanes twice = co + co;
            co = twice * co - 1.0;
            s = twice * s;
        }
    }
    return surface;
}

// As lw_sea_point.
typedef struct lw_sea_look {
    lw_lanes surface, u, v, w;
} lw_sea_look;

// The surface at a place, and the water's velocity at a depth below it [m], 0 or more.
LW_INLINE lw_sea_look lw_sea_lanes_look(const lw_sea_lanes *sea, lw_lanes x, lw_lanes y,
                                        lw_lanes depth)
{
    const lw_lanes zero = lw_all(0.0);
    lw_sea_look look = {zero, zero, zero, zero};
    LW_UNROLLED
    for (int c = 0; c < LW_SEA_CHAINS; c++) {
        const lw_sea_chain_lanes *chain = &sea->chains[c];
        lw_lanes s, co, along = zero;
        lw_rough_of_turns(chain->turns_x * x + chain->turns_y * y, &s, &co);
        lw_lanes decay = lw_rough_decay(chain->wavenumber * depth);
        for (int i = 0; i < LW_SEA_OCTAVES; i++) {
            const lw_lanes re = chain->re[i] * co - chain->im[i] * s;
            const lw_lanes im = chain->re[i] * s + chain->im[i] * co;
            const lw_lanes rate = chain->omega[i] * decay;
            look.surface += re;
            look.w += rate * im;
            along += rate * re;
            const lw_lanes twice = co + co;
            co = twice * co - 1.0;
            s = twice * s;
            decay = decay * decay;
        }
        look.u += along * chain->x;
        look.v += along * chain->y;
    }
    return look;
}

#endif
