// rows.js - the rows of quantities, by name: of what is measured, and of what is worked out.
// SPDX-License-Identifier: MIT

const named = (rows, key) => rows.find((row) => row.key === key);

/** Of a record's section; its first where it has no row of that name, as a list of values. */
export function rowOf({ records }, kind, section, key) {
  const { rows } = records[kind].sections.find((one) => one.table.key === section).table;
  return named(rows, key) ?? rows[0];
}

/** Of a table of results. */
export const resultRow = ({ results }, table, key) => named(results[table].rows, key);
