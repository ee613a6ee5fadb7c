// card.test.mjs - the view Card: both pages as the command writes them, on paper of their size.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, settled } from "./browser.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const demo = (name) => ["--" + name[0], `${root}demo/${name[1]}.yaml`];
const inputs = [
  ["boat", "heron"],
  ["sailor", "light"],
  ["day", "breeze"],
].flatMap(demo);
const written = (...words) =>
  execFileSync(`${root}build/release/lullwise`, ["card", ...inputs, "--svg", "-", ...words], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "ignore"],
  });

const wordsOf = (svg) => [...svg.matchAll(/<text[^>]*>([^<]*)/g)].map(([, text]) => text);
const shownWords = (page, nth) =>
  page
    .locator(".pages svg")
    .nth(nth)
    .evaluate((svg) => [...svg.querySelectorAll("text")].map((text) => text.innerHTML));

let browser, opened;
before(async () => {
  browser = await openBrowser();
  opened = await openPage(browser, `${file}#card`);
  await settled(opened.page);
});
after(() => browser?.close());

test("the first page has the words that the command writes", async () => {
  assert.deepEqual(await shownWords(opened.page, 0), wordsOf(written()));
  assert.equal(await opened.page.locator(".pages svg").count(), 2);
});

test("all of it stands there as text, too", async () => {
  const told = opened.page.locator("details.card .tree");
  assert.match(
    await told.textContent(),
    /Which pin from which lull.*held in the puffs.*Take care/s,
  );
});

// MediaBox in points: A6 is 297.6 x 419.5, A5 419.5 x 595.3.
const boxesOf = async (page) => {
  const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  return [...pdf.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map((box) =>
    box.slice(1).map(Number),
  );
};
const isAbout = (box, wanted) => box.every((x, i) => Math.abs(x - wanted[i]) < 1);

test("it is printed on two pages of its paper", async () => {
  const { page } = opened;
  const boxes = await boxesOf(page);
  assert.equal(boxes.length, 2);
  assert.ok(
    boxes.every((box) => isAbout(box, [297.6, 419.5])),
    `${boxes}`,
  );
  await page.getByLabel("Paper").selectOption("A5");
  await settled(page);
  const larger = await boxesOf(page);
  assert.equal(larger.length, 2);
  assert.ok(
    larger.every((box) => isAbout(box, [419.5, 595.3])),
    `${larger}`,
  );
});

test("both pages are saved", async () => {
  const { page } = opened;
  const names = [];
  page.on("download", (one) => names.push(one));
  await page.getByRole("button", { name: "Save as SVG" }).click();
  for (let i = 0; names.length < 2 && i < 100; i++) await page.waitForTimeout(50);
  assert.deepEqual(names.map((one) => one.suggestedFilename()).sort(), ["card-2.svg", "card.svg"]);
  const first = names.find((one) => one.suggestedFilename() === "card.svg");
  const text = await readFile(await first.path(), "utf8");
  assert.deepEqual(wordsOf(text), wordsOf(written("--paper", "A5")));
});

test("a season is told as the command tells it, and what cannot be asked is refused", async () => {
  const { page } = opened;
  await page.getByLabel("Season").fill("6:24:3");
  await page.getByLabel("Season").blur();
  await settled(page);
  const words = wordsOf(written("--paper", "A5", "--season", "6:24:3 kn"));
  assert.deepEqual(await shownWords(page, 0), words);
  await page.getByLabel("Season").fill("6:24:0.1");
  await page.getByLabel("Season").blur();
  await settled(page);
  assert.match(await page.locator(".pages").innerText(), /8 at most/);
  assert.equal(await page.locator(".pages svg").count(), 0);
});

test("outside this view paper is A4 again", async () => {
  const { page, complaints } = opened;
  await page.locator('nav a[href="#today"]').click();
  await settled(page);
  const [box] = await boxesOf(page);
  assert.ok(isAbout(box, [594.96, 841.92]), `${box}`);
  assert.deepEqual(complaints, []);
});
