// pins_section.js - a labelled section as a form: pins under the owner's labels, most lift first.
// SPDX-License-Identifier: MIT

import { freshId, make } from "../base/dom.js";
import { numberField, sentenceOf } from "./field.js";
import { withUnit, words } from "../base/number.js";

const MOST = 15; // bytes of a label: LW_LABEL_LENGTH

/** They sort by themselves: each can be added, renamed and taken away; what is refused is told. */
export class PinsSection {
  #page;
  #kind;
  #table;
  #list = make("div", { class: "forms wide" });
  #note = make("p", { class: "note", role: "alert" });
  #cells = new Map(); // by label: { field, element }
  #shown = "";

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
      this.#note,
      this.#adder(),
    );
  }

  update(state) {
    const labels = state.values[this.#kind][this.#table.key].map((one) => one.label);
    if (labels.join("\n") !== this.#shown) this.#lay(labels);
    for (const { field } of this.#cells.values()) field.update(state);
  }

  // One that has the focus keeps it where it goes.
  #lay(labels) {
    const focused = document.activeElement;
    const cellOf = (label) => [label, this.#cells.get(label) ?? this.#cell(label)];
    this.#shown = labels.join("\n");
    this.#cells = new Map(labels.map(cellOf));
    this.#list.replaceChildren(...[...this.#cells.values()].map(({ element }) => element));
    if (this.#list.contains(focused)) focused.focus();
  }

  #cell(label) {
    const path = `${this.#table.key}.${label}`;
    const named = { label: `Pin ${label}`, stepped: true };
    const field = numberField(this.#page, this.#kind, path, named);
    const takeAway = make(
      "button",
      {
        type: "button",
        "aria-label": `Take pin ${label} away`,
        onclick: () => this.#change((pins) => pins.filter((one) => one.label !== label)),
      },
      "Take away",
    );
    const tools = make("div", { class: "of-pin" }, takeAway, this.#renamer(label));
    return { field, element: make("div", {}, field.element, tools) };
  }

  #renamer(label) {
    const input = make("input", { type: "text", id: freshId(), maxlength: MOST, value: label });
    const rename = (event) => {
      event.preventDefault();
      this.#rename(label, input.value.trim());
    };
    return make(
      "details",
      { class: "rename" },
      make("summary", { "aria-label": `Rename pin ${label}` }, "Rename"),
      make(
        "form",
        { class: "add", onsubmit: rename },
        make("label", { for: input.id }, `New label of pin ${label}`),
        input,
        make("button", {}, "Rename it"),
      ),
    );
  }

  // What a view shows of the pin it goes on showing.
  async #rename(from, to) {
    const { store } = this.#page;
    const named = (one) => (one.label === from ? { ...one, label: to } : one);
    const isDone = await this.#change((pins) => pins.map(named));
    if (isDone && store.state.more.pin === from) store.say({ pin: to });
    if (isDone) this.#cells.get(to).element.querySelector("input").focus();
  }

  #adder() {
    const { key, rows } = this.#table;
    const label = make("input", { type: "text", id: `new-${key}`, maxlength: MOST });
    const value = make("input", { type: "text", id: `value-${key}`, inputmode: "decimal" });
    const add = async (event) => {
      event.preventDefault();
      const one = { label: label.value.trim(), text: withUnit(value.value, rows[0].unit) };
      if (await this.#change((pins) => [...pins, one])) label.value = value.value = "";
    };
    return make(
      "form",
      { class: "add", onsubmit: add },
      make("label", { for: label.id }, "A new pin's label"),
      label,
      make("label", { for: value.id }, `Its ${words(rows[0].key)} in ${rows[0].sign}`),
      value,
      make("button", {}, "Add"),
    );
  }

  // Whether the engine took what was made of the pins; it says why not.
  async #change(made) {
    const { store } = this.#page;
    const { key } = this.#table;
    const tree = store.state.set[this.#kind];
    const faults = await store.choose(this.#kind, { ...tree, [key]: made(tree[key]) });
    const wrong = faults.filter((fault) => !fault.is_doubt);
    this.#note.textContent = wrong.map(sentenceOf).join(". ");
    return !wrong.length;
  }
}
