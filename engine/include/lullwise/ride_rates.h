// ride_rates.h - what rides come to: shares and rates an hour, and how surely many rides know them.
// SPDX-License-Identifier: MIT

#ifndef LW_RIDE_RATES_H
#define LW_RIDE_RATES_H

#include "lullwise/ride_event.h"

typedef struct lw_ride_rates {
    double flying;           // [-]    share of the time, hull clear of the water
    double swimming;         // [-]    share of the time
    double speed;            // [m/s]  through the water, swims counted
    double made_good;        // [m/s]  to windward, swims counted
    double launches;         // [1/s]
    double touches;          // [1/s]
    double drops;            // [1/s]
    double breaches;         // [1/s]  of the main foil
    double rudder_breaches;  // [1/s]  of the rudder foil
    double airs;             // [1/s]  ventilations of foils and struts
    double swims;            // [1/s]
} lw_ride_rates;
#define LW_RIDE_RATES (sizeof(lw_ride_rates) / sizeof(double))

extern const lw_table lw_ride_rates_table;

lw_ride_rates lw_ride_rates_of(const lw_ride_tally *tally);

// Many rides of one length, each with a seed of its own; owned by the caller, from {0}.
typedef struct lw_ride_sample {
    double rides, seconds;
    lw_ride_rates mean;
    lw_ride_rates square;  // sum of squares about the mean
} lw_ride_sample;

void lw_ride_sample_add(lw_ride_sample *sample, const lw_ride_tally *tally);

// Standard error of each mean, s / sqrt(n). That of a rate an hour is never below one event in all
// the time sailed: what has not happened yet may still.  [judged]
lw_ride_rates lw_ride_sample_error(const lw_ride_sample *sample);

// True when every mean is known to `part` of itself; or, where that is less, shares to a part of
// one, speeds to a part of a knot, and events to a part of one in a quarter of an hour.  [judged]
bool lw_ride_sample_is_sure(const lw_ride_sample *sample, double part);

#endif
