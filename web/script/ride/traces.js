// traces.js - a ride as curves: four that run past now, and all of it with what happened.
// SPDX-License-Identifier: MIT
//
// Curves are drawn once, in seconds across and the row's unit up; moving on only moves the window.

import { draw, make } from "../base/dom.js";
import { heading, minus, shownUnit, told } from "../base/number.js";
import { resultRow } from "../base/rows.js";

const WINDOW = 24; // [s] across
const NOW = 0.7; // of the window that has been, but at the ride's ends

const put = (element, box) =>
  element.setAttribute("viewBox", box.map((x) => x.toFixed(3)).join(" "));
const path = (kind, points) => draw("path", { class: kind, d: `M${points.join("L")}` });

/** Least and greatest of some, and a little room; never flat. */
function boundsOf(values, least) {
  let low = Infinity,
    high = -Infinity;
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  const room = Math.max(0.05 * (high - low), least);
  return { low: low - room, high: high + room };
}

const curve = (ride, values) =>
  Array.from(values, (value, i) => `${(i * ride.every).toFixed(2)} ${(-value).toFixed(3)}`);

/** Grey while she lies still after a swim; a line where something happened. */
function marks(ride, low, high) {
  const lasts = ride.swims.map(([from, to]) =>
    draw("rect", {
      class: "swim",
      x: from,
      y: -high,
      width: Math.max(to - from, 0.1),
      height: high - low,
    }),
  );
  const happened = ride.events.map(({ time, is_swim }) =>
    draw("line", {
      class: is_swim ? "mark fall" : "mark",
      x1: time,
      x2: time,
      y1: -high,
      y2: -low,
    }),
  );
  return [...lasts, ...happened];
}

const level = (kind, ride, value) =>
  draw("line", { class: kind, x1: 0, x2: ride.seconds, y1: -value, y2: -value });

function panel({ row, label, ride, series, levels = [], speedUnit }) {
  const { inSi } = shownUnit(row, speedUnit);
  const lists = series.map((one) => Array.from(one, (si) => si / inSi)),
    marked = levels.map((si) => si / inSi);
  const { low, high } = boundsOf(
    [...lists.flatMap((list) => [Math.min(...list), Math.max(...list)]), ...marked],
    0.5,
  );
  const svg = draw(
    "svg",
    { preserveAspectRatio: "none", "aria-hidden": "true" },
    marks(ride, low, high),
    level("zero", ride, 0),
    marked.map((value) => level("level", ride, value)),
    lists.map((list, i) => path(i ? "trace under" : "trace", curve(ride, list))).reverse(),
  );
  const value = make("b", {}),
    now = make("span", { class: "now", "aria-hidden": "true" });
  return {
    element: make(
      "div",
      { class: "panel" },
      make("p", {}, `${label} `, value),
      make(
        "div",
        { class: "plot" },
        svg,
        now,
        make("span", { class: "high", "aria-hidden": "true" }, minus(String(Math.round(high)))),
        make("span", { class: "low", "aria-hidden": "true" }, minus(String(Math.round(low)))),
      ),
    ),
    update(time, si) {
      const from = Math.max(Math.min(time - NOW * WINDOW, ride.seconds - WINDOW), 0);
      put(svg, [from, -high, WINDOW, high - low]);
      now.style.setProperty("--now", `${((100 * (time - from)) / WINDOW).toFixed(2)}%`);
      value.textContent = told(row, si, speedUnit);
    },
  };
}

/** The four traces: { element, update(time, moment) }. boat: its values, for the flap's stops. */
export function traces(tables, ride, boat, speedUnit) {
  const panelOf = (key, under = [], levels = []) =>
    panel({
      row: resultRow(tables, "trace", key),
      label: heading(tables.moment_names[key]),
      ride,
      series: [key, ...under].map(ride.column),
      levels,
      speedUnit,
    });
  const { flap_up_stop: up, flap_down_stop: down } = boat.linkage;
  const panels = {
    wind: panelOf("wind", [], [ride.lull, ride.mean, ride.puff]),
    ride_height: panelOf("ride_height", ["surface"]),
    pitch: panelOf("pitch"),
    flap: panelOf("flap", [], [up, down]),
  };
  return {
    element: make(
      "div",
      { class: "traces" },
      Object.values(panels).map((one) => one.element),
    ),
    update(time, moment) {
      for (const [key, one] of Object.entries(panels)) one.update(time, moment[key]);
    },
  };
}

/** The whole ride's wind with all that happened: { element, update(time) }. */
export function overview(ride) {
  const wind = ride.column("wind"),
    { low, high } = boundsOf(wind, 0.2);
  const now = draw("line", { class: "playhead", y1: -high, y2: -low });
  const svg = draw(
    "svg",
    { preserveAspectRatio: "none", "aria-hidden": "true" },
    marks(ride, low, high),
    path("trace", curve(ride, wind)),
    now,
  );
  put(svg, [0, -high, ride.seconds, high - low]);
  return {
    element: make("div", { class: "overview" }, svg),
    update(time) {
      now.setAttribute("x1", time);
      now.setAttribute("x2", time);
    },
  };
}
