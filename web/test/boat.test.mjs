// boat.test.mjs - the view Boat in Chromium: each foil and the hull as the command line tells them.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, settled, sizes, until } from "./browser.mjs";
import { lullwise } from "./desk.mjs";

const demo = new URL("../../demo/", import.meta.url);
const files = { boat: "heron", sailor: "light", day: "breeze" };
const records = Object.entries(files).flatMap(([kind, name]) => [
  `--${kind}`,
  new URL(`${name}.yaml`, demo).pathname,
]);
const asked = {
  "Main foil": ["foil", "--part", "main"],
  "Rudder foil": ["foil", "--part", "rudder"],
  Hull: ["hull"],
};

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

const openBoat = async (size) => {
  const opened = await openPage(browser, `${file}#boat`, size);
  await settled(opened.page);
  return opened;
};

/** The card of a part, opened, with its answer. */
async function unfold(page, name) {
  const card = page.locator("details.alone", { has: page.getByRole("heading", { name }) });
  await card.locator("> summary").click();
  await card.locator("[aria-busy=false] table").waitFor({ timeout: 120_000 });
  return card;
}

const told = (words, more = []) => {
  const { status, stdout, stderr } = lullwise([...words, ...records, ...more, "--json"]);
  assert.equal(status, 0, stderr);
  return JSON.parse(stdout);
};
const isTable = (value) => Array.isArray(value?.rows);

/** Every sentence of an answer, lists of them too. */
const sentences = (answer) =>
  Object.values(answer)
    .flat()
    .filter((one) => typeof one === "string" && one.endsWith("."));

/** Numbers of the table as the page has them, by rows. */
const numbersOf = (card) =>
  card
    .locator("tbody tr")
    .evaluateAll((rows) =>
      rows.map((row) => [...row.children].map((cell) => Number(cell.textContent || NaN))),
    );

for (const [name, words] of Object.entries(asked)) {
  test(`${name} has the heads, the numbers and the sentences of the command line`, async () => {
    const { page, complaints, close } = await openBoat();
    assert.equal(await page.locator("details.alone table").count(), 0);
    const card = await unfold(page, name);
    const answer = told(words);
    const table = Object.values(answer).find(isTable);
    const shown = table.columns.filter(({ head }) => head !== null);
    assert.deepEqual(
      await card.locator("thead th").allTextContents(),
      shown.map(({ head, unit }) => (unit ? `${head} [${unit}]` : head)),
    );
    const wanted = table.rows.map((row) =>
      shown.map(({ key, digits }) => (row[key] === null ? NaN : Number(row[key].toFixed(digits)))),
    );
    const near = (a, b, digits) =>
      Number.isNaN(a) === Number.isNaN(b) && !(Math.abs(a - b) > digits);
    (await numbersOf(card)).forEach((row, r) =>
      row.forEach((x, c) =>
        assert.ok(near(x, wanted[r][c], 1.01 * 10 ** -shown[c].digits), `${x} ${wanted[r][c]}`),
      ),
    );
    const text = (await card.textContent()).replace(/\s+/g, " ");
    for (const line of sentences(answer)) assert.ok(text.includes(line), line);
    assert.equal(await card.locator("svg").count(), words[0] === "foil" ? 1 : 0);
    assert.deepEqual(complaints, []);
    await close();
  });
}

test("a longer span is told at once while the foil is open", async () => {
  const { page, close } = await openBoat();
  const card = await unfold(page, "Main foil");
  const answerOf = () => card.locator("p").nth(1).textContent();
  const old = await answerOf();
  await page.evaluate(() => {
    location.hash = "#boat?boat.main_foil.span=120+cm";
  });
  await until(async () => (await answerOf()) !== old, "another answer");
  const { answer } = told(asked["Main foil"], ["--set", "main_foil.span=120 cm"]);
  assert.equal(await answerOf(), answer);
  await close();
});

test("on a phone a foil that is open fits, and its drawing can be read", async () => {
  const { page, close } = await openBoat(sizes.phone);
  const card = await unfold(page, "Main foil");
  assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
  const words = card.locator("svg text").first();
  const { height } = await words.boundingBox();
  assert.ok(height > 8, `${height} px`);
  await close();
});
