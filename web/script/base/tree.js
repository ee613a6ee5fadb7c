// tree.js - a record as its file has it: sections, keys, texts; one leaf changed; a link's worth.
// SPDX-License-Identifier: MIT
//
// { name: "Grey Heron", hull: { length: "3.35 m" }, legs: [{ heading: "0 deg" }],
//   pins: [{ label: "A", text: "4.1 deg" }] }
// Labels have an order of their own, so a labelled section is a list. A path is "hull.length",
// "legs.0.heading", "pins.A".

import { words } from "./number.js";

const titles = new Map(),
  labelled = new Set(),
  whole = new Set(); // sections by kind; whole: replaced as one in a link

/** Learns from the quantity tables how sections are called, and which are lists. */
export function learnSections(tables) {
  for (const { sections } of Object.values(tables.records)) {
    for (const { kind, table } of sections) {
      titles.set(table.key, table.title);
      if (kind === "labelled") labelled.add(table.key);
      if (kind !== "plain") whole.add(table.key);
    }
  }
}

/** A text whose paths stand as the forms have them: "Main foil: zero lift angle". */
export const spoken = (text) =>
  text.replace(/\b([a-z_]+)\.(\w+)/g, (path, head, rest) => {
    if (!titles.has(head)) return path;
    return `${titles.get(head)}: ${labelled.has(head) ? rest : words(rest)}`;
  });

const headOf = (path) => path.split(".", 1)[0];
const restOf = (path) => path.slice(headOf(path).length + 1);

function withLabel(list, label, text) {
  const at = list.findIndex((one) => one.label === label);
  if (text === null) list.splice(at, at < 0 ? 0 : 1);
  else if (at < 0) list.push({ label, text });
  else list[at] = { label, text };
}

/** The tree with the text at a path; null takes it away. */
export function withText(tree, path, text) {
  const copy = structuredClone(tree),
    head = headOf(path),
    rest = restOf(path);
  if (rest && labelled.has(head)) {
    withLabel((copy[head] ??= []), rest, text);
    return copy;
  }
  const keys = path.split(".");
  let at = copy;
  for (const [i, key] of keys.slice(0, -1).entries()) {
    at[key] ??= /^\d+$/.test(keys[i + 1]) ? [] : {};
    at = at[key];
  }
  const last = keys.at(-1);
  if (text !== null) at[last] = text;
  else if (Array.isArray(at)) at.splice(Number(last), 1);
  else delete at[last];
  return copy;
}

/** The text at a path; undefined where there is none. */
export function textAt(tree, path) {
  if (labelled.has(headOf(path)))
    return tree[headOf(path)]?.find(({ label }) => label === restOf(path))?.text;
  return path.split(".").reduce((at, key) => at?.[key], tree);
}

/** The file: JSON is YAML, and every text stands in quotes. */
export function fileOf(tree) {
  const pair = (key, text) => `${JSON.stringify(key)}: ${text}`;
  const parts = Object.entries(tree).map(([key, value]) =>
    pair(
      key,
      labelled.has(key)
        ? `{${value.map(({ label, text }) => pair(label, JSON.stringify(text))).join(", ")}}`
        : JSON.stringify(value),
    ),
  );
  return `{${parts.join(", ")}}`;
}

// [path, text] of every leaf.
function leaves(value, path) {
  if (typeof value !== "object") return [[path, value]];
  if (labelled.has(path)) return value.map(({ label, text }) => [`${path}.${label}`, text]);
  return Object.entries(value).flatMap(([key, inside]) =>
    leaves(inside, path ? `${path}.${key}` : key),
  );
}

/** What a link says of a tree: the leaves that are not the start's; "" for one that is gone. */
export function differences(tree, start) {
  const changed = [];
  for (const key of new Set([...Object.keys(start), ...Object.keys(tree)])) {
    const now = tree[key],
      was = start[key];
    if (JSON.stringify(now) === JSON.stringify(was)) continue;
    if (now === undefined) changed.push([key, ""]);
    else if (typeof now !== "object" || whole.has(key)) changed.push(...leaves(now, key));
    else {
      for (const member of Object.keys({ ...was, ...now })) {
        if (now[member] !== was?.[member]) changed.push([`${key}.${member}`, now[member] ?? ""]);
      }
    }
  }
  return changed;
}

/** Whether a link could not tell them apart. */
export const isAlike = (tree, other) => differences(tree, other).length === 0;

/** The start with a link's differences. */
export function apply(start, changed) {
  let tree = structuredClone(start);
  const begun = new Set();
  for (const [path, text] of changed) {
    const head = headOf(path);
    if (whole.has(head) && !begun.has(head)) tree = withText(tree, head, null);
    begun.add(head);
    if (!(whole.has(path) && text === "")) tree = withText(tree, path, text === "" ? null : text);
  }
  return tree;
}
