// measured.js - how many values of a boat or sailor are one's own, and how many still presets.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";

const isOwn = (row, value) => Math.abs(value - row.preset * row.in_si) > 1e-9 * row.in_si;

/** { element, update(state) } for a kind of record. */
export function measuredLine(page, kind) {
  const element = make("p", { class: "measured" });
  const sections = page.tables.records[kind].sections.filter((one) => one.kind === "plain");
  const rowsOf = ({ values }) =>
    sections.flatMap(({ table: { key, rows } }) =>
      rows.map((row) => ({ row, value: values[kind][key]?.[row.key] ?? row.preset * row.in_si })),
    );
  return {
    element,
    update(state) {
      const all = rowsOf(state);
      const own = all.filter(({ row, value }) => isOwn(row, value)).length;
      element.textContent = `${own} of ${all.length} values are your own, the rest are presets.`;
    },
  };
}
