// range_chart.js - wind across, pins down: on the hull, flying, more than is held; the day's band.
// SPDX-License-Identifier: MIT
//
// Each state has a pattern and a word of its own, so that no colour is needed.

import { make } from "../base/dom.js";
import { shownOf } from "./told.js";

const states = [
  ["hull", "on the hull"],
  ["stays", "stays up, does not take off"],
  ["flies", "takes off, flies, is held"],
  ["beyond", "more than is held"],
];

// What begins where along the wind, in the chart's unit, and that wind as it is told: each from the
// end of the last.
function marksOf(limits, low, unit) {
  const { launches_at, stays_up_at, held_up_to } = limits;
  const [launch, stay, held] = [launches_at ?? 0, stays_up_at ?? 0, held_up_to ?? 0];
  const mark = (state, ...keys) => {
    const key = keys.reduce((far, one) => (limits[one] > (limits[far] ?? 0) ? one : far));
    return { state, from: limits[key], said: shownOf(limits, key) };
  };
  const marks = [{ state: "hull", from: low, said: `${low} ${unit}` }];
  if (!(stay > 0)) return marks;
  if (launch === 0 || launch > stay) marks.push(mark("stays", "stays_up_at"));
  if (launch > 0) marks.push(mark("flies", "launches_at", "stays_up_at"));
  const end = Math.max(held, stay);
  while (marks.length > 1 && marks.at(-1).from >= end) marks.pop();
  return [...marks, mark("beyond", "held_up_to", "stays_up_at")];
}

// [{ state, from, to, said }] along the wind.
function partsOf(limits, { low, high }, unit) {
  const ends = [...marksOf(limits, low, unit), { from: high, said: `${high} ${unit}` }];
  return ends
    .slice(0, -1)
    .map(({ state, from, said }, i) => ({
      state,
      from: Math.max(from, low),
      to: Math.min(ends[i + 1].from, high),
      said: `${said} to ${ends[i + 1].said}`,
    }))
    .filter(({ from, to }) => to > from);
}

function scaleOf(rows, gusts) {
  const held = rows.map((row) => row.limits.held_up_to ?? 0);
  const up = rows.map((row) => row.limits.stays_up_at || 1e9);
  const low = Math.max(0, Math.floor((Math.min(gusts.lull, ...up) - 2) / 2) * 2);
  const high = Math.ceil((Math.max(gusts.puff, ...held) + 2) / 2) * 2;
  return { low, high, step: high - low > 24 ? 4 : 2 };
}

const part = (kind, from, to) =>
  make("span", { class: kind, vars: { "--from": from, "--to": to } });

const barRow = (kind, label, ...bar) =>
  make(
    "div",
    { class: kind },
    make("span", { class: "label" }, label),
    make("span", { class: "bar" }, bar),
  );

const key = (...inside) => make("span", { class: "key" }, inside);

/** What the chart shows, in words. */
function saidOf(rows) {
  const wordOf = (state) => states.find(([name]) => name === state)[1];
  const drawn = rows.map(({ label, parts }) => {
    const winds = parts.map(({ state, said }) => `${said} ${wordOf(state)}`);
    return `${label}: ${winds.join(", ")}`;
  });
  return `Winds, pin by pin. ${drawn.join(". ")}`;
}

/** rows: [{ label, limits }]; limits and gusts as told, in the unit named. */
export function rangeChart(rows, gusts, speedUnit) {
  const scale = scaleOf(rows, gusts);
  const { low, high, step } = scale;
  const at = (wind) => `${(100 * (wind - low)) / (high - low)}%`;
  const mark = (letter, wind) =>
    make("span", { class: "mark", vars: { "--at": at(wind) } }, letter);
  const ticks = [];
  for (let kn = low; kn <= high; kn += step)
    ticks.push(make("span", { vars: { "--at": at(kn) } }, String(kn)));
  const drawn = rows.map(({ label, limits }) => {
    const parts = partsOf(limits, scale, speedUnit);
    const bar = parts.map(({ state, from, to }) => part(`part ${state}`, at(from), at(to)));
    const band = part("band", at(gusts.lull), at(gusts.puff));
    return { label, parts, element: barRow("row", label, bar, band) };
  });
  const wide = Math.min(Math.max(...rows.map((row) => row.label.length), 2) + 2, 12);
  return make(
    "figure",
    { class: "range", vars: { "--label": `min(${wide}ch, 30%)` } },
    make(
      "div",
      { role: "img", "aria-label": saidOf(drawn) },
      barRow("row marks", "", mark("L", gusts.lull), mark("M", gusts.mean), mark("P", gusts.puff)),
      drawn.map((row) => row.element),
      barRow("row ticks", speedUnit, ticks),
    ),
    make(
      "figcaption",
      {},
      states.map(([state, text]) => key(make("span", { class: `part ${state}` }), text)),
      key("L, M, P: the day's lull, mean, puff"),
    ),
  );
}
