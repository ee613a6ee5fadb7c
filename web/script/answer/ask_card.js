// ask_card.js - a question of the engine as a card: options as fields, its answer as it is told.
// SPDX-License-Identifier: MIT
//
// A question that has no view of its own needs no line here: it is asked as on the command line.

import { make } from "../base/dom.js";
import { optionField } from "../form/option_field.js";
import { drawRefusal, drawTold } from "./told.js";
import { workBar } from "./work_bar.js";

// Boat, sailor and day are on the page already; files are not asked for.
const NOT_ASKED = ["boat", "sailor", "day", "set", "aim", "json", "svg", "csv", "force"];

/** The options of a question that the page asks for, in its order. */
const optionsOf = (question) =>
  question.takes.split(" ").filter((name) => !NOT_ASKED.includes(name));

class AskCard {
  #page;
  #name;
  #fields;
  #bar;
  #answer = make("div", { class: "question-answer", "aria-live": "polite" });
  #asked = "";
  #isOpen = true;

  constructor(page, question) {
    this.#page = page;
    this.#name = question.name;
    this.#fields = optionsOf(question).map((name) => optionField(page, name));
    this.#bar = workBar(question.summary);
    const work = make("button", { type: "submit", class: "ask-now" }, "Work it out");
    const form = make(
      "form",
      {
        class: "asked",
        onsubmit: (event) => {
          event.preventDefault();
          this.#begin();
        },
      },
      this.#fields.map((field) => field.element),
      work,
    );
    this.element = make(
      "details",
      { class: "card question", id: `ask-${question.name}` },
      make("summary", {}, make("h2", {}, question.summary)),
      form,
      this.#bar.element,
      this.#answer,
    );
  }

  update(state) {
    for (const field of this.#fields) field.update(state);
    const isOld = this.#asked !== "" && this.#asked !== this.#key(state);
    this.#answer.classList.toggle("old", isOld);
  }

  close() {
    this.#isOpen = false;
    this.#bar.stop();
  }

  #key({ set, speedUnit }) {
    return JSON.stringify([set, speedUnit]);
  }

  async #begin() {
    const { engine, store, say, texts } = this.#page;
    const options = Object.fromEntries(this.#fields.map(({ name, text }) => [name, text()]));
    const asked = this.#key(store.state),
      set = texts(store.state.set);
    try {
      const got = await this.#bar.run((onProgress) =>
        engine.question(0, set, onProgress, this.#name, options),
      );
      if (!got || !this.#isOpen) return;
      this.#asked = asked;
      this.#answer.replaceChildren(
        make("div", { class: "tree" }, got.refused ? drawRefusal(got.refused) : drawTold(got.told)),
      );
      this.update(store.state);
    } catch (error) {
      say.status(`The engine broke down: ${error.message}. Change a value, or work it out again.`);
    }
  }
}

/** { element, update(state), close() } of a question of the tables. */
export const askCard = (page, question) => new AskCard(page, question);
