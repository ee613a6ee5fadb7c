// cards.js - what happened on a ride, to go there by a press, and what it came to, as told.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";
import { measured } from "../base/number.js";
import { HIDDEN } from "../engine/parcel.js";
import { drawTold, headOf, shownOf } from "../answer/told.js";

// The numbers of a moment, each after its head: "wind 19.2 kn, heel 7°".
const sceneOf = (row, columns) =>
  columns.map(({ key, head, unit }) => `${head} ${measured(shownOf(row, key), unit)}`).join(", ");

function eventButton(row, columns, onPick) {
  const numbers = columns.filter(
    ({ key, head, form }) => head && form === "bare" && key !== "time",
  );
  return make(
    "button",
    { type: "button", class: row.is_swim && "fall", onclick: () => onPick(row.time) },
    make("span", { class: "when" }, shownOf(row, "time")),
    make("span", {}, row.says),
    make("small", {}, sceneOf(row, numbers)),
  );
}

/** What happened: { element, show(ride), update(time), moments() }. */
export function eventList(onPick) {
  const title = make("h2", {});
  const list = make("ol", {});
  const notes = make("div", {});
  const element = make("section", { class: "card events" }, title, list, notes);
  let shown = [];
  let buttons = [];
  return {
    element,
    show({ told }) {
      const { events } = told;
      shown = events.rows.filter((row) => !row[HIDDEN]);
      buttons = shown.map((row) => eventButton(row, events.columns, onPick));
      element.hidden = shown.length === 0;
      title.textContent = headOf(told, "events");
      list.replaceChildren(...buttons.map((button) => make("li", {}, button)));
      notes.replaceChildren(...drawTold(told, ["left_out", "reading"]).flat());
    },
    update(time) {
      shown.forEach((row, i) => buttons[i].classList.toggle("past", row.time <= time + 0.05));
    },
    moments: () => shown.map((row) => row.time),
  };
}

/** What a ride came to: { element, show(ride) }. */
export function sumCard() {
  const title = make("h2", {});
  const told = make("div", { class: "tree" });
  return {
    element: make("section", { class: "card" }, title, told),
    show({ told: ride }) {
      const parts = ["question", "trim", "rates", "trust"];
      title.textContent = headOf(ride, "sum");
      told.replaceChildren(
        ...ride.sum.map((line) => make("p", { class: "outcome" }, line)),
        ...drawTold(ride, parts).flat(9),
      );
    },
  };
}
