// views.test.mjs - every view, on phone and laptop, from a file and from the desk, in both themes.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import {
  file,
  goTo,
  openBrowser,
  openPage,
  settled,
  sizes,
  views,
  violations,
} from "./browser.mjs";
import { openDesk } from "./desk.mjs";

let browser, desk;
before(async () => {
  [browser, desk] = await Promise.all([openBrowser(), openDesk()]);
});
after(async () => {
  await Promise.all([browser?.close(), desk?.close()]);
});

const isWithin = (page) => page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);

for (const [place, addressOf] of [
  ["a file", () => file],
  ["the desk", () => desk.address],
]) {
  for (const [name, size] of Object.entries(sizes)) {
    test(`from ${place} on a ${name} every view fits, is accessible, asks no network`, async () => {
      const { page, requests, complaints, close } = await openPage(browser, addressOf(), size);
      for (const view of views) {
        await goTo(page, view);
        assert.ok(await isWithin(page), `${view} is wider than the ${name}`);
        for (const colorScheme of ["light", "dark"]) {
          await page.emulateMedia({ colorScheme });
          await settled(page);
          assert.deepEqual(await violations(page), [], `${view}, ${colorScheme}`);
        }
      }
      const own = [
        "/",
        "/app.webmanifest",
        "/offline.js",
        "/icon.svg",
        "/days",
        "/days/removed",
      ].map((path) => new URL(path, desk.address).href);
      const strange = requests.filter(
        (one) => one !== file && !own.includes(one) && !one.startsWith("blob:"),
      );
      assert.deepEqual(strange, []);
      assert.deepEqual(complaints, []);
      await close();
    });
  }
}

test("at 320 px and on a screen of 4K every view fits", async () => {
  for (const size of [
    { width: 320, height: 568 },
    { width: 3840, height: 2160 },
  ]) {
    const { page, close } = await openPage(browser, file, size);
    await settled(page);
    for (const view of views) {
      await goTo(page, view);
      assert.ok(await isWithin(page), `${view} is wider than ${size.width} px`);
    }
    await close();
  }
});

// Lines up to 60 letters, pins whose labels are as long as they may be; days on which no pin is
// held, none flies for long, none flies.
const name = "A very long name that a proud owner gave to his beloved boat";
const days = {
  "the demo day": "",
  "a day of long names": [
    ...["boat", "sailor", "day"].map((kind) => `${kind}.name=${name}`),
    "boat.pins.Longest label A=4.1 deg",
    "boat.pins.Longest label B=3 deg",
    "boat.pins.Middle of them=2 deg",
  ].join("&"),
  "a day on which none is held":
    "day.wind.lull=18 kn&day.wind.mean=22 kn&day.wind.puff=28 kn&day.water.temperature=6 degC",
  "a gale":
    "day.wind.lull=28 kn&day.wind.mean=34 kn&day.wind.puff=45 kn&day.water.temperature=6 degC",
  "a day on which nothing flies": "day.wind.lull=2 kn&day.wind.mean=3 kn&day.wind.puff=4 kn",
};

for (const [day, words] of Object.entries(days)) {
  test(`on ${day} a phone's first screen has pin, hold, turns, a page of paper all`, async () => {
    const { page, complaints, close } = await openPage(
      browser,
      `${file}#today?${encodeURI(words)}`,
      { width: 390, height: 844 },
    );
    for (const size of [
      { width: 320, height: 568 },
      { width: 390, height: 844 },
    ]) {
      await page.setViewportSize(size);
      await settled(page);
      const flies = (await page.locator(".best .pin").count()) > 0;
      const last = page
        .locator(".best")
        .locator("dl, p")
        .nth(flies ? 2 : 0);
      const bottom = await last.evaluate((one) => one.getBoundingClientRect().bottom);
      const nav = await page.locator("nav").evaluate((bar) => bar.getBoundingClientRect().top);
      assert.ok(bottom <= nav, `${bottom} of ${nav} px`);
      assert.ok(await isWithin(page));
    }
    const paper = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    assert.equal(paper.match(/\/Type \/Page\b/g).length, 1);
    assert.deepEqual(complaints, []);
    await close();
  });
}

test("on paper Boat has every measurement, and on the screen they are folded again", async () => {
  const { page, close } = await openPage(browser, `${file}#boat`);
  await settled(page);
  const open = () => page.locator("details.section[open]").count();
  assert.equal(await open(), 0);
  await page.evaluate(() => {
    addEventListener("beforeprint", () => {
      globalThis.unfolded = document.querySelectorAll("details.section[open]").length;
    });
  });
  await page.pdf();
  assert.equal(
    await page.evaluate(() => globalThis.unfolded),
    await page.locator("details.section").count(),
  );
  assert.equal(await open(), 0);
  await close();
});

test("in the dark theme drawings are dark too, and their lines stand out", async () => {
  const { page, close } = await openPage(browser, `${file}#boat`, undefined, {
    colorScheme: "dark",
  });
  await settled(page);
  // as the theme's filter shows it, which turns light and dark round
  const bright = (selector, what) =>
    page
      .locator(selector)
      .first()
      .evaluate((one, member) => {
        const { filter } = getComputedStyle(one.closest("svg"));
        const turned = Number(/invert\(([\d.]+)\)/.exec(filter)?.[1] ?? 0);
        const [r, g, b] = getComputedStyle(one)[member].match(/\d+/g).map(Number);
        return ((r + g + b) / 3) * (1 - 2 * turned) + 255 * turned;
      }, what);
  const paper = await bright(".picture svg > rect", "fill"),
    hull = await bright(".picture svg path", "fill");
  const line = await bright(".picture svg path", "stroke"),
    words = await bright(".picture svg text", "fill");
  assert.ok(
    paper < 60 && hull < 90 && line > 180 && words > 180,
    `${paper} ${hull} ${line} ${words}`,
  );
  await close();
});

test("the page is shorter than 690 kB", async () => {
  assert.ok((await readFile(new URL(file))).length < 690_000);
});
