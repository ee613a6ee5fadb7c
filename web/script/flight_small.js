// flight_small.js - two small pictures of a flight: the boat from astern, and the main foil closer up.
// SPDX-License-Identifier: MIT

import { draw, make } from "./dom.js";
import { at, canvas, DEG, line, put, section } from "./drawing.js";
import { fixed } from "./number.js";

const degrees = (angle, decimals) => `${fixed(angle / DEG, decimals).replace("-", "−")}°`;

/** Starboard tack: the wind comes from the right. */
export function asternView(s) {
  const half = Math.max(0.5 * s.racks + 100, 150),
    top = -(s.tack + 150),
    bottom = s.main.length + 30;
  const legs = line(0, 0, 0, 0, "spar"),
    trunk = line(0, 0, 0, 0, "trunk"),
    head = draw("circle", { class: "body", r: 11 });
  const boat = draw(
    "g",
    {},
    draw("path", {
      class: "spar",
      d: `M0 ${at(-s.deck)}V${at(2 * top)}M${at(-s.racks / 2, -s.rack)}L${at(0, -s.deck / 2)}L${at(s.racks / 2, -s.rack)}M0 0V${at(s.main.length)}`,
    }),
    draw("path", {
      class: "hull",
      d: `M${at(-s.beam / 2, -s.deck)}Q${at(-s.beam / 2, 0, 0, 0)}Q${at(s.beam / 2, 0, s.beam / 2, -s.deck)}Z`,
    }),
    line(-s.main.span / 2, s.main.length, s.main.span / 2, s.main.length, "blade"),
    line(-s.rudder.span / 2, s.rudder.length, s.rudder.span / 2, s.rudder.length, "blade thin"),
    legs,
    trunk,
    head,
  );
  const trough = line(-half, 0, half, 0, "trough"),
    heel = draw("text"),
    wind = draw("text", { "text-anchor": "end" }, "◂ wind");
  const place = () => {
    put(heel, { x: 5 * px() - half, y: bottom - 7 * px() });
    put(wind, { x: half - 5 * px(), y: top + 17 * px() });
  };
  const { svg, px } = canvas(
    [-half, top, 2 * half, bottom - top],
    () => place(),
    draw("rect", { class: "sea", x: -half, y: 0, width: 2 * half, height: bottom }),
    trough,
    boat,
    line(-half, 0, half, 0, "surface"),
    wind,
    heel,
  );

  // The sailor's middle at its place to windward, the legs to the boat.
  function sit(x, y) {
    put(trunk, { x1: at(x - 9), y1: at(y + 14), x2: at(x + 9), y2: at(y - 16) });
    put(head, { cx: at(x + 17), cy: at(y - 32) });
    put(legs, { x1: at(x - 9), y1: at(y + 14), x2: at(Math.max(x - 70, 0)), y2: at(-s.rack) });
  }

  return {
    element: make(
      "figure",
      { class: "small" },
      svg,
      make("figcaption", {}, "From astern, starboard tack"),
    ),
    update({ flight: f, drawn }) {
      sit(
        100 * (drawn.body_in + f.hiking * (drawn.body_out - drawn.body_in)),
        -100 * drawn.body_height,
      );
      boat.setAttribute(
        "transform",
        `translate(0 ${at(-100 * f.ride_height)}) rotate(${at(f.heel / DEG)})`,
      );
      put(trough, { y1: 100 * drawn.trough, y2: 100 * drawn.trough });
      heel.textContent = `heel ${degrees(f.heel, 0)}`;
    },
  };
}

/** The section at its angle to the track, flap about its hinge, ten times as large as life on paper. */
export function foilView({ main_foil: foil, pins }) {
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
  const flapText = draw("text"),
    noseText = draw("text", { "text-anchor": "end" });
  const place = () => {
    put(flapText, { x: 4 * px() - 118, y: 50 - 7 * px() });
    put(noseText, { x: 32 - 5 * px(), y: 16 * px() - 52 });
  };
  const { svg, px } = canvas(
    [-118, -52, 150, 102],
    () => place(),
    line(-114, 0, 28, 0, "trough"),
    whole,
    flapText,
    noseText,
  );
  return {
    element: make(
      "figure",
      { class: "small" },
      svg,
      make("figcaption", {}, "Main foil and flap, against the track"),
    ),
    update({ flight: f }, pin) {
      const nose = f.pitch + pins[pin].value;
      whole.setAttribute("transform", `rotate(${at(-nose / DEG, -0.25 * chord, 0)})`);
      flap.setAttribute("transform", `rotate(${at(-f.flap / DEG, hinge, 0)})`);
      flapText.textContent = `flap ${degrees(f.flap, 1)}`;
      noseText.textContent = `foil ${degrees(nose, 1)}`;
    },
  };
}
