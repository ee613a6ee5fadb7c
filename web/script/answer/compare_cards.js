// compare_cards.js - two choices side by side: what the change does, number by number, pin by pin.
// SPDX-License-Identifier: MIT

import { careCard } from "./choice_cards.js";
import { card, cardOf, make } from "../base/dom.js";
import { rangeChart } from "./range_chart.js";
import { drawTable, headOf } from "./told.js";

// Both sides on one chart, or on two where the winds are not the same.
function charts(page, { compared, choices }) {
  const sides = choices.map((choice, i) => {
    const pin = compared[i ? "pin_changed" : "pin_as_is"];
    const limits = choice.places.rows.find((row) => row.pin === pin);
    return { label: `${i ? "changed" : "as it is"}, ${pin}`, limits };
  });
  const [one, two] = choices.map((choice) => choice.wind);
  return JSON.stringify(one) === JSON.stringify(two)
    ? rangeChart(page, sides, one)
    : [one, two].map((wind, i) => rangeChart(page, [sides[i]], wind));
}

function differences(compared) {
  const lines = compared.differences.map((line) => make("li", {}, line));
  return cardOf(
    "best",
    headOf(compared, "differences"),
    make("ul", {}, lines),
    make("p", { class: "note" }, "Differences are surer than the numbers themselves."),
  );
}

/** The cards of an answer, in the order of their worth. */
export function compareCards(page, answer) {
  const { compared } = answer;
  const tableCard = (key) => cardOf("sides", headOf(compared, key), drawTable(compared[key]));
  return [
    differences(compared),
    tableCard("members"),
    card("From what wind, up to what wind", make("div", { class: "named" }, charts(page, answer))),
    tableCard("pins"),
    tableCard("orders"),
    careCard(compared),
  ];
}
