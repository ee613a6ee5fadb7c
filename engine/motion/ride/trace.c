// trace.c - one moment of a ride: its numbers, their units and meaning.
// SPDX-License-Identifier: MIT

#include "motion/ride/trace.h"

#include <math.h>

#include "lullwise/elementary.h"
#include "quantity/tables.h"

#define ROW(member, ...) LW_RESULT(lw_trace, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(time,        "t",       S,    2, "from the beginning"),
    ROW(wind,        "U",       KN,   1, "as read at the height of the day's wind"),
    ROW(shift,       "",        DEG,  1, "of the wind from its mean direction, as one sees it: "
                                         "right positive"),
    ROW(speed,       "V",       KN,   1, "over the ground"),
    ROW(made_good,   "",        KN,   1, "to windward"),
    ROW(heading,     "gamma",   DEG,  0, "track from the mean wind"),
    ROW(bow,         "",        DEG,  0, "bow from the mean wind"),
    ROW(leeway,      "lambda",  DEG,  1, "track to leeward of the bow"),
    ROW(heel,        "phi",     DEG,  1, "to windward"),
    ROW(pitch,       "theta",   DEG,  1, "bow up"),
    ROW(ride_height, "h",       CM,   0, "hull's bottom at the main strut above the mean water"),
    ROW(surface,     "",        CM,   0, "water at the main foil above its mean level"),
    ROW(clearance,   "",        CM,   0, "hull's bottom at the main strut above that water"),
    ROW(climb,       "",        MPS,  2, "how fast the boat rises at the main strut"),
    ROW(tip_depth,   "",        CM,   0, "higher tip of the main foil below the water"),
    ROW(rudder_tip,  "",        CM,   0, "higher tip of the rudder foil below the water"),
    ROW(wand,        "psi",     DEG,  1, "aft of straight down"),
    ROW(flap,        "delta",   DEG,  1, "trailing edge down"),
    ROW(turns,       "n",       TURN, 1, "of rudder lift from the mark"),
    ROW(helm,        "delta_r", DEG,  1, "rudder blade"),
    ROW(hiking,      "",        PERCENT, 0, "0 sitting in, 100 hiked"),
    ROW(sail_power,  "",        PERCENT, 0, "100 full"),
    ROW(main_lift,   "",        N,    0, "of the main foil"),
    ROW(rudder_lift, "",        N,    0, "of the rudder foil"),
    ROW(main_air,    "",        PERCENT, 0, "part of the main foil that is ventilated"),
    ROW(rudder_air,  "",        PERCENT, 0, "part of the rudder foil that is ventilated"),
    ROW(strut_air,   "",        PERCENT, 0, "part of the main strut that is ventilated"),
    ROW(blade_air,   "",        PERCENT, 0, "part of the rudder blade that is ventilated"),
    ROW(upwind,      "",        M,    1, "place to windward of the beginning"),
    ROW(across,      "",        M,    1, "place to port of that, as one looks to windward"),
};
// clang-format on
LW_TABLE_COVERS(lw_trace, rows);

const lw_table lw_trace_table = {.key = "trace",
                                 .title = "Ride",
                                 .rows = rows,
                                 .count = sizeof rows / sizeof rows[0],
                                 .doc = "One moment of a ride in gusts and chop."};

static void fill_way(lw_trace *trace, const lw_state_lanes *x, int i)
{
    const double s = lw_sin(x->pitch[i]), c = lw_cos(x->pitch[i]);
    const double sh = lw_sin(x->heel[i]), ch = lw_cos(x->heel[i]);
    const double u = x->surge[i], v = x->sway[i], w = x->heave[i];
    const double along = u * c - s * (v * sh + w * ch), side = v * ch - w * sh;
    trace->climb = u * s + v * c * sh + w * c * ch;
    trace->bow = x->bow[i];
    trace->leeway = lw_atan2(side, along);
    trace->heading = trace->bow + trace->leeway;
    trace->speed = sqrt(along * along + side * side);
    trace->made_good = trace->speed * lw_cos(trace->heading);
    trace->heel = x->heel[i];
    trace->pitch = x->pitch[i];
    trace->upwind = x->upwind[i];
    trace->across = x->port[i];
}

static void fill_loads(lw_trace *trace, const lw_craft *craft, const lw_loads *loads, int i)
{
    trace->tip_depth = loads->inflow.main.depth[i] - loads->inflow.main.tip_rise[i];
    trace->rudder_tip = loads->inflow.rudder.depth[i] - loads->inflow.rudder.tip_rise[i];
    trace->flap = loads->inflow.main.flap[i];
    trace->sail_power = loads->inflow.set.power[i];
    trace->main_lift = loads->main.lift[i];
    trace->rudder_lift = loads->rudder.lift[i];
    trace->clearance = craft->main_strut.length * lw_cos(trace->pitch) * lw_cos(trace->heel) -
                       loads->inflow.main.depth[i];
    trace->surface = trace->ride_height - trace->clearance;
}

lw_trace lw_trace_lane(const lw_motion *motion, const lw_fleet *fleet, const lw_environment *around,
                       const lw_loads *loads, int i)
{
    const lw_craft *craft = motion->craft;
    const lw_state_lanes *x = &fleet->boats.history[0].state;
    const double w_x = around->wind.x[i], w_y = around->wind.y[i];
    lw_trace trace = {.time = fleet->detection.time[i],
                      .wind = sqrt(w_x * w_x + w_y * w_y),
                      .shift = lw_atan2(w_y, -w_x)};
    fill_way(&trace, x, i);
    trace.ride_height =
        x->height[i] + craft->main_strut.length * lw_cos(trace.pitch) * lw_cos(trace.heel);
    fill_loads(&trace, craft, loads, i);
    trace.wand = x->wand[i];
    trace.turns = (x->rudder[i] - craft->rudder_mark) / craft->rudder_turn;
    trace.helm = x->helm[i];
    trace.hiking = (-x->body[i] - craft->body_inboard) / (craft->body_reach - craft->body_inboard);
    trace.main_air = fleet->boats.memory.main.foil.part[i];
    trace.rudder_air = fleet->boats.memory.rudder.foil.part[i];
    trace.strut_air = fleet->boats.memory.main.strut.part[i];
    trace.blade_air = fleet->boats.memory.rudder.strut.part[i];
    for (size_t k = 0; k < sizeof trace / sizeof(double); k++) {  // a lane that is lost
        double *value = &((double *)&trace)[k];
        if (!isfinite(*value)) *value = 0.0;
    }
    return trace;
}

// --- names

#define AS_KEY(name, key, text)  key,
#define AS_TEXT(name, key, text) text,
static const char *const keys[] = {LW_RIDE_EVENT_LIST(AS_KEY)};
static const char *const texts[] = {LW_RIDE_EVENT_LIST(AS_TEXT)};
const char *lw_ride_event_key(lw_ride_what what) { return keys[what]; }
const char *lw_ride_event_text(lw_ride_what what) { return texts[what]; }

bool lw_ride_event_is_swim(lw_ride_what what)
{
    return what >= LW_RIDE_LEEWARD && what <= LW_RIDE_LOST;
}

double lw_ride_tally_swims(const lw_ride_tally *tally)
{
    double sum = 0.0;
    for (int what = LW_RIDE_LEEWARD; what <= LW_RIDE_LOST; what++) sum += tally->count[what];
    return sum;
}
