// flight_side.js - the boat from the side, to scale from its measurements, with the forces on it.
// SPDX-License-Identifier: MIT
//
// A unit is a centimetre; x forward from the transom, y down from the water, in the boat down from
// the hull's bottom. Built once for a boat; a flight then only changes attributes.

import { draw, make } from "./dom.js";
import { arrow, at, canvas, DEG, line, put, section } from "./drawing.js";
import { fixed } from "./number.js";

const WEIGHT = 70; // [cm] that the weight is drawn long
const ALONG = 5; // so many times as long are forces along drawn as those up and down

/** Lengths of a boat in cm. Deck, mast and the sail's outline are drawn plain about what is measured. */
export function sizes({
  hull,
  main_foil,
  rudder_foil,
  main_strut,
  rudder_strut,
  linkage,
  rig,
  place,
}) {
  const strut = (of, foil) => ({
    x: 100 * of.x,
    length: 100 * of.length,
    chord: 100 * of.chord,
    span: 100 * foil.span,
    foil: 100 * foil.root_chord,
    thickness: foil.thickness,
  });
  const foot = (125 * rig.sail_area) / rig.luff;
  return {
    length: 100 * hull.length,
    beam: 100 * hull.beam,
    racks: 100 * hull.rack_width,
    rack: 100 * hull.rack_height,
    deck: 75 * hull.rack_height,
    main: strut(main_strut, main_foil),
    rudder: strut(rudder_strut, rudder_foil),
    wand: {
      x: 100 * linkage.wand_x,
      height: 100 * linkage.wand_height,
      length: 100 * linkage.wand_length,
    },
    pivot: 100 * linkage.pin_pivot_height,
    aft: 100 * place.aft_x,
    forward: 100 * place.forward_x,
    tack: 100 * rig.foot_height,
    luff: 100 * rig.luff,
    foot,
    mast: 100 * rig.centre_x + 0.35 * foot,
    centre: 100 * (rig.foot_height + rig.centre_part * rig.luff),
  };
}

function foilOnStrut({ x, length, chord, foil, thickness }) {
  return draw(
    "g",
    {},
    draw("rect", { class: "strut", x: x - 0.5 * chord, y: 0, width: chord, height: length }),
    draw("path", {
      class: "foil",
      d: section(foil, thickness),
      transform: `translate(${at(x + 0.25 * foil, length)})`,
    }),
  );
}

function hullAndRig(s) {
  const clew = s.mast - s.foot;
  return [
    s.rudder.x < 0 && draw("path", { class: "spar", d: `M0 ${at(-s.deck)}H${at(s.rudder.x)}V0` }),
    draw("path", {
      class: "hull",
      d:
        `M0 ${at(-s.deck)}V-3Q${at(s.length / 4, 0, s.length / 2, 0)}` +
        `Q${at(0.85 * s.length, 0, s.length, -s.deck - 4)}L${at(0.6 * s.length, -s.deck)}Z`,
    }),
    draw("path", {
      class: "spar",
      d: `M${at(s.aft - 25, -s.rack)}H${at(s.forward + 25)}M${at(s.mast, -s.deck)}V${at(-s.tack - s.luff)}`,
    }),
    draw("path", {
      class: "sail",
      d:
        `M${at(s.mast, -s.tack)}V${at(-s.tack - s.luff)}` +
        `Q${at(s.mast - 0.9 * s.foot, -s.tack - 0.5 * s.luff, clew, -s.tack)}Z`,
    }),
  ];
}

// Sitting: seat at 0, head above, legs forward.
const person = () =>
  draw(
    "g",
    { class: "body" },
    draw("path", { d: "M-9 4Q-15 -28 -7 -40H7Q15 -28 9 -6L32 -2V8L-6 8Z" }),
    draw("circle", { cx: 1, cy: -54, r: 11 }),
  );

const newtons = (x) => `${fixed(x, 0).replace("-", "−")} N`;

// 1, 2 or 5 times a power of ten, at most this.
function round(x) {
  const power = 10 ** Math.floor(Math.log10(x));
  return power * [5, 2, 1].find((step) => step * power <= x);
}

/** The page's bounds about a boat, sail and all: { left, right, top, bottom, wide }. */
export function boundsOf(s) {
  const left = Math.min(s.rudder.x, 0) - 52,
    right = Math.max(s.wand.x, s.length) + 34;
  return {
    left,
    right,
    top: -(s.centre + 100),
    bottom: Math.max(s.main.length, s.rudder.length) + 46,
    wide: right - left,
  };
}

/**
 * The boat by herself: { element, pose(flight, strutTurn) }. A pose answers where a point of the boat
 * then is on the page: turned about the main strut by pitch, heights shortened by heel.
 */
