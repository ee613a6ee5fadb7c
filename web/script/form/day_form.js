// day_form.js - the day as a form: wind, who sails and what for, sea and course; folded, one line.
// SPDX-License-Identifier: MIT

import { card, make } from "../base/dom.js";
import { nameField, numberField, wordField } from "./field.js";
import { recordField } from "./record_field.js";
import { fold } from "./fold.js";
import { heading, shown, told } from "../base/number.js";
import { rowOf } from "../base/rows.js";
import { sectionForm } from "./section.js";
import { windForm } from "./wind_form.js";

const gustKeys = ["lull", "mean", "puff"];

// "Lull 10.0, mean 12.5, puff 15.5 kn"; where they follow from readings or a forecast, once known.
function windLine(row, gusts, speedUnit) {
  if (gustKeys.some((key) => !gusts?.[key])) return "Wind from readings or a forecast";
  const parts = gustKeys.map((key) => `${key} ${shown(row, gusts[key], speedUnit)}`);
  return heading(`${parts.join(", ")} ${speedUnit}`);
}

/** gusts(): lull, mean and puff as worked out. Returns { element, update(state), close() }. */
export function dayForm(page, gusts) {
  const { records, aims } = page.tables;
  const elsewhere = ["forecast", "readings"];
  const winds = windForm(page);
  const who = recordField(page, "sailor", "Who sails");
  const mass = numberField(page, "sailor", "person.mass", { stepped: true });
  const aim = wordField(page, "day", "aim", "Aim", aims);
  const named = [
    recordField(page, "boat", "Boat"),
    recordField(page, "day", "Day"),
    nameField(page, "day"),
  ];
  const sections = records.day.sections
    .filter((one) => !elsewhere.includes(one.table.key))
    .map((section) => sectionForm(page, "day", section, gustKeys));
  const fields = [winds, who, mass, aim, ...named, ...sections];
  const massRow = rowOf(page.tables, "sailor", "person", "mass");
  const windRow = rowOf(page.tables, "day", "wind", "mean");

  const form = fold(
    card("Wind", winds.element),
    card("Who and what for", who.element, mass.element, aim.element),
    card(
      "Boat and day",
      named.map((one) => one.element),
    ),
    sections.map((section) => section.element),
  );
  const wind = make("b", {}),
    rest = make("small", {});
  form.line.append(make("span", { class: "line" }, wind, rest));

  return {
    element: form.element,
    update(state) {
      const { boat, sailor, day } = state.values;
      for (const field of fields) field.update(state);
      wind.textContent = windLine(
        windRow,
        state.set.day.wind?.lull ? day.wind : gusts(),
        state.speedUnit,
      );
      rest.textContent = [
        day.aim,
        `${sailor.name}, ${told(massRow, sailor.person.mass)}`,
        boat.name,
        day.name,
      ].join(" · ");
    },
    close: form.close,
  };
}
