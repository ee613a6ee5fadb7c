// wind.test.mjs - the wind of the day as people type it: from the top down, in a line, as forecast.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { readingsIn } from "../script/form/readings_field.js";
import { file, openBrowser, openPage, until } from "./browser.mjs";

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

const inputOf = (page, name) => page.getByLabel(new RegExp(`^${name} in`)).first();
const READINGS =
  "#today?day.wind.lull=&day.wind.mean=&day.wind.puff=" +
  ["8", "9", "10"].map((one, i) => `&day.readings.${i}=${one}+kn`).join("");
const FORECAST = "#today?day.wind.lull=&day.wind.mean=&day.wind.puff=&day.forecast.mean=14+kn";

/** Every sentence that accuses, in the form and over it, as it came up since. */
async function watched(page) {
  await page.evaluate(() => {
    window.accused = [];
    const look = () => {
      for (const one of document.querySelectorAll(".faulty .note, .unused:not([hidden]) b"))
        if (one.textContent) window.accused.push(one.textContent);
    };
    new MutationObserver(look).observe(document.body, {
      subtree: true,
      childList: true,
      characterData: true,
      attributes: true,
    });
  });
  return () => page.evaluate(() => window.accused);
}

test("lull, mean and puff typed from the top are taken without a fault on the way", async () => {
  const { page, complaints, close } = await openPage(browser, file);
  await inputOf(page, "Lull").waitFor();
  const accused = await watched(page);
  for (const [name, wind] of [
    ["Lull", "14"],
    ["Mean", "16"],
    ["Puff", "20"],
  ]) {
    await inputOf(page, name).fill(wind);
    await page.keyboard.press("Tab");
    await page.waitForTimeout(300);
  }
  await until(
    async () => ["lull=14+kn", "mean=16+kn", "puff=20+kn"].every((one) => page.url().includes(one)),
    "all three in the address",
    5000,
  );
  assert.deepEqual(await accused(), []);
  assert.deepEqual(complaints, []);
  await close();
});

test("a lull above the mean is told when one leaves the three, and not before", async () => {
  const { page, close } = await openPage(browser, file);
  await inputOf(page, "Lull").waitFor();
  const accused = await watched(page);
  await inputOf(page, "Lull").fill("14");
  await page.keyboard.press("Tab");
  await inputOf(page, "Mean").focus();
  await page.waitForTimeout(500);
  assert.deepEqual(await accused(), []);
  await page.getByLabel("Wind given as").focus();
  await until(
    async () => (await page.locator(".between .note").textContent()).includes("rise"),
    "what is wrong between them",
    5000,
  );
  assert.equal(await inputOf(page, "Lull").inputValue(), "14");
  assert.equal(await inputOf(page, "Lull").getAttribute("aria-invalid"), "true");
  assert.equal(await inputOf(page, "Puff").getAttribute("aria-invalid"), "false");
  await page.locator(".unused b").filter({ hasText: "1 value is not used" }).waitFor();
  await inputOf(page, "Lull").fill("12");
  await page.keyboard.press("Enter");
  await until(async () => page.url().includes("lull=12+kn"), "the lull taken", 5000);
  assert.equal(await page.locator(".between .note").textContent(), "");
  assert.equal(await inputOf(page, "Lull").getAttribute("aria-invalid"), "false");
  await close();
});

test("what is no number is told at once, among the three too", async () => {
  const { page, close } = await openPage(browser, file);
  await inputOf(page, "Lull").fill("a lot");
  await page.keyboard.press("Tab");
  await page.locator(".together .field.faulty .note").first().waitFor();
  await close();
});

test("readings are taken as one writes them down", () => {
  const written = {
    "8 10 12 14": ["8", "10", "12", "14"],
    "8, 10, 12": ["8", "10", "12"],
    "8;10; 12": ["8", "10", "12"],
    "8,5 10,2 9": ["8,5", "10,2", "9"],
    "8,5; 10,2": ["8,5", "10,2"],
    "8,5, 10,2, 9": ["8,5", "10,2", "9"],
    "8,10,12,14": ["8", "10", "12", "14"],
    "8\n10\n\n12.5": ["8", "10", "12.5"],
    "5 m/s, 6 m/s 12kn": ["5 m/s", "6 m/s", "12kn"],
    " \n": [],
  };
  for (const [text, readings] of Object.entries(written))
    assert.deepEqual(readingsIn(text), readings, text);
});

test("readings in one line are taken; what is none stays with its note over a reload", async () => {
  const { page, complaints, close } = await openPage(browser, `${file}${READINGS}`);
  const area = page.getByLabel(/^Readings in/);
  await area.fill("8 10 12,5 14");
  await area.blur();
  await until(async () => (await area.inputValue()) === "8.0\n10.0\n12.5\n14.0", "four", 5000);
  await area.fill("8 10 many");
  await area.blur();
  const note = page.locator("[data-at='day.readings'] .note");
  await until(async () => /many/.test(await note.textContent()), "what is wrong", 5000);
  await page.reload();
  await until(async () => /many/.test(await area.inputValue()), "the text again", 5000);
  assert.match(await note.textContent(), /many/);
  assert.deepEqual(complaints, []);
  await close();
});

test("a forecast says how lull, mean and puff came of it, in the unit of the page", async () => {
  const { page, close } = await openPage(browser, `${file}${FORECAST}`);
  const origin = page.locator("p.note", { hasText: "From a forecast of 14.0 kn" });
  await origin.waitFor();
  await page.getByLabel("Gust in").fill("20");
  await page.keyboard.press("Enter");
  await page.locator("p.note", { hasText: "gusts 20.0 kn" }).waitFor();
  await page.evaluate(() => {
    location.hash = location.hash.replace("#today?", "#today?speed=m%2Fs&");
  });
  await page.locator("p.note", { hasText: "From a forecast of 7.2 m/s" }).waitFor();
  await page.getByLabel("Wind given as").selectOption("wind");
  await page.locator("p.note", { hasText: "From a forecast" }).waitFor({ state: "hidden" });
  await close();
});
