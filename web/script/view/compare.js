// compare.js - the view Compare: the present boat, sailor and day, and the same with a change.
// SPDX-License-Identifier: MIT

import { compareCards } from "../compare_cards.js";
import { compareForm } from "../compare_form.js";
import { make } from "../dom.js";
import { openOther } from "../other.js";
import { workBar } from "../work_bar.js";

const PAUSE = 400; // [ms] after the last change, before the long work begins

class Compare {
  #page;
  #other;
  #ask;
  #bar = workBar("Working out both", () => this.#begin());
  #answers = make("div", { class: "answers" });
  #asked = "";
  #answered = "";
  #answer = null;
  #waiting = 0;
  #turn = 0;
  #isOpen = true;

  constructor(page, main) {
    this.#page = page;
    this.#other = openOther(page);
    this.#ask = compareForm(page, this.#other);
    const answers = make("div", {}, this.#bar.element, this.#answers);
    main.append(make("div", { class: "today compare" }, this.#ask.element, answers));
  }

  async update(state) {
    const own = ++this.#turn;
    const isSound = await this.#other.update(state);
    if (!this.#isOpen || own !== this.#turn) return;
    this.#ask.update(state);
    if (!isSound) return;
    const isFirst = this.#asked === "";
    const now = JSON.stringify([this.#sets(state), this.#labels(state), state.speedUnit]);
    if (now === this.#asked) return;
    this.#asked = now;
    clearTimeout(this.#waiting);
    if (this.#isAlike(state)) {
      this.#showNothing();
      return;
    }
    this.#tell();
    this.#waiting = setTimeout(() => this.#begin(), isFirst ? 0 : PAUSE);
  }

  close() {
    this.#isOpen = false;
    clearTimeout(this.#waiting);
    this.#bar.stop();
  }

  #sets({ set }) {
    return [set, this.#other.now.set];
  }

  // Of the pins, "" for the first in its ranking.
  #labels({ more }) {
    return [more["pin-now"] ?? "", more["pin-then"] ?? ""];
  }

  // The same question twice: nothing to work out.
  #isAlike(state) {
    const [one, two] = this.#sets(state).map((set) => JSON.stringify(this.#page.texts(set)));
    const [now, then] = this.#labels(state);
    return one === two && now === then;
  }

  async #begin() {
    const { engine, store, say } = this.#page;
    const mine = this.#asked;
    const sets = this.#sets(store.state).map(this.#page.texts);
    const labels = this.#labels(store.state);
    try {
      const got = await this.#bar.run((onProgress) => engine.comparison(sets, labels, onProgress));
      if (!got || !this.#isOpen) return;
      this.#answer = got;
      this.#answered = mine;
      this.#tell();
      say.status(got.compared.differences?.[0] ?? "");
    } catch (error) {
      say.status(`The engine broke down: ${error.message}. Change a value, or work it out again.`);
    }
  }

  #tell() {
    const isOld = this.#answered !== this.#asked;
    this.#answers.classList.toggle("old", isOld);
    this.#answers.setAttribute("aria-busy", isOld);
    if (!this.#answer) return;
    const none = "One of the two has no pins to choose among.";
    const cards = this.#answer.compared.differences
      ? compareCards(this.#page, this.#answer)
      : [make("p", {}, none)];
    this.#answers.replaceChildren(...cards);
  }

  #showNothing() {
    this.#bar.stop();
    this.#answer = null;
    this.#answered = this.#asked;
    this.#tell();
    const line = "Nothing differs: the answer is Today's.";
    this.#answers.replaceChildren(make("p", { class: "note" }, line));
  }
}

export const compare = {
  name: "compare",
  title: "Compare",
  open: (page, main) => new Compare(page, main),
};
