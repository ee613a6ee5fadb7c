// days.js - logged days as the page keeps them, and as a file has them.
// SPDX-License-Identifier: MIT
//
// A day is kept as a tree of the texts of its columns, { date, pin, wind: { lull: "10" }, ... }, in
// each column's own unit; what is not told is not there. A file has it in the form of `lullwise log
// export`: JSON with all columns, numbers as numbers.

import { LOG } from "../base/kinds.js";
import { differences, withText } from "../base/tree.js";

/** An id of 16 digits, as the command draws it: eight of the time, eight of chance. */
export function freshDayId() {
  const [chance] = crypto.getRandomValues(new Uint32Array(1));
  const hex = (number) => number.toString(16).padStart(8, "0").slice(-8);
  return hex(Math.floor(Date.now() / 1000)) + hex(chance);
}

/** [column, text] of all that is told of a day. */
export const fieldsOf = (tree) => differences(tree, {});

/** The tree of a day that the engine hands over: { column: text }. */
export const treeOf = (day) =>
  Object.entries(day).reduce(
    (tree, [column, text]) => (text === "" ? tree : withText(tree, column, text)),
    {},
  );

/** The days kept, by id, as the engine takes them. */
export const daysOf = (state) =>
  Object.fromEntries(state.kept[LOG].map(({ id, tree }) => [id, fieldsOf(tree)]));

const valueOf = ({ is_number }, text) => (is_number ? (text ? Number(text) : null) : (text ?? ""));

const unitsOf = ({ columns }) =>
  Object.fromEntries(columns.filter(({ unit }) => unit).map(({ key, unit }) => [key, unit]));

/** A day as a file has it; log: what the tables tell of that. */
export function dayOf(log, tree) {
  const told = new Map(fieldsOf(tree));
  return Object.fromEntries(
    log.columns.map((column) => [column.key, valueOf(column, told.get(column.key))]),
  );
}

const fileOf = (log, days) =>
  `${JSON.stringify({ [log.format]: log.version, units: unitsOf(log), days }, null, 1)}\n`;

/** The file of days, [{ tree }]. */
export const fileOfDays = (log, days) =>
  fileOf(
    log,
    days.map(({ tree }) => dayOf(log, tree)),
  );

/** The file of days as text, each the JSON of `dayOf`. */
export const fileOfDayTexts = (log, texts) =>
  fileOf(
    log,
    texts.map((text) => JSON.parse(text)),
  );

// The text of a value; null: a number where a text stands, or the other way round.
function textOf(columns, key, value) {
  const column = columns.find((one) => one.key === key);
  if (column?.is_number) return value === null ? "" : typeof value === "number" ? `${value}` : null;
  return typeof value === "string" ? value : null;
}

function fieldsIn(columns, day) {
  if (!day || typeof day !== "object") throw new Error("it should have days");
  return Object.entries(day).map(([key, value]) => {
    const text = textOf(columns, key, value);
    if (text === null) throw new Error(`${key} is of the wrong kind`);
    return [key, text];
  });
}

/** The days of a file in JSON, each as the engine takes it; an error says what is wrong. */
export function daysInFile(log, text) {
  const all = JSON.parse(text);
  if (!Number.isInteger(all?.[log.format]) || !Array.isArray(all.days))
    throw new Error("this JSON is no export of a logbook");
  if (all[log.format] < 1 || all[log.format] > log.version)
    throw new Error("an export of another version: a newer page reads it");
  const units = unitsOf(log);
  if (Object.entries(all.units ?? {}).some(([key, unit]) => units[key] !== unit))
    throw new Error("its units are not those that export writes");
  return all.days.map((day) => fieldsIn(log.columns, day));
}
