// flight.js - the view Flight: one steady flight as a picture, and what of it runs out first.
// SPDX-License-Identifier: MIT

import { fromWords, toWords } from "../asked.js";
import { card, make } from "../dom.js";
import { foilView, asternView } from "../flight_small.js";
import { sideView, sizes } from "../flight_side.js";
import { latest } from "../latest.js";
import { modesCard } from "../modes_card.js";
import { heading, KNOT, told, words } from "../number.js";
import { pinField } from "../pin_field.js";
import { slider } from "../slider.js";

const REST = 400; // [ms] after the last move, before the address is written and advice is asked
const DEG = Math.PI / 180;
const WINDS = { low: 4 * KNOT, high: 34 * KNOT }; // of a range, LW_RANGE_FIRST_KN and the next 30
const HEADINGS = { low: 30 * DEG, high: 180 * DEG };
const BAR = 8; // scales of a margin that fill its bar

const asked = ["wind", "heading", "turns", "place", "heel"];
const rowKey = (key) => (key === "place" ? "place_x" : key);

// The numbers told below the picture, by their rows.
const toldKeys = [
  "speed",
  "vmg",
  "ride_height",
  "pitch",
  "heel",
  "turns",
  "wand",
  "flap",
  "leeway",
  "helm",
  "place_x",
  "hiking",
  "sail_power",
  "apparent_wind",
  "apparent_angle",
];
const forceKeys = [
  "main_lift",
  "rudder_lift",
  "buoyancy",
  "drive",
  "foil_drag",
  "strut_drag",
  "hull_drag",
  "windage",
  "sail_side",
  "main_side",
  "rudder_side",
];

function numberList({ results, flight_names: names }, keys) {
  const { rows } = results.flight;
  const cells = keys.map((key) => ({
    row: rows.find((row) => row.key === key),
    value: make("dd", {}),
  }));
  return {
    element: make(
      "dl",
      { class: "figures" },
      cells.map(({ row, value }) =>
        make(
          "div",
          {},
          make(
            "dt",
            { title: row.doc },
            heading(words(names[row.key])),
            !names[row.key].includes(row.doc) && make("small", {}, row.doc),
          ),
          value,
        ),
      ),
    ),
    update(flight, speedUnit) {
      for (const { row, value } of cells)
        value.textContent = told(row, flight[row.key], speedUnit).replace("-", "−");
    },
  };
}

