// keep.test.mjs - nothing entered is lost: refused texts, records by identity, links, two tabs.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, until } from "./browser.mjs";

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

const fieldAt = (page, path) => page.locator(`[data-at="${path}"]`);
const inputAt = (page, path) => fieldAt(page, path).locator("input");

async function type(page, path, text) {
  await inputAt(page, path).fill(text);
  await inputAt(page, path).press("Enter");
}

// As text, or as the same number.
const holds = (page, path, text) =>
  until(async () => {
    const value = await inputAt(page, path).inputValue();
    return value === text || (value !== "" && Number(value) === Number(text));
  }, `${path} at ${text}`);

const hasInAddress = (page, text) =>
  until(() => page.url().includes(text), `${text} in the address`);

const go = (page, view) => page.locator(`nav a[href="#${view}"]`).click();

const unused = (page) => page.locator(".unused:not([hidden])");

/** The names to choose from, of one kind. */
const namesOf = (page, label) =>
  page.getByLabel(label, { exact: true }).locator("option").allTextContents();

async function openSection(page, key) {
  const section = page.locator(`#section-${key}`);
  if ((await section.getAttribute("open")) === null)
    await section.locator("summary").first().click();
}

test("a refused number holds nothing back, and stays in its box, over a reload too", async () => {
  const { page, complaints, close } = await openPage(browser, `${file}#boat`);
  await openSection(page, "main_foil");
  await type(page, "boat.main_foil.span", "70");
  await unused(page).waitFor();
  await openSection(page, "rig");
  await type(page, "boat.rig.sail_area", "7.5");
  await hasInAddress(page, "boat.rig.sail_area=7.5");
  assert.ok(!page.url().includes("main_foil.span"));
  const isThere = async () => {
    await openSection(page, "main_foil");
    await holds(page, "boat.main_foil.span", "70");
    assert.match(
      await fieldAt(page, "boat.main_foil.span").locator(".note").textContent(),
      /outside its range/,
    );
    assert.match(await unused(page).textContent(), /1 value is not used:.*span.*70/);
  };
  await isThere();
  await go(page, "flight");
  assert.match(await unused(page).textContent(), /span/);
  await go(page, "boat");
  await isThere();
  await page.reload();
  await isThere();
  assert.deepEqual(complaints, []);
  await close();
});

test("the line of what is not used leads to its field, and can leave it out", async () => {
  const { page, close } = await openPage(browser, `${file}#boat`);
  await openSection(page, "main_foil");
  await type(page, "boat.main_foil.span", "70");
  await go(page, "compare");
  await unused(page).getByRole("button", { name: /span/ }).click();
  await until(
    () => inputAt(page, "boat.main_foil.span").evaluate((one) => one === document.activeElement),
    "the field in focus",
  );
  await unused(page).getByRole("button", { name: "Leave them out" }).click();
  await holds(page, "boat.main_foil.span", "0.96");
  assert.equal(await unused(page).count(), 0);
  await close();
});

test("a refused number on Today does not keep a later one from being taken", async () => {
  const { page, close } = await openPage(browser, file);
  await type(page, "day.wind.lull", "much");
  await type(page, "sailor.person.mass", "72");
  await hasInAddress(page, "sailor.person.mass=72");
  await holds(page, "day.wind.lull", "much");
  assert.match(await unused(page).textContent(), /lull “much”/);
  await close();
});

test("of a link with one bad value the rest is taken and that one is named", async () => {
  const link =
    "#today?day.wind.lull=much&day.wind.mean=13+kn&sailor.person.mass=80+kg&boat.no.such=1";
  const { page, complaints, close } = await openPage(browser, file + link);
  await holds(page, "day.wind.mean", "13");
  await holds(page, "sailor.person.mass", "80");
  await holds(page, "day.wind.lull", "much");
  assert.match(await unused(page).textContent(), /2 values are not used:/);
  assert.match(await unused(page).textContent(), /no.such “1”/);
  assert.deepEqual(complaints, []);
  await close();
});

test("the invented ones stay as they are: an edit makes a copy", async () => {
  const { page, close } = await openPage(browser, file);
  await type(page, "sailor.person.mass", "72");
  await hasInAddress(page, "sailor.person.mass=72");
  assert.deepEqual(await namesOf(page, "Who sails"), [
    "Wren, changed",
    "Wren (invented)",
    "Bear (invented)",
  ]);
  await page.getByLabel("Who sails").selectOption({ label: "Wren (invented)" });
  await holds(page, "sailor.person.mass", "64");
  await page.getByLabel("Who sails").selectOption({ label: "Wren, changed" });
  await holds(page, "sailor.person.mass", "72");
  await close();
});

test("a link with a sailor of the same name leaves mine, and is kept when asked", async () => {
  const { page, close } = await openPage(browser, file);
  await type(page, "sailor.person.mass", "72");
  await hasInAddress(page, "sailor.person.mass=72");
  await page.goto("about:blank");
  await page.goto(`${file}#today?sailor.name=Wren,+changed&sailor.person.mass=90+kg`);
  await holds(page, "sailor.person.mass", "90");
  const keep = page.getByRole("button", { name: "Keep it: sailor" });
  await keep.waitFor();
  await page.getByLabel("Who sails").selectOption({ index: 0 });
  await holds(page, "sailor.person.mass", "72");
  assert.equal((await namesOf(page, "Who sails")).length, 3);
  await page.getByRole("button", { name: "Undo" }).click();
  await holds(page, "sailor.person.mass", "90");
  await keep.click();
  await until(async () => !(await keep.isVisible()), "kept");
  assert.deepEqual((await namesOf(page, "Who sails")).slice(0, 2), [
    "Wren, changed",
    "Wren, changed · 2",
  ]);
  await close();
});

