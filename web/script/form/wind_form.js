// wind_form.js - the day's wind: as read here, as a list of readings, or from a forecast.
// SPDX-License-Identifier: MIT

import { freshId, make } from "../base/dom.js";
import { numberField, wordField } from "./field.js";
import { latest } from "../base/latest.js";
import { heading, told } from "../base/number.js";
import { readingsField } from "./readings_field.js";
import { rowOf } from "../base/rows.js";
import { isBetween, together } from "./together.js";

const sources = [
  ["wind", "lull, mean, puff"],
  ["readings", "readings"],
  ["forecast", "forecast"],
];

const sourceOf = (tree) =>
  tree.forecast ? "forecast" : tree.readings?.length ? "readings" : "wind";

// The day with its wind from another source, as near to what it was as can be.
function dayFrom(row, tree, source, gusts) {
  const { forecast, readings, ...rest } = structuredClone(tree);
  const { lull, mean, puff, ...around } = rest.wind ?? {};
  const day = { ...rest, wind: around };
  if (source === "wind")
    for (const key of ["lull", "mean", "puff"]) day.wind[key] = told(row, gusts[key]);
  if (source === "forecast") day.forecast = { mean: told(row, gusts.mean) };
  if (source === "readings")
    day.readings = ["lull", "mean", "puff"].map((key) => told(row, gusts[key]));
  if (!Object.keys(day.wind).length) delete day.wind;
  return day;
}

// A section's numbers, each beside the others.
function windFields(page, section, keys) {
  const title = page.tables.records.day.sections.find(({ table }) => table.key === section).table
    .title;
  const fields = keys.map((key) => {
    const path = `${section}.${key}`;
    const isOwn = (fault) => !isBetween(fault, path);
    return { path, field: numberField(page, "day", path, { stepped: true, isOwn }) };
  });
  return together(page, "day", title, fields);
}

const windNow = (page) => page.engine.ask("wind", 0, page.texts(page.store.state.set));

// How lull, mean and puff came about, where they are not as given.
function windOrigin(page) {
  const element = make("p", { class: "note", role: "status" });
  const tell = latest(async (isLast) => {
    const { origin } = await windNow(page);
    if (isLast()) element.textContent = origin;
  });
  return { element, update: () => void tell() };
}

// The selected source, with the wind that is now.
async function changeSource(page, source) {
  const gusts = await windNow(page);
  const row = rowOf(page.tables, "day", "readings");
  return page.store.choose("day", dayFrom(row, page.store.state.set.day, source, gusts));
}

/** The wind of the day as a form. */
export function windForm(page) {
  const text = page.tables.records.day.texts.find((one) => one.key === "exposure");
  const parts = {
    wind: [windFields(page, "wind", ["lull", "mean", "puff"])],
    readings: [readingsField(page)],
    forecast: [
      windFields(page, "forecast", ["mean", "gust"]),
      wordField(
        page,
        "day",
        "exposure",
        heading(text.key),
        text.words.map((key) => ({ key })),
      ),
    ],
  };
  const origin = windOrigin(page);
  const id = freshId();
  const select = make(
    "select",
    { id, onchange: () => changeSource(page, select.value) },
    sources.map(([key, title]) => make("option", { value: key }, title)),
  );
  const inside = make("div", { class: "winds" });
  let laid = "";
  return {
    element: make(
      "div",
      {},
      inside,
      origin.element,
      make("div", { class: "field" }, make("label", { for: id }, "Wind given as"), select),
    ),
    update(state) {
      const source = sourceOf(state.set.day);
      if (source !== laid) inside.replaceChildren(...parts[source].map((part) => part.element));
      laid = select.value = source;
      for (const part of parts[source]) part.update(state);
      origin.update(state);
    },
  };
}
