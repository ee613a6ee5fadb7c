// section.js - a section of a record as a form: one struct, a labelled list, a list of structs.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";
import { numberField } from "./field.js";
import { PinsSection } from "./pins_section.js";

// The rows of a section that is one struct.
function plainSection(page, kind, section, leftOut = []) {
  const { key, doc, rows } = section.table;
  const title = leftOut.some((one) => rows.some((row) => row.key === one))
    ? `More on the ${section.table.title.toLowerCase()}`
    : section.table.title;
  const fields = rows
    .filter((row) => !leftOut.includes(row.key))
    .map((row) => numberField(page, kind, `${key}.${row.key}`));
  const count = make("span", { class: "count" });
  return {
    element: make(
      "details",
      { class: "card section", id: `section-${key}` },
      make("summary", {}, make("h2", {}, title), count),
      doc && make("p", {}, doc),
      make(
        "div",
        { class: "forms" },
        fields.map((field) => field.element),
      ),
    ),
    update(state) {
      for (const field of fields) field.update(state);
      const doubts = state.doubts[kind].filter((doubt) => doubt.key.split(".")[0] === key).length;
      count.textContent = doubts ? `${doubts} unusual` : "";
    },
  };
}

// Legs: each with its rows; one can be added or taken away.
function listSection(page, kind, section) {
  const { key, title, doc, rows } = section.table;
  const list = make("div");
  let fields = [],
    laid = -1;

  const entries = () => page.store.state.set[kind][key] ?? [];
  const add = () =>
    page.store.choose(kind, {
      ...page.store.state.set[kind],
      [key]: [
        ...entries(),
        entries().at(-1) ??
          Object.fromEntries(rows.map((row) => [row.key, `${row.preset} ${row.unit}`.trim()])),
      ],
    });

  function lay(count) {
    laid = count;
    fields = [];
    list.replaceChildren(
      ...Array.from({ length: count }, (_, i) => {
        const own = rows.map((row) => numberField(page, kind, `${key}.${i}.${row.key}`));
        fields.push(...own);
        return make(
          "fieldset",
          { class: "forms" },
          make("legend", {}, `${i + 1}`),
          own.map((field) => field.element),
          make(
            "button",
            {
              type: "button",
              "aria-label": `Take ${i + 1} of ${title} away`,
              onclick: () => page.store.put(kind, `${key}.${i}`, null),
            },
            "Take away",
          ),
        );
      }),
    );
  }

  return {
    element: make(
      "details",
      { class: "card section", id: `section-${key}` },
      make("summary", {}, make("h2", {}, title)),
      doc && make("p", {}, doc),
      list,
      make("button", { type: "button", onclick: add }, "Add one more"),
    ),
    update(state) {
      const { length } = state.values[kind][key];
      if (length !== laid) lay(length);
      for (const field of fields) field.update(state);
    },
  };
}

/** leftOut: keys of rows that stand elsewhere. */
export function sectionForm(page, kind, section, leftOut) {
  if (section.kind === "labelled") return new PinsSection(page, kind, section);
  if (section.kind === "list") return listSection(page, kind, section);
  return plainSection(page, kind, section, leftOut);
}
