// day.h - the day: wind, sea, water, air, course; with boat and sailor, what answers are made from.
// SPDX-License-Identifier: MIT

#ifndef LW_DAY_H
#define LW_DAY_H

#include "lullwise/boat.h"
#include "lullwise/quantity.h"

// --- the day: wind, sea, water, air, course and what time is worth

typedef struct lw_wind {
    double lull;    // [m/s]  low over some minutes: the 10 % point of the readings
    double mean;    // [m/s]
    double puff;    // [m/s]  high over some minutes: the 90 % point of the readings
    double height;  // z_0  [m]   where it was read
    double period;  // T_g  [s]   from puff to puff
    double shift;   // [rad]  standard deviation of its direction
} lw_wind;

typedef struct lw_forecast {
    double mean;    // [m/s]  10-minute mean
    double gust;    // [m/s]  3-second gust; 0: not given, taken from the exposure
    double height;  // [m]    of the forecast
} lw_forecast;

typedef struct lw_sea {
    double fetch;   // F    [m]   open water to windward; 0: sheltered, flat
    double height;  // H_s  [m]   significant wave height; 0: from fetch and wind
    double period;  // T_p  [s]   peak period; 0: from fetch and wind
    double from;  // [rad]      where the waves come from, seen from the wind: positive to its left
    double spread;  // [rad]      standard deviation of the waves' directions
} lw_sea;

typedef struct lw_water {
    double temperature;  // [degC]
    double salinity;     // [g/kg]
} lw_water;

typedef struct lw_air {
    double temperature;  // [degC]
    double pressure;     // [Pa]
} lw_air;

typedef struct lw_leg {
    double heading;  // [rad]  direction of the mark from the wind: 0 dead upwind, 180 deg downwind
    double length;   // [m]    straight
} lw_leg;

typedef struct lw_cost {
    double swim;        // [s]  from the fall to being under way again, without the launch
    double tack;        // [s]  lost by a tack
    double gybe;        // [s]
    double tack_every;  // [m]  sailed between tacks or gybes
} lw_cost;

typedef struct lw_day {
    char name[LW_NAME_LENGTH];
    char aim[LW_NAME_LENGTH];       // "race", "steady" or "easy"
    char exposure[LW_NAME_LENGTH];  // of the forecast: "in-land", "off-land", "off-sea", "at-sea"
    bool has_wind, has_forecast;
    lw_wind wind;
    lw_forecast forecast;
    lw_sea sea;
    lw_water water;
    lw_air air;
    lw_cost cost;
    size_t reading_count;
    double readings[LW_READINGS_MOST];  // [m/s] at wind.height
    size_t leg_count;
    lw_leg legs[LW_LEGS_MOST];
} lw_day;

extern const lw_record lw_day_record;

// Lull, mean and puff of the day at wind.height: as given, or from the readings, or from the
// forecast by gust factors [wmo-1555] and the log profile. Exactly one of the three must be given.
// Returns false, with the sentence in *why, when none or several are, or lull > mean > puff fails.
bool lw_day_settle(lw_day *day, const char **why);

// --- what every answer is made from: a boat, a sailor and a day

typedef struct lw_inputs {
    lw_boat boat;
    lw_sailor sailor;
    lw_day day;           // settled: lull, mean and puff are there
    lw_day day_as_given;  // before lw_day_settle
} lw_inputs;

#endif
