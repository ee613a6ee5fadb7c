// order.c - which numbers of a boat and a day must stay below which.
// SPDX-License-Identifier: MIT

#include "lullwise/order.h"

#include "lullwise/boat.h"
#include "lullwise/day.h"

#define LESS(record, less, more)                                                \
    .lesser = #less, .greater = #more, .lesser_offset = offsetof(record, less), \
    .greater_offset = offsetof(record, more)

// clang-format off
static const lw_order boat_orders[] = {
    {LESS(lw_boat, hull.block, hull.waterplane), .section = "hull",
     .why = "the waterplane must be larger than the block: no hull is wider below than at the "
            "water"},
    {LESS(lw_boat, hull.centre_x, hull.length), .section = "hull",
     .why = "the centre of gravity lies ahead of the bow"},
    {LESS(lw_boat, main_foil.tip_chord, main_foil.root_chord), .section = "main_foil",
     .may_be_alike = true, .why = "the tip chord is above the root chord"},
    {LESS(lw_boat, rudder_foil.tip_chord, rudder_foil.root_chord), .section = "rudder_foil",
     .may_be_alike = true, .why = "the tip chord is above the root chord"},
    {LESS(lw_boat, main_strut.x, hull.length), .section = "main_strut",
     .why = "the strut stands ahead of the bow"},
    {LESS(lw_boat, rudder_strut.x, main_strut.x), .section = "rudder_strut",
     .why = "the rudder stands ahead of the main strut"},
    {LESS(lw_boat, linkage.forward_stop, linkage.aft_stop), .section = "linkage",
     .why = "the wand's stops cross: forward_stop must be less than aft_stop"},
    {LESS(lw_boat, linkage.forward_stop, linkage.neutral_angle), .section = "linkage",
     .why = "the wand cannot reach its neutral_angle: it lies outside the stops"},
    {LESS(lw_boat, linkage.neutral_angle, linkage.aft_stop), .section = "linkage",
     .why = "the wand cannot reach its neutral_angle: it lies outside the stops"},
    {LESS(lw_boat, linkage.flap_up_stop, linkage.flap_down_stop), .section = "linkage",
     .why = "the flap has no travel: flap_up_stop must be less than flap_down_stop"},
    {LESS(lw_boat, linkage.wand_height, linkage.wand_length), .section = "linkage",
     .why = "the wand does not reach below the hull: wand_length must be more than wand_height"},
    {LESS(lw_boat, main_strut.x, linkage.wand_x), .section = "linkage",
     .why = "the wand stands behind the main strut"},
    {LESS(lw_boat, rudder.least_turns, rudder.most_turns), .section = "rudder",
     .why = "the thread has no travel: least_turns must be less than most_turns"},
    {LESS(lw_boat, place.aft_x, place.forward_x), .section = "place",
     .why = "aft_x must be less than forward_x: both are measured from the transom"},
    {.lesser = NULL},
};

// Of a day whose lull, mean and puff are there.
static const lw_order day_orders[] = {
    {LESS(lw_day, forecast.mean, forecast.gust), .section = "forecast",
     .may_be_alike = true, .zero_is_none = true,
     .why = "the forecast's gust lies below its mean"},
    {LESS(lw_day, wind.lull, wind.mean), .section = "wind", .may_be_alike = true,
     .why = "lull, mean and puff must rise in this order"},
    {LESS(lw_day, wind.mean, wind.puff), .section = "wind", .may_be_alike = true,
     .why = "lull, mean and puff must rise in this order"},
    {.lesser = NULL},
};
// clang-format on

const lw_order *lw_orders_of(const lw_record *record)
{
    static const lw_order none = {.lesser = NULL};
    if (record == &lw_boat_record) return boat_orders;
    return record == &lw_day_record ? day_orders : &none;
}

static double number_at(const void *data, size_t offset)
{
    const void *place = (const char *)data + offset;
    return *(const double *)place;
}

static bool holds(const lw_order *order, const void *data)
{
    const double lesser = number_at(data, order->lesser_offset);
    const double greater = number_at(data, order->greater_offset);
    if (order->zero_is_none && greater == 0.0) return true;
    return order->may_be_alike ? lesser <= greater : lesser < greater;
}

const lw_order *lw_order_failing(const lw_record *record, const void *data)
{
    const lw_order *order = lw_orders_of(record);
    while (order->lesser && holds(order, data)) order++;
    return order->lesser ? order : NULL;
}
