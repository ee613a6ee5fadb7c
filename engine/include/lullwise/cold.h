// cold.h - numbers behind the cautions about cold water and wind.
// SPDX-License-Identifier: MIT
//
// Of water: averages of people in ordinary clothes, from rescue services. They say when to think twice, not
// how long anyone lasts.

#ifndef LW_COLD_H
#define LW_COLD_H

#define LW_COLD_SHOCK       15.0    // [degC] water below it makes people gasp [rnli-cold]
#define LW_COLD_BREATHING   60.0    // [s] until breathing is under control [1-10-1]
#define LW_COLD_MOVEMENT    600.0   // [s] of useful movement, in ice water [1-10-1]
#define LW_COLD_UNCONSCIOUS 3600.0  // [s] until unconscious, in ice water [1-10-1]

// How long people stayed able to help themselves, and alive, in water of a temperature.
typedef struct lw_cold_band {
    double below;                 // [degC] the band's upper edge
    double able_from, able_to;    // [s]    to exhaustion
    double alive_from, alive_to;  // [s]
} lw_cold_band;

// The band of [us-sar-cold] that a water temperature [degC] falls in. Above 27 degC nothing is
// said: the times are those of a day.
lw_cold_band lw_cold_band_of(double temperature);

// Wind chill: temperature [degC] of still air that would cool bare, dry skin as fast.
//
//     13.12 + 0.6215 t - 11.37 v^0.16 + 0.3965 t v^0.16,   v in km/h at 10 m    [wind-chill]
//
// Holds for    t <= 10 degC and v >= 4.8 km/h; outside, t itself is given back.
// Leaves out   wet skin and clothes, which cool faster; sun.
double lw_wind_chill(double temperature, double wind);

#endif
