// strut_limits.c - ventilated struts: side force, and the angles between which they stay so.
// SPDX-License-Identifier: MIT

#include "foil/ventilation/strut_limits.h"

#include <math.h>

#include "foil/ventilation/ventilated_strut.h"

double lw_ventilation_number(double depth, double speed)
{
    return 2.0 * LW_GRAVITY * depth / (speed * speed);
}

double lw_ventilated_side(double aspect, double number, double angle)
{
    return lw_strut_ventilated(lw_all(aspect), lw_all(number), lw_all(angle))[0];
}

double lw_ventilation_washout(double aspect, double number)
{
    return lw_strut_washout(lw_all(aspect), lw_all(number))[0];
}

#define SMALL 0.3   // [rad] most angles sought are below
#define FINE  1e-7  // [rad]

// Angle at which the ventilated coefficient is `side`: false position whose end that stays put
// counts for half of what it is [dowell-jarratt-1971].
static double angle_of(double aspect, double number, double side)
{
    const double most = 0.5 * LW_PI;
    double low = 0.0, below = -side, high = SMALL;
    double above = lw_ventilated_side(aspect, number, high) - side;
    if (above <= 0.0) {
        low = high, below = above, high = most;
        above = lw_ventilated_side(aspect, number, high) - side;
        if (above <= 0.0) return high;
    }
    for (int i = 0, stays = 0; i < 40 && high - low > FINE; i++) {
        const double x = low - below * (high - low) / (above - below);
        const double at = lw_ventilated_side(aspect, number, x) - side;
        if (fabs(at) < 1e-12) return x;
        if (at > 0.0) {
            high = x, above = at;
            if (stays < 0) below *= 0.5;
            stays = -1;
        } else {
            low = x, below = at;
            if (stays > 0) above *= 0.5;
            stays = 1;
        }
    }
    return 0.5 * (low + high);
}

lw_ventilation lw_ventilation_of(double aspect, double number)
{
    const double stays = angle_of(aspect, number, lw_ventilation_washout(aspect, number));
    return (lw_ventilation){.forms = fmax(14.5 * LW_DEG, stays),
                            .forms_least = stays,
                            .forms_most = fmax(25.0 * LW_DEG, stays),
                            .stays = stays,
                            .stays_least = 0.8 * stays,
                            .stays_most = 1.3 * stays};
}

bool lw_ventilated_next(const lw_ventilation *limit, bool ventilated, double angle)
{
    return fabs(angle) > (ventilated ? limit->stays : limit->forms);
}
