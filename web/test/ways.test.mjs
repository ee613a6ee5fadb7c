// ways.test.mjs - from a pin on Today to its flight and ride; the day's pin where none is chosen.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { test } from "node:test";
import { file, goTo, openBrowser, openPage, settled, until } from "./browser.mjs";

test("Flight and Ride show the day's pin, or the one whose way was taken", async (t) => {
  const browser = await openBrowser();
  t.after(() => browser.close());
  const { page, complaints, close } = await openPage(browser, `${file}#today?day.aim=easy`);
  await settled(page);
  const pins = await page.locator(".ranking li > .pin").allTextContents();
  const shown = () => page.locator(".pins label:has(:checked)").first().textContent();
  await goTo(page, "flight");
  assert.equal(await shown(), pins[0]);
  assert.notEqual(pins[0], "C"); // the middle one, where nothing is known: easy is the calmest
  await page.goto("about:blank");
  await page.goto(`${file}#ride?day.aim=easy`);
  await settled(page);
  assert.equal(await shown(), pins[0]);
  await goTo(page, "today");
  await page.getByRole("link", { name: `Ride with ${pins.at(-1)}` }).click();
  await until(async () => page.url().includes("#ride?"), "the ride", 10_000);
  assert.equal(await shown(), pins.at(-1));
  assert.deepEqual(complaints, []);
  await close();
});
