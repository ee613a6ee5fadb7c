// slider.js - one number as a slider with steps down and up; where it may, left to the engine.
// SPDX-License-Identifier: MIT

import { freshId, make, stepButton } from "../base/dom.js";
import { shownUnit, told } from "../base/number.js";

class Slider {
  #row;
  #step;
  #free;
  #onMove;
  #now = { si: 0, isFree: false, speedUnit: "kn", bounds: { low: 0, high: 1 } };
  #value = make("output");
  #input = make("input", {
    type: "range",
    id: freshId(),
    oninput: () => this.#move(Number(this.#input.value) * this.#unit.inSi),
  });
  #isOpen = make("input", {
    type: "checkbox",
    onchange: () => this.#onMove(this.#isOpen.checked ? null : this.#within(this.#now.si)),
  });

  constructor({ label, row, step, free, onMove }) {
    this.#row = row;
    this.#step = step;
    this.#free = free;
    this.#onMove = onMove;
    this.#value.htmlFor = this.#input.id;
    const stepped = (sign) => stepButton(sign, label, () => this.#nudge(sign));
    this.element = make(
      "div",
      { class: "slide" },
      make("p", {}, make("label", { for: this.#input.id }, label), " ", this.#value),
      free && make("label", { class: "open" }, this.#isOpen, free),
      make("div", { class: "entry stepped" }, stepped(-1), this.#input, stepped(1)),
    );
  }

  update(next) {
    const now = (this.#now = { ...this.#now, ...next });
    const { inSi } = this.#unit;
    const step = this.#stepNow;
    // The bounds stand on whole steps, so that every value that is shown can be had.
    this.#input.min = Math.ceil(now.bounds.low / inSi / step - 1e-6) * step;
    this.#input.max = now.bounds.high / inSi;
    this.#input.step = step;
    this.#input.value = now.si / inSi;
    const text = told(this.#row, now.si, now.speedUnit);
    this.#value.textContent = text;
    this.#input.setAttribute("aria-valuetext", now.isFree ? `${text}, ${this.#free}` : text);
    this.#isOpen.checked = now.isFree;
  }

  get #unit() {
    return shownUnit(this.#row, this.#now.speedUnit);
  }

  get #stepNow() {
    return this.#unit.unit === "m/s" ? this.#step / 2 : this.#step;
  }

  #within(si) {
    return Math.min(Math.max(si, this.#now.bounds.low), this.#now.bounds.high);
  }

  #move(si) {
    this.update({ si: this.#within(si), isFree: false });
    this.#onMove(this.#now.si);
  }

  // To the next whole step.
  #nudge(sign) {
    const by = this.#stepNow;
    const at = this.#now.si / this.#unit.inSi / by;
    const next = sign < 0 ? Math.ceil(at - 1 - 1e-6) : Math.floor(at + 1 + 1e-6);
    this.#move(next * by * this.#unit.inSi);
  }
}

/**
 * row: of the quantity; step in its shown unit; free: what is chosen while the number is left open
 * ("for speed"), or nothing when it never is. onMove(si or null) with every move. Returns
 * { element, update({ si, isFree, speedUnit, bounds: { low, high } }) }, in SI.
 */
export const slider = (one) => new Slider(one);
