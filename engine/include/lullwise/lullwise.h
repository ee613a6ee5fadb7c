// lullwise.h - the engine's public face, in the order in which it is read.
// SPDX-License-Identifier: MIT
//
// The engine reads no file, asks no clock, prints and allocates nothing: the caller hands it
// structs in SI and radians, and room to work in. Each header needs only those above it.

#ifndef LW_LULLWISE_H
#define LW_LULLWISE_H

// clang-format off

// What all share: status codes, units, elementary functions with the same bits everywhere, and the
// rows that describe quantities.
#include "lullwise/base.h"
#include "lullwise/elementary.h"
#include "lullwise/quantity.h"

// What one measures: boat, sailor and day; and which numbers must stay below which.
#include "lullwise/boat.h"
#include "lullwise/day.h"
#include "lullwise/order.h"

// What is around: water, air and waves of the day; wind and sea in time from a seed.
#include "lullwise/medium.h"
#include "lullwise/weather.h"

// A foil section: its shape, its boundary layer, and both as functions that are read fast.
#include "lullwise/profile.h"
#include "lullwise/boundary_layer.h"
#include "lullwise/polar.h"

// A whole foil by a lattice; a hull by its sections, and afloat with its weights.
#include "lullwise/wing.h"
#include "lullwise/hull_shape.h"
#include "lullwise/hull_afloat.h"

// A boat made ready to compute with, one of her foils by itself, and what pictures of her show.
#include "lullwise/prepared.h"
#include "lullwise/craft.h"
#include "lullwise/foil.h"
#include "lullwise/drawn.h"

// Steady flight: its balance and margins, what the sailor sets by choice, and the winds that a
// set-up flies and is held in.
#include "lullwise/flight.h"
#include "lullwise/trim.h"
#include "lullwise/range.h"

// Motion: a ride through gusts and chop, what happens on it, and small motions about a balance.
#include "lullwise/ride.h"
#include "lullwise/ride_state.h"
#include "lullwise/pilot.h"
#include "lullwise/motion.h"
#include "lullwise/flown.h"
#include "lullwise/modes.h"

// A day's choice: what is not known, a ranking of set-ups, swims, hold or stop, and which
// measurement is worth taking better.
#include "lullwise/chance.h"
#include "lullwise/draw.h"
#include "lullwise/swims.h"
#include "lullwise/aim.h"
#include "lullwise/block.h"
#include "lullwise/outlook.h"
#include "lullwise/sailing.h"
#include "lullwise/choice.h"
#include "lullwise/choice_find.h"
#include "lullwise/hold.h"
#include "lullwise/sensitivity.h"

// Reading the boat: her levers, how she stands by them, what is seen, its causes and cures.
#include "lullwise/levers.h"
#include "lullwise/scene.h"
#include "lullwise/signs.h"
#include "lullwise/diagnosis.h"

// A track that was sailed: speeds, wind by its mirror axis, flights, stops and turns.
#include "lullwise/track.h"
#include "lullwise/track_events.h"
#include "lullwise/track_summary.h"

// Days as they were sailed, how like they are, what is learned from them, and what to try next.
#include "lullwise/logged.h"
#include "lullwise/hidden.h"
#include "lullwise/lesson.h"
#include "lullwise/foreseen.h"
#include "lullwise/learned.h"
#include "lullwise/learning.h"
#include "lullwise/trial.h"

// clang-format on

#endif
