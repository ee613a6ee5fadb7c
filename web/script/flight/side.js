// side.js - the boat from the side, to scale from its measurements, with the forces on it.
// SPDX-License-Identifier: MIT
//
// A unit is a centimetre; x forward from the transom, y down from the water, in the boat down from
// the hull's bottom. Built once for a boat; a flight then only changes attributes.

import { draw, make } from "../base/dom.js";
import { arrow, at, canvas, DEG, line, put, section, setApart } from "../base/drawing.js";

const WEIGHT = 70; // [cm] that the weight is drawn long
const ALONG = 5; // so many times as long are forces along drawn as those up and down

/** Lengths of a boat in cm. Deck, mast and sail are drawn plain about what is measured. */
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
      d:
        `M${at(s.aft - 25, -s.rack)}H${at(s.forward + 25)}` +
        `M${at(s.mast, -s.deck)}V${at(-s.tack - s.luff)}`,
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
 * The boat by herself: { element, pose(flight, strutTurn) }. A pose answers where a point of the
 * boat then is on the page: turned about the main strut by pitch, heights shortened by heel.
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

class SideView {
  #s;
  #tell;
  #boat;
  #bounds;
  #trough;
  #rise = draw("path", { class: "measure" });
  #riseText = draw("text");
  #wandText;
  #force = {
    main: arrow(),
    rudder: arrow("start"),
    weight: arrow("end"),
    drive: arrow("end"),
    drag: arrow("end"),
    hull: arrow("start"),
  };
  #key = { up: arrow("end"), along: arrow("end") };
  #px;
  #last = null;

  constructor(s, tell) {
    const { left, right, top, bottom, wide } = (this.#bounds = boundsOf(s));
    this.#s = s;
    this.#tell = tell;
    this.#boat = boatOf(s);
    this.#trough = line(left, 0, right, 0, "trough");
    this.#wandText = draw("text", { "text-anchor": "end" });
    const arrows = [...Object.values(this.#force), ...Object.values(this.#key)];
    const { svg, px } = canvas(
      [left, top, wide, bottom - top],
      () => this.#last && this.update(this.#last),
      draw("rect", { class: "sea", x: left, y: 0, width: wide, height: bottom }),
      this.#trough,
      this.#boat.element,
      line(left, 0, right, 0, "surface"),
      this.#rise,
      this.#riseText,
      this.#wandText,
      arrows.map((one) => one.element),
    );
    this.#px = px;
    this.element = make("figure", { class: "side", role: "img" }, svg);
  }

  update(answer) {
    const { flight, drawn } = (this.#last = answer);
    const on = this.#boat.pose(flight, drawn.strut_turn);
    put(this.#trough, { y1: 100 * drawn.trough, y2: 100 * drawn.trough });
    this.#showForces(flight, drawn, on);
    this.#showKey(drawn.weight);
    this.#showHeights(flight, on);
    setApart(this.#words(flight), this.#bounds);
  }

  // Those first that keep their place.
  #words({ buoyancy }) {
    const { weight, main, rudder, drive, drag, hull } = this.#force;
    const forces = [weight, main, rudder, buoyancy > 0 && hull, drag, drive].filter(Boolean);
    const arrows = [this.#key.up, this.#key.along, ...forces].map((one) => one.text);
    return [...arrows.slice(0, 3), this.#wandText, this.#riseText, ...arrows.slice(3)];
  }

  // Ride height beside the hull, the wand's angle at its pivot.
  #showHeights(f, on) {
    const s = this.#s;
    const px = this.#px();
    const [x, y] = on(0.6 * s.length, 0);
    this.#rise.setAttribute("d", `M${at(x - 6, y)}h12m-6 0V0m-6 0h12`);
    this.#riseText.textContent = this.#tell("ride_height", f.ride_height);
    put(this.#riseText, { x: at(x + 7 * px), y: at(Math.min(0.5 * y + 5 * px, -4 * px)) });
    this.#wandText.textContent = `wand ${this.#tell("wand", f.wand)}`;
    put(this.#wandText, {
      x: at(this.#bounds.right - 3),
      y: at(on(s.wand.x, s.wand.height)[1] - 10 * px),
    });
  }

  #showForces(f, drawn, on) {
    this.#showLift(f, WEIGHT / drawn.weight, on);
    this.#showAlong(f, (WEIGHT / drawn.weight) * ALONG, drawn, on);
    const px = this.#px();
    const [x, y] = on(100 * drawn.weight_x, 100 * drawn.weight_height);
    const words = [Math.max(x - 6 * px, this.#bounds.left + 122 * px), y + 0.8 * WEIGHT];
    this.#force.weight.move([x, y], [0, WEIGHT], `weight ${this.#newtons(drawn.weight)}`, words);
  }

  // Of the foils and the hull.
  #showLift(f, per, on) {
    const s = this.#s;
    const px = this.#px();
    const { main, rudder, hull } = this.#force;
    const lift = (one, [x, y], force, words) =>
      one.move([x, y], [0, -force * per], `lift ${this.#newtons(force)}`, [words, y + 21 * px]);
    const atMain = on(s.main.x, -s.main.length);
    const atRudder = on(s.rudder.x, -s.rudder.length);
    lift(main, atMain, f.main_lift, atMain[0]);
    lift(
      rudder,
      atRudder,
      f.rudder_lift,
      Math.max(this.#bounds.left + 4 * px, atRudder[0] - 34 * px),
    );
    const [x] = on(0.45 * s.length, 0);
    const words = [x + 6 * px, 18 * px];
    hull.element.classList.toggle("none", !(f.buoyancy > 0));
    hull.move([x, 4], [0, -f.buoyancy * per], `hull ${this.#newtons(f.buoyancy)}`, words);
  }

  #newtons(force) {
    return this.#tell("drive", force);
  }

  // Drive and drag.
  #showAlong(f, per, drawn, on) {
    const px = this.#px();
    const drag = f.foil_drag + f.strut_drag + f.hull_drag;
    const [sx, sy] = on(100 * drawn.sail_x, 100 * drawn.sail_height);
    const [mx, my] = on(this.#s.main.x, -this.#s.main.length);
    const words = (x, y, down) => [x - 4 * px, y + down * px];
    const driven = words(sx, sy, 5);
    this.#force.drive.move([sx, sy], [f.drive * per, 0], `drive ${this.#newtons(f.drive)}`, driven);
    const dragged = words(mx - drag * per, my, 4);
    this.#force.drag.move([mx, my], [-drag * per, 0], `drag ${this.#newtons(drag)}`, dragged);
  }

  // How long a force is drawn, up and along.
  #showKey(weight) {
    const per = WEIGHT / weight;
    const px = this.#px();
    const up = round(0.5 * weight);
    const along = round(0.1 * weight);
    const high = up * per;
    const wide = along * per * ALONG;
    const x = this.#bounds.right - 8 * px;
    const y = this.#bounds.top + 8 * px + high;
    const beside = [x - 18 * px, y - 0.5 * high + 5 * px];
    const before = [x - wide - 6 * px, y + 19 * px];
    this.#key.up.move([x - 6 * px, y], [0, -high], this.#newtons(up), beside);
    this.#key.along.move([x - wide, y + 14 * px], [wide, 0], this.#newtons(along), before);
  }
}

/**
 * { element, update(answer) }; the element is a figure whose label is its owner's to set.
 * tell(key, si): a number of the flight as its row shows it.
 */
export const sideView = (s, tell) => new SideView(s, tell);
