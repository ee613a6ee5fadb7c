// number.js - numbers as the page shows them: the row's unit, or m/s for knots where wanted.
// SPDX-License-Identifier: MIT

export const KNOT = 1852 / 3600;

/** The unit that a row is shown in as it is typed, its sign as it is read, and one of it in SI. */
export function shownUnit(row, speedUnit) {
  if (row.unit === "kn" && speedUnit === "m/s") return { unit: "m/s", sign: "m/s", inSi: 1 };
  return { unit: row.unit, sign: row.sign, inSi: row.in_si };
}

/** "12.5": so many decimals, halves away from 0 as lw_cell_number has them, never -0.0. */
export function fixed(value, decimals) {
  const unit = 10 ** decimals,
    rounded = Math.round(Math.abs(value) * unit) / unit;
  return `${value < 0 && rounded ? "-" : ""}${rounded.toFixed(decimals)}`;
}

/** A value for a form field: as many digits as the row shows, more where the value has them. */
export function entry(row, si, speedUnit) {
  const { inSi } = shownUnit(row, speedUnit);
  const value = si / inSi;
  for (let decimals = row.decimals; decimals < 12; decimals++) {
    if (
      inSi !== row.in_si ||
      Math.abs(Number(value.toFixed(decimals)) - value) <= 1e-9 * Math.abs(value)
    ) {
      return fixed(value, decimals);
    }
  }
  return String(value);
}

export const minus = (text) => text.replace("-", "−");

/** "12.5", as its row shows it. */
export const shown = (row, si, speedUnit) =>
  minus(fixed(si / shownUnit(row, speedUnit).inSi, row.decimals));

/** "12.5 kn", "23°": a sign of degrees stands close, as lw_unit_behind has it. */
export const measured = (number, sign) =>
  sign && !/^°(?!C)/.test(sign) ? `${number} ${sign}` : `${number}${sign}`;

/** A value of a row likewise. */
export const told = (row, si, speedUnit) =>
  measured(shown(row, si, speedUnit), shownUnit(row, speedUnit).sign);

/** What was typed, with the unit of the field behind a bare number. */
export function withUnit(text, unit) {
  const bare = /^\s*[-−+]?[\d.,]+(e[-+]?\d+)?\s*$/i.test(text);
  return bare && unit ? `${text.trim()} ${unit}` : text.trim();
}

/** The same without that unit, for the field that has it behind its box. */
export const withoutUnit = (text, unit) =>
  unit && text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text;

/** "main_foil" as people read it: "Main foil". */
export const words = (key) => key.replace(/_/g, " ");
export const heading = (text) => text.charAt(0).toUpperCase() + text.slice(1);
