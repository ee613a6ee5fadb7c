// told.js - draws an answer as the engine tells it: its heads, its sentences, its numbers as shown.
// SPDX-License-Identifier: MIT
//
// The script types no word, unit or digit of an answer: all stand in the parcel (parcel.js).

import { freshId, make } from "../base/dom.js";
import { heading } from "../base/number.js";
import { sentenceOf } from "../form/field.js";
import { HIDDEN, TOLD } from "../engine/parcel.js";
import { spoken } from "../base/tree.js";

const NOTE = "\n"; // the head of small print
const isTable = (value) => Array.isArray(value?.columns) && Array.isArray(value?.rows);
function inRow(row, { key }) {
  const value = row[TOLD]?.get(key)?.shown ?? row[key] ?? "";
  return typeof value === "boolean" ? (value ? "yes" : "no") : value;
}

/** How a member is called, and how it is shown. */
export const headOf = (object, key) => object[TOLD]?.get(key)?.head ?? "";
export const shownOf = (object, key) => object[TOLD]?.get(key)?.shown ?? String(object[key] ?? "");

/** The columns that are shown, each with those behind it that stand in the same cell. */
function cellsOf(columns) {
  const cells = [];
  for (const column of columns) {
    if (column.head === null) continue;
    const isBehind = column.form === "error" && cells.length > 0;
    if (isBehind) cells.at(-1).push(column);
    else cells.push([column]);
  }
  return cells;
}

const textOf = (row, cell) =>
  cell
    .map((column) => inRow(row, column))
    .filter((text) => text !== "")
    .map((text) => spoken(text))
    .join(" ");

const headWith = ([{ head, unit, form }]) =>
  form === "bare" && unit && head ? `${head} [${unit}]` : head;

/** Rows of nothing but a sentence, or of a place and a sentence, as a list. */
function sentences(rows, cells) {
  const numbered = cells.length > 1;
  return make(
    numbered ? "ol" : "ul",
    { class: numbered ? "ranking" : "lines" },
    rows.map((row) => make("li", {}, make("p", {}, textOf(row, cells.at(-1))))),
  );
}

const LONG = 20; // letters of a text that may be wrapped

/** How a column is set: texts begin at its left, long ones are wrapped. */
function setOf(rows, cell) {
  if (cell[0].form !== "text") return null;
  return rows.some((row) => textOf(row, cell).length > LONG) ? "text long" : "text";
}

function gridOf(head, rows, cells) {
  const id = freshId();
  const sets = cells.map((cell) => setOf(rows, cell));
  const hasHeads = cells.some((cell) => headWith(cell));
  const line = (row) =>
    make(
      "tr",
      {},
      cells.map((cell, i) =>
        i
          ? make("td", { class: sets[i] }, textOf(row, cell))
          : make("th", { scope: "row", class: sets[i] }, textOf(row, cell)),
      ),
    );
  const heads = () =>
    make(
      "thead",
      {},
      make(
        "tr",
        {},
        cells.map((cell, i) => make("th", { scope: "col", class: sets[i] }, headWith(cell))),
      ),
    );
  return make(
    "div",
    { class: "tabled" },
    head && make("p", { class: "caption", id }, head),
    make(
      "div",
      { class: "scroll", tabindex: "0", role: "group", "aria-labelledby": head ? id : null },
      make(
        "table",
        { "aria-labelledby": head ? id : null },
        hasHeads && heads(),
        make("tbody", {}, rows.map(line)),
      ),
    ),
  );
}

/** One table; `head` "" when its heading stands elsewhere. */
export function drawTable(table, head = "") {
  const rows = table.rows.filter((row) => !row[HIDDEN]);
  let cells = cellsOf(table.columns);
  // A rank that is a list's own number, and columns in which nothing stands.
  cells = cells.filter((cell) => rows.some((row) => textOf(row, cell) !== ""));
  const isRank = (cell) => cell[0].key === "place";
  const isSaid = cells.length > 0 && cells.every((cell) => isRank(cell) || cell[0].head === "");
  if (isSaid && cells.filter((cell) => !isRank(cell)).length === 1) return sentences(rows, cells);
  return gridOf(
    head,
    rows,
    cells.filter((cell) => !isRank(cell)),
  );
}

const drawList = (list) =>
  make(
    "ul",
    {},
    list.map((one) => make("li", {}, typeof one === "object" ? drawTold(one) : one)),
  );

/** Why a question was not taken, in the engine's words. */
export const drawRefusal = ({ refusal, faults }) =>
  (refusal
    ? [refusal]
    : faults.map((fault) => `${heading(fault.key.replace(/^--/, ""))}: ${sentenceOf(fault)}`)
  ).map((line) => make("p", { class: "refused" }, line));

// Members with a name before them, as a list of names and values.
const drawKeys = (pairs) =>
  make(
    "dl",
    { class: "keys" },
    pairs.map(([name, value]) => make("div", {}, make("dt", {}, name), make("dd", {}, value))),
  );

function drawBranch(head, value) {
  const inside = isTable(value)
    ? drawTable(value)
    : Array.isArray(value)
      ? drawList(value)
      : drawTold(value);
  return [head && make("h3", {}, head), inside];
}

/** All that a person is shown of an object, in its order; `keys`: these members only. */
export function drawTold(object, keys = null) {
  const nodes = [];
  let pairs = [];
  const flush = () => {
    if (pairs.length) nodes.push(drawKeys(pairs));
    pairs = [];
  };
  for (const [key, { head, shown }] of object[TOLD] ?? []) {
    const value = object[key];
    if (head === null || value === null || (keys && !keys.includes(key))) continue;
    if (shown !== null || (typeof value !== "object" && head !== "" && head !== NOTE)) {
      pairs.push([head, shown ?? String(value)]);
      continue;
    }
    flush();
    if (typeof value === "object") nodes.push(drawBranch(head, value));
    else nodes.push(make("p", { class: head === NOTE ? "note" : null }, spoken(value)));
  }
  flush();
  return nodes;
}
