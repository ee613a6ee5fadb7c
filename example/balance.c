// balance.c - one steady flight: the boat of the presets upwind in 12 kn, and what of it runs out.
// SPDX-License-Identifier: MIT

#include <stdio.h>

#include "lullwise/lullwise.h"

int main(void)
{
    // What was measured; a program of one's own reads it from somewhere.
    lw_boat boat;
    lw_sailor sailor;
    lw_day day;
    lw_record_preset(&lw_boat_record, &boat);
    lw_record_preset(&lw_sailor_record, &sailor);
    lw_record_preset(&lw_day_record, &day);
    boat.pin_count = 1;
    boat.pins[0] = (lw_pin){2.5 * LW_DEG, "B"};

    // Once for a boat: the sections of her foils, then all that flight reads.
    static lw_polar_room room;
    static lw_sections sections;
    static lw_craft craft;
    const lw_medium medium = lw_medium_of(&day);
    lw_sections_prepare(&sections, &boat, &room);
    lw_craft_prepare(&craft, &boat, &sections, &sailor.person, &medium);

    // A flight 60 degrees from the wind with the bow level: what follows is sought.
    const lw_setup setup = lw_craft_setup(&craft, &boat, 0);
    const lw_ask ask = lw_ask_of(&craft, &setup, 12.0 * LW_KN, 60.0 * LW_DEG);
    lw_answer answer;
    lw_balance(&craft, &ask, &answer, 1);

    const size_t first = lw_margins_first(&answer.margins);
    const lw_quantity *margin = &lw_margins_table.rows[first];
    printf("%s at %.1f kn, hull %.0f cm above the water\n", lw_outcome_text(answer.outcome),
           answer.flight.speed / LW_KN, 100.0 * answer.flight.ride_height);
    printf("first to run out: %s (%s)\n", margin->key, margin->doc);
    return answer.outcome == LW_FLIES ? 0 : 1;
}
