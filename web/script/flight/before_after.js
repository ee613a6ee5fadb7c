// before_after.js - the boat from the side as she flies now and as she will then, to scale.
// SPDX-License-Identifier: MIT

import { draw, make } from "../base/dom.js";
import { at, canvas, DEG, line, put, setApart } from "../base/drawing.js";
import { told } from "../base/number.js";
import { resultRow } from "../base/rows.js";
import { boatOf, boundsOf, sizes } from "./side.js";

const ABOVE = 75; // [cm] of the sailor and more that are shown above the racks
const BELOW = 25; // [cm] of water below the foils

const poseKeys = ["ride_height", "pitch", "heel", "wand", "place_x"];

// Of a flight as it is told, in SI.
const posed = (tables, flight) =>
  Object.fromEntries(
    poseKeys.map((key) => [key, flight[key] * resultRow(tables, "flight", key).in_si]),
  );

// How far the pin turns the main strut: it stands square with the middle of the pins.
function turnOf({ pins }, { pin }) {
  const middle = pins.reduce((sum, one) => sum + one.value, 0) / pins.length;
  return pin * DEG - middle;
}

// What is shown of both: { left, right, top, bottom }.
function boundsOfBoth(s, flights) {
  const heights = flights.map((one) => one.ride_height);
  return {
    ...boundsOf(s),
    top: -(100 * Math.max(...heights) + s.rack + ABOVE),
    bottom: Math.max(s.main.length, s.rudder.length) - 100 * Math.min(...heights) + BELOW,
  };
}

// One flight: the boat, the water, and at their places how high, how steep, how far the wand.
function side({ tables, boat, s, bounds }, f, levers) {
  const { left, right, top, bottom } = bounds;
  const body = boatOf(s);
  const on = body.pose(f, turnOf(boat, levers));
  const rise = draw("path", { class: "measure" });
  const tell = (key) => told(resultRow(tables, "flight", key), f[key]);
  const texts = {
    height: draw("text", {}, tell("ride_height")),
    bow: draw("text", { "text-anchor": "end" }, `${tables.flight_names.pitch} ${tell("pitch")}`),
    wand: draw("text", { "text-anchor": "end" }, `wand ${tell("wand")}`),
  };

  function lay() {
    const size = px();
    const [x, y] = on(0.6 * s.length, 0);
    rise.setAttribute("d", `M${at(x - 6, y)}h12m-6 0V0m-6 0h12`);
    put(texts.height, { x: at(x + 7 * size), y: at(0.5 * y + 5 * size) });
    put(texts.bow, { x: at(right - 3), y: at(on(s.length, s.deck)[1] - 8 * size) });
    put(texts.wand, { x: at(right - 3), y: at(20 * size) });
    setApart(Object.values(texts), bounds);
  }

  const { svg, px } = canvas(
    [left, top, right - left, bottom - top],
    lay,
    draw("rect", { class: "sea", x: left, y: 0, width: right - left, height: bottom }),
    body.element,
    line(left, 0, right, 0, "surface"),
    rise,
    Object.values(texts),
  );
  return svg;
}

/** The two side by side: of an answer its flights, called as its table of changes calls them. */
export function beforeAfter(tables, boat, { before, after, change }) {
  const [now, then] = [before, after].map(({ flight }) => posed(tables, flight));
  const s = sizes(boat);
  const shared = { tables, boat, s, bounds: boundsOfBoth(s, [now, then]) };
  const one = (key, flight, { levers }) => {
    const said = change.rows.map((row) => `${row.what} ${row[key]}`).join(", ");
    const { head } = change.columns.find((column) => column.key === key);
    const label = { role: "img", class: "side", "aria-label": `${head}: ${said}` };
    const drawing = make("div", label, side(shared, flight, levers));
    return make("figure", {}, make("figcaption", {}, head), drawing);
  };
  return make(
    "div",
    { class: "drawn before-after" },
    one("before", now, before),
    one("after", then, after),
  );
}
