// rooms.test.mjs - script imports from its own room or from one further down, never in a circle.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { readdir, readFile } from "node:fs/promises";
import { posix } from "node:path";
import { test } from "node:test";

// As in doc/page.md, from the top.
const ROOMS = [
  "main.js",
  "view",
  "frame",
  "ride",
  "flight",
  "answer",
  "form",
  "keep",
  "engine",
  "base",
];
const folder = new URL("../script/", import.meta.url);
const names = (await readdir(folder, { recursive: true })).filter((name) => name.endsWith(".js"));

const levelOf = (name) => ROOMS.indexOf(name.split("/")[0]);

/** Of each script those that it imports. */
async function imports() {
  const found = new Map();
  for (const name of names) {
    const text = await readFile(new URL(name, folder), "utf8");
    const inside = [...text.matchAll(/from "(\.[^"]+\.js)"/g)].map(([, path]) =>
      posix.join(posix.dirname(name), path),
    );
    found.set(name, inside);
  }
  return found;
}

/** The names of a circle, or none. */
function circleIn(imported) {
  const done = new Set();
  const follow = (name, way) => {
    if (way.includes(name)) return [...way, name];
    if (done.has(name)) return null;
    for (const next of imported.get(name) ?? []) {
      const circle = follow(next, [...way, name]);
      if (circle) return circle;
    }
    done.add(name);
    return null;
  };
  for (const name of imported.keys()) {
    const circle = follow(name, []);
    if (circle) return circle;
  }
  return null;
}

test("script imports run down the rooms", async () => {
  const up = [];
  for (const [name, inside] of await imports()) {
    assert.ok(levelOf(name) >= 0, `${name} stands in no room`);
    up.push(
      ...inside.filter((one) => levelOf(one) < levelOf(name)).map((one) => `${name}: ${one}`),
    );
  }
  assert.deepEqual(up, []);
});

test("script imports run in no circle, and one is found", async () => {
  const imported = await imports();
  assert.equal(circleIn(imported), null);
  assert.ok(imported.size > 40);
  const [name] = imported.get("main.js");
  imported.set(name, ["main.js"]);
  assert.ok(circleIn(imported));
});
