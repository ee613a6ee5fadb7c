// lay.h - inside the section folder: layers laid along speeds as they are, to begin with.
// SPDX-License-Identifier: MIT

#ifndef LW_LAY_H
#define LW_LAY_H

#include "foil/section/system.h"

// A station that is laid behind another.
typedef struct lw_laid {
    double log_reynolds;
    lw_layer_kind kind;
    const lw_station *a;
    lw_station *b;        // holds its place, its speed and a guess
    const lw_turn *turn;  // NULL: no transition on the way
} lw_laid;

// With the speed that is given; or, where the layer would come apart, with the greatest shape and
// the speed that this has.
void lw_lay_station(const lw_laid *laid, double most_shape);

// Layers and wake for the speeds that there are, station by station; where a layer would come apart
// its shape is given and the speed follows. Only for a start: the outer flow does not answer.
void lw_lay_layers(lw_system *system);

#endif
