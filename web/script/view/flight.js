// flight.js - the view Flight: one steady flight as a picture, and what of it runs out first.
// SPDX-License-Identifier: MIT

import { fromWords, HEADINGS, toWords, WINDS } from "../answer/asked.js";
import { make } from "../base/dom.js";
import { foilView, asternView } from "../flight/small.js";
import { sizes } from "../flight/side.js";
import { drawing, onWidth, widthIn } from "../base/picture.js";
import { latest } from "../base/latest.js";
import { modesCard } from "../answer/modes_card.js";
import { heading, KNOT, minus, told as toldBy, words } from "../base/number.js";
import { TOLD } from "../engine/parcel.js";
import { labelsOf, pinField, pinOf } from "../form/pin_field.js";
import { resultRow } from "../base/rows.js";
import { slider } from "../form/slider.js";
import { headOf, shownOf } from "../answer/told.js";

const REST = 400; // [ms] after the last move, before the address is written and advice is asked
const BAR = 8; // scales of a margin that fill its bar

const asked = ["wind", "heading", "turns", "place", "heel"];
const rowKey = (key) => (key === "place" ? "place_x" : key);

/** The numbers of an object that is told, each with what it is; built by the first of them. */
function numberList(tables) {
  const element = make("dl", { class: "figures" });
  const values = new Map();
  function add(key, name) {
    const { doc } = resultRow(tables, "flight", key);
    const small = !name.includes(doc) && make("small", {}, doc);
    values.set(key, make("dd", {}));
    element.append(make("div", {}, make("dt", { title: doc }, heading(words(name)), small)));
    element.lastChild.append(values.get(key));
  }
  return {
    element,
    update(object) {
      for (const [key, { head, shown }] of object[TOLD]) {
        if (head === null || shown === null) continue;
        if (!values.has(key)) add(key, head);
        values.get(key).textContent = minus(shown);
      }
    },
  };
}

/** Every margin as a bar, in the order of its table; the first to run out is named. */
function marginBars({ results }) {
  const order = results.margins.rows;
  const bars = order.map((row) => {
    const part = (name) => make("span", { class: name });
    const [name, word, left, fill] = ["name", "word", "left", "fill"].map(part);
    const bar = make("span", { class: "bar", "aria-hidden": "true" }, fill);
    const element = make("li", { title: row.doc }, name, word, left, bar);
    return { key: row.key, element, name, word, left, fill };
  });
  return {
    element: make(
      "ul",
      { class: "margins" },
      bars.map((bar) => bar.element),
    ),
    update({ rows }) {
      for (const { key, element, name, word, left, fill } of bars) {
        const at = rows.findIndex((one) => one.margin === key);
        const row = rows[at];
        element.classList.toggle("first", at === 0);
        element.classList.toggle("over", row.scales < 0);
        name.textContent = heading(row.name);
        word.textContent = row.end ?? (at === 0 ? "first to run out" : "");
        left.textContent = minus(shownOf(row, "left"));
        const part = Math.min(Math.abs(row.scales) / BAR, 1);
        fill.style.setProperty("--part", `${(100 * part).toFixed(1)}%`);
      }
    },
  };
}

