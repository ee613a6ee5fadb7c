// sea.c - an irregular sea out of its spectrum.
// SPDX-License-Identifier: MIT

#include "lullwise/weather.h"

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/elementary.h"
#include "medium/wind.h"

#define BANDS       (LW_SEA_CHAINS * LW_SEA_OCTAVES)
#define FIRST       0.74                 // omega / omega_p where the first band begins
#define COS2_SPREAD 0.56785450214626605  // sqrt(pi^2 / 12 - 1/2)  of cos^2 over half a circle
#define GAMMA_MOST  5.0

lw_sea_kind lw_sea_kind_of(const lw_medium *medium, double wind)
{
    const lw_wave wave = lw_medium_wave(medium, wind);
    const double steepness = wave.period / sqrt(fmax(wave.height, 1e-9));
    const double gamma = lw_exp(5.75 - 1.15 * fmin(fmax(steepness, 3.6), 5.0));
    return (lw_sea_kind){.wave = wave,
                         .gamma = fmin(fmax(gamma, 1.0), GAMMA_MOST),
                         .from = medium->wave_from,
                         .spread = medium->wave_spread};
}

// omega / omega_p where a band begins: wavenumbers, and so squares of frequencies, double with
// every LW_SEA_CHAINS bands.
static double edge(double band) { return FIRST * lw_exp(0.5 * lw_log(2.0) / LW_SEA_CHAINS * band); }

// int S d omega over a band, by Simpson's rule in the logarithm of the frequency.
static double energy(lw_sea_kind kind, double omega_p, int band)
{
    const int steps = 16;
    double sum = 0.0;
    for (int i = 0; i <= steps; i++) {
        const double omega = omega_p * edge(band + (double)i / steps);
        const double weight = i == 0 || i == steps ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
        sum += weight * omega * lw_wave_spectrum(kind.wave, kind.gamma, omega);
    }
    return sum / (3.0 * steps) * 0.5 * lw_log(2.0) / LW_SEA_CHAINS;
}

// Amplitudes of the bands, so scaled that 4 sqrt(m_0) is the height.
static void fill_amplitudes(lw_sea_kind kind, double omega_p, lw_sea_waves *sea)
{
    double energies[BANDS], sum = 0.0;
    for (int i = 0; i < BANDS; i++) sum += energies[i] = energy(kind, omega_p, i);
    const double height = kind.wave.height, m_0 = height * height / 16.0;
    for (int i = 0; i < BANDS; i++) {
        sea->chains[i % LW_SEA_CHAINS].amplitude[i / LW_SEA_CHAINS] =
            sum > 0.0 ? sqrt(2.0 * energies[i] / sum * m_0) : 0.0;
    }
}

// A direction from cos^2: 1/2 + (a + sin a cos a) / pi of them lie below a. Bisected.
static double cos2_direction(double part)
{
    double low = -0.5 * LW_PI, high = 0.5 * LW_PI;
    for (int i = 0; i < 48; i++) {
        const double a = 0.5 * (low + high);
        const bool is_below = 0.5 + (a + lw_sin(a) * lw_cos(a)) / LW_PI < part;
        if (is_below)
            low = a;
        else
            high = a;
    }
    return 0.5 * (low + high);
}

// The middles of equal parts of the distribution, dealt to the chains in a random order, each
// moved within its part: every sea has its spread.
static void fill_directions(lw_sea_kind kind, lw_seed *seed, lw_sea_waves *sea)
{
    int part[LW_SEA_CHAINS] = {0};
    for (int c = 0; c < LW_SEA_CHAINS; c++) {
        const int other = (int)(lw_seed_uniform(seed) * (c + 1));
        part[c] = part[other];
        part[other] = c;
    }
    for (int c = 0; c < LW_SEA_CHAINS; c++) {
        const double at = (part[c] + lw_seed_uniform(seed)) / LW_SEA_CHAINS;
        const double off = kind.spread / COS2_SPREAD * cos2_direction(at);
        sea->chains[c].x = -lw_cos(kind.from + off);
        sea->chains[c].y = -lw_sin(kind.from + off);
    }
}

lw_sea_waves lw_sea_of(lw_sea_kind kind, lw_seed seed)
{
    lw_sea_waves sea;
    const double omega_p = 2.0 * LW_PI / kind.wave.period;
    fill_amplitudes(kind, omega_p, &sea);
    fill_directions(kind, &seed, &sea);
    for (int c = 0; c < LW_SEA_CHAINS; c++) {
        lw_sea_chain *chain = &sea.chains[c];
        const double omega = omega_p * edge(c + lw_seed_uniform(&seed));
        chain->wavenumber = omega * omega / LW_GRAVITY;
        double k = chain->wavenumber;
        for (int i = 0; i < LW_SEA_OCTAVES; i++, k *= 2.0) {
            chain->omega[i] = sqrt(LW_GRAVITY * k);
            chain->phase[i] = 2.0 * LW_PI * lw_seed_uniform(&seed);
        }
    }
    return sea;
}

lw_sea_point lw_sea_at(const lw_sea_waves *sea, double x, double y, double time, double depth)
{
    lw_sea_point point = {0};
    for (int c = 0; c < LW_SEA_CHAINS; c++) {
        const lw_sea_chain *chain = &sea->chains[c];
        double k = chain->wavenumber, along = 0.0;
        for (int i = 0; i < LW_SEA_OCTAVES; i++, k *= 2.0) {
            const double a = chain->amplitude[i], omega = chain->omega[i];
            const double phi = k * (chain->x * x + chain->y * y) - omega * time + chain->phase[i];
            const double speed = a * omega * lw_exp(-k * depth);
            point.surface += a * lw_cos(phi);
            point.w += speed * lw_sin(phi);
            along += speed * lw_cos(phi);
        }
        point.u += along * chain->x;
        point.v += along * chain->y;
    }
    return point;
}
