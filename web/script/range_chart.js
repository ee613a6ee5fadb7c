// range_chart.js - wind across, pins down: on the hull, flying, more than is held; the day's band.
// SPDX-License-Identifier: MIT
//
// Each state has a pattern and a word of its own, so that no colour is needed.

import { make } from "./dom.js";
import { KNOT } from "./number.js";

export const states = [
  ["hull", "on the hull"],
  ["stays", "stays up, does not launch"],
  ["flies", "launches, flies, is held"],
  ["beyond", "more than is held"],
];

// [state, from, to] along the wind, all in the chart's unit.
function partsOf(limits, low, high) {
  const { launches_at: launch, stays_up_at: stay, held_up_to: held } = limits;
  const marks = [["hull", low]];
  if (stay > 0) {
    if (launch === 0 || launch > stay) marks.push(["stays", stay]);
    if (launch > 0) marks.push(["flies", Math.max(launch, stay)]);
    const end = Math.max(held, stay);
    while (marks.length > 1 && marks.at(-1)[1] >= end) marks.pop();
    marks.push(["beyond", end]);
  }
  return marks
    .map(([state, from], i) => [
      state,
      Math.max(from, low),
      Math.min(marks[i + 1]?.[1] ?? high, high),
    ])
    .filter(([, from, to]) => to > from);
}

function scaleOf(rows, gusts, unit) {
  const held = rows.map((row) => row.limits.held_up_to);
  const low = Math.max(
    0,
    Math.floor(
      (Math.min(gusts.lull, ...rows.map((row) => row.limits.stays_up_at || 1e9)) / unit - 2) / 2,
    ) * 2,
  );
  const high = Math.ceil((Math.max(gusts.puff, ...held) / unit + 2) / 2) * 2;
  return { low, high, step: high - low > 24 ? 4 : 2 };
}

/** rows: [{ label, limits }]; limits and gusts in m/s. */
export function rangeChart(rows, gusts, speedUnit) {
  const unit = speedUnit === "m/s" ? 1 : KNOT;
  const { low, high, step } = scaleOf(rows, gusts, unit);
  const at = (wind) => `${(100 * (wind / unit - low)) / (high - low)}%`;
  const mark = (letter, wind) =>
    make("span", { class: "mark", vars: { "--at": at(wind) } }, letter);
  const ticks = [];
  for (let kn = low; kn <= high; kn += step)
    ticks.push(make("span", { vars: { "--at": at(kn * unit) } }, String(kn)));
  const band = () =>
    make("span", { class: "band", vars: { "--from": at(gusts.lull), "--to": at(gusts.puff) } });
  const bars = rows.map((row) =>
    make(
      "div",
      { class: "row" },
      make("span", { class: "label" }, row.label),
      make(
        "span",
        { class: "bar" },
        partsOf(row.limits, low * unit, high * unit).map(([state, from, to]) =>
          make("span", { class: `part ${state}`, vars: { "--from": at(from), "--to": at(to) } }),
        ),
        band(),
      ),
    ),
  );
  const said = rows
    .map(
      (row) =>
        `${row.label}: ` +
        partsOf(row.limits, low * unit, high * unit)
          .map(
            ([state, from, to]) =>
              `${(from / unit).toFixed(1)} to ${(to / unit).toFixed(1)} ${states.find(([key]) => key === state)[1]}`,
          )
          .join(", "),
    )
    .join(". ");
  const wide = Math.min(Math.max(...rows.map((row) => row.label.length), 2) + 2, 12);
  return make(
    "figure",
    { class: "range", vars: { "--label": `min(${wide}ch, 30%)` } },
    make(
      "div",
      { role: "img", "aria-label": `Winds in ${speedUnit}, pin by pin. ${said}` },
      make(
        "div",
        { class: "row marks" },
        make("span", { class: "label" }),
        make(
          "span",
          { class: "bar" },
          mark("L", gusts.lull),
          mark("M", gusts.mean),
          mark("P", gusts.puff),
        ),
      ),
      bars,
      make(
        "div",
        { class: "row ticks" },
        make("span", { class: "label" }, speedUnit),
        make("span", { class: "bar" }, ticks),
      ),
    ),
    make(
      "figcaption",
      {},
      states.map(([key, text]) =>
        make("span", { class: "key" }, make("span", { class: `part ${key}` }), text),
      ),
      make("span", { class: "key" }, "L, M, P: the day's lull, mean, puff"),
    ),
  );
}
