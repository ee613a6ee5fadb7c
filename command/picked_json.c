// picked_json.c - the ranking as JSON.
// SPDX-License-Identifier: MIT

#include "answer/words/caution.h"
#include "answer/words/margin_text.h"
#include "command/picked.h"
#include "records/json.h"

// Stable words for the reasons: their names in small letters.
#define REASON_KEY(name, text) [LW_REASON_##name] = #name,
static const char *const reason_names[] = {LW_REASON_LIST(REASON_KEY)};

static json_t *reason_key(lw_reason reason)
{
    char key[16];
    size_t i = 0;
    for (; reason_names[reason][i] && i + 1 < sizeof key; i++) {
        key[i] = (char)(reason_names[reason][i] | 0x20);
    }
    key[i] = '\0';
    return json_string(key);
}

// Its members, null where there is no such wind or time.
static json_t *prospect_json(const lw_placing *place)
{
    json_t *json = lw_table_json(&lw_prospect_table, &place->prospect);
    for (size_t i = 0; i < lw_prospect_table.count; i++) {
        const lw_quantity *row = &lw_prospect_table.rows[i];
        if (!lw_prospect_may_lack(i) || lw_quantity_value(row, &place->prospect) > 0.0) continue;
        json_object_set_new(json, row->key, json_null());
    }
    return json;
}

static json_t *number_or_null(bool is_there, double value)
{
    return is_there ? json_real(value) : json_null();
}

static json_t *place_json(const lw_picked *picked, size_t i)
{
    const lw_placing *place = &picked->now.places[i];
    const size_t hardest = lw_outlook_hardest(picked->outlook, place->pin);
    const lw_range *range = &picked->outlook->ranges[place->pin][hardest];
    const bool is_held = place->prospect.held_up_to > 0.0, is_weighed = place->chance > 0.0;
    char text[LW_REASON_LENGTH], end[LW_REASON_LENGTH], course[LW_COURSE_NAME];
    lw_picked_reason(picked, i, text);
    lw_picked_end(picked, place->pin, end);
    lw_picked_course_name(picked, hardest, course);
    return json_pack(
        "{s:s, s:o, s:s, s:b, s:b, s:b, s:s?, s:s, s:b, s:b, s:s, s:b, s:b, s:b, s:b, s:o, s:o, "
        "s:o, s:o, s:b, s:o}",
        "pin", lw_picked_label(picked, place->pin), "reason", reason_key(place->reason), "sentence",
        text, "can_be_sailed", place->can_be_sailed, "flies", place->flies, "is_held", is_held,
        "ends_by", range->has_hold ? lw_margin_key(range->ends_by) : NULL, "end", end,
        "ends_by_rides", place->ends_by_rides, "rides_end", place->rides_end, "held_least", course,
        "ends_in_puff", range->ends_in_puff, "flies_in_lull", place->flies_in_lull, "flies_in_mean",
        place->flies_in_mean, "flies_in_puff", place->flies_in_puff, "behind",
        number_or_null(is_weighed, place->behind), "behind_error",
        number_or_null(is_weighed, place->error), "behind_spread",
        number_or_null(is_weighed, place->spread), "behind_chance",
        number_or_null(is_weighed, place->chance), "is_close", place->is_close, "prospect",
        prospect_json(place));
}

static json_t *order_json(const lw_picked *picked, const lw_choice *choice)
{
    json_t *list = json_array();
    for (size_t i = 0; i < choice->count; i++) {
        json_array_append_new(list, json_string(lw_picked_label(picked, choice->places[i].pin)));
    }
    return list;
}

static json_t *step_json(const lw_picked *picked, size_t pin)
{
    const lw_prospect *a = &lw_picked_place_of(&picked->now, pin)->prospect;
    const lw_prospect *b = &lw_picked_place_of(&picked->now, pin + 1)->prospect;
    const bool are_sailed = a->seconds > 0.0 && b->seconds > 0.0;
    const bool are_held = a->held_up_to > 0.0 && b->held_up_to > 0.0;
    return json_pack("{s:s, s:s, s:o, s:o, s:o}", "from", lw_picked_label(picked, pin), "to",
                     lw_picked_label(picked, pin + 1), "speed_lost",
                     number_or_null(are_sailed, (a->speed - b->speed) / LW_KN), "seconds_lost",
                     number_or_null(are_sailed, b->seconds - a->seconds), "hold_gained",
                     number_or_null(are_held, (b->held_up_to - a->held_up_to) / LW_KN));
}

static json_t *steps_json(const lw_picked *picked)
{
    json_t *list = json_array();
    for (size_t pin = 0; pin + 1 < picked->now.count; pin++) {
        json_array_append_new(list, step_json(picked, pin));
    }
    return list;
}

static json_t *cautions_json(const lw_picked *picked)
{
    char lines[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH];
    const size_t count = lw_cautions(picked, lines);
    json_t *list = json_array();
    for (size_t i = 0; i < count; i++) json_array_append_new(list, json_string(lines[i]));
    return list;
}

json_t *lw_picked_json(const lw_picked *picked)
{
    const lw_gusts *gusts = &picked->now.gusts;
    json_t *places = json_array();
    for (size_t i = 0; i < picked->now.count; i++) {
        json_array_append_new(places, place_json(picked, i));
    }
    return json_pack(
        "{s:s, s:s, s:s, s:s, s:b, s:{s:f, s:f, s:f, s:f}, s:o, s:f, s:o, s:o, s:o, s:o, "
        "s:{s:s, s:s, s:s, s:s, s:s, s:s, s:s, s:o}}",
        "boat", picked->inputs.boat.name, "sailor", picked->inputs.sailor.name, "day",
        picked->inputs.day.name, "aim", lw_aim_text(picked->now.aim), "flies",
        lw_picked_flies(&picked->now), "wind", "lull", gusts->lull / LW_KN, "mean",
        gusts->mean / LW_KN, "puff", gusts->puff / LW_KN, "period", gusts->period, "places", places,
        "wind_step", LW_WIND_STEP / LW_KN, "order_less_wind", order_json(picked, &picked->less),
        "order_more_wind", order_json(picked, &picked->more), "calmer", steps_json(picked),
        "cautions", cautions_json(picked), "units", "wind", "kn", "period", "s", "wind_step", "kn",
        "speed_lost", "kn", "seconds_lost", "s", "hold_gained", "kn", "behind", "s", "prospect",
        lw_table_units_json(&lw_prospect_table));
}
