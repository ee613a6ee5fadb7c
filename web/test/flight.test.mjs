// flight.test.mjs - the view Flight in Chromium: sliders, picture, margins by name, links.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { openBrowser, openPage, sizes, until } from "./browser.mjs";
import { lullwise } from "./desk.mjs";

const address = new URL("../../build/page/lullwise.html", import.meta.url).href;
let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

const said = (page) => page.locator(".stage [role=img]").getAttribute("aria-label");
const outcome = (page) => page.locator(".stage .outcome").textContent();

async function openFlight(words, size, more) {
  const opened = await openPage(browser, `${address}#flight${words}`, size, more);
  await opened.page.locator(".stage .outcome:not(:empty)").waitFor({ timeout: 60_000 });
  return opened;
}

for (const [name, size] of Object.entries({ ...sizes, narrow: { width: 320, height: 640 } })) {
  test(`on a ${name} screen the flight is a picture with words, and all fits`, async () => {
    const { page, complaints, close } = await openFlight("?wind=12+kn&heading=100+deg&pin=B", size);
    assert.match(await said(page), /^Flies at [\d.]+ kn on 100°\..*Ride height \d+ cm.*flap.*°/);
    assert.equal(await page.locator(".margins .first").count(), 1);
    assert.deepEqual(complaints, []);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
    await close();
  });
}

test("more wind by the keyboard lifts the hull, the address leads to that flight", async () => {
  const { page, close } = await openFlight(
    "?wind=8+kn&heading=100+deg&heel=15+deg&place=0.8+m&turns=0+turns&pin=D",
  );
  const heights = [],
    height = async () => Number(/height (\d+) cm/.exec(await said(page))[1]);
  heights.push(await height());
  const was = await said(page);
  for (let i = 0; i < 6; i++) await page.getByLabel("Wind", { exact: true }).press("ArrowRight");
  await until(async () => (await said(page)) !== was, "another flight");
  await until(async () => /wind=11\+kn/.test(page.url()), "the wind in the address");
  heights.push(await height());
  assert.ok(heights[1] > heights[0], `${heights}`);
  const now = await said(page),
    { page: other, close: closeOther } = await openFlight(page.url().split("#flight")[1]);
  assert.equal(await said(other), now);
  await closeOther();
  await close();
});

test("rudder lift wound on puts the bow down; left open it is wound for speed again", async () => {
  const { page, close } = await openFlight("?wind=12+kn&heading=100+deg&pin=B");
  const first = await said(page);
  for (let i = 0; i < 20; i++)
    await page.getByRole("button", { name: "More: Rudder lift on" }).click();
  const bow = async () => Number(/bow up (-?[\d.]+)°/.exec(await said(page))[1]);
  const was = Number(/bow up (-?[\d.]+)°/.exec(first)[1]);
  await until(async () => (await bow()) < was - 0.5, "the bow down");
  await page.locator(".slide", { hasText: "Rudder lift on" }).getByRole("checkbox").check();
  await until(async () => (await said(page)) === first, "the flight for speed");
  await close();
});

test("what runs out first on the picture's words is the bar that is marked", async () => {
  const { page, close } = await openFlight("?wind=12+kn&heading=100+deg&pin=B");
  const [, words] = /First to run out: (.*)\.$/.exec(await outcome(page));
  assert.equal((await page.locator(".margins .first .name").textContent()).toLowerCase(), words);
  await close();
});

test("where she does not fly the page says what to try; without a balance no margins", async () => {
  const { page, close } = await openFlight("?wind=6+kn&pin=C");
  await page.locator(".advice:not(:empty)").waitFor({ timeout: 60_000 });
  assert.match(await page.locator(".advice").textContent(), /Steady flight .* begins at [\d.]+ kn/);
  await page.goto(`${address}#flight?wind=4+kn&heading=25+deg&turns=-6+turns&pin=D`);
  await until(async () => /No steady balance/.test(await outcome(page)), "no balance");
  assert.ok(!(await page.locator(".margins").isVisible()));
  await page.locator(".advice:not(:empty)").waitFor({ timeout: 60_000 });
  await close();
});

test("in m/s the wind moves in m/s, and the address keeps the flight", async () => {
  const { page, close } = await openFlight("?speed=m/s&wind=6+m/s&heading=100+deg");
  assert.equal(await page.locator(".slide output").first().textContent(), "6.0 m/s");
  await page.getByRole("button", { name: "More: Wind", exact: true }).click();
  await until(
    async () => (await page.locator(".slide output").first().textContent()) === "6.3 m/s",
    "a step of 0.25 m/s",
  );
  await close();
});

test("small motions are told in the words of the command line, and anew after a move", async () => {
  const { page, complaints, close } = await openFlight("?wind=12+kn&heading=50+deg&pin=B");
  await page.locator(".modes > summary").click();
  const verdict = page.locator(".modes p").first();
  await verdict.waitFor({ timeout: 60_000 });
  const words = ["heron", "light", "breeze"].flatMap((name, i) => [
    ["--boat", "--sailor", "--day"][i],
    new URL(`../../demo/${name}.yaml`, import.meta.url).pathname,
  ]);
  const { stdout } = lullwise([
    "modes",
    ...words,
    "--wind",
    "12 kn",
    "--heading",
    "50°",
    "--pin",
    "B",
  ]);
  const printed = stdout.replace(/\s+/g, " ");
  const told = [
    verdict,
    page.locator(".modes tbody th"),
    page.locator(".modes dd"),
    page.locator(".modes .note"),
  ];
  for (const some of told)
    for (const text of await some.allTextContents())
      assert.ok(printed.includes(text), `${text}\n${printed}`);
  assert.equal(await page.locator(".modes dd").count(), 3);
  const was = await verdict.textContent();
  for (let i = 0; i < 6; i++)
    await page.getByRole("button", { name: "More: Wind", exact: true }).click();
  await until(async () => (await verdict.textContent()) !== was, "other motions");
  assert.deepEqual(complaints, []);
  await close();
});
