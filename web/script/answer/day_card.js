// day_card.js - one logged day: a line of it, and behind a tap the form and all that is kept.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";
import { LOG } from "../base/kinds.js";
import { latest } from "../base/latest.js";
import { loggedForm } from "../form/logged_form.js";
import { openDayStore } from "../keep/day_store.js";
import { daysOf } from "../keep/days.js";
import { drawTold } from "./told.js";

class DayCard {
  #page;
  #id;
  #day; // a store for its form
  #form = null;
  #shown = null; // the tree that it shows
  #pins = []; // of the boat as it was
  #title = make("b", {});
  #line = make("small", {});
  #all = make("div", { class: "tree" });
  #inside = make("div", {});
  #show = latest(() => this.#showOnce());

  constructor(page, id) {
    this.#page = page;
    this.#id = id;
    this.#day = openDayStore(page, id);
    this.element = make(
      "details",
      { class: "card day", "data-day": id, ontoggle: () => this.update() },
      make("summary", {}, make("span", {}, this.#title, this.#line)),
      this.#inside,
    );
  }

  /** Title and line, as the engine tells them. */
  tell({ title, line }) {
    this.#title.textContent = title;
    this.#line.textContent = line;
    this.update();
  }

  open() {
    this.element.open = true;
  }

  /** What is folded is worked out when it is opened. */
  update() {
    if (!this.element.open) return;
    if (this.#shown === this.#tree) this.#updateForm();
    else this.#show();
  }

  get #tree() {
    return this.#page.store.state.kept[LOG].find((one) => one.id === this.#id)?.tree;
  }

  #updateForm() {
    this.#form?.update(this.#day.page.store.state, { pins: this.#pins, tree: this.#shown });
  }

  async #showOnce() {
    const { engine, store } = this.#page;
    const tree = this.#tree;
    if (!tree) return;
    const { told, values, pins } = await engine.ask("log show", daysOf(store.state), this.#id);
    if (!told || tree !== this.#tree) return;
    if (!this.#form) this.#build();
    this.#day.show(values);
    this.#shown = tree;
    this.#pins = pins;
    this.#all.replaceChildren(...drawTold(told).flat(9));
    this.#updateForm();
  }

  #build() {
    this.#form = loggedForm(this.#day.page);
    const summary = make("summary", {}, "All that is kept");
    const all = make("details", { class: "question" }, summary, this.#all);
    const remove = { type: "button", onclick: () => this.#remove() };
    this.#inside.append(this.#form.element, all, make("button", remove, "Remove this day"));
  }

  #remove() {
    this.#page.store.forget(LOG, this.#id);
    this.#page.say.status("The day is removed. Undo brings it back.");
  }
}

/** { element, tell({ title, line }), open(), update() }. */
export const dayCard = (page, id) => new DayCard(page, id);
