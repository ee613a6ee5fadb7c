// choice.c - which of three pins to sail with on a day, by rides through its gusts.
// SPDX-License-Identifier: MIT

#include <stdio.h>

#include "lullwise/lullwise.h"

int main(void)
{
    lw_boat boat;
    lw_sailor sailor;
    lw_day day;
    lw_record_preset(&lw_boat_record, &boat);
    lw_record_preset(&lw_sailor_record, &sailor);
    lw_record_preset(&lw_day_record, &day);
    boat.pin_count = 3;
    boat.pins[0] = (lw_pin){2.0 * LW_DEG, "A"};  // most lift first
    boat.pins[1] = (lw_pin){1.0 * LW_DEG, "B"};
    boat.pins[2] = (lw_pin){0.0 * LW_DEG, "C"};

    // Half a kilometre to windward, and back.
    day.has_wind = true;
    day.wind.lull = 8.0 * LW_KN;
    day.wind.mean = 11.0 * LW_KN;
    day.wind.puff = 14.0 * LW_KN;
    day.leg_count = 2;
    day.legs[0] = (lw_leg){0.0, 500.0};
    day.legs[1] = (lw_leg){LW_PI, 500.0};
    const char *why;
    if (!lw_day_settle(&day, &why)) return fprintf(stderr, "%s\n", why), 1;

    // In steps, so that a caller can show progress, stop, or share them out.
    static lw_polar_room room;
    static lw_sections sections;
    static lw_outlook outlook;
    lw_sections_prepare(&sections, &boat, &room);
    lw_outlook_begin(&outlook, &boat, &sections, &sailor.person, &day);
    outlook.effort.seconds = 30.0;  // of each ride: a quick look
    for (size_t done = 0, all; done < (all = lw_outlook_steps(&outlook)); done++) {
        lw_outlook_step(&outlook, done);
    }
    lw_outlook_end(&outlook);

    static lw_choice choice;
    choice = lw_choice_of(&outlook, lw_aim_of(day.aim), 0.0);
    for (size_t i = 0; i < choice.count; i++) {
        const lw_placing *place = &choice.places[i];
        printf("%zu. pin %s: %.0f s round the course, held to %.0f kn\n", i + 1,
               boat.pins[place->pin].label, place->prospect.seconds,
               place->prospect.held_up_to / LW_KN);
    }
    return choice.count > 0 ? 0 : 1;
}