export function boatOf(s) {
  const main = foilOnStrut(s.main),
    sailor = person();
  const wand = line(s.wand.x, -s.wand.height, s.wand.x, s.wand.length - s.wand.height, "wand");
  const element = draw(
    "g",
    {},
    hullAndRig(s),
    main,
    foilOnStrut(s.rudder),
    sailor,
    wand,
    draw("circle", { class: "pivot", cx: s.wand.x, cy: -s.wand.height, r: 3 }),
  );

  function pose(f, strutTurn) {
    const h = 100 * f.ride_height,
      c = Math.cos(f.pitch),
      sn = Math.sin(f.pitch),
      upright = Math.cos(f.heel);
    const matrix = [c, -sn, sn * upright, c * upright, s.main.x * (1 - c), s.main.x * sn - h];
    element.setAttribute("transform", `matrix(${matrix.map((x) => x.toFixed(5)).join(" ")})`);
    main.setAttribute("transform", `rotate(${at(-strutTurn / DEG, s.main.x, -s.pivot)})`);
    wand.setAttribute("transform", `rotate(${at(f.wand / DEG, s.wand.x, -s.wand.height)})`);
    sailor.setAttribute("transform", `translate(${at(100 * f.place_x, -s.rack - 8)})`);
    return (x, height) => [
      s.main.x + (x - s.main.x) * c - height * sn * upright,
      -h - (x - s.main.x) * sn - height * c * upright,
    ];
  }

  return { element, pose };
}

/** { element, update(answer) }; the element is a figure whose label is its owner's to set. */
export function sideView(s) {
  const { left, right, top, bottom, wide } = boundsOf(s);
  const boat = boatOf(s);
  const trough = line(left, 0, right, 0, "trough"),
    rise = draw("path", { class: "measure" });
  const riseText = draw("text"),
    wandText = draw("text", { "text-anchor": "end", x: right - 3 });
  const force = {
    main: arrow(),
    rudder: arrow("start"),
    weight: arrow("end"),
    drive: arrow("end"),
    drag: arrow("end"),
    hull: arrow("start"),
  };
  const key = { up: arrow("end"), along: arrow("end") };
  let last = null;
  const { svg, px } = canvas(
    [left, top, wide, bottom - top],
    () => last && update(last),
    draw("rect", { class: "sea", x: left, y: 0, width: wide, height: bottom }),
    trough,
    boat.element,
    line(left, 0, right, 0, "surface"),
    rise,
    riseText,
    wandText,
    [...Object.values(force), ...Object.values(key)].map((one) => one.element),
  );

  function showKey(per, weight) {
    const up = round(0.5 * weight),
      along = round(0.1 * weight),
      x = right - 8 * px(),
      y = top + 8 * px() + up * per;
    key.up.move([x - 6 * px(), y], [0, -up * per], newtons(up), [
      x - 18 * px(),
      y - 0.5 * up * per + 5 * px(),
    ]);
    key.along.move(
      [x - along * per * ALONG, y + 14 * px()],
      [along * per * ALONG, 0],
      newtons(along),
      [x - along * per * ALONG - 6 * px(), y + 19 * px()],
    );
  }

  function showForces(f, drawn, on) {
    const per = WEIGHT / drawn.weight,
      along = per * ALONG,
      drag = f.foil_drag + f.strut_drag + f.hull_drag;
    const [mx, my] = on(s.main.x, -s.main.length),
      [rx, ry] = on(s.rudder.x, -s.rudder.length);
    const [wx, wy] = on(100 * drawn.weight_x, 100 * drawn.weight_height);
    const [sx, sy] = on(100 * drawn.sail_x, 100 * drawn.sail_height),
      [hx] = on(0.45 * s.length, 0);
    force.main.move([mx, my], [0, -f.main_lift * per], `lift ${newtons(f.main_lift)}`, [
      mx,
      my + 21 * px(),
    ]);
    force.rudder.move([rx, ry], [0, -f.rudder_lift * per], `lift ${newtons(f.rudder_lift)}`, [
      Math.max(left + 4 * px(), rx - 34 * px()),
      ry + 21 * px(),
    ]);
    force.weight.move([wx, wy], [0, WEIGHT], `weight ${newtons(drawn.weight)}`, [
      Math.max(wx - 6 * px(), left + 122 * px()),
      wy + 0.8 * WEIGHT,
    ]);
    force.drive.move([sx, sy], [f.drive * along, 0], `drive ${newtons(f.drive)}`, [
      sx - 4 * px(),
      sy + 5 * px(),
    ]);
    force.drag.move([mx, my], [-drag * along, 0], `drag ${newtons(drag)}`, [
      mx - drag * along - 4 * px(),
      my + 4 * px(),
    ]);
    force.hull.element.classList.toggle("none", !(f.buoyancy > 0));
    force.hull.move([hx, 4], [0, -f.buoyancy * per], `hull ${newtons(f.buoyancy)}`, [
      hx + 6 * px(),
      18 * px(),
    ]);
    showKey(per, drawn.weight);
  }

  function update(answer) {
    const { flight: f, drawn } = (last = answer);
    const h = 100 * f.ride_height,
      on = boat.pose(f, drawn.strut_turn);
    put(trough, { y1: 100 * drawn.trough, y2: 100 * drawn.trough });
    showForces(f, drawn, on);
    const [gx, gy] = on(0.6 * s.length, 0);
    rise.setAttribute("d", `M${at(gx - 6, gy)}h12m-6 0V0m-6 0h12`);
    riseText.textContent = `${fixed(h, 0).replace("-", "−")} cm`;
    put(riseText, { x: at(gx + 7 * px()), y: at(Math.min(0.5 * gy + 5 * px(), -4 * px())) });
    wandText.textContent = `wand ${fixed(f.wand / DEG, 0)}°`;
    put(wandText, { y: at(on(s.wand.x, s.wand.height)[1] - 10 * px()) });
  }

  return { element: make("figure", { class: "side", role: "img" }, svg), update };
}
