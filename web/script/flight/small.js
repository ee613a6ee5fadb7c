// small.js - two small pictures of a flight: the boat from astern, the main foil closer up.
// SPDX-License-Identifier: MIT

import { draw, make } from "../base/dom.js";
import { at, canvas, DEG, line, put, section } from "../base/drawing.js";

// The boat from astern, the sailor apart: { element, sit(x, y) }.
function boatAstern(s, top) {
  const legs = line(0, 0, 0, 0, "spar");
  const trunk = line(0, 0, 0, 0, "trunk");
  const head = draw("circle", { class: "body", r: 11 });
  const mast = `M0 ${at(-s.deck)}V${at(2 * top)}`;
  const racks =
    `M${at(-s.racks / 2, -s.rack)}L${at(0, -s.deck / 2)}` +
    `L${at(s.racks / 2, -s.rack)}M0 0V${at(s.main.length)}`;
  const hull =
    `M${at(-s.beam / 2, -s.deck)}Q${at(-s.beam / 2, 0, 0, 0)}` +
    `Q${at(s.beam / 2, 0, s.beam / 2, -s.deck)}Z`;
  const blade = ({ span, length }, kind) => line(-span / 2, length, span / 2, length, kind);
  return {
    element: draw(
      "g",
      {},
      draw("path", { class: "spar", d: mast + racks }),
      draw("path", { class: "hull", d: hull }),
      blade(s.main, "blade"),
      blade(s.rudder, "blade thin"),
      legs,
      trunk,
      head,
    ),
    /** The sailor's middle at its place to windward, the legs to the boat. */
    sit(x, y) {
      put(trunk, { x1: at(x - 9), y1: at(y + 14), x2: at(x + 9), y2: at(y - 16) });
      put(head, { cx: at(x + 17), cy: at(y - 32) });
      put(legs, { x1: at(x - 9), y1: at(y + 14), x2: at(Math.max(x - 70, 0)), y2: at(-s.rack) });
    },
  };
}

/** Starboard tack: the wind comes from the right. tell(key, si): a number as its row shows it. */
export function asternView(s, tell) {
  const half = Math.max(0.5 * s.racks + 100, 150);
  const top = -(s.tack + 150);
  const bottom = s.main.length + 30;
  const boat = boatAstern(s, top);
  const trough = line(-half, 0, half, 0, "trough");
  const heel = make("b", {});
  const svg = canvas(
    [-half, top, 2 * half, bottom - top],
    draw("rect", { class: "sea", x: -half, y: 0, width: 2 * half, height: bottom }),
    trough,
    boat.element,
    line(-half, 0, half, 0, "surface"),
  );
  const what = make("span", { class: "roomy" }, "From astern, wind from the right");
  const caption = make("figcaption", {}, heel, what);
  return {
    element: make("figure", { class: "small" }, svg, caption),
    update({ flight: f, drawn }) {
      const out = drawn.body_in + f.hiking * (drawn.body_out - drawn.body_in);
      boat.sit(100 * out, -100 * drawn.body_height);
      const up = `translate(0 ${at(-100 * f.ride_height)})`;
      boat.element.setAttribute("transform", `${up} rotate(${at(f.heel / DEG)})`);
      put(trough, { y1: 100 * drawn.trough, y2: 100 * drawn.trough });
      heel.textContent = `heel ${tell("heel", f.heel)}`;
    },
  };
}

/** The section at its angle to the track, flap about its hinge, ten times life size on paper. */
export function foilView({ main_foil: foil, pins }, tell) {
  const chord = 100,
    hinge = -(1 - foil.flap_chord) * chord;
  const flap = draw("path", {
    class: "foil flap",
    d: section(chord, foil.thickness, 1 - foil.flap_chord),
  });
  const whole = draw(
    "g",
    {},
    draw("path", { class: "foil", d: section(chord, foil.thickness, 0, 1 - foil.flap_chord) }),
    flap,
  );
  const svg = canvas([-118, -52, 150, 102], line(-114, 0, 28, 0, "trough"), whole);
  const nose = make("b", {});
  const turned = make("b", {});
  const what = make("span", { class: "roomy" }, "Main foil and flap, against the track");
  const caption = make("figcaption", {}, nose, turned, what);
  return {
    element: make("figure", { class: "small" }, svg, caption),
    update({ flight: f }, pin) {
      const up = f.pitch + pins[pin].value;
      whole.setAttribute("transform", `rotate(${at(-up / DEG, -0.25 * chord, 0)})`);
      flap.setAttribute("transform", `rotate(${at(-f.flap / DEG, hinge, 0)})`);
      nose.textContent = `foil ${tell("pitch", up)}`;
      turned.textContent = `flap ${tell("flap", f.flap)}`;
    },
  };
}
