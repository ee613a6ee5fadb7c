// logged_form.js - a logged day as a form: how the set-up was, swims, turns, signs, notes.
// SPDX-License-Identifier: MIT

import { freshId, make } from "../base/dom.js";
import { heading } from "../base/number.js";
import { LOG } from "../base/kinds.js";
import { numberField, sentenceOf, wordField } from "./field.js";
import { choiceField } from "./pin_field.js";
import { signButtons } from "./signs_form.js";

// How far a tap moves what is counted, in its unit; anything else half a tape's error.
const STEPS = { turns: 0.5, afloat: 5, swims: 1 };

// A text of the day in a box of its own: one line, or several.
function textField(page, path, { doc, isLong }) {
  const id = freshId();
  const note = make("p", { class: "note", id: freshId() });
  const said = (faults) => faults.map(sentenceOf).join(". ");
  const take = async () => {
    note.textContent = said(await page.store.put(LOG, path, input.value));
  };
  const properties = { id, autocomplete: "off", "aria-describedby": note.id, onchange: take };
  const input = isLong
    ? make("textarea", { ...properties, rows: 3 })
    : make("input", { ...properties, type: "text" });
  return {
    element: make(
      "div",
      { class: "field", "data-at": `${LOG}.${path}` },
      make("label", { for: id }, heading(path)),
      isLong ? input : make("div", { class: "entry" }, make("span", { class: "box" }, input)),
      doc && make("p", { class: "note" }, doc),
      note,
    ),
    update(state, text) {
      const refused = page.store.refusedAt(LOG, path);
      if (document.activeElement !== input) input.value = refused?.text ?? text;
      note.textContent = said(refused?.faults ?? []);
    },
  };
}

const numbersOf = (page, section, keys) =>
  keys.map((key) => {
    const step = STEPS[section] ?? STEPS[key];
    return numberField(page, LOG, `${section}.${key}`, { stepped: true, step });
  });

/** page: that of a day's store. Returns { element, update(state, { pins, tree }) }. */
export function loggedForm(page) {
  const { texts, sections } = page.tables.records[LOG];
  const textNamed = (key) => texts.find((one) => one.key === key);
  const titleOf = (key) => sections.find(({ table }) => table.key === key).table.title;
  const { doc, words } = textNamed("verdict");
  const choices = words.map((key) => ({ key }));
  const verdict = wordField(page, LOG, "verdict", doc.split(":")[0], choices);
  let labels = [];
  const pin = choiceField("Pin", (i) => page.store.put(LOG, "pin", labels[i]));
  const signs = signButtons(page.tables, (keys) => page.store.put(LOG, "signs", keys.join(" ")));
  const outing = numbersOf(page, "outing", ["swims", "afloat"]);
  const turns = numbersOf(page, "turns", ["upwind", "reach", "downwind"]);
  const wind = numbersOf(page, "wind", ["lull", "mean", "puff"]);
  const date = textField(page, "date", textNamed("date"));
  const notes = textField(page, "notes", { isLong: true });
  const group = (title, fields) =>
    make(
      "fieldset",
      { class: "winds" },
      make("legend", {}, title),
      fields.map((one) => one.element),
    );
  return {
    element: make(
      "div",
      { class: "logged" },
      verdict.element,
      group(titleOf("outing"), outing),
      group(titleOf("turns"), turns),
      signs.element,
      notes.element,
      pin.element,
      group(titleOf("wind"), wind),
      date.element,
    ),
    update(state, { pins, tree }) {
      labels = pins;
      for (const field of [verdict, ...outing, ...turns, ...wind]) field.update(state);
      signs.update((tree.signs ?? "").split(" ").filter(Boolean));
      notes.update(state, tree.notes ?? "");
      date.update(state, tree.date ?? "");
      pin.update(pins, pins.indexOf(tree.pin));
    },
  };
}
