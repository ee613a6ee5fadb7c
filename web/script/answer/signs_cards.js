// signs_cards.js - what a sign is likely to be and what to move, as cards in the engine's words.
// SPDX-License-Identifier: MIT

import { cardOf, make } from "../base/dom.js";
import { drawTable, drawTold, headOf } from "./told.js";

const listOf = (lines) =>
  make(
    "ul",
    {},
    lines.map((line) => make("li", {}, line)),
  );

const tableCard = (answer, key, notes) =>
  answer[key] &&
  cardOf(
    `told-table told-${key}`,
    headOf(answer, key),
    drawTable(answer[key]),
    drawTold(answer, notes),
  );

/** The cards of an answer, in its order; picture: the boat now and then, or nothing. */
export function signsCards(answer, picture) {
  const change = tableCard(answer, "change", []);
  if (change && picture) change.append(picture);
  return [
    make("p", { class: "note" }, answer.question),
    tableCard(answer, "causes", ["nothing", "checks"]),
    tableCard(answer, "moves", ["eased"]),
    answer.nothing_helps && cardOf("", answer.nothing_helps),
    change,
    cardOf("care", headOf(answer, "stop"), listOf(answer.stop)),
    cardOf("trust", headOf(answer, "trust"), listOf(answer.trust)),
  ].filter(Boolean);
}
