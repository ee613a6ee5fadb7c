// tree.js - a record as its file has it: sections, keys, texts; one leaf changed; a link's worth.
// SPDX-License-Identifier: MIT
//
// { name: "Grey Heron", hull: { length: "3.35 m" }, pins: { A: "4.1 deg" }, legs: [{ heading: "0 deg" }] }
// Written as JSON it is a file that the engine reads: JSON is YAML.

export const clone = (tree) => structuredClone(tree);

/** The tree with the text at "wind.lull" or "legs.0.length"; null takes it away. */
export function withText(tree, path, text) {
  const copy = clone(tree), keys = path.split(".");
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

export const textAt = (tree, path) => path.split(".").reduce((at, key) => at?.[key], tree);

/** [path, text] of every leaf. */
export function leaves(tree, under = "") {
  return Object.entries(tree).flatMap(([key, value]) =>
    typeof value === "object" ? leaves(value, `${under}${key}.`) : [[under + key, value]]);
}

// Sections whose members have an order or names of their own are replaced as a whole.
const isWhole = (section) => Array.isArray(section);
const wholeSections = new Set(["pins", "legs", "readings"]);

/** What a link says of a tree: the leaves that are not those of the start. */
export function differences(tree, start) {
  const changed = [];
  for (const key of new Set([...Object.keys(start), ...Object.keys(tree)])) {
    const now = tree[key], was = start[key];
    if (JSON.stringify(now) === JSON.stringify(was)) continue;
    if (now === undefined) changed.push([key, ""]);
    else if (typeof now !== "object") changed.push([key, now]);
    else if (isWhole(now) || wholeSections.has(key)) {
      changed.push(...leaves(now, `${key}.`));
    } else {
      const own = { ...was, ...now };
      for (const member of Object.keys(own)) {
        if (now[member] !== was?.[member]) changed.push([`${key}.${member}`, now[member] ?? ""]);
      }
    }
  }
  return changed;
}

/** The start with a link's differences. */
export function apply(start, changed) {
  let tree = clone(start);
  const begun = new Set();
  for (const [path, text] of changed) {
    const [section] = path.split(".");
    if (wholeSections.has(section) && !begun.has(section)) {
      begun.add(section);
      tree = withText(tree, section, null);
    }
    tree = withText(tree, path, text === "" ? null : text);
  }
  return tree;
}