/** Every margin as a bar, in the order of its table; the first to run out is named. */
function marginBars(tables) {
  const rows = tables.results.margins.rows;
  const bars = rows.map((row, i) => {
    const left = make("span", { class: "left" }),
      word = make("span", { class: "word" }),
      fill = make("span", { class: "fill" });
    const element = make(
      "li",
      { title: row.doc },
      make("span", { class: "name" }, heading(tables.margins[i].name)),
      word,
      left,
      make("span", { class: "bar", "aria-hidden": "true" }, fill),
    );
    return { row, element, left, word, fill, end: tables.margins[i].end };
  });
  return {
    element: make(
      "ul",
      { class: "margins" },
      bars.map((bar) => bar.element),
    ),
    update(margins) {
      for (const { row, element, left, word, fill, end } of bars) {
        const at = margins.findIndex((one) => one.key === row.key),
          { left: si, scales } = margins[at];
        element.classList.toggle("first", at === 0);
        element.classList.toggle("over", si < 0);
        word.textContent = si < 0 ? end : at === 0 ? "first to run out" : "";
        left.textContent = told(row, si, "kn").replace("-", "−");
        fill.style.setProperty(
          "--part",
          `${(100 * Math.min(Math.abs(scales) / BAR, 1)).toFixed(1)}%`,
        );
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
      const row = page.tables.results.flight.rows.find((one) => one.key === rowKey(key));
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

const labelsOf = (state) => state.values.boat.pins.map((pin) => pin.label);

function question(state) {
  const labels = labelsOf(state),
    pin = labels.indexOf(state.more.pin);
  const ask = { pin: pin < 0 ? Math.floor(labels.length / 2) : pin };
  for (const key of asked) ask[key] = fromWords(state.more[key]);
  ask.wind ??= state.values.day.wind?.mean || 12 * KNOT;
  return ask;
}

/** A flight's numbers in a sentence, for those who do not see the picture. */
function spoken({ outcome, sentence, flight: f }, rows, unit) {
  if (outcome === "no_balance") return sentence;
  const tell = (key) =>
    told(
      rows.find((row) => row.key === key),
      f[key],
      unit,
    );
  return (
    `${sentence} Ride height ${tell("ride_height")}, bow up ${tell("pitch")}, ` +
    `windward heel ${tell("heel")}, wand ${tell("wand")}, flap ${tell("flap")}, ` +
    `rudder lift on ${tell("turns")}.`
  );
}

/** What is told of a flight below its picture: { elements, motions, show(answer, unit) }. */
function flightCards(tables, onMotions) {
  const bars = marginBars(tables);
  const numbers = numberList(tables, toldKeys);
  const forces = numberList(tables, forceKeys);
  const freedom = make("p", { class: "note" });
  const turns = make("p", {});
  const trust = make("ul", {});
  const motions = modesCard(onMotions);
  const titled = (kind, title, ...inside) =>
    make("section", { class: `card ${kind}` }, make("h2", {}, title), inside);
  const full = `A full bar is ${BAR} times what a sailor would call a little.`;
  const elements = [
    card("What is left", bars.element, make("p", { class: "note" }, full)),
    titled("numbers", "In numbers", freedom, turns, numbers.element),
    motions.element,
    make(
      "details",
      { class: "card forces" },
      make("summary", {}, make("h2", {}, "Forces")),
      forces.element,
    ),
    titled("trust", "How far to trust it", trust),
  ];
  return {
    elements,
    motions,
    show(answer, unit) {
      bars.update(answer.margins);
      numbers.update(answer.flight, unit);
      forces.update(answer.flight, unit);
      freedom.textContent = answer.freedom;
      turns.textContent = answer.turns ?? "";
      trust.replaceChildren(...answer.trust.map((line) => make("li", {}, line)));
    },
  };
}

/** The pictures of a flight: { element, build(boat), show(answer, pin, words) }. */
function flightPictures() {
  const element = make("div", { class: "drawn" });
  let side;
  let small = [];
  let drawn = "";
  return {
    element,
    build(boat) {
      if (drawn === JSON.stringify(boat)) return;
      drawn = JSON.stringify(boat);
      const s = sizes(boat);
      side = sideView(s);
      small = [asternView(s), foilView(boat)];
      const smalls = small.map((one) => one.element);
      element.replaceChildren(side.element, make("div", { class: "smalls" }, smalls));
    },
    /** A flight that is not there leaves the last one, greyed. */
    show(answer, pin, words) {
      const hasBalance = answer.outcome !== "no_balance";
      element.classList.toggle("old", !hasBalance);
      side.element.setAttribute("aria-label", words);
      if (!hasBalance) return;
      side.update(answer);
      for (const one of small) one.update(answer, pin);
    },
  };
}

class FlightView {
  #page;
  #box;
  #outcome = make("p", { class: "outcome" });
  #advice = make("p", { class: "advice" });
  #pictures = flightPictures();
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
    this.#ask = question(state);
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
    const answer = await this.#page.engine.ask("fly", 0, this.#set, this.#ask);
    if (!this.#isOpen) return;
    if (answer.flight) this.#show(answer);
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#settle(), REST);
  }

  #show(answer) {
    const { speedUnit } = this.#page.store.state;
    const hasBalance = answer.outcome !== "no_balance";
    const words = spoken(answer, this.#page.tables.results.flight.rows, speedUnit);
    this.#last = answer;
    this.#box.setAttribute("aria-busy", "false");
    this.#outcome.textContent = answer.sentence;
    this.#pictures.show(answer, this.#ask.pin, words);
    for (const one of this.#cards.elements) one.hidden = !hasBalance;
    this.#steer.follow(this.#ask, hasBalance ? answer.flight : null);
    if (hasBalance) this.#cards.show(answer, speedUnit);
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
      say.status(this.#last.sentence);
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
