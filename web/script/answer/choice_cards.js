// choice_cards.js - a day's choice as cards: the pin to sail first, then reasons, turns, numbers.
// SPDX-License-Identifier: MIT

import { beachButton } from "./beach.js";
import { card, cardOf, make } from "../base/dom.js";
import { heading } from "../base/number.js";
import { rangeChart } from "./range_chart.js";
import { drawTable, drawTold, headOf } from "./told.js";
import { waysOf } from "./ways.js";

const EVERY = "every leg";
const note = (text) => text && make("p", { class: "note" }, text);

const care = (text) => text && make("p", { class: "unheld" }, make("b", {}, text));

// What is said first: the pin, or that none holds, or that nothing flies, and what would.
function headline(answer) {
  if (!answer.any_holds || !answer.best) return answer.headline;
  return [`${heading(headOf(answer.places.rows[0], "pin"))} `, pinName(answer.best.pin)];
}

// The first place: what is pinned ashore, how far it is held, what is wound afloat.
const firstPlace = ({ best, why }) => [
  best.all_the_same && make("p", {}, best.all_the_same),
  care(best.unheld),
  best.on_hull && make("p", {}, best.on_hull),
  drawTold(best, ["held_up_to", "over_puffs", "under_puffs", "seconds"]),
  best.turns && [make("p", { class: "caption" }, headOf(best, "turns")), drawTold(best.turns)],
  note(best.turns_note),
  make("p", {}, why.rows[0].sentence),
];

function bestCard(answer) {
  const card = cardOf(
    "best",
    headline(answer),
    answer.would && make("p", { class: "would" }, answer.would),
    answer.best && firstPlace(answer),
  );
  card.classList.toggle("none-holds", !answer.any_holds);
  card.append(beachButton(card));
  return card;
}

const pinName = (label) => make("b", { class: "pin" }, label);

const without = (sentence, pin) =>
  sentence.startsWith(`${pin} `) ? sentence.slice(pin.length + 1) : sentence;

// Why each stands where it stands, and how surely.
function ranking(page, { why, order_sure: sure }) {
  return make(
    "ol",
    { class: "ranking" },
    why.rows.map(({ pin, sentence }) => {
      const behind = sure.rows.find((row) => row.pin === pin);
      return make(
        "li",
        {},
        pinName(pin),
        make("p", {}, without(sentence, pin)),
        behind && note(`${behind.sentence}.`),
        waysOf(page, pin),
      );
    }),
  );
}

// The chart of one course, or of what holds on every leg.
function chartCard(page, answer, state) {
  const courses = [EVERY, ...new Set(answer.ranges.rows.map((row) => row.course))];
  const course = courses.includes(state.more.course) ? state.more.course : EVERY;
  const pins = [...new Set(answer.ranges.rows.map((row) => row.pin))];
  const limitsOf = (pin) =>
    course === EVERY
      ? answer.places.rows.find((row) => row.pin === pin)
      : answer.ranges.rows.find((row) => row.pin === pin && row.course === course);
  const rows = pins.map((pin) => ({ label: pin, limits: limitsOf(pin) }));
  const id = "chart-course";
  const select = make(
    "select",
    {
      id,
      onchange: () => page.store.say({ course: select.value === EVERY ? null : select.value }),
    },
    courses.map((one) => make("option", { selected: one === course }, one)),
  );
  return card(
    "From what wind, up to what wind",
    make("div", { class: "field aside" }, make("label", { for: id }, "On"), select),
    rangeChart(page, rows, answer.wind),
  );
}

/** A card of a table that has a head: its rows, and its small print. */
const tableCard = (answer, key) =>
  headOf(answer, key) &&
  cardOf(key, headOf(answer, key), drawTable(answer[key]), note(answer[`${key}_note`]));

// Turns for lull, mean and puff, and through the band.
const rudderCard = (answer) =>
  cardOf(
    "rudder",
    headOf(answer, "turns"),
    drawTable(answer.turns),
    note(answer.turns_note),
    drawTable(answer.band, headOf(answer, "band")),
    note(answer.band_note),
  );

/** What to take care of, as the answer tells it. */
export const careCard = (answer) =>
  cardOf(
    "care",
    headOf(answer, "cautions"),
    make(
      "ul",
      {},
      answer.cautions.map((line) => make("li", {}, line)),
    ),
  );

/** The cards of an answer, in the order of their worth. */
export function choiceCards(page, answer, state) {
  const flies = answer.any_flies;
  return [
    bestCard(answer),
    careCard(answer),
    chartCard(page, answer, state),
    flies && card(headOf(answer, "why"), ranking(page, answer), note(answer.order_sure_note)),
    tableCard(answer, "orders"),
    flies && rudderCard(answer),
    tableCard(answer, "less_lift"),
    tableCard(answer, "holds"),
    card("In numbers", drawTable(answer.places), note(answer.places_note)),
  ].filter(Boolean);
}
