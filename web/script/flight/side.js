// side.js - the boat from the side as the engine draws her, part by part, moved with a ride.
// SPDX-License-Identifier: MIT
//
// A unit is a centimetre; x forward from the transom, y down from the water, in the boat down from
// the hull's bottom.

import { draw } from "../base/dom.js";
import { at, DEG } from "../base/drawing.js";
import { drawing } from "../base/picture.js";

/** Lengths of a boat in cm that pictures are laid out by. */
export function sizes({ hull, main_foil, rudder_foil, main_strut, rudder_strut, linkage, rig }) {
  const strut = (of, foil) => ({ x: 100 * of.x, length: 100 * of.length, span: 100 * foil.span });
  return {
    length: 100 * hull.length,
    beam: 100 * hull.beam,
    racks: 100 * hull.rack_width,
    rack: 100 * hull.rack_height,
    deck: 75 * hull.rack_height,
    main: strut(main_strut, main_foil),
    rudder: strut(rudder_strut, rudder_foil),
    wand: { x: 100 * linkage.wand_x, height: 100 * linkage.wand_height },
    pivot: 100 * linkage.pin_pivot_height,
    tack: 100 * rig.foot_height,
    centre: 100 * (rig.foot_height + rig.centre_part * rig.luff),
  };
}

/** What is shown of the boat and beyond. */
export function boundsOf(s) {
  const left = Math.min(s.rudder.x, 0) - 52;
  const right = Math.max(s.wand.x, s.length) + 34;
  return {
    left,
    right,
    top: -(s.centre + 100),
    bottom: Math.max(s.main.length, s.rudder.length) + 46,
    wide: right - left,
  };
}

/**
 * The boat by herself, from the parts that the engine drew: { element, pose(flight, strutTurn) }. A
 * pose answers where a point of the boat then is on the page: turned about the main strut by pitch,
 * heights shortened by heel.
 */
export function boatOf(s, parts) {
  const element = draw("g", {}, [...drawing(parts).querySelectorAll("g")]);
  const part = (name) => element.querySelector(`.${name}`);

  function pose(f, strutTurn) {
    const h = 100 * f.ride_height,
      c = Math.cos(f.pitch),
      sn = Math.sin(f.pitch),
      upright = Math.cos(f.heel);
    const matrix = [c, -sn, sn * upright, c * upright, s.main.x * (1 - c), s.main.x * sn - h];
    element.setAttribute("transform", `matrix(${matrix.map((x) => x.toFixed(5)).join(" ")})`);
    const turn = (name, angle, x, y) =>
      part(name).setAttribute("transform", `rotate(${at(angle / DEG, x, y)})`);
    turn("main", -strutTurn, s.main.x, -s.pivot);
    turn("wand", f.wand, s.wand.x, -s.wand.height);
    part("sailor").setAttribute("transform", `translate(${at(100 * f.place_x, 0)})`);
    return (x, height) => [
      s.main.x + (x - s.main.x) * c - height * sn * upright,
      -h - (x - s.main.x) * sn - height * c * upright,
    ];
  }

  return { element, pose };
}
