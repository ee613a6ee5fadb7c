// ride.test.mjs - the view Ride in Chromium: it plays, steps by keyboard, and a seed is a ride.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, settled, sizes, until } from "./browser.mjs";

const WILD = "?pin=A&wind=17+kn&course=downwind&minutes=1&seed=4"; // much happens
let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

const said = (page) => page.locator(".ride .stage [role=img]").getAttribute("aria-label");
const clock = (page) => page.locator(".clock output").textContent();
const seconds = (text) => {
  const [, m, s] = /(\d+):([\d.]+)/.exec(text);
  return 60 * m + Number(s);
};
const now = async (page) => seconds(await clock(page));

async function openRide(words, size, more) {
  const opened = await openPage(browser, `${file}#ride${words}`, size, more);
  await settled(opened.page);
  await until(
    async () =>
      (await opened.page.locator(".clock output").count()) && /of/.test(await clock(opened.page)),
    "a ride",
  );
  return opened;
}

for (const [name, size] of Object.entries({ ...sizes, narrow: { width: 320, height: 640 } })) {
  test(`on a ${name} screen the ride is a picture with words, and all fits`, async () => {
    const { page, complaints, close } = await openRide(WILD, size);
    assert.match(
      await said(page),
      /^At 0:00\.0: wind [\d.]+ kn, speed .*hull above the water .*flap down .*°/,
    );
    assert.equal(await page.locator(".traces .panel").count(), 4);
    assert.deepEqual(complaints, []);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
    await close();
  });
}

test("on a phone picture and Play are in sight together, the answer while one edits", async () => {
  const { page, close } = await openRide("?pin=C&minutes=1", { width: 390, height: 844 });
  const box = (selector) => page.locator(selector).first().boundingBox();
  const nav = await box("nav");
  const picture = await box(".ride .side svg");
  const play = await box(".clock .play");
  assert.ok(picture.y >= 0 && play.y > picture.y && play.y + play.height < nav.y);

  const line = page.locator(".answer-line p");
  const sum = page.locator(".ride .outcome").first();
  assert.equal(await line.textContent(), await sum.textContent());
  const wind = page.getByLabel("Wind", { exact: true });
  await wind.focus();
  await page.keyboard.press("ArrowRight");
  assert.equal(await line.textContent(), "Working …");
  await page.keyboard.press("ArrowLeft"); // back to what is shown
  await page.keyboard.press("ArrowRight");
  await until(async () => !/Working/.test(await line.textContent()), "the ride sailed");
  assert.equal(await line.textContent(), await sum.textContent());
  const { y, height } = await box(".answer-line");
  assert.ok(y >= 0 && y + height < nav.y);
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowLeft"); // there and back again: nothing new to sail
  await until(async () => !/Working/.test(await line.textContent()), "the same ride");
  await close();
});

test("it plays and pauses from the keyboard, and moves the boat", async () => {
  const { page, close } = await openRide("?pin=C&minutes=1");
  const boat = () => page.locator(".ride .side g").first().getAttribute("transform");
  const was = await boat(),
    play = page.getByRole("button", { name: "Play" });
  assert.equal(await now(page), 0);
  await play.focus();
  await page.keyboard.press("Enter");
  await until(async () => (await now(page)) > 0.5, "a later moment");
  assert.notEqual(await boat(), was);
  await page.getByRole("button", { name: "Pause" }).press("Space");
  const at = await now(page);
  await new Promise((on) => setTimeout(on, 300));
  assert.equal(await now(page), at);
  await close();
});

test("arrow keys go from moment to moment, and the words follow", async () => {
  const { page, close } = await openRide(WILD);
  const slide = page.locator(".clock input");
  await slide.focus();
  for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowRight");
  assert.ok(Math.abs((await now(page)) - 0.5) < 1e-9);
  assert.match(await said(page), /^At 0:00\.5: /);
  await page.keyboard.press("End");
  assert.equal(await now(page), 60);
  await close();
});

test("the next event is the first of the list, and a press on one goes there", async () => {
  const { page, close } = await openRide(WILD);
  const times = (await page.locator(".events .when").allTextContents()).map(seconds);
  assert.ok(times.length > 0);
  await page.getByRole("button", { name: "Next event" }).click();
  assert.equal(await now(page), times[0]);
  await page.locator(".events button").last().click();
  assert.equal(await now(page), times.at(-1));
  await page.getByRole("button", { name: "Event before" }).click();
  assert.ok((await now(page)) < times.at(-1));
  await close();
});

test("whoever wants less motion gets a still every second, and none unasked", async () => {
  const { page, close } = await openRide("?pin=C&minutes=1", sizes.laptop, {
    reducedMotion: "reduce",
  });
  await new Promise((on) => setTimeout(on, 500));
  assert.equal(await now(page), 0);
  await page.getByRole("button", { name: "Play" }).click();
  const seen = new Set();
  for (const end = Date.now() + 2600; Date.now() < end; ) seen.add(await now(page));
  const times = [...seen];
  for (let i = 1; i < times.length; i++) assert.ok(times[i] - times[i - 1] >= 0.95, `${times}`);
  await close();
});

test("the same address is the same ride, and another seed another", async () => {
  const told = async (words) => {
    const { page, close } = await openRide(words);
    const events = await page.locator(".events li").allTextContents();
    await page.locator(".clock input").press("End");
    const answer = [...events, await said(page)].join("\n");
    await close();
    return answer;
  };
  const one = await told(WILD);
  assert.equal(await told(WILD), one);
  assert.notEqual(await told(WILD.replace("seed=4", "seed=5")), one);
});

test("other gusts are the next seed, which the address keeps", async () => {
  const { page, close } = await openRide("?pin=C&minutes=1&seed=7");
  await page.getByRole("button", { name: "Other gusts" }).click();
  await until(async () => /seed=8/.test(page.url()), "the next seed");
  await close();
});
