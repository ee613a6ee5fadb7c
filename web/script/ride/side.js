// side.js - the boat from the side on the water that runs under it, one moment of a ride.
// SPDX-License-Identifier: MIT
//
// A unit is a centimetre, y down from the mean water (flight/side.js).

import { draw, make } from "../base/dom.js";
import { arrow, at, canvas } from "../base/drawing.js";
import { boatOf, boundsOf } from "../flight/side.js";

const WEIGHT = 70; // [cm] that the weight would be drawn long

/**
 * Of the boat's parts as drawn, { element, update(moment, ride) }: a moment has the trace's keys
 * and `water`, heights of the surface [m] from ride.surface_from on, every ride.surface_step.
 */
export function rideSide(s, parts) {
  const { left, right, top, bottom, wide } = boundsOf(s),
    boat = boatOf(s, parts);
  const sea = draw("path", { class: "sea" }),
    surface = draw("path", { class: "surface" });
  const force = { main: arrow(), rudder: arrow() };
  const mean = draw("path", { class: "trough", d: `M${at(left, 0)}H${at(right)}` });
  const svg = canvas(
    [left, top, wide, bottom - top],
    sea,
    mean,
    boat.element,
    surface,
    force.main.element,
    force.rudder.element,
  );

  function update(now, ride) {
    const along = now.water.map((height, i) =>
      at(s.main.x + 100 * (ride.surface_from + i * ride.surface_step), -100 * height),
    );
    surface.setAttribute("d", `M${along.join("L")}`);
    sea.setAttribute("d", `M${along.join("L")}V${at(bottom)}H${at(left - 400)}Z`);
    const on = boat.pose({ ...now, place_x: ride.place_x }, ride.strut_turn),
      per = WEIGHT / ride.weight;
    const [mx, my] = on(s.main.x, -s.main.length),
      [rx, ry] = on(s.rudder.x, -s.rudder.length);
    force.main.move([mx, my], [0, -now.main_lift * per]);
    force.rudder.move([rx, ry], [0, -now.rudder_lift * per]);
    svg.classList.toggle("aired", now.main_air > 0.5 || now.rudder_air > 0.5);
  }

  return { element: make("figure", { class: "side", role: "img" }, svg), update };
}
