// signs_cards.js - what a sign is likely to be and what to move, as cards in the engine's words.
// SPDX-License-Identifier: MIT

import { cardOf, make } from "../base/dom.js";
import { HIDDEN, TOLD } from "../engine/parcel.js";
import { drawTable, drawTold, headOf } from "./told.js";

const CARE = ["stop", "cautions"];
const ELSEWHERE = ["question", "signs"]; // above the cards; the buttons that are pressed

const listOf = (lines) =>
  make(
    "ul",
    {},
    lines.map((line) => make("li", {}, line)),
  );

function memberCard(key, head, value) {
  if (Array.isArray(value)) return cardOf(CARE.includes(key) ? "care" : key, head, listOf(value));
  const isEmpty = value.rows.every((row) => row[HIDDEN]);
  return cardOf(`told-table told-${key}`, head, !isEmpty && drawTable(value));
}

/** The move whose change is told, or that there is none. */
export function firstOf(answer) {
  const isFirst = ({ says }) => headOf(answer, "change").endsWith(says);
  const first = answer.moves?.rows.find(isFirst);
  return first?.says ?? answer.nothing_helps ?? answer.no_flight ?? "";
}

/** The cards of an answer, in its order; picture: the boat now and then, or nothing. */
export function signsCards(answer, picture) {
  const cards = [];
  for (const [key, { head }] of answer[TOLD]) {
    const value = answer[key];
    if (!value || head === null || ELSEWHERE.includes(key)) continue;
    if (typeof value === "object") cards.push(memberCard(key, head, value));
    else if (head === "") cards.push(make("p", { class: "card said" }, value));
    else cards.at(-1)?.append(...drawTold(answer, [key]));
    if (key === "change" && picture) cards.at(-1).append(picture);
  }
  return [make("p", { class: "note" }, answer.question), ...cards];
}
