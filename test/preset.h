// preset.h - the boat of the presets with four pins, and random questions to ask of it.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PRESET_H
#define LW_TEST_PRESET_H

#include "lullwise/boat.h"
#include "lullwise/flight.h"
#include "test/random.h"

#define PRESET_PINS 4

static inline lw_boat preset_boat(void)
{
    lw_boat boat;
    lw_record_preset(&lw_boat_record, &boat);
    boat.pin_count = PRESET_PINS;
    for (int i = 0; i < PRESET_PINS; i++) {
        boat.pins[i] = (lw_pin){(3.5 - 1.2 * i) * LW_DEG, {(char)('A' + i), '\0'}};
    }
    return boat;
}

static inline lw_person preset_person(void)
{
    lw_sailor sailor;
    lw_record_preset(&lw_sailor_record, &sailor);
    return sailor.person;
}

static inline lw_medium preset_medium(void)
{
    lw_day day;
    lw_record_preset(&lw_day_record, &day);
    return lw_medium_of(&day);
}

// Of the boat of the presets, whatever its pins.
static inline const lw_sections *preset_sections(void)
{
    static lw_polar_room room;
    static lw_sections sections;
    static bool is_ready;
    const lw_boat boat = preset_boat();
    if (!is_ready) lw_sections_prepare(&sections, &boat, &room);
    is_ready = true;
    return &sections;
}

static inline lw_craft preset_craft(void)
{
    const lw_boat boat = preset_boat();
    const lw_person person = preset_person();
    const lw_medium medium = preset_medium();
    lw_craft craft;
    lw_craft_prepare(&craft, &boat, preset_sections(), &person, &medium);
    return craft;
}

static inline lw_setup preset_setup(const lw_craft *craft, int pin)
{
    lw_setup setup = craft->setup;
    setup.incidence = preset_boat().pins[pin].incidence;
    return setup;
}

// A question of steady flight with the bow level: any wind, heading, heel, place and pin that a
// boat may be sailed at.
static inline lw_ask random_flight(const lw_craft *craft, random_stream *stream)
{
    lw_setup setup = craft->setup;
    setup.incidence = random_between(stream, 0.0, 3.5) * LW_DEG;
    const double wind = random_between(stream, 8.0, 24.0) * LW_KN;
    lw_ask ask = lw_ask_of(craft, &setup, wind, random_between(stream, 40.0, 150.0) * LW_DEG);
    ask.heel = random_between(stream, 0.0, 20.0) * LW_DEG;
    ask.place = random_between(stream, craft->place_aft, craft->place_forward);
    return ask;
}

#endif
