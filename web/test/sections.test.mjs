// sections.test.mjs - sections of several workers are one worker's; kept ones serve their engine.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { engineIn } from "../script/engine/module.js";
import { file, openBrowser, openPage, settled } from "./browser.mjs";

const demo = async (name) => readFile(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
const set = { boat: await demo("heron"), sailor: await demo("light"), day: await demo("breeze") };
const module = await WebAssembly.compile(
  await readFile(new URL("../../build/page/page_engine.wasm", import.meta.url)),
);

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

async function loaded() {
  const engine = await engineIn(module);
  engine.load(0, set);
  return engine;
}

const flight = (engine) => (engine.put([1, 6.2, 1.7, NaN, NaN, 2, NaN]), engine.ask("fly", 0));

test("rows of sections from several engines give another its own flight", async () => {
  const several = [await loaded(), await loaded(), await loaded()];
  const { size, sections } = several[0].ask("sections", 0);
  assert.deepEqual(
    sections.map(({ rows }) => rows),
    [7, 3],
  );
  let turn = 0;
  const polars = sections.map(({ rows }, name) =>
    several[0].polar(
      0,
      name,
      Array.from({ length: rows }, (_, row) => several[turn++ % 3].row(0, name, row)),
    ),
  );
  assert.ok(polars.every(({ length }) => length === size));

  const taking = await loaded();
  taking.takeSections(0, polars);
  const alone = flight(await loaded());
  assert.deepEqual(flight(taking), alone);

  new Float64Array(polars[0].buffer)[0] *= 0.9; // the slope: so they are what was flown with
  const other = await loaded();
  other.takeSections(0, polars);
  assert.notDeepEqual(flight(other), alone);
});

const KEPT = "lullwise.sections";
const answerOf = (page) => page.locator(".answers").textContent();

/** Opens the page again with what was kept changed by a function that runs in it. */
async function openedAgain(page, change) {
  await page.evaluate(change, KEPT);
  await page.reload();
  await settled(page);
  return answerOf(page);
}

test("the page takes the sections that it kept, if its own engine made them", async () => {
  const { page, complaints, close } = await openPage(browser, file);
  await settled(page);
  const first = await answerOf(page);
  assert.equal(await openedAgain(page, () => {}), first);

  // a slope of lift a tenth less shows whether they were taken
  const flatten = (key) => {
    const kept = JSON.parse(localStorage.getItem(key));
    kept.polars = kept.polars.map(([name, text]) => {
      const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      new Float64Array(bytes.buffer)[0] *= 0.9;
      return [name, btoa(String.fromCharCode(...bytes))];
    });
    localStorage.setItem(key, JSON.stringify(kept));
  };
  assert.notEqual(await openedAgain(page, flatten), first);
  assert.equal(
    await openedAgain(page, (key) => {
      localStorage.setItem(
        key,
        JSON.stringify({ ...JSON.parse(localStorage.getItem(key)), engine: "another" }),
      );
    }),
    first,
  );
  assert.equal(await openedAgain(page, (key) => localStorage.setItem(key, '{"polars": 7')), first);
  assert.deepEqual(complaints, []);
  await close();
});
