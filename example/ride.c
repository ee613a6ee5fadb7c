// ride.c - three minutes of gusts and chop from one seed, and what happens in it.
// SPDX-License-Identifier: MIT

#include <stdio.h>

#include "lullwise/lullwise.h"

#define EVENTS  64
#define SECONDS 180.0

int main(void)
{
    lw_inputs inputs;
    lw_record_preset(&lw_boat_record, &inputs.boat);
    lw_record_preset(&lw_sailor_record, &inputs.sailor);
    lw_record_preset(&lw_day_record, &inputs.day_as_given);
    inputs.boat.pin_count = 1;
    inputs.boat.pins[0] = (lw_pin){2.5 * LW_DEG, "B"};
    inputs.day = inputs.day_as_given;
    inputs.day.has_wind = true;
    inputs.day.wind.lull = 8.0 * LW_KN;
    inputs.day.wind.mean = 11.0 * LW_KN;
    inputs.day.wind.puff = 15.0 * LW_KN;
    const char *why;
    if (!lw_day_settle(&inputs.day, &why)) return fprintf(stderr, "%s\n", why), 1;

    // How she is trimmed for the day's mean wind, and who steers her.
    static lw_polar_room room;
    static lw_sections sections;
    static lw_ridden asked;
    lw_sections_prepare(&sections, &inputs.boat, &room);
    lw_ridden_prepare(&asked, &inputs, &sections);
    lw_ridden_plan(&asked, 1);

    // Steps of a fixed length; the same seed is the same ride, on any machine.
    static lw_ride ride;
    static lw_ride_event events[EVENTS];
    ride.events = events;
    ride.event_room = EVENTS;
    lw_ride_begin(&ride, &asked.motion, &asked.plan);
    const size_t steps = (size_t)(SECONDS / asked.motion.parameters.step);
    lw_rides_advance(&asked.motion, &ride, 1, steps);

    for (size_t i = 0; i < ride.event_count && i < EVENTS; i++) {
        printf("%5.1f s  %s, wind %.1f kn\n", events[i].at.time, lw_ride_event_text(events[i].what),
               events[i].at.wind / LW_KN);
    }
    printf("flying %.0f %% of the time, %.0f m sailed, %.0f swims\n",
           100.0 * ride.tally.flying / ride.tally.seconds, ride.tally.distance,
           lw_ride_tally_swims(&ride.tally));
    return 0;
}
