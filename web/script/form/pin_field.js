// pin_field.js - which pin: one choice of the boat's own labels; and of other words likewise.
// SPDX-License-Identifier: MIT

import { freshId, make } from "../base/dom.js";

export const labelsOf = (state) => state.values.boat.pins.map((pin) => pin.label);

/** The label of the day's pin, where it is known. */
export const dayPinOf = (page, state) =>
  page.dayPin?.of === JSON.stringify(state.set) ? page.dayPin.pin : null;

/** Index of the pin chosen, else of the day's where it is known, else of a middle one. */
export function pinOf(page, state) {
  const labels = labelsOf(state);
  const known = dayPinOf(page, state);
  const at = [state.more.pin, known].map((pin) => labels.indexOf(pin)).find((i) => i >= 0);
  return at ?? Math.floor(labels.length / 2);
}

/** { element, update(labels, index of the one chosen; -1: none) }; onPick(index). */
export function choiceField(legend, onPick) {
  const name = freshId(),
    list = make("div", { class: "pins" });
  let shown = "";
  return {
    element: make("fieldset", {}, make("legend", {}, legend), list),
    update(labels, chosen) {
      if (shown !== JSON.stringify(labels)) {
        shown = JSON.stringify(labels);
        list.replaceChildren(
          ...labels.map((label, i) =>
            make(
              "label",
              { class: "choice" },
              make("input", { type: "radio", name, value: i, onchange: () => onPick(i) }),
              make("span", {}, label),
            ),
          ),
        );
      }
      list.querySelectorAll("input").forEach((input, i) => {
        input.checked = i === chosen;
      });
    },
  };
}

/** Likewise, of the pins' labels. */
export const pinField = (onPick) => choiceField("Pin", onPick);
