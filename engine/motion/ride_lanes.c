// ride_lanes.c - what a boat keeps through a ride, from its plan into a lane.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "motion/inflow.h"

static void gains_put(lw_gains_lanes *lanes, int i, const lw_gains *gains)
{
    for (int k = 0; k < LW_GAINS; k++) lanes->at[k][i] = gains->at[k];
}

static void wish_put(lw_wish_lanes *lanes, int i, const lw_wish *wish)
{
    for (int k = 0; k < LW_WISH_MEMBERS; k++) lanes->at[k][i] = wish->at[k];
}

static void pilot_put(lw_pilot_lanes *lanes, int i, const lw_pilot *pilot)
{
    gains_put(&lanes->rest, i, &pilot->rest);
    gains_put(&lanes->rising, i, &pilot->rising);
    for (int k = 0; k < LW_WISHES; k++) {
        wish_put(&lanes->wish[k], i, &pilot->wish[k]);
        lanes->rudder[k][i] = pilot->rudder[k];
    }
    lanes->bow_afloat[i] = pilot->bow_afloat;
    lanes->wind[i] = pilot->wind, lanes->patience[i] = pilot->patience;
    lanes->per_wind[i] = 1.0 / (LW_WISH_STEP * fmax(pilot->wind, LW_LEAST_WAY));
    lanes->per_flight[i] = pilot->flight > 0.0 ? 1.0 / pilot->flight : 0.0;
}

void lw_ride_lanes_put(lw_ride_lanes *lanes, int i, const lw_ride_plan *plan)
{
    lanes->setup.incidence[i] = plan->setup.incidence;
    lanes->setup.wand_length[i] = plan->setup.wand_length;
    lanes->setup.gearing[i] = plan->setup.gearing;
    lanes->setup.rod[i] = plan->setup.rod;
    lanes->place[i] = lanes->pilot.place[i] = plan->place;
    pilot_put(&lanes->pilot, i, &plan->pilot);
    const lw_wish *usual = &plan->pilot.wish[LW_WISH_MEAN];
    lanes->pilot.heel[i] = usual->heel, lanes->pilot.bow[i] = usual->bow;
}
