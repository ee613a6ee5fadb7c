// signs_form.js - what the boat does, to be tapped; and what is known of her, as far as it is.
// SPDX-License-Identifier: MIT

import { fold } from "./fold.js";
import { make } from "../base/dom.js";
import { heading, KNOT, told } from "../base/number.js";
import { optionField } from "./option_field.js";
import { choiceField, labelsOf } from "./pin_field.js";
import { resultRow } from "../base/rows.js";
import { slider } from "./slider.js";

const UNKNOWN = "not known";
const known = ["turns", "place"];
const fromPhoto = ["bow", "ride-height", "wand"];

/** The texts that are asked for beside signs, pin, course and wind. */
export const readings = [...known, ...fromPhoto];

/** A button for each sign of the engine; onTap(keys that are pressed then). */
export function signButtons({ signs }, onTap) {
  let pressed = [];
  const toggle = (key) => {
    const wanted = pressed.includes(key) ? pressed.filter((one) => one !== key) : [...pressed, key];
    onTap(signs.map((sign) => sign.key).filter((one) => wanted.includes(one)));
  };
  const buttons = signs.map(({ key, words }) =>
    make(
      "button",
      { type: "button", "aria-pressed": "false", "data-sign": key, onclick: () => toggle(key) },
      heading(words),
    ),
  );
  const clear = make(
    "button",
    { type: "button", class: "clear", onclick: () => onTap([]) },
    "Clear",
  );
  return {
    element: make(
      "fieldset",
      { class: "signs-seen" },
      make("legend", {}, "What does she do? Tap all that fit."),
      make("div", { class: "targets" }, buttons, clear),
    ),
    update(keys) {
      pressed = keys;
      for (const button of buttons)
        button.setAttribute("aria-pressed", keys.includes(button.dataset.sign));
      clear.disabled = !keys.length;
    },
  };
}

// Numbers that are told as on a command line; onSet({ name: text or null }).
function readingFields(page, names, onSet) {
  const fields = names.map((name) => optionField(page, name));
  const element = make(
    "div",
    { class: "asked" },
    fields.map((field) => field.element),
  );
  for (const { name, element: at, text } of fields)
    at.addEventListener("change", () => onSet({ [name]: text() || null }));
  return {
    element,
    update(more) {
      for (const field of fields) field.put(more[field.name] ?? "");
    },
  };
}

// The mean wind: the day's, or another.
function windSlider(page, onSet) {
  const row = resultRow(page.tables, "flight", "wind");
  const label = heading(page.tables.flight_names.wind);
  const free = "the day's mean";
  const onMove = (si) => onSet({ wind: si });
  const field = slider({ label, row, step: 0.5, free, onMove });
  return { element: field.element, row, update: (now) => field.update(now) };
}

/**
 * onTap(keys of the signs), onSet(words of the address; of the wind its number in SI). Returns
 * { element, update(ask, state), close() }; ask: { signs, pin, course, wind, isDaysWind } with
 * the wind in SI.
 */
export function signsForm(page, { onTap, onSet, bounds }) {
  const signs = signButtons(page.tables, onTap);
  const { courses } = page.tables;
  let pins = [];
  const pin = choiceField("Pin", (i) => onSet({ pin: pins[i] ?? null }));
  const course = choiceField("Course", (i) => onSet({ course: courses[i] }));
  const wind = windSlider(page, onSet);
  const numbers = readingFields(page, known, onSet);
  const photo = readingFields(page, fromPhoto, onSet);
  const more = make(
    "details",
    { class: "card" },
    make("summary", {}, make("h2", {}, "What a photo reads")),
    photo.element,
  );
  const form = fold(
    make("div", { class: "card helm" }, pin.element, course.element, wind.element, numbers.element),
    more,
  );

  function update(ask, state) {
    signs.update(ask.signs);
    pins = labelsOf(state);
    const at = ask.pin === null ? pins.length : pins.indexOf(ask.pin);
    pin.update([...pins, UNKNOWN], at);
    course.update(courses, courses.indexOf(ask.course));
    const { speedUnit } = state;
    wind.update({ bounds, speedUnit, si: ask.wind, isFree: ask.isDaysWind });
    for (const one of [numbers, photo]) one.update(state.more);
    const pinText = `pin ${ask.pin ?? UNKNOWN}`;
    const words = [pinText, ask.course, told(wind.row, ask.wind, speedUnit)];
    form.line.textContent = heading(words.join(", "));
  }

  return {
    element: make("div", { class: "asking" }, signs.element, form.element),
    update,
    close: form.close,
  };
}