function helm(page, onMove) {
  const steps = { wind: 0.5, heading: 1, turns: 0.1, place: 0.02, heel: 1 }; // in the unit shown
  const chosen = {
    heading: "best VMG upwind",
    turns: "for speed",
    place: "for speed",
    heel: "for speed",
  };
  const sliders = Object.fromEntries(
    asked.map((key) => {
      const row = resultRow(page.tables, "flight", rowKey(key));
      const label = heading(page.tables.flight_names[row.key]);
      return [
        key,
        slider({
          label,
          row,
          step: steps[key],
          free: chosen[key],
          onMove: (si) => onMove(key, si),
        }),
      ];
    }),
  );
  const pins = pinField((pin) => onMove("pin", pin));
  return {
    element: make(
      "form",
      { class: "card helm", onsubmit: (event) => event.preventDefault() },
      pins.element,
      Object.values(sliders).map((one) => one.element),
    ),
    bounds(state) {
      const { boat, sailor } = state.values;
      const bounds = {
        wind: WINDS,
        heading: HEADINGS,
        turns: { low: boat.rudder.least_turns, high: boat.rudder.most_turns },
        place: { low: boat.place.aft_x, high: boat.place.forward_x },
        heel: { low: 0, high: sailor.person.most_heel },
      };
      for (const key of asked)
        sliders[key].update({ bounds: bounds[key], speedUnit: state.speedUnit });
    },
    update(ask, labels) {
      pins.update(labels, ask.pin);
      for (const key of asked)
        if (ask[key] !== null) sliders[key].update({ si: ask[key], isFree: false });
    },
    /** What was chosen for the sailor. */
    follow(ask, flight) {
      for (const key of asked) {
        if (ask[key] !== null) continue;
        sliders[key].update(flight ? { si: flight[rowKey(key)], isFree: true } : { isFree: true });
      }
    },
  };
}

function question(page, state) {
  const ask = { pin: pinOf(page, state) };
  for (const key of asked) ask[key] = fromWords(state.more[key]);
  ask.wind ??= state.values.day.wind?.mean || 12 * KNOT;
  return ask;
}

const spokenKeys = ["ride_height", "pitch", "heel", "wand", "flap", "turns"];

/** A flight's numbers in a sentence, for those who do not see the picture. */
function spoken({ outcome, answer, flight }) {
  if (outcome === "no_balance") return answer.sentence;
  const said = spokenKeys.map((key) => `${headOf(flight, key)} ${shownOf(flight, key)}`);
  return `${answer.sentence} ${heading(said.join("; "))}.`;
}

/** What is told of a flight below its picture: { elements, motions, show(told) }. */
function flightCards(tables, onMotions) {
  const bars = marginBars(tables);
  const numbers = numberList(tables);
  const forces = numberList(tables);
  const freedom = make("p", { class: "note" });
  const turns = make("p", {});
  const trust = make("ul", {});
  const motions = modesCard(onMotions);
  const marginTitle = make("h2", {});
  const forceTitle = make("h2", {});
  const trustTitle = make("h2", {});
  const full = `A full bar is ${BAR} times what a sailor would call a little.`;
  const elements = [
    make(
      "section",
      { class: "card" },
      marginTitle,
      bars.element,
      make("p", { class: "note" }, full),
    ),
    make(
      "section",
      { class: "card numbers" },
      make("h2", {}, "In numbers"),
      freedom,
      turns,
      numbers.element,
    ),
    motions.element,
    make("details", { class: "card forces" }, make("summary", {}, forceTitle), forces.element),
    make("section", { class: "card trust" }, trustTitle, trust),
  ];
  return {
    elements,
    motions,
    show(told) {
      bars.update(told.margins);
      numbers.update(told.flight);
      forces.update(told.forces);
      freedom.textContent = told.freedom;
      turns.textContent = told.answer.winding ?? "";
      marginTitle.textContent = headOf(told, "margins");
      forceTitle.textContent = headOf(told, "forces");
      trustTitle.textContent = headOf(told, "trust");
      trust.replaceChildren(...told.trust.map((line) => make("li", {}, line)));
    },
  };
}

/** The pictures of a flight: { element, width(), build(boat), show(answer, pin, words) }. */
function flightPictures(tables, onNewWidth) {
  const tell = (key, si) => toldBy(resultRow(tables, "flight", key), si);
  const side = make("figure", { class: "side picture", role: "img" });
  const element = make("div", { class: "drawn" }, side);
  let small = [];
  let drawn = "";
  onWidth(side, onNewWidth);
  return {
    element,
    width: () => widthIn(side),
    build(boat) {
      if (drawn === JSON.stringify(boat)) return;
      drawn = JSON.stringify(boat);
      const s = sizes(boat);
      small = [asternView(s, tell), foilView(boat, tell)];
      const smalls = small.map((one) => one.element);
      element.replaceChildren(side, make("div", { class: "smalls" }, smalls));
    },
    /** A flight that is not there leaves the last one, greyed. */
    show({ outcome, drawn, picture }, pin, words) {
      const hasBalance = outcome !== "no_balance";
      element.classList.toggle("old", !hasBalance);
      side.setAttribute("aria-label", words);
      if (!hasBalance) return;
      const { flight } = drawn;
      side.replaceChildren(drawing(picture));
      for (const one of small) one.update({ flight, drawn }, pin);
    },
  };
}

