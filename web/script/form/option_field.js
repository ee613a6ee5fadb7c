// option_field.js - an option of a question as a form field, made from its row.
// SPDX-License-Identifier: MIT

import { freshId, make } from "../base/dom.js";
import { heading, withoutUnit, withUnit } from "../base/number.js";

const labelOf = (name) => heading(name.replace(/-/g, " "));

function pinSelect(id) {
  const select = make("select", { id });
  return {
    element: select,
    text: () => select.value,
    update({ set }) {
      const labels = (set.boat?.pins ?? []).map((one) => one.label);
      const now = select.value;
      select.replaceChildren(
        make("option", { value: "" }, "–"),
        ...labels.map((one) => make("option", { value: one }, one)),
      );
      select.value = labels.includes(now) ? now : "";
    },
  };
}

function textField(id, option) {
  const input = make("input", {
    id,
    autocomplete: "off",
    inputmode: option.is_number ? "decimal" : null,
  });
  const unit = option.sign && make("span", { class: "unit" }, option.sign);
  return {
    element: make("span", { class: "entry" }, input, unit),
    text: () => (input.value.trim() ? withUnit(input.value, option.unit) : ""),
    put(text) {
      if (document.activeElement !== input) input.value = withoutUnit(text, option.unit);
    },
    update() {},
  };
}

// The help of an option without how it is written on a command line.
const withoutCommand = (help) => help.replace(/, as in --\S+ ('[^']*'|[^ ,.]+)/g, "");

/**
 * { name, element, text(), update(state) }, and of one that is no pin put(text). A text is written
 * as on a command line; "": not given.
 */
export function optionField(page, name) {
  const id = freshId(),
    option = page.tables.options[name];
  const field = name === "pin" ? pinSelect(id) : textField(id, option);
  return {
    name,
    ...field,
    element: make(
      "div",
      { class: "field" },
      make("label", { for: id }, labelOf(name)),
      field.element,
      make("p", { class: "note" }, withoutCommand(option.help)),
    ),
  };
}
