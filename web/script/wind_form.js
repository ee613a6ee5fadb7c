// wind_form.js - the day's wind: as read here, as a list of readings, or from a forecast.
// SPDX-License-Identifier: MIT

import { freshId, make } from "./dom.js";
import { numberField, sentenceOf, wordField } from "./field.js";
import { entry, heading, shownUnit, told } from "./number.js";
import { rowOf } from "./rows.js";

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

const readingRow = (tables) => rowOf(tables, "day", "readings");

// A list of readings as text, one a line.
function readingsField(page) {
  const id = freshId(),
    noteId = freshId();
  const row = readingRow(page.tables);
  const note = make("p", { class: "note", id: noteId });
  const area = make("textarea", {
    id,
    rows: "6",
    inputmode: "decimal",
    "aria-describedby": noteId,
    onchange: take,
  });
  const label = make("label", { for: id });

  async function take() {
    const { unit } = shownUnit(row, page.store.state.speedUnit);
    const readings = area.value
      .split(/[\n;]/)
      .map((line) => line.trim())
      .filter(Boolean)
      .map((line) => (/[a-z]/i.test(line) ? line : `${line} ${unit}`));
    const faults = await page.store.choose("day", { ...page.store.state.set.day, readings });
    note.textContent = faults.map((fault) => `${fault.read} ${sentenceOf(fault)}`).join(". ");
  }

  return {
    element: make("div", { class: "field" }, label, area, note),
    update(state) {
      const { unit } = shownUnit(row, state.speedUnit);
      label.textContent = `Readings in ${unit}, one a line`;
      if (document.activeElement !== area)
        area.value = state.values.day.readings
          .map((si) => entry(row, si, state.speedUnit))
          .join("\n");
    },
  };
}

/** The wind of the day as a form; gusts() tells lull, mean and puff as they were worked out. */
export function windForm(page, gusts) {
  const text = page.tables.records.day.texts.find((one) => one.key === "exposure");
  const parts = {
    wind: ["lull", "mean", "puff"].map((key) =>
      numberField(page, "day", `wind.${key}`, { stepped: true }),
    ),
    readings: [readingsField(page)],
    forecast: [
      ...["mean", "gust"].map((key) =>
        numberField(page, "day", `forecast.${key}`, { stepped: true }),
      ),
      wordField(
        page,
        "day",
        "exposure",
        heading(text.key),
        text.words.map((key) => ({ key })),
      ),
    ],
  };
  const id = freshId();
  const select = make(
    "select",
    {
      id,
      onchange: () =>
        page.store.choose(
          "day",
          dayFrom(readingRow(page.tables), page.store.state.set.day, select.value, gusts()),
        ),
    },
    sources.map(([key, title]) => make("option", { value: key }, title)),
  );
  const inside = make("div", { class: "winds" });
  let laid = "";
  return {
    element: make(
      "div",
      {},
      inside,
      make("div", { class: "field" }, make("label", { for: id }, "Wind given as"), select),
    ),
    update(state) {
      const source = sourceOf(state.set.day);
      if (source !== laid) inside.replaceChildren(...parts[source].map((part) => part.element));
      laid = select.value = source;
      for (const part of parts[source]) part.update(state);
    },
  };
}
