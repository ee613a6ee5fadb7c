// learned.mjs - a made-up file of what was learned, as `lullwise learn -o` writes it.
// SPDX-License-Identifier: MIT

export const learnedOf = (hash) => `boat: Grey Heron (invented)
hash: ${hash}
learned:
  main_incidence: 0.5 deg
  rudder_incidence: -0.2 deg
  main_chord: 0.97
  drag_area: 0.1 m2
  sail_power: 0.9
  chop: 1.2
  skill: 0.5
errors:
  main_incidence: 0.12 deg
  rudder_incidence: 0.2 deg
  main_chord: 0.01
  drag_area: 0.05 m2
  sail_power: 0.05
  chop: 0.1
  skill: 0.2
from:
  days: 6
  numbers: 18
`;

export const ofDemo = learnedOf("4e5e45fdf2a21f3e");
