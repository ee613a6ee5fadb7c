// field.js - one number or word of a record as a form field, made from its row.
// SPDX-License-Identifier: MIT

import { boundsOf, stepped as steppedTo } from "./bounds.js";
import { freshId, make, stepButton, whereFrom } from "../base/dom.js";
import { entry, heading, shownUnit, withUnit, withoutUnit, words } from "../base/number.js";
import { rowOf } from "../base/rows.js";
import { faultsAt } from "../keep/settle.js";

/** What is told below a field: faults first, then doubts. */
export function sentenceOf(fault) {
  const parts = [fault.sentence];
  if (fault.expected) parts.push(`expected: ${fault.expected}`);
  if (fault.hint) parts.push(`did you mean ${fault.hint}?`);
  return heading(parts.join("; "));
}

// How a number is measured, folded away.
function helpOf(row, name) {
  const usual = row.usual && row.usual !== row.range ? `; usually ${row.usual}` : "";
  return make(
    "details",
    { class: "how" },
    make("summary", { "aria-label": `How to measure: ${name}` }, "?"),
    make("p", {}, row.doc, " ", make("span", { class: "band" }, `${row.range}${usual}`)),
    whereFrom(name, row.sources),
  );
}

class NumberField {
  #page;
  #kind;
  #path;
  #row;
  #isLabelled;
  #input;
  #unit = make("span", { class: "unit", "aria-hidden": "true" });
  #labelUnit = make("span", { class: "unseen" });
  #note = make("p", { class: "note", id: freshId() });
  #isTyping = false; // something that is not taken yet
  #steps = []; // [sign, button], down and up
  #step; // of its unit; undefined: half a tape's error
  #isOwn; // whether a fault is told here
  #isFaulty = false;
  #isAccused = false; // by others

