// section.js - a section of a record as a form: one struct, a labelled list, a list of structs.
// SPDX-License-Identifier: MIT

import { make } from "./dom.js";
import { numberField, sentenceOf } from "./field.js";
import { words } from "./number.js";

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

// Pins: labels of the owner's own, most lift first; one can be added or taken away.
class LabelledSection {
  #page;
  #kind;
  #table;
  #list = make("div", { class: "forms wide" });
  #shown = "";
  #fields = [];

  constructor(page, kind, { table }) {
    const { key, title, doc } = table;
    this.#page = page;
    this.#kind = kind;
    this.#table = table;
    this.element = make(
      "details",
      { class: "card section", id: `section-${key}` },
      make("summary", {}, make("h2", {}, title)),
      make("p", {}, doc),
      this.#list,
      this.#adder(),
    );
  }

  update(state) {
    const labels = state.values[this.#kind][this.#table.key].map((one) => one.label);
    if (labels.join("\n") !== this.#shown) this.#lay(labels);
    for (const field of this.#fields) field.update(state);
  }

  #adder() {
    const { key, rows } = this.#table;
    const label = make("input", { type: "text", id: `new-${key}`, maxlength: "15" });
    const value = make("input", { type: "text", id: `value-${key}`, inputmode: "decimal" });
    const note = make("p", { class: "note", role: "alert" });
    const add = async (event) => {
      event.preventDefault();
      const wrong = await this.#add(label.value, value.value);
      note.textContent = wrong.map(sentenceOf).join(". ");
      if (!wrong.length) label.value = value.value = "";
    };
    return make(
      "form",
      { class: "add", onsubmit: add },
      make("label", { for: label.id }, "A new pin's label"),
      label,
      make("label", { for: value.id }, `Its ${words(rows[0].key)} in ${rows[0].unit}`),
      value,
      make("button", {}, "Add"),
      note,
    );
  }

  // What is wrong with a new pin.
  async #add(label, value) {
    const { key, rows } = this.#table;
    const { store } = this.#page;
    const text = /[a-z°]/i.test(value) ? value : `${value} ${rows[0].unit}`;
    const faults = await store.trial(this.#kind, `${key}.${label}`, text);
    const wrong = faults.filter((fault) => !fault.is_doubt);
    if (!wrong.length) await store.put(this.#kind, `${key}.${label}`, text);
    return wrong;
  }

  #lay(labels) {
    this.#shown = labels.join("\n");
    this.#fields = labels.map((label) => {
      const path = `${this.#table.key}.${label}`;
      return numberField(this.#page, this.#kind, path, { label: `Pin ${label}`, stepped: true });
    });
    const cells = this.#fields.map((field, i) =>
      make("div", {}, field.element, this.#takeAway(labels[i])),
    );
    this.#list.replaceChildren(...cells);
  }

  #takeAway(label) {
    return make(
      "button",
      {
        type: "button",
        "aria-label": `Take pin ${label} away`,
        onclick: () => this.#page.store.put(this.#kind, `${this.#table.key}.${label}`, null),
      },
      "Take away",
    );
  }
}

/** leftOut: keys of rows that stand elsewhere. */
export function sectionForm(page, kind, section, leftOut) {
  if (section.kind === "labelled") return new LabelledSection(page, kind, section);
  if (section.kind === "list") return listSection(page, kind, section);
  return plainSection(page, kind, section, leftOut);
}
