// cold.h - numbers behind the cautions about cold water.
// SPDX-License-Identifier: MIT
//
// Averages of people in ordinary clothes, from rescue services. They say when to think twice, not
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

#endif