  constructor(page, kind, path, { stepped, label, isOwn, step }) {
    const { sections } = page.tables.records[kind];
    this.#page = page;
    this.#kind = kind;
    this.#path = path;
    this.#isOwn = isOwn;
    this.#step = step;
    this.#row = rowOf(page.tables, kind, this.#section, path.split(".").at(-1));
    this.#isLabelled = sections.some(
      (one) => one.kind === "labelled" && one.table.key === this.#section,
    );
    this.#input = make("input", {
      id: freshId(),
      type: "text",
      inputmode: "decimal",
      autocomplete: "off",
      "aria-describedby": this.#note.id,
      oninput: () => this.#flag(this.#typed()),
      onchange: () => this.#take(this.#typed()),
    });
    this.element = this.#build(label ?? heading(words(this.#row.key)), stepped);
  }

  /** Marked as faulty by what stands elsewhere, too. */
  accuse(isAccused) {
    const isFaulty = this.#isFaulty || isAccused;
    this.#isAccused = isAccused;
    this.#input.setAttribute("aria-invalid", isFaulty);
    this.element.classList.toggle("faulty", isFaulty);
  }

  update(state) {
    const { unit, sign } = this.#shown();
    this.#unit.textContent = sign;
    this.#labelUnit.textContent = sign ? `in ${sign}` : "";
    const si = this.#valueNow();
    const refused = this.#page.store.refusedAt(this.#kind, this.#path);
    if (this.#isTyping || (si === undefined && !refused)) return;
    this.#input.value = refused
      ? withoutUnit(refused.text, unit)
      : si === null
        ? ""
        : entry(this.#row, si, state.speedUnit);
    this.#tell(refused?.faults ?? state.doubts[this.#kind]);
    for (const [sign, button] of this.#steps)
      button.setAttribute("aria-disabled", this.#further(sign) === null);
  }

  #build(name, stepped) {
    const stepsOf = (sign) => stepButton(sign, name, () => this.#nudge(sign));
    if (stepped) this.#steps = [-1, 1].map((sign) => [sign, stepsOf(sign)]);
    const [less, more] = this.#steps.map(([, button]) => button);
    return make(
      "div",
      { class: "field", "data-at": `${this.#kind}.${this.#path}` },
      make("label", { for: this.#input.id }, name, " ", this.#labelUnit),
      helpOf(this.#row, name),
      make(
        "div",
        { class: stepped ? "entry stepped" : "entry" },
        less,
        make("span", { class: "box" }, this.#input, this.#unit),
        more,
      ),
      this.#note,
    );
  }

  get #section() {
    return this.#path.split(".")[0];
  }

  #shown() {
    return shownUnit(this.#row, this.#page.store.state.speedUnit);
  }

  #typed() {
    return withUnit(this.#input.value, this.#shown().unit);
  }

  #valueNow() {
    const rest = this.#path.split(".").slice(1);
    const values = this.#page.store.state.values[this.#kind][this.#section];
    if (this.#isLabelled) return values.find((one) => one.label === rest.join("."))?.value;
    return rest.reduce((at, key) => at?.[key], values);
  }

  #tell(faults) {
    const mine = faultsAt({ faults }, this.#path).filter((fault) => this.#isOwn(fault));
    this.#isFaulty = mine.some((fault) => !fault.is_doubt);
    this.#note.textContent = mine.map(sentenceOf).join(". ");
    this.element.classList.toggle("doubtful", !this.#isFaulty && mine.length > 0);
    this.accuse(this.#isAccused);
  }

  async #flag(text) {
    this.#isTyping = true;
    const faults = await this.#page.store.trial(this.#kind, this.#path, text);
    if (text === this.#typed()) this.#tell(faults);
  }

  async #take(text) {
    this.#isTyping = false;
    this.#tell(await this.#page.store.put(this.#kind, this.#path, text));
  }

  // The number half a tape's error further, as far as its row and its neighbours let it.
  #further(sign) {
    const row = this.#row;
    const { inSi } = this.#shown();
    const step = this.#step ?? (row.error || 10 ** -row.decimals) / 2;
    const by = (sign * step * row.in_si) / inSi;
    const record = this.#page.tables.records[this.#kind];
    const values = this.#page.store.state.values[this.#kind];
    const { least, most } = boundsOf(record, values, this.#path, row);
    const was = Number(this.#input.value.replace(",", "."));
    const digits = inSi === row.in_si ? row.decimals + 1 : row.decimals; // as `entry` shows it
    const next = steppedTo(was, by, [least / inSi, most / inSi], digits);
    return next === was || Number.isNaN(was) ? null : next;
  }

  #nudge(sign) {
    const next = this.#further(sign);
    if (next === null) return;
    this.#input.value = String(next);
    this.#take(this.#typed());
  }
}

/**
 * A number with its unit, its way of measuring, and steps down and up where `stepped`: of `step`
 * units, or half a tape's error.
 * isOwn(fault): whether it is told here. path: "wind.lull", "legs.0.length".
 * Returns { element, update(state), accuse(isAccused) }.
 */
export const numberField = (page, kind, path, { stepped, label, isOwn = () => true, step } = {}) =>
  new NumberField(page, kind, path, { stepped, label, isOwn, step });

/** The name of a record. */
export function nameField(page, kind) {
  const id = freshId(),
    noteId = freshId();
  const note = make("p", { class: "note", id: noteId });
  const tell = (faults) => {
    note.textContent = faults
      .filter((fault) => fault.key === "name")
      .map(sentenceOf)
      .join(". ");
  };
  const input = make("input", {
    id,
    type: "text",
    autocomplete: "off",
    "aria-describedby": noteId,
    onchange: async () => tell(await page.store.put(kind, "name", input.value)),
  });
  return {
    element: make(
      "div",
      { class: "field", "data-at": `${kind}.name` },
      make("label", { for: id }, "Name"),
      make("div", { class: "entry" }, make("span", { class: "box" }, input)),
      note,
    ),
    update(state) {
      const refused = page.store.refusedAt(kind, "name");
      if (document.activeElement !== input) input.value = refused?.text ?? state.values[kind].name;
      tell(refused?.faults ?? []);
    },
  };
}

/** One of some words as large buttons: [{ key, doc }]. */
export function wordField(page, kind, path, title, choices) {
  const name = freshId();
  const inputs = choices.map(({ key, doc }) => {
    const input = make("input", {
      type: "radio",
      name,
      value: key,
      onchange: () => page.store.put(kind, path, key),
    });
    return {
      input,
      element: make(
        "label",
        { class: "choice" },
        input,
        make("span", {}, heading(key.replaceAll("-", " ")), doc && make("small", {}, doc)),
      ),
    };
  });
  return {
    element: make(
      "fieldset",
      { class: "choices" },
      make("legend", {}, title),
      inputs.map((one) => one.element),
    ),
    update(state) {
      for (const { input } of inputs) input.checked = state.values[kind][path] === input.value;
    },
  };
}
