// ride_rates.c - shares and rates of rides, their means and standard errors.
// SPDX-License-Identifier: MIT

#include "lullwise/ride.h"

#include <math.h>

#include "quantity/tables.h"

#define ROW(member, ...) LW_RESULT(lw_ride_rates, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(flying,          "",    PERCENT, 1, "of the time with the hull clear of the water"),
    ROW(swimming,        "",    PERCENT, 1, "of the time lying still after a swim"),
    ROW(speed,           "V",   KN,      1, "mean speed through the water, swims counted"),
    ROW(made_good,       "",    KN,      1, "mean speed to windward, swims counted; negative: to "
                                            "leeward"),
    ROW(launches,        "",    PERH,    1, "take-offs"),
    ROW(touches,         "",    PERH,    1, "hull touches the water and flies on"),
    ROW(drops,           "",    PERH,    1, "drops off the foils"),
    ROW(breaches,        "",    PERH,    1, "main foil's tip breaks the surface"),
    ROW(rudder_breaches, "",    PERH,    1, "rudder foil's tip breaks the surface"),
    ROW(airs,            "",    PERH,    1, "a foil or a strut ventilates"),
    ROW(swims,           "",    PERH,    1, "swims"),
};
// clang-format on
LW_TABLE_COVERS(lw_ride_rates, rows);

const lw_table lw_ride_rates_table = {.key = "ride_rates",
                                      .title = "Rides",
                                      .rows = rows,
                                      .count = sizeof rows / sizeof rows[0],
                                      .doc = "What rides in gusts and chop come to."};

lw_ride_rates lw_ride_rates_of(const lw_ride_tally *tally)
{
    const double per = 1.0 / fmax(tally->seconds, 1e-9);
    const double *count = tally->count;
    const double airs = count[LW_RIDE_FOIL_AIR] + count[LW_RIDE_RUDDER_AIR] +
                        count[LW_RIDE_STRUT_AIR] + count[LW_RIDE_BLADE_AIR];
    return (lw_ride_rates){.flying = per * tally->flying,
                           .swimming = per * tally->swimming,
                           .speed = per * tally->distance,
                           .made_good = per * tally->made_good,
                           .launches = per * count[LW_RIDE_LAUNCH],
                           .touches = per * count[LW_RIDE_TOUCH],
                           .drops = per * count[LW_RIDE_DROP],
                           .breaches = per * count[LW_RIDE_BREACH],
                           .rudder_breaches = per * count[LW_RIDE_RUDDER_BREACH],
                           .airs = per * airs,
                           .swims = per * lw_ride_tally_swims(tally)};
}

// By Welford's recurrence, which loses no digits however many rides there are.    [welford-1962]
void lw_ride_sample_add(lw_ride_sample *sample, const lw_ride_tally *tally)
{
    const lw_ride_rates rates = lw_ride_rates_of(tally);
    sample->rides += 1.0;
    sample->seconds += tally->seconds;
    for (size_t i = 0; i < LW_RIDE_RATES; i++) {
        const double x = ((const double *)&rates)[i];
        double *mean = &((double *)&sample->mean)[i], *square = &((double *)&sample->square)[i];
        const double off = x - *mean;
        *mean += off / sample->rides;
        *square += off * (x - *mean);
    }
}

lw_ride_rates lw_ride_sample_error(const lw_ride_sample *sample)
{
    lw_ride_rates error = {0};
    const double n = sample->rides;
    for (size_t i = 0; i < LW_RIDE_RATES; i++) {
        const double square = ((const double *)&sample->square)[i];
        const double least = rows[i].unit == LW_UNIT_PERH ? 1.0 / fmax(sample->seconds, 1.0) : 0.0;
        ((double *)&error)[i] = fmax(n > 1.0 ? sqrt(square / (n * (n - 1.0))) : 0.0, least);
    }
    return error;
}

// What counts as one of a rate, so that a part of it is near enough where the rate itself is small.
static double one_of(lw_unit unit)
{
    return unit == LW_UNIT_KN ? LW_KN : unit == LW_UNIT_PERH ? 4.0 / 3600.0 : 1.0;
}

bool lw_ride_sample_is_sure(const lw_ride_sample *sample, double part)
{
    const lw_ride_rates error = lw_ride_sample_error(sample);
    if (sample->rides < 2.0) return false;
    for (size_t i = 0; i < LW_RIDE_RATES; i++) {
        const double mean = fabs(((const double *)&sample->mean)[i]);
        if (((const double *)&error)[i] > part * fmax(mean, one_of(rows[i].unit))) return false;
    }
    return true;
}
