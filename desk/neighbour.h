// neighbour.h - who has a port: another desk, or something else?
// SPDX-License-Identifier: MIT

#ifndef LW_DESK_NEIGHBOUR_H
#define LW_DESK_NEIGHBOUR_H

#include <stdbool.h>
#include <stdint.h>

#define LW_DESK_SERVER "lullwise"  // how a desk names itself to whoever asks

// Asks the port on this computer, for two seconds at most.
bool lw_neighbour_is_desk(uint16_t port);

#endif
