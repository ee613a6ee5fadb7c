// steps.test.mjs - a step stops where the engine would refuse; pins are sorted, renamed, kept.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, until } from "./browser.mjs";

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

const fieldOf = (page, name) =>
  page
    .locator(".field")
    .filter({ has: page.locator("label", { hasText: new RegExp(`^${name}`) }) });

/** Steps a field so many times; where it stands then. */
async function stepped(page, field, way, times) {
  const button = field.getByRole("button", { name: new RegExp(`^${way}:`) });
  for (let i = 0; i < times; i++) await button.evaluate((one) => one.click());
  await until(
    async () => (await button.getAttribute("aria-disabled")) === "true",
    `${way} at its end`,
    5000,
  );
  return field.locator("input").inputValue();
}

const isFaulty = (field) => field.evaluate((one) => one.classList.contains("faulty"));

for (const [name, way, end] of [
  ["Lull", "More", "12.5"],
  ["Mean", "Less", "10.0"],
  ["Mean", "More", "15.5"],
  ["Puff", "Less", "12.5"],
]) {
  test(`${name} steps ${way.toLowerCase()} as far as its neighbour and no further`, async () => {
    const { page, complaints, close } = await openPage(browser, file);
    const field = fieldOf(page, name).first();
    await field.locator("input").waitFor();
    assert.equal(await stepped(page, field, way, 9), end);
    assert.ok(!(await isFaulty(field)));
    assert.equal(await field.locator(".note").textContent(), "");
    assert.deepEqual(complaints, []);
    await close();
  });
}

test("in m/s a step stops short of its neighbour, never beyond", async () => {
  const { page, close } = await openPage(browser, `${file}#today?speed=m%2Fs`);
  const field = fieldOf(page, "Lull").first();
  await field.locator("input").waitFor();
  const end = Number(await stepped(page, field, "More", 9));
  const mean = (12.5 * 1852) / 3600;
  assert.ok(end <= mean && end > mean - 0.05, `${end}`);
  assert.ok(!(await isFaulty(field)));
  await close();
});

test("a gust steps from none to the forecast's mean, and the mean no further than it", async () => {
  const link = "#today?day.wind.lull=&day.wind.mean=&day.wind.puff=&day.forecast.mean=12.5+kn";
  const { page, close } = await openPage(browser, `${file}${link}`);
  const gust = fieldOf(page, "Gust").first();
  await gust.locator("input").waitFor();
  await gust.getByRole("button", { name: /^More:/ }).click();
  await until(
    async () => (await gust.locator("input").inputValue()) === "12.5",
    "gust at the mean",
  );
  assert.ok(!(await isFaulty(gust)));
  const mean = fieldOf(page, "Mean").first();
  assert.equal(await stepped(page, mean, "More", 3), "12.5");
  await close();
});

test("a pin steps as far as just beside its neighbour", async () => {
  const link = "#boat?boat.pins.A=4+deg&boat.pins.B=3.75+deg&boat.pins.C=1+deg";
  const { page, close } = await openPage(browser, `${file}${link}`);
  await page.locator("#section-pins > summary").click();
  const field = fieldOf(page, "Pin B").first();
  assert.equal(await stepped(page, field, "More", 4), "3.99");
  assert.ok(!(await isFaulty(field)));
  await close();
});

async function openPins(link) {
  const opened = await openPage(browser, `${file}${link}`);
  const section = opened.page.locator("#section-pins");
  await section.locator("> summary").click();
  const labels = async () =>
    (await section.locator(".field > label").allTextContents()).map((text) => text.split(" ")[1]);
  const add = async (label, value) => {
    await section.getByLabel("A new pin's label").fill(label);
    await section.getByLabel(/^Its incidence/).fill(value);
    await section.getByRole("button", { name: "Add", exact: true }).click();
  };
  const told = (what) =>
    until(async () => what.test(await section.locator("> .note").textContent()), `${what}`, 5000);
  return { ...opened, section, labels, add, told };
}

test("a pin that is added, or whose angle is changed, goes where its lift belongs", async () => {
  const { page, complaints, close, section, labels, add } = await openPins("#boat");
  assert.deepEqual(await labels(), ["A", "B", "C", "D"]);
  await add("B2", "2,6");
  await until(async () => `${await labels()}` === "A,B,B2,C,D", "B2 between B and C", 5000);
  const input = fieldOf(page, "Pin B2").locator("input").first();
  await input.fill("9");
  await input.press("Enter");
  await until(async () => `${await labels()}` === "B2,A,B,C,D", "B2 before A", 5000);
  assert.ok(await input.evaluate((one) => one === document.activeElement));
  await section.getByRole("button", { name: "Take pin B2 away" }).click();
  await until(async () => `${await labels()}` === "A,B,C,D", "B2 gone", 5000);
  assert.deepEqual(complaints, []);
  await close();
});

test("a pin is renamed, and what shows that pin goes on showing it", async () => {
  const { page, close, section, labels } = await openPins("#boat?pin=B");
  await section.getByLabel("Rename pin B").click();
  await section.getByLabel("New label of pin B").fill("middle");
  await section.getByRole("button", { name: "Rename it" }).locator("visible=true").click();
  await until(async () => `${await labels()}` === "A,middle,C,D", "the new label", 5000);
  await until(async () => page.url().includes("pin=middle"), "the pin in the address", 5000);
  await page.getByRole("button", { name: "Undo" }).click();
  await until(async () => `${await labels()}` === "A,B,C,D", "the old label", 5000);
  await close();
});

test("a second pin of a label is refused in words, and the first keeps its angle", async () => {
  const { page, close, section, labels, add, told } = await openPins("#boat");
  const angle = () => fieldOf(page, "Pin B").locator("input").first().inputValue();
  const before = await angle();
  await add("B", "2.9");
  await told(/given before/);
  assert.equal(await section.getByLabel("A new pin's label").inputValue(), "B");
  assert.equal(await angle(), before);
  await section.getByLabel("Rename pin A").click();
  await section.getByLabel("New label of pin A").fill("C");
  await section.getByRole("button", { name: "Rename it" }).locator("visible=true").click();
  await told(/given before/);
  await add("B2", "2.9");
  await until(async () => (await labels()).includes("B2"), "a label of its own", 5000);
  assert.equal(await section.locator("> .note").textContent(), "");
  await close();
});

test("the last pin is not taken away, and it is said why", async () => {
  const { page, close, labels, section, told } = await openPins("#boat?boat.pins.A=4+deg");
  await section.getByRole("button", { name: "Take pin A away" }).click();
  await told(/no pin|pins? .*(needs|least)/i);
  assert.deepEqual(await labels(), ["A"]);
  const input = fieldOf(page, "Pin A").locator("input").first();
  await input.fill("3.5");
  await input.press("Enter");
  await until(async () => page.url().includes("boat.pins.A=3.5+deg"), "another angle", 5000);
  await close();
});
