// craft_drawn.c - where sail and sailor stand on a craft, for who draws her.
// SPDX-License-Identifier: MIT

#include "lullwise/drawn.h"

#include "solve/curve.h"

lw_craft_drawn lw_craft_drawn_of(const lw_craft *c, double incidence, double place, double wind)
{
    const double up = c->main_strut.length;
    return (lw_craft_drawn){.weight = c->weight,
                            .sail_x = c->sail.centre_x - c->transom_x,
                            .sail_height = c->sail.centre_height - up,
                            .place_x = place - c->transom_x,
                            .body_in = c->body_inboard,
                            .body_out = c->body_reach,
                            .body_height = c->body_z - up,
                            .strut_turn = incidence - c->pin_middle,
                            .trough = lw_curve_at(&c->trough, lw_all(wind))[0]};
}
