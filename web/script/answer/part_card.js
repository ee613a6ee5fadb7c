// part_card.js - a part of the boat by itself, as a question of the engine tells and draws it.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";
import { latest } from "../base/latest.js";
import { picture } from "../base/picture.js";
import { drawRefusal, drawTold } from "./told.js";

// Moved sideways where the screen is too narrow to read it.
function wideDrawing(svg) {
  const drawing = picture("", svg);
  const name = drawing.querySelector("svg").getAttribute("aria-label");
  return make(
    "div",
    { class: "scroll", tabindex: "0", role: "group", "aria-label": name },
    drawing,
  );
}

/** Folded until it is wanted; asked anew when the boat changes while it is open. */
export class PartCard {
  #page;
  #asked;
  #work = null;
  #shown = "";
  #box = make("div", { "aria-busy": "false" });
  #begin = latest(() => this.#ask());

  /** @param asked { name, options } of the question */
  constructor(page, title, asked) {
    this.#page = page;
    this.#asked = asked;
    this.element = make(
      "details",
      { class: "card alone", ontoggle: () => this.update() },
      make("summary", {}, make("h2", {}, title)),
      this.#box,
    );
  }

  update() {
    if (!this.element.open || this.#key() === this.#shown) return;
    this.#box.setAttribute("aria-busy", "true");
    this.#work?.stop();
    this.#begin();
  }

  close() {
    this.#work?.stop();
    this.#work = null;
  }

  #key() {
    const { set, speedUnit } = this.#page.store.state;
    return JSON.stringify([set, speedUnit]);
  }

  async #ask() {
    const { engine, store, say, texts } = this.#page;
    const { name, options } = this.#asked;
    const key = this.#key();
    this.#work = engine.question(0, texts(store.state.set), null, name, options);
    try {
      const answer = await this.#work.answer;
      if (answer && key === this.#key()) this.#show(key, answer);
    } catch (error) {
      say.status(`The engine broke down: ${error.message}.`);
      this.#box.setAttribute("aria-busy", "false");
    }
  }

  #show(key, { told, svg, refused }) {
    this.#shown = key;
    const inside = refused ? drawRefusal(refused) : drawTold(told);
    this.#box.replaceChildren(make("div", {}, inside, svg && wideDrawing(svg)));
    this.#box.setAttribute("aria-busy", "false");
  }
}
