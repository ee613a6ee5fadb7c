// pin_field.js - which pin: one choice of the boat's own labels.
// SPDX-License-Identifier: MIT

import { freshId, make } from "./dom.js";

export const labelsOf = (state) => state.values.boat.pins.map((pin) => pin.label);

/** { element, update(labels, index of the pin) }; onPick(index). */
export function pinField(onPick) {
  const name = freshId(),
    list = make("div", { class: "pins" });
  let shown = "";
  return {
    element: make("fieldset", {}, make("legend", {}, "Pin"), list),
    update(labels, pin) {
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
      list.querySelectorAll("input")[pin].checked = true;
    },
  };
}
