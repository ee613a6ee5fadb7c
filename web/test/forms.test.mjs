// forms.test.mjs - the forms of Today and Boat: where the wind comes from, pins, unusual values.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, until } from "./browser.mjs";
import { lullwise } from "./desk.mjs";

const demo = new URL("../../demo/", import.meta.url).pathname;
let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

test("a day keeps its mean wind when its wind is given as a forecast instead", async () => {
  const { page, complaints, close } = await openPage(browser, file);
  await page.getByLabel("Wind given as").selectOption("forecast");
  await until(
    async () => page.url().includes("day.forecast.mean=12.5+kn"),
    "the forecast in the address",
  );
  assert.ok(!page.url().includes("day.wind.lull=1"));
  assert.equal(await page.getByLabel("Mean in kn").inputValue(), "12.5");
  assert.deepEqual(complaints, []);
  await close();
});

test("pins whose labels are numbers stay in the owner's order", async () => {
  const link = "#boat?boat.pins.3=4+deg&boat.pins.2=3+deg&boat.pins.1.5=2+deg";
  const { page, close } = await openPage(browser, `${file}${link}`);
  await page.locator("#section-pins summary").first().click();
  const labels = page.locator("#section-pins .field > label");
  await labels.first().waitFor();
  assert.deepEqual(
    (await labels.allTextContents()).map((text) => text.split(" ")[1]),
    ["3", "2", "1.5"],
  );
  assert.ok(page.url().endsWith(link));
  await close();
});

test("an unusual value is flagged as it is typed, one out of range is not taken", async () => {
  const { page, close } = await openPage(browser, `${file}#boat`);
  await page.locator("#section-hull > summary").click();
  const field = page
    .locator("#section-hull .field")
    .filter({ has: page.locator("label", { hasText: /^Mass/ }) });
  await field.locator("input").fill("65");
  await until(async () => /unusual/i.test(await field.locator(".note").textContent()), "a doubt");
  await field.locator("input").fill("9500");
  await field.locator("input").press("Enter");
  await until(
    async () => (await field.locator("input").getAttribute("aria-invalid")) === "true",
    "a fault",
  );
  assert.ok(!page.url().includes("9500"));
  await close();
});

test("a unit is shown by its sign and taken as sign or as text", async () => {
  const { page, close } = await openPage(browser, `${file}#boat`);
  await page.locator("#section-rig > summary").click();
  const input = page.getByLabel("Sail area in m²");
  assert.equal(await page.locator("#section-rig .unit", { hasText: "m²" }).first().count(), 1);
  for (const [typed, kept] of [
    ["7.5 m²", "7.5+m%C2%B2"],
    ["7.6 m2", "7.6+m2"],
    ["7.7", "7.7+m2"],
  ]) {
    await input.fill(typed);
    await input.press("Enter");
    await until(async () => page.url().includes(`rig.sail_area=${kept}`), `${typed} taken`, 5000);
    assert.equal(await input.getAttribute("aria-invalid"), "false");
  }
  await close();
});

test("where a number comes from is told in words behind a tap, no mark beside it", async () => {
  const { page, close } = await openPage(browser, `${file}#boat`);
  await page.locator("#section-rig > summary").click();
  const texts = await page.locator(".how > p").allTextContents();
  assert.ok(texts.length > 50);
  assert.deepEqual(
    texts.filter((text) => /\[|\]/.test(text)),
    [],
  );
  await page.getByLabel("How to measure: Profile drag").click();
  const tap = page.getByLabel("Where from: Profile drag");
  const { width, height } = await tap.boundingBox();
  assert.ok(width >= 44 && height >= 44);
  await tap.focus();
  await page.keyboard.press("Enter");
  await page.getByText("Judged: nobody has measured it.").locator("visible=true").waitFor();
  await close();
});

test("which measurement is worth taking better is stopped, asked anew, grows old", async () => {
  const { page, complaints, close } = await openPage(browser, `${file}#boat`);
  const card = page.locator("#ask-sensitivity");
  await card.locator("> summary").click();
  const begin = () => card.getByRole("button", { name: "Work it out" }).click();
  await begin();
  await until(
    async () => (await card.locator("progress").getAttribute("value")) !== "0",
    "some of the work done",
    180_000,
  );
  await card.getByRole("button", { name: "Stop" }).click();
  assert.ok(!(await card.locator("progress").isVisible()));
  assert.equal(await card.locator("tbody tr").count(), 0);
  await begin();
  await card.locator("tbody tr").first().waitFor({ timeout: 300_000 });
  const words = ["heron", "light", "breeze"].map((name) => `${demo}${name}.yaml`);
  const { stdout } = lullwise(["check", "--sensitivity", ...words]);
  const printed = stdout.slice(stdout.indexOf("What matters most")).split("\n");
  const cells = (line) => line.trim().split(/ {2,}/);
  const head = printed.findIndex((line) => cells(line)[0] === "measurement");
  const rows = printed.slice(head + 1, printed.indexOf("", head)).map(cells);
  const told = await card
    .locator("tbody tr")
    .evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent)));
  const ofLine = (row) => (row.at(-1) === "" ? row.slice(0, -1) : row); // a blank ends no line
  assert.deepEqual(told.map(ofLine), rows);
  assert.ok(told.some(([name]) => name.startsWith("Main foil: ")));
  await page.evaluate(() => {
    location.hash = "#boat?boat.main_foil.span=120+cm";
  });
  await card.locator(".question-answer.old tbody tr").first().waitFor();
  assert.deepEqual(complaints, []);
  await close();
});