test("undo reaches what is kept", async () => {
  const { page, close } = await openPage(browser, file);
  const kept = () =>
    page.evaluate(() =>
      Object.keys(localStorage)
        .filter((key) => key.startsWith("lullwise.record."))
        .map((key) => JSON.parse(localStorage[key]).person?.mass),
    );
  await type(page, "sailor.person.mass", "72");
  await hasInAddress(page, "sailor.person.mass=72");
  await type(page, "sailor.person.mass", "74");
  await hasInAddress(page, "sailor.person.mass=74");
  assert.deepEqual(await kept(), ["74 kg"]);
  await page.getByRole("button", { name: "Undo" }).click();
  await holds(page, "sailor.person.mass", "72");
  assert.deepEqual(await kept(), ["72 kg"]);
  await page.getByRole("button", { name: "Undo" }).click();
  await holds(page, "sailor.person.mass", "64");
  assert.deepEqual(await kept(), []);
  await page.getByRole("button", { name: "Redo" }).click();
  await holds(page, "sailor.person.mass", "72");
  assert.deepEqual(await kept(), ["72 kg"]);
  await close();
});

test("what is forgotten is had again by undo; the invented cannot be forgotten", async () => {
  const { page, close } = await openPage(browser, file);
  await page.getByRole("button", { name: "Copy: sailor" }).click();
  const copied = ["Wren (invented), copy", "Wren (invented)", "Bear (invented)"];
  await until(async () => `${await namesOf(page, "Who sails")}` === `${copied}`, "a copy");
  await page.getByLabel("Who sails").selectOption({ label: "Bear (invented)" });
  await page.locator(".tools > summary").click();
  const list = page.getByLabel("Kept in this browser");
  await until(
    async () => (await list.locator("option").count()) === 1,
    "one that can be forgotten",
  );
  await page.getByRole("button", { name: "Forget it" }).click();
  await until(async () => (await namesOf(page, "Who sails")).length === 2, "a shorter list");
  assert.ok(!(await list.isVisible()));
  await page.getByRole("button", { name: "Undo" }).click();
  await until(async () => `${await namesOf(page, "Who sails")}` === `${copied}`, "the copy again");
  await close();
});

test("two tabs with one day: what each enters stands in both, and is kept", async () => {
  const { page, close } = await openPage(browser, file);
  await type(page, "day.wind.lull", "9");
  await hasInAddress(page, "day.wind.lull=9");
  const other = await page.context().newPage();
  await other.goto(file);
  await holds(other, "day.wind.lull", "9");
  await type(other, "day.wind.puff", "17");
  await holds(page, "day.wind.puff", "17");
  await type(page, "day.wind.mean", "13");
  await holds(other, "day.wind.mean", "13");
  await other.getByRole("button", { name: "Undo" }).click();
  await holds(other, "day.wind.puff", "15.5");
  await holds(page, "day.wind.puff", "15.5");
  await holds(page, "day.wind.mean", "13");
  const third = await page.context().newPage();
  await page.close();
  await other.close();
  await third.goto(file);
  await holds(third, "day.wind.mean", "13");
  await holds(third, "day.wind.puff", "15.5");
  await close();
});

test("a new boat, sailor and day begin with the presets and are kept", async () => {
  const { page, complaints, close } = await openPage(browser, file);
  for (const [kind, label] of [
    ["sailor", "Who sails"],
    ["day", "Day"],
    ["boat", "Boat"],
  ]) {
    await page.getByRole("button", { name: `New: ${kind}` }).click();
    await until(async () => (await namesOf(page, label))[0] === `New ${kind}`, `a new ${kind}`);
  }
  await page.reload();
  await until(async () => (await namesOf(page, "Boat"))[0] === "New boat", "the new boat still");
  assert.equal(await page.getByLabel("Boat", { exact: true }).inputValue().then(Boolean), true);
  assert.deepEqual(complaints, []);
  await close();
});

test("the link is copied by a button, and says all that is shown", async () => {
  const { page, close } = await openPage(browser, file, undefined, {
    permissions: ["clipboard-read", "clipboard-write"],
  });
  await type(page, "sailor.person.mass", "72");
  await hasInAddress(page, "sailor.person.mass=72");
  await page.locator(".tools > summary").click();
  await page.getByRole("button", { name: "Copy the link" }).click();
  await until(async () => /copied/.test(await page.locator(".status").textContent()), "the word");
  assert.equal(await page.evaluate(() => navigator.clipboard.readText()), page.url());
  await close();
});

test("a refused number stays when another section is changed as a whole", async () => {
  const { page, close } = await openPage(browser, `${file}#boat`);
  await openSection(page, "main_foil");
  await type(page, "boat.main_foil.span", "70");
  await unused(page).waitFor();
  await openSection(page, "pins");
  await page.getByRole("button", { name: "Take pin D away" }).click();
  await until(async () => (await fieldAt(page, "boat.pins.D").count()) === 0, "one pin less");
  await holds(page, "boat.main_foil.span", "70");
  assert.match(await unused(page).textContent(), /span/);
  await close();
});