class FlightView {
  #page;
  #box;
  #outcome = make("p", { class: "outcome" });
  #advice = make("p", { class: "advice" });
  #pictures;
  #steer;
  #cards;
  #ask;
  #set;
  #last = null; // answer
  #hasMoved = false;
  #rest = 0;
  #isOpen = true;
  #fly = latest(() => this.#flyOnce());

  constructor(page, main) {
    this.#page = page;
    this.#steer = helm(page, (key, si) => this.#move(key, si));
    this.#pictures = flightPictures(page.tables, () => this.#ask && this.#begin());
    this.#cards = flightCards(page.tables, () => this.#tellModes());
    this.#box = make(
      "div",
      { class: "flight", "aria-busy": "true" },
      make("div", { class: "stage" }, this.#pictures.element, this.#outcome, this.#advice),
      this.#steer.element,
      this.#cards.elements,
    );
    main.append(this.#box);
  }

  update(state) {
    this.#ask = question(this.#page, state);
    this.#set = this.#page.texts(state.set);
    this.#advice.textContent = "";
    this.#pictures.build(state.values.boat);
    this.#steer.bounds(state);
    this.#steer.update(this.#ask, labelsOf(state));
    this.#begin();
  }

  close() {
    this.#isOpen = false;
    clearTimeout(this.#rest);
  }

  #move(key, si) {
    this.#ask = { ...this.#ask, [key]: si };
    this.#advice.textContent = "";
    this.#hasMoved = true;
    this.#begin();
  }

  #begin() {
    this.#fly().catch((error) =>
      this.#page.say.status(`The engine broke down: ${error.message}. Move a slider to try again.`),
    );
  }

  async #flyOnce() {
    const asked = { ...this.#ask, width: this.#pictures.width() };
    const answer = await this.#page.engine.ask("fly", 0, this.#set, asked);
    if (!this.#isOpen) return;
    if (answer.flight) this.#show(answer);
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#settle(), REST);
  }

  #show(told) {
    const hasBalance = told.outcome !== "no_balance";
    this.#last = told;
    this.#box.setAttribute("aria-busy", "false");
    this.#outcome.textContent = told.answer.sentence;
    this.#pictures.show(told, this.#ask.pin, spoken(told));
    for (const one of this.#cards.elements) one.hidden = !hasBalance;
    this.#steer.follow(this.#ask, hasBalance ? told.drawn.flight : null);
    if (hasBalance) this.#cards.show(told);
  }

  // Asked only while they are looked at, and once the sliders rest.
  async #tellModes() {
    const { motions } = this.#cards;
    if (!motions.element.open) return;
    const mine = this.#ask;
    const answer = await this.#page.engine.ask("modes", 0, this.#set, mine);
    if (this.#isOpen && mine === this.#ask) motions.show(answer);
  }

  async #settle() {
    const { store, say } = this.#page;
    this.#tellModes();
    if (this.#hasMoved) {
      this.#hasMoved = false;
      const words = asked.map((key) => [key, toWords(key, this.#ask[key])]);
      store.say({ pin: labelsOf(store.state)[this.#ask.pin], ...Object.fromEntries(words) });
      say.status(this.#last.answer.sentence);
    } else if (this.#last.outcome !== "flies" && !this.#advice.textContent) {
      const text = await this.#page.engine.ask("advice", 0, this.#set, this.#ask);
      if (this.#isOpen && !this.#hasMoved) this.#advice.textContent = text;
    }
  }
}

export const flight = {
  name: "flight",
  title: "Flight",
  open: (page, main) => new FlightView(page, main),
};
