// boat.js - the view Boat: every measurement with how to take it, what is doubtful, what matters.
// SPDX-License-Identifier: MIT

import { card, make, table } from "../dom.js";
import { keptField, nameField, sentenceOf } from "../field.js";
import { fixed, signed, KNOT, words } from "../number.js";
import { PartCard } from "../part_card.js";
import { picture } from "../picture.js";
import { sectionForm } from "../section.js";

function doubtList(page, state) {
  const doubts = ["boat", "sailor"].flatMap((kind) => state.doubts[kind]);
  if (!doubts.length) return make("p", {}, "Every value is within what is usual.");
  return make(
    "ul",
    {},
    doubts.map((doubt) =>
      make("li", {}, make("b", {}, words(doubt.key.replace(".", ": "))), ", ", sentenceOf(doubt)),
    ),
  );
}

function sensitivityTable(answer, unit) {
  if (!answer.flies)
    return [
      make("p", {}, "What matters most cannot be told: nothing flies in the winds of this day."),
    ];
  const speed = unit === "m/s" ? 1 : KNOT;
  const rows = answer.rows
    .slice(0, answer.anew)
    .map((row) => [
      words(row.key.replace(".", ": ")),
      `± ${row.error}${row.unit ? ` ${row.unit}` : ""}`,
      `${signed(row.hold / speed, 1)} ${unit}`,
      `${signed(row.seconds, 0)} s`,
      row.first_instead ? `pin ${row.first_instead}` : "–",
    ]);
  const held = `${fixed(answer.held_up_to / speed, 1)} ${unit}`;
  const now =
    `Pin ${answer.pin} is held to ${held} and takes ${fixed(answer.seconds, 0)} s round the ` +
    "course of the day. With a measurement one error larger, these change by:";
  const heads = ["measurement", "error", "held to", "time", "would put first"];
  return [make("p", {}, now), table("Measurements, what matters most first", heads, rows)];
}

// Which measurement is worth taking better: long work, when asked for.
class SensitivityCard {
  #page;
  #work = null;
  #found = make("div");
  #bar = make("progress", {
    max: "1",
    value: "0",
    hidden: true,
    "aria-label": "Moving each measurement",
  });
  #button = make(
    "button",
    { type: "button", onclick: () => (this.#work ? this.close() : this.#begin()) },
    "Find out",
  );

  constructor(page) {
    this.#page = page;
    this.element = card(
      "Which measurement matters most",
      make(
        "p",
        {},
        "Moves each measurement by what a tape may be wrong, and looks at what becomes of the " +
          "day's choice.",
      ),
      make("div", { class: "working" }, this.#button, this.#bar),
      this.#found,
    );
  }

  update() {
    this.#found.replaceChildren();
    if (this.#work) this.close();
  }

  close() {
    this.#work?.stop();
    this.#rest();
    this.#page.say.status("Stopped.");
  }

  #rest() {
    this.#work = null;
    this.#bar.hidden = true;
    this.#button.textContent = "Find out";
  }

  async #begin() {
    const { state } = this.#page.store;
    const { engine } = this.#page;
    const onProgress = (done, of) => {
      this.#bar.value = done / of;
    };
    const own = (this.#work = engine.sensitivities(0, this.#page.texts(state.set), onProgress));
    this.#bar.hidden = false;
    this.#bar.value = 0;
    this.#button.textContent = "Stop";
    try {
      const answer = await own.answer;
      if (own !== this.#work) return;
      if (answer) this.#found.replaceChildren(...sensitivityTable(answer, state.speedUnit));
    } catch (error) {
      this.#page.say.status(`The engine broke down: ${error.message}.`);
    }
    if (own === this.#work) this.#rest();
  }
}

// The parts that a question tells by themselves, under the names of their measurements.
const alone = {
  main_foil: { name: "foil", options: { part: "main", svg: "-" } },
  rudder_foil: { name: "foil", options: { part: "rudder", svg: "-" } },
  hull: { name: "hull", options: {} },
};
const titleOf = (page, key) =>
  page.tables.records.boat.sections.find(({ table }) => table.key === key).table.title;

const partCards = (page) =>
  Object.entries(alone).map(([key, asked]) => new PartCard(page, titleOf(page, key), asked));

export const boat = {
  name: "boat",
  title: "Boat",
  open(page, main) {
    const parts = ["boat", "sailor"].flatMap((kind) => [
      { element: make("h2", { class: "record" }, page.tables.records[kind].title), update() {} },
      keptField(page, kind, kind === "boat" ? "Which boat" : "Who sails"),
      nameField(page, kind),
      ...page.tables.records[kind].sections.map((section) => sectionForm(page, kind, section)),
    ]);
    const sides = { side: "From the side", foils: "The foils", drag: "Hull and foil" };
    const pictures = make("div", { class: "pictures" });
    const doubts = make("div");
    const most = new SensitivityCard(page);
    const cards = partCards(page);
    main.append(
      make(
        "div",
        { class: "today" },
        make(
          "div",
          { class: "ask" },
          parts.map((part) => part.element),
        ),
        make(
          "div",
          { class: "answers" },
          card("Unusual values", doubts),
          most.element,
          make("section", { class: "card" }, make("h2", {}, "As measured"), pictures),
          cards.map((one) => one.element),
        ),
      ),
    );
    let drawn = "",
      told = "";

    async function drawAll(state) {
      const mine = (drawn = JSON.stringify(state.set));
      const texts = await page.engine.ask("pictures", 0, page.texts(state.set));
      if (mine !== drawn) return;
      pictures.replaceChildren(
        ...Object.entries(sides).map(([key, title]) => picture(title, texts[key])),
      );
    }

    return {
      update(state) {
        for (const part of parts) part.update(state);
        doubts.replaceChildren(doubtList(page, state));
        const now = JSON.stringify([state.set, state.speedUnit]);
        if (now !== told) most.update();
        told = now;
        if (JSON.stringify(state.set) !== drawn) drawAll(state);
        for (const one of cards) one.update();
      },
      close() {
        most.close();
        for (const one of cards) one.close();
      },
    };
  },
};
