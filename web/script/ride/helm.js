// helm.js - what one sets for a ride: pin, wind, course, turns, the seed of its gusts.
// SPDX-License-Identifier: MIT

import { HEADINGS, WINDS } from "../answer/asked.js";
import { freshId, make } from "../base/dom.js";
import { heading } from "../base/number.js";
import { labelsOf, pinField } from "../form/pin_field.js";
import { resultRow } from "../base/rows.js";
import { slider } from "../form/slider.js";

export const MINUTES = [1, 3, 5, 10];
export const movable = ["wind", "heading", "turns"];

function selectField(label, options, onPick) {
  const id = freshId(),
    select = make(
      "select",
      { id, onchange: () => onPick(select.selectedIndex) },
      options.map((text) => make("option", {}, text)),
    );
  return {
    element: make("div", { class: "field" }, make("label", { for: id }, label), select),
    select,
  };
}

function seedField(onPick) {
  const id = freshId();
  const input = make("input", {
    type: "text",
    inputmode: "numeric",
    id,
    onchange: () => onPick(Number(input.value)),
  });
  return {
    element: make(
      "div",
      { class: "field" },
      make("label", { for: id }, "Seed of gusts and waves"),
      make(
        "div",
        { class: "entry" },
        make("div", { class: "box" }, input),
        make(
          "button",
          { type: "button", onclick: () => onPick(Number(input.value) + 1) },
          "Other gusts",
        ),
      ),
    ),
    update(seed) {
      input.value = seed;
    },
  };
}

/** { element, update(ask, state, ride) }: onMove is told what was changed. */
export function helm(page, onMove) {
  const { moment_names: names } = page.tables;
  const steps = { wind: 0.5, heading: 1, turns: 0.1 }; // in the unit shown
  const chosen = { heading: "best VMG", turns: "for speed" };
  const sliderOf = (key) =>
    slider({
      label: heading(names[key]),
      row: resultRow(page.tables, "trace", key),
      step: steps[key],
      free: chosen[key],
      onMove: (si) => onMove({ [key]: si }),
    });
  const sliders = Object.fromEntries(movable.map((key) => [key, sliderOf(key)]));
  const pins = pinField((pin) => onMove({ pin })),
    seed = seedField((n) => onMove({ seed: n }));
  const course = selectField("Course", page.tables.courses, (i) =>
    onMove({ course: i, heading: null }),
  );
  const minutes = selectField("Minutes", MINUTES.map(String), (i) =>
    onMove({ minutes: MINUTES[i] }),
  );
  return {
    element: make(
      "form",
      { class: "card helm", onsubmit: (event) => event.preventDefault() },
      pins.element,
      sliders.wind.element,
      course.element,
      sliders.heading.element,
      sliders.turns.element,
      seed.element,
      minutes.element,
    ),
    update(ask, state, ride) {
      const { rudder } = state.values.boat,
        { speedUnit } = state;
      const bounds = {
        wind: WINDS,
        heading: HEADINGS,
        turns: { low: rudder.least_turns, high: rudder.most_turns },
      };
      pins.update(labelsOf(state), ask.pin);
      for (const key of movable) {
        const isFree = ask[key] === null;
        sliders[key].update({
          bounds: bounds[key],
          speedUnit,
          isFree,
          ...(isFree
            ? ride && { si: Math.abs(ride[key]) * Math.sign(key === "heading" ? 1 : ride[key]) }
            : { si: ask[key] }),
        });
      }
      course.select.selectedIndex = ask.course;
      minutes.select.selectedIndex = MINUTES.indexOf(ask.minutes);
      seed.update(ask.seed);
    },
  };
}
