// today.js - the view Today: lulls, puffs, sea, course and who sails; which set-up, and why.
// SPDX-License-Identifier: MIT

import { answerLine } from "../answer/answer_line.js";
import { askCard } from "../answer/ask_card.js";
import { choiceCards } from "../answer/choice_cards.js";
import { dayForm } from "../form/day_form.js";
import { make } from "../base/dom.js";
import { rememberDayPin } from "../keep/memory.js";
import { KNOT } from "../base/number.js";
import { workBar } from "../answer/work_bar.js";

// Those with a view or a card of their own; every other question is a card here.
const ELSEWHERE = "pick fly modes ride why foil hull range sensitivity card".split(" ");

const PAUSE = 250; // [ms] after the last change, before the long work begins

class Today {
  #page;
  #asked = "";
  #answered = "";
  #answer = null;
  #waiting = 0;
  #isOpen = true;
  #ask;
  #line;
  #more;
  #bar = workBar("Every pin through the day's gusts", () => this.#begin());
  #answers = make("div", { class: "answers choice-made" });

  constructor(page, main) {
    this.#page = page;
    this.#ask = dayForm(page, () => gustsOf(this.#answer, page.store.state));
    this.#more = page.tables.questions
      .filter(({ name }) => !ELSEWHERE.includes(name))
      .map((question) => askCard(page, question));
    this.#line = answerLine(page, this.#ask.element, this.#answers);
    const more = this.#more.map((one) => one.element);
    const asking = make("div", { class: "asking" }, this.#line.element, this.#ask.element);
    const answers = make("div", {}, this.#bar.element, this.#line.old, this.#answers, more);
    main.append(make("div", { class: "today" }, asking, answers));
  }

  update(state) {
    this.#ask.update(state);
    for (const one of this.#more) one.update(state);
    const now = JSON.stringify([state.set, state.speedUnit]);
    if (now === this.#asked) {
      if (this.#answer && this.#answered === this.#asked) this.#tell(state);
      return;
    }
    const isFirst = this.#asked === "";
    this.#asked = now;
    this.#bar.stop();
    this.#mark(true);
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => this.#begin(), isFirst ? 0 : PAUSE);
  }

  close() {
    this.#isOpen = false;
    clearTimeout(this.#waiting);
    this.#bar.stop();
    this.#ask.close();
    this.#line.close();
    for (const one of this.#more) one.close();
  }

  #mark(isBusy) {
    const isCurrent = this.#answered === this.#asked;
    const words = this.#answer?.line ?? "";
    this.#line.show({ isCurrent, isStopped: !isBusy, words });
    this.#answers.setAttribute("aria-busy", isBusy);
  }

  #tell(state) {
    this.#answers.replaceChildren(...choiceCards(this.#page, this.#answer, state));
    this.#ask.update(state);
  }

  async #begin() {
    const { engine, store, say } = this.#page;
    const mine = this.#asked;
    this.#mark(true);
    try {
      const texts = this.#page.texts(store.state.set);
      const got = await this.#bar.run((onProgress) =>
        engine.question(0, texts, onProgress, "pick"),
      );
      if (!this.#isOpen || mine !== this.#asked) return;
      if (got?.told) {
        this.#answer = got.told;
        this.#answered = mine;
        this.#page.dayPin = { of: JSON.stringify(store.state.set), pin: got.told.best?.pin };
        rememberDayPin(this.#page.dayPin);
        this.#tell(store.state);
      }
    } catch (error) {
      say.status(`The engine broke down: ${error.message}. Change a value, or work it out again.`);
    }
    this.#mark(false);
  }
}

// Lull, mean and puff in SI, as they were worked out, or as given while nothing is.
function gustsOf(answer, { speedUnit, values }) {
  if (!answer) return values.day.wind;
  const inSi = speedUnit === "m/s" ? 1 : KNOT;
  return Object.fromEntries(["lull", "mean", "puff"].map((key) => [key, answer.wind[key] * inSi]));
}

export const today = { name: "today", title: "Today", open: (page, main) => new Today(page, main) };
