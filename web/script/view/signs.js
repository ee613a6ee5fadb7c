// signs.js - the view Signs: tap what the boat does; what it is likely to be, what to move first.
// SPDX-License-Identifier: MIT

import { answerLine } from "../answer/answer_line.js";
import { fromWords, toWords, WINDS } from "../answer/asked.js";
import { firstOf, signsCards } from "../answer/signs_cards.js";
import { drawRefusal } from "../answer/told.js";
import { make } from "../base/dom.js";
import { latest } from "../base/latest.js";
import { heading, KNOT } from "../base/number.js";
import { onWidth, picture, widthIn } from "../base/picture.js";
import { dayPinOf } from "../form/pin_field.js";
import { readings, signsForm } from "../form/signs_form.js";

const REST = 250; // [ms] after the last move of the wind, before it is asked
const CARD = 34; // [px] of width that a card takes for its edges
const NOTHING = "Tap what the boat does.";

/** What the address says: { signs, pin, course, wind (null: the day's) }. */
function askedIn(page, state) {
  const { more } = state;
  const signs = (more.signs ?? "").split(" ").filter(Boolean);
  return {
    signs,
    // with signs the address says it all
    pin: more.pin ?? (signs.length ? null : dayPinOf(page, state)),
    course: more.course ?? page.tables.courses[0],
    wind: more.wind ?? null,
  };
}

class SignsView {
  #page;
  #form;
  #line;
  #answers = make("div", { class: "answers" });
  #ask = null;
  #asked = "";
  #answered = "";
  #dayMean = null; // [m/s] as worked out
  #words = NOTHING;
  #pending = {}; // of the address
  #rest = 0;
  #isOpen = true;
  #begin = latest(() => this.#askOnce());

  constructor(page, main) {
    this.#page = page;
    this.#form = signsForm(page, {
      bounds: WINDS,
      onTap: (keys) => this.#tap(keys),
      onSet: (words) => this.#set(words),
    });
    this.#line = answerLine(page, this.#form.element, this.#answers);
    const answers = make("div", {}, this.#line.old, this.#answers);
    const both = make("div", { class: "today" }, this.#form.element, answers);
    main.append(make("div", { class: "signs" }, this.#line.element, both));
    onWidth(this.#answers, () => this.#ask && this.update(page.store.state));
  }

  update(state) {
    this.#ask = askedIn(this.#page, state);
    this.#showForm(state);
    const options = this.#options(state);
    this.#asked = JSON.stringify([state.set, state.speedUnit, options]);
    if (!this.#ask.signs.length) {
      this.#show(NOTHING, [make("p", { class: "note" }, NOTHING)]);
      return;
    }
    this.#mark();
    if (this.#answered === this.#asked) return;
    this.#begin().catch((error) =>
      this.#page.say.status(`The engine broke down: ${error.message}. Tap again.`),
    );
  }

  close() {
    this.#isOpen = false;
    clearTimeout(this.#rest);
    this.#form.close();
    this.#line.close();
  }

  #showForm(state) {
    const { wind } = this.#ask;
    const mean = this.#dayMean ?? (state.values.day.wind?.mean || 12 * KNOT);
    const ask = { ...this.#ask, wind: fromWords(wind) ?? mean, isDaysWind: wind === null };
    this.#form.update(ask, state);
  }

  #options({ more }) {
    const { signs, pin, course, wind } = this.#ask;
    const numbers = Object.fromEntries(readings.map((name) => [name, more[name] ?? ""]));
    const drawn = { svg: "-", width: String(widthIn(this.#answers) - CARD) };
    return { sign: signs, pin: pin ?? "", course, wind: wind ?? "", ...numbers, ...drawn };
  }

  #tap(keys) {
    this.#say({ signs: keys.length ? keys.join(" ") : null, pin: this.#ask.pin });
  }

  #set(words) {
    if (words.wind === undefined) return this.#say(words);
    this.#pending = { ...this.#pending, wind: toWords("wind", words.wind) };
    this.#line.show({ isCurrent: false, isStopped: false, words: "" });
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#say({}), REST);
  }

  #say(words) {
    const { store } = this.#page;
    const before = store.state;
    clearTimeout(this.#rest);
    const all = { ...this.#pending, ...words };
    this.#pending = {};
    store.say(all);
    if (store.state === before) this.update(before); // moved there and back
  }

  #mark() {
    const isCurrent = this.#answered === this.#asked;
    this.#line.show({ isCurrent, isStopped: false, words: this.#words });
    this.#answers.setAttribute("aria-busy", !isCurrent);
  }

  async #askOnce() {
    const { engine, store, texts } = this.#page;
    const mine = this.#asked;
    const { state } = store;
    const options = this.#options(state);
    const got = await engine.question(0, texts(state.set), null, "why", options).answer;
    if (!this.#isOpen || mine !== this.#asked) return;
    if (got.refused) this.#refuse(got.refused);
    else this.#tell(got, state);
  }

  #refuse(refused) {
    const lines = drawRefusal(refused);
    const [first] = /^.*?\?(?= )|^.*/.exec(lines[0].textContent);
    this.#show(heading(first), [make("div", { class: "card tree" }, lines)]);
  }

  #tell({ told: answer, svg }, state) {
    if (this.#ask.wind === null) {
      this.#dayMean = answer.mean * (state.speedUnit === "m/s" ? 1 : KNOT);
      this.#showForm(state);
    }
    // of one that will not take off there is no flight to be seen
    const isFlight = answer.before && answer.takes_off === undefined;
    this.#show(heading(firstOf(answer)), signsCards(answer, isFlight && picture("", svg)));
  }

  #show(words, cards) {
    this.#answered = this.#asked;
    this.#words = words;
    this.#answers.replaceChildren(...cards);
    this.#mark();
  }
}

export const signs = {
  name: "signs",
  title: "Signs",
  open: (page, main) => new SignsView(page, main),
};
