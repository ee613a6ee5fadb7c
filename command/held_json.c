// held_json.c - hold on or stop, as JSON.
// SPDX-License-Identifier: MIT

#include "command/held.h"

static json_t *number_or_null(bool is_there, double value)
{
    return is_there ? json_real(value) : json_null();
}

static json_t *pin_json(const lw_held *held, size_t pin)
{
    const lw_change *change = &held->hold.changes[pin];
    double error;
    const bool is_in = pin == held->hold.pin;
    const double swims = lw_hold_swims(&held->hold, pin, &error);
    return json_pack(
        "{s:s, s:b, s:f, s:o, s:o, s:o, s:o, s:o, s:o, s:o, s:o, s:o, s:o, s:o, s:b, s:f, s:f, "
        "s:f}",
        "pin", lw_picked_label(&held->picked, pin), "is_held", is_in, "to_finish",
        is_in ? change->held : change->changed, "saved", number_or_null(!is_in, change->saved),
        "saved_error", number_or_null(!is_in, change->error), "saved_spread",
        number_or_null(!is_in, change->spread), "chance", number_or_null(!is_in, change->chance),
        "even_left", number_or_null(!is_in && change->is_ever, change->even_left / LW_NMI),
        "even_seconds", number_or_null(!is_in && change->is_ever, change->even_seconds),
        "best_after", number_or_null(!is_in, change->best_at / LW_NMI), "best_saved",
        number_or_null(!is_in, change->best_saved), "best_error",
        number_or_null(!is_in, change->best_error), "best_spread",
        number_or_null(!is_in, change->best_spread), "best_chance",
        number_or_null(!is_in, change->best_chance), "can_be_sailed",
        !held->hold.paces[pin].is_stuck, "swims", swims, "swims_error", error, "flying",
        lw_hold_flying(&held->hold, pin));
}

json_t *lw_held_json(const lw_held *held)
{
    char text[LW_HELD_LENGTH];
    json_t *pins = json_array();
    for (size_t pin = 0; pin < held->picked.outlook->pin_count; pin++) {
        json_array_append_new(pins, pin_json(held, pin));
    }
    lw_held_answer(held, text);
    const bool stops = held->hold.has_best && held->hold.changes[held->hold.best].best_saved > 0.0;
    return json_pack(
        "{s:s, s:s, s:s, s:s, s:b, s:s?, s:s, s:f, s:f, s:f, s:f, s:o, s:{s:s, s:s, s:s, s:s, "
        "s:s}}",
        "boat", held->picked.inputs.boat.name, "sailor", held->picked.inputs.sailor.name, "day",
        held->picked.inputs.day.name, "held", lw_picked_label(&held->picked, held->hold.pin),
        "stops", stops, "change_to", stops ? lw_picked_label(&held->picked, held->hold.best) : NULL,
        "sentence", text, "left", held->hold.left / LW_NMI, "wind_now", held->hold.now / LW_KN,
        "wind_finish", held->hold.later / LW_KN, "stop", held->hold.stop, "pins", pins, "units",
        "wind", "kn", "left", "nmi", "even_left", "nmi", "best_after", "nmi", "time", "s");
}
