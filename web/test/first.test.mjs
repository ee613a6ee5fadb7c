// first.test.mjs - what a first visitor is told: what this is, what is invented, what is left.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, sizes, until } from "./browser.mjs";

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

test("before anything has started the page says what it is and whose boat it shows", async () => {
  const { page, close } = await openPage(browser, file, undefined, { javaScriptEnabled: false });
  assert.match(
    await page.locator("#about").textContent(),
    /which set-up to sail\s+today, and why.*invented/s,
  );
  await close();
});

test("what is invented is said until it is the reader's own", async () => {
  const { page, complaints, close } = await openPage(browser, file);
  const about = page.locator("#about");
  await until(
    async () => /^Boat, sailor and day are invented/.test(await about.textContent()),
    "all three",
  );
  for (const kind of ["boat", "sailor"]) {
    await page.getByRole("button", { name: `New: ${kind}` }).click();
  }
  await until(async () => /^Day is invented/.test(await about.textContent()), "the day alone");
  await page.getByRole("button", { name: "New: day" }).click();
  await until(async () => !(await about.isVisible()), "nothing invented");
  assert.deepEqual(complaints, []);
  await close();
});

test("of a new boat the values that are one's own are counted", async () => {
  const { page, close } = await openPage(browser, `${file}#boat`);
  const line = page.locator(".measured").first();
  await page.getByRole("button", { name: "New: boat" }).click();
  await until(async () => /^0 of \d\d values/.test(await line.textContent()), "none");
  await page.locator("#section-rig > summary").click();
  const area = page.locator('[data-at="boat.rig.sail_area"] input');
  await area.fill("7.31");
  await area.press("Enter");
  await until(async () => /^1 of \d\d values/.test(await line.textContent()), "one");
  await close();
});

test("a print says when it was made", async () => {
  const { page, close } = await openPage(browser, file);
  await page.locator(".paper").waitFor({ state: "attached" });
  await page.emulateMedia({ media: "print" });
  assert.match(
    await page.locator(".paper").textContent(),
    /^Grey Heron .* · \d{4}-\d\d-\d\d \d\d:\d\d$/,
  );
  assert.ok(!(await page.locator("#about").isVisible()));
  await close();
});

test("on the beach pin, hold and turns stand in letters that fill a phone", async () => {
  const { page, complaints, close } = await openPage(browser, file, sizes.phone);
  const large = page.getByRole("button", { name: "In large letters" });
  await large.waitFor({ timeout: 60_000 });
  const pin = await page.locator(".best .pin").textContent();
  await large.click();
  const beach = page.locator("dialog.beach");
  assert.equal(await beach.locator(".pin").textContent(), pin);
  const letters = beach.locator("dd, .pin");
  for (const one of await letters.all()) {
    const { x, y, height, wide, size } = await one.evaluate((at) => ({
      ...at.getBoundingClientRect().toJSON(),
      wide: at.scrollWidth,
      size: parseFloat(getComputedStyle(at).fontSize),
    }));
    assert.ok(size >= 36, `${size} px`);
    assert.ok(y >= 0 && y + height <= sizes.phone.height, "on the first screen");
    assert.ok(x + wide <= sizes.phone.width, "not cut");
  }
  await page.keyboard.press("Escape");
  assert.equal(await beach.count(), 0);
  assert.deepEqual(complaints, []);
  await close();
});
