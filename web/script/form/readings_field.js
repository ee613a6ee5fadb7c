// readings_field.js - wind readings as text, in whatever way one writes them down.
// SPDX-License-Identifier: MIT

import { freshId, make } from "../base/dom.js";
import { sentenceOf } from "./field.js";
import { entry, shownUnit, withoutUnit, withUnit } from "../base/number.js";
import { rowOf } from "../base/rows.js";

// A number and the unit behind it, if any; or whatever else stands between blanks.
const PIECE = /[-−+]?\d[\d.,]*(\s*[a-z][a-z/]*)?|\S+/gi;

// A comma that separates has a blank or a unit beside it; one between digits is a decimal one, but
// where a number has two.
const parted = (piece) => (piece.split(",").length > 2 ? piece.split(",") : [piece]);

/** The readings in a text: one a line, or with blanks, commas or semicolons between them. */
export const readingsIn = (text) =>
  (
    text
      .replace(/[;\n]|,(?=\s|$)/g, " ")
      .replace(/([a-z]),/gi, "$1 ")
      .match(PIECE) ?? []
  )
    .flatMap(parted)
    .filter(Boolean);

/** The readings of the day. Returns { element, update(state) }. */
export function readingsField(page) {
  const row = rowOf(page.tables, "day", "readings");
  const { store } = page;
  const note = make("p", { class: "note", id: freshId() });
  const area = make("textarea", {
    id: freshId(),
    rows: "6",
    "aria-describedby": note.id,
    onchange: take,
  });
  const label = make("label", { for: area.id });
  const at = { class: "field", "data-at": "day.readings" };
  const element = make("div", at, label, area, note);

  function take() {
    const { unit } = shownUnit(row, store.state.speedUnit);
    const readings = readingsIn(area.value).map((piece) => withUnit(piece, unit));
    return store.put("day", "readings", readings);
  }

  return {
    element,
    update({ speedUnit, values }) {
      const { unit, sign } = shownUnit(row, speedUnit);
      const refused = store.refusedAt("day", "readings");
      const wrong = (refused?.faults ?? []).filter((fault) => !fault.is_doubt);
      label.textContent = `Readings in ${sign}, one a line or a blank between them`;
      note.textContent = wrong.map((one) => `${one.read} ${sentenceOf(one)}`.trim()).join(". ");
      area.setAttribute("aria-invalid", wrong.length > 0);
      element.classList.toggle("faulty", wrong.length > 0);
      if (document.activeElement === area) return;
      const lines = refused
        ? refused.text.map((text) => withoutUnit(text, unit))
        : values.day.readings.map((si) => entry(row, si, speedUnit));
      area.value = lines.join("\n");
    },
  };
}
