// events.h - events of a track put into the caller's room.
// SPDX-License-Identifier: MIT

#ifndef LW_TRACK_EVENT_ROOM_H
#define LW_TRACK_EVENT_ROOM_H

#include "lullwise/track_events.h"

static inline void add_event(lw_track_events *events, lw_track_event event)
{
    if (events->count < events->room)
        events->list[events->count++] = event;
    else
        events->left_out++;
}

#endif
