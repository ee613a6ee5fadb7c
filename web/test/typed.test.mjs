// typed.test.mjs - the script types no head, unit or digit of an answer: all come from the engine.
// SPDX-License-Identifier: MIT
//
// It draws tables in one place, shows numbers by their rows, and puts no unit behind one.

import assert from "node:assert/strict";
import { readdir, readFile } from "node:fs/promises";
import { test } from "node:test";
import { parse } from "acorn";
import { engineIn } from "../script/engine/module.js";

const folder = new URL("../script/", import.meta.url);
const names = (await readdir(folder, { recursive: true })).filter((name) => name.endsWith(".js"));
const module = await WebAssembly.compile(
  await readFile(new URL("../../build/page/page_engine.wasm", import.meta.url)),
);
const { units } = (await engineIn(module)).ask("tables");

const TABLES = ["answer/told.js"]; // draws what is told
const SHOWS = ["base/number.js"]; // by rows
// Coordinates of pictures and bars, and numbers that are read back.
const PLACES = [
  "answer/asked.js",
  "form/compare_form.js",
  "base/drawing.js",
  "flight/side.js",
  "ride/traces.js",
  "view/flight.js",
];

function nodesOf(text) {
  const nodes = [];
  function visit(node) {
    if (Array.isArray(node)) return node.forEach(visit);
    if (typeof node?.type !== "string") return;
    nodes.push(node);
    Object.values(node).forEach(visit);
  }
  visit(parse(text, { ecmaVersion: "latest", sourceType: "module" }));
  return nodes;
}

const isCall = ({ type }) => type === "CallExpression";
const isMade = (node, tag) =>
  isCall(node) && node.callee.name === "make" && node.arguments[0].value === tag;
const isNumber = (node) => node?.type === "Literal" && typeof node.value === "number";

// " kn" behind a number that is put in: of what stands between two `${ }`, not before the first.
const behind = new RegExp(`^ ?(${units.filter((unit) => /\w/.test(unit)).join("|")}|°)(?!\\w)`);
const unitsIn = ({ type, quasis }) =>
  type === "TemplateLiteral"
    ? quasis.slice(1).filter(({ value }) => behind.test(value.cooked) && value.cooked !== "m")
    : [];

/** What a script types that it should be told, one sentence each. */
function faultsOf(name, text) {
  const faults = [];
  const fault = (what) => faults.push(`${name}: ${what}`);
  for (const node of nodesOf(text)) {
    if (isMade(node, "table") && !TABLES.includes(name)) fault("draws a table");
    if (isMade(node, "th") && !TABLES.includes(name)) fault("types a head");
    if (isCall(node) && node.callee.name === "fixed" && isNumber(node.arguments[1]))
      fault("types how many digits");
    if (
      isCall(node) &&
      node.callee.property?.name === "toFixed" &&
      ![...SHOWS, ...PLACES].includes(name)
    )
      fault("rounds by itself");
    for (const { value } of unitsIn(node)) fault(`types the unit of "${value.cooked}"`);
  }
  return faults;
}

test("no head, unit or digit of an answer is typed in script", async () => {
  assert.ok(names.length > 30);
  const texts = await Promise.all(names.map((name) => readFile(new URL(name, folder), "utf8")));
  assert.deepEqual(
    names.flatMap((name, i) => faultsOf(name, texts[i])),
    [],
  );
});

test("what is typed is found", () => {
  const typed = {
    "make('table', {})": "draws a table",
    "make('th', {}, 'wind')": "types a head",
    "fixed(x, 1)": "types how many digits",
    "x.toFixed(2)": "rounds by itself",
    "`${x} kn`": 'types the unit of " kn"',
    "`${x}°`": 'types the unit of "°"',
  };
  for (const [text, what] of Object.entries(typed))
    assert.deepEqual(faultsOf("view/one.js", text), [`view/one.js: ${what}`]);
});
