// compare.js - the view Compare: the present boat, sailor and day, and the same with a change.
// SPDX-License-Identifier: MIT

import { answerLine } from "../answer/answer_line.js";
import { compareCards } from "../answer/compare_cards.js";
import { compareForm } from "../form/compare_form.js";
import { make } from "../base/dom.js";
import { openOther } from "../keep/other.js";
import { workBar } from "../answer/work_bar.js";

const PAUSE = 400; // [ms] after the last change, before the long work begins

class Compare {
  #page;
  #other;
  #ask;
  #line;
  #bar = workBar("Both through the day's gusts", () => this.#begin());
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
    this.#line = answerLine(this.#other.page, this.#ask.element, this.#answers);
    const asking = make("div", { class: "asking" }, this.#line.element, this.#ask.element);
    const answers = make("div", {}, this.#bar.element, this.#line.old, this.#answers);
    main.append(make("div", { class: "today compare" }, asking, answers));
  }

  async update(state) {
    const own = ++this.#turn;
    const isSound = await this.#other.update();
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
    this.#bar.stop();
    this.#mark(true);
    this.#waiting = setTimeout(() => this.#begin(), isFirst ? 0 : PAUSE);
  }

  close() {
    this.#isOpen = false;
    clearTimeout(this.#waiting);
    this.#bar.stop();
    this.#line.close();
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
    this.#mark(true);
    const sets = this.#sets(store.state).map(this.#page.texts);
    const labels = this.#labels(store.state);
    try {
      const got = await this.#bar.run((onProgress) => engine.comparison(sets, labels, onProgress));
      if (!this.#isOpen || mine !== this.#asked) return;
      if (got) {
        this.#answer = got;
        this.#answered = mine;
        this.#tell();
      }
    } catch (error) {
      say.status(`The engine broke down: ${error.message}. Change a value, or work it out again.`);
    }
    this.#mark(false);
  }

  #mark(isBusy, words = this.#answer?.compared.differences?.[0] ?? "") {
    const isCurrent = this.#answered === this.#asked;
    this.#line.show({ isCurrent, isStopped: !isBusy, words });
    this.#answers.setAttribute("aria-busy", isBusy && !isCurrent);
  }

  #tell() {
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
    const line = "Nothing differs: the answer is Today's.";
    this.#mark(false, line);
    this.#answers.replaceChildren(make("p", { class: "note" }, line));
  }
}

export const compare = {
  name: "compare",
  title: "Compare",
  open: (page, main) => new Compare(page, main),
};
