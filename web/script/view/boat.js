// boat.js - the view Boat: every measurement with how to take it, what is doubtful, what matters.
// SPDX-License-Identifier: MIT

import { askCard } from "../answer/ask_card.js";
import { card, make } from "../base/dom.js";
import { nameField, sentenceOf, wordField } from "../form/field.js";
import { recordField } from "../form/record_field.js";
import { measuredLine } from "../form/measured.js";
import { PartCard } from "../answer/part_card.js";
import { picture } from "../base/picture.js";
import { sectionForm } from "../form/section.js";
import { spoken } from "../base/tree.js";

function doubtList(page, state) {
  const doubts = ["boat", "sailor"].flatMap((kind) => state.doubts[kind]);
  if (!doubts.length) return make("p", {}, "Every value is within what is usual.");
  return make(
    "ul",
    {},
    doubts.map((doubt) =>
      make("li", {}, make("b", {}, spoken(doubt.key)), ", ", sentenceOf(doubt)),
    ),
  );
}

// The parts that a question tells by themselves, under the names of their measurements.
const alone = {
  main_foil: { name: "foil", options: { part: "main", svg: "-" } },
  rudder_foil: { name: "foil", options: { part: "rudder", svg: "-" } },
  hull: { name: "hull", options: {} },
};
const titleOf = (page, key) =>
  page.tables.records.boat.sections.find(({ table }) => table.key === key).table.title;

// Which way the grip turns, for the card.
function gripField(page) {
  const { words } = page.tables.records.boat.texts.find(({ key }) => key === "grip");
  const choices = words.map((key) => ({ key }));
  return wordField(page, "boat", "grip", "The grip adds rudder lift", choices);
}

const questionOf = (page, wanted) => page.tables.questions.find(({ name }) => name === wanted);

const partCards = (page) =>
  Object.entries(alone).map(([key, asked]) => new PartCard(page, titleOf(page, key), asked));

export const boat = {
  name: "boat",
  title: "Boat",
  open(page, main) {
    const parts = ["boat", "sailor"].flatMap((kind) => [
      { element: make("h2", { class: "record" }, page.tables.records[kind].title), update() {} },
      recordField(page, kind, kind === "boat" ? "Which boat" : "Who sails"),
      nameField(page, kind),
      ...(kind === "boat" ? [gripField(page)] : []),
      measuredLine(page, kind),
      ...page.tables.records[kind].sections.map((section) => sectionForm(page, kind, section)),
    ]);
    const sides = { side: "From the side", foils: "The foils", drag: "Hull and foil" };
    const pictures = make("div", { class: "pictures" });
    const doubts = make("div");
    const most = askCard(page, questionOf(page, "sensitivity"));
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
          card("As measured", pictures),
          cards.map((one) => one.element),
        ),
      ),
    );
    let drawn = "";

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
        most.update(state);
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
