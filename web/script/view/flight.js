// flight.js - the view Flight: one steady flight as a picture, and what of it runs out first.
// SPDX-License-Identifier: MIT

import { fromWords, toWords } from "../asked.js";
import { make } from "../dom.js";
import { foilView, asternView } from "../flight_small.js";
import { sideView, sizes } from "../flight_side.js";
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

const trustOf = (answer) => [
  ...answer.trust,
  `The forces balance to ${Math.max(answer.flight.residual, 1e-15).toExponential(0).replace("-", "−")} of the weight. This is steady ` +
    "flight in even wind; differences between pins are surer than the numbers themselves.",
];

export const flight = {
  name: "flight",
  title: "Flight",
  open(page, main) {
    const outcome = make("p", { class: "outcome" }),
      advice = make("p", { class: "advice" });
    const pictures = make("div", { class: "drawn" }),
      freedom = make("p", { class: "note" }),
      turns = make("p", {});
    const bars = marginBars(page.tables),
      rows = page.tables.results.flight.rows;
    const numbers = numberList(page.tables, toldKeys),
      forces = numberList(page.tables, forceKeys);
    const trust = make("ul", {}),
      steer = helm(page, move);
    const marginCard = make(
      "section",
      { class: "card" },
      make("h2", {}, "What is left"),
      bars.element,
      make("p", { class: "note" }, `A full bar is ${BAR} times what a sailor would call a little.`),
    );
    const motions = modesCard(() => tellModes());
    const cards = [
      marginCard,
      make(
        "section",
        { class: "card numbers" },
        make("h2", {}, "In numbers"),
        freedom,
        turns,
        numbers.element,
      ),
      motions.element,
      make(
        "details",
        { class: "card forces" },
        make("summary", {}, make("h2", {}, "Forces")),
        forces.element,
      ),
      make("section", { class: "card trust" }, make("h2", {}, "How far to trust it"), trust),
    ];
    main.append(
      make(
        "div",
        { class: "flight", "aria-busy": "true" },
        make("div", { class: "stage" }, pictures, outcome, advice),
        steer.element,
        cards,
      ),
    );
    let ask,
      drawn = "",
      side,
      small = [],
      set,
      busy = false,
      next = false,
      hasMoved = false,
      rest = 0,
      isOpen = true,
      last = null;

    function build(boat) {
      const s = sizes(boat);
      side = sideView(s);
      small = [asternView(s), foilView(boat)];
      pictures.replaceChildren(
        side.element,
        make(
          "div",
          { class: "smalls" },
          small.map((one) => one.element),
        ),
      );
    }

    function said(answer, unit) {
      const f = answer.flight,
        tell = (key) =>
          told(
            rows.find((row) => row.key === key),
            f[key],
            unit,
          );
      if (answer.outcome === "no_balance") return answer.sentence;
      return (
        `${answer.sentence} Ride height ${tell("ride_height")}, bow up ${tell("pitch")}, windward heel ${tell("heel")}, ` +
        `wand ${tell("wand")}, flap ${tell("flap")}, rudder lift on ${tell("turns")}.`
      );
    }

    function show(answer) {
      const { speedUnit } = page.store.state,
        hasBalance = answer.outcome !== "no_balance";
      last = answer;
      main.lastChild.setAttribute("aria-busy", "false");
      outcome.textContent = answer.sentence;
      pictures.classList.toggle("old", !hasBalance);
      for (const card of cards) card.hidden = !hasBalance;
      side.element.setAttribute("aria-label", said(answer, speedUnit));
      steer.follow(ask, hasBalance ? answer.flight : null);
      if (!hasBalance) return;
      side.update(answer);
      for (const one of small) one.update(answer, ask.pin);
      bars.update(answer.margins);
      numbers.update(answer.flight, speedUnit);
      forces.update(answer.flight, speedUnit);
      freedom.textContent = answer.freedom;
      turns.textContent = answer.turns ?? "";
      trust.replaceChildren(...trustOf(answer).map((line) => make("li", {}, line)));
    }

    // One question at a time; the last move counts.
    async function fly() {
      if (busy) {
        next = true;
        return;
      }
      busy = true;
      try {
        do {
          next = false;
          const answer = await page.engine.ask("fly", 0, set, ask);
          if (isOpen && answer.flight) show(answer);
        } while (next && isOpen);
        settleSoon();
      } catch (error) {
        page.say.status(`The engine broke down: ${error.message}. Move a slider to try again.`);
      }
      busy = false;
    }

    function settleSoon() {
      clearTimeout(rest);
      rest = setTimeout(settle, REST);
    }

    // Asked only while they are looked at, and once the sliders rest.
    async function tellModes() {
      if (!motions.element.open) return;
      const mine = ask,
        answer = await page.engine.ask("modes", 0, set, ask);
      if (isOpen && mine === ask) motions.show(answer);
    }

    async function settle() {
      tellModes();
      if (hasMoved) {
        hasMoved = false;
        page.store.say({
          pin: labelsOf(page.store.state)[ask.pin],
          ...Object.fromEntries(asked.map((key) => [key, toWords(key, ask[key])])),
        });
        page.say.status(last.sentence);
      } else if (last.outcome !== "flies" && !advice.textContent) {
        const text = await page.engine.ask("advice", 0, set, ask);
        if (isOpen && !hasMoved) advice.textContent = text;
      }
    }

    function move(key, si) {
      ask = { ...ask, [key]: si };
      advice.textContent = "";
      hasMoved = true;
      fly();
    }

    return {
      update(state) {
        ask = question(state);
        set = page.texts(state.set);
        advice.textContent = "";
        if (drawn !== JSON.stringify(state.values.boat)) build(state.values.boat);
        drawn = JSON.stringify(state.values.boat);
        steer.bounds(state);
        steer.update(ask, labelsOf(state));
        fly();
      },
      close() {
        isOpen = false;
        clearTimeout(rest);
      },
    };
  },
};
