// state.test.mjs - back, forward, reload and a link show what was shown.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { file, goTo, openBrowser, openPage, settled, until } from "./browser.mjs";

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

const isAt = (page, view) =>
  until(
    async () =>
      new URL(page.url()).hash.startsWith(`#${view}`) &&
      (await page.locator(`nav a[href="#${view}"][aria-current=page]`).count()) === 1,
    `the view ${view}`,
  );

async function typeLull(page, text) {
  const lull = page.getByLabel("Lull in kn");
  await lull.fill(text);
  await lull.press("Enter");
  await until(async () => page.url().includes("day.wind.lull"), "the lull in the address");
  await settled(page);
}

test("back and forward lead through the views, and what was typed stays", async () => {
  const { page, complaints, close } = await openPage(browser, file);
  await settled(page);
  await typeLull(page, "9.5");
  for (const view of ["boat", "flight", "compare"]) await goTo(page, view);
  for (const view of ["flight", "boat", "today"]) {
    await page.goBack();
    await isAt(page, view);
    await settled(page);
  }
  assert.equal(await page.getByLabel("Lull in kn").inputValue(), "9.5");
  await page.goForward();
  await isAt(page, "boat");
  assert.ok(page.url().includes("day.wind.lull"));
  assert.deepEqual(complaints, []);
  await close();
});

test("what was entered stays on the way back, and a link followed can be undone", async () => {
  const { page, close } = await openPage(browser, file);
  const mass = () => page.locator('[data-at="sailor.person.mass"] input').inputValue();
  await page.getByLabel("Lull in kn").waitFor();
  await page.locator('nav a[href="#boat"]').click();
  await page.locator("#section-person > summary").click();
  await page.locator('[data-at="sailor.person.mass"] input').fill("72");
  await page.keyboard.press("Enter");
  await until(() => page.url().includes("mass=72"), "the mass in the address");
  await page.goBack();
  await isAt(page, "today");
  assert.equal(Number(await mass()), 72);
  await page.evaluate(() => {
    location.hash = "#today?sailor.person.mass=90+kg";
  });
  await until(async () => Number(await mass()) === 90, "the link's mass");
  await page.getByRole("button", { name: "Undo" }).click();
  await until(async () => Number(await mass()) === 72, "one's own again");
  await close();
});

test("a reload shows the same view with the same values", async () => {
  const { page, close } = await openPage(browser, file);
  await settled(page);
  await typeLull(page, "8,5");
  const best = await page.locator(".best").textContent(),
    address = page.url();
  await page.reload();
  await settled(page);
  assert.equal(page.url(), address);
  assert.equal(await page.getByLabel("Lull in kn").inputValue(), "8.5");
  assert.equal(await page.locator(".best").textContent(), best);
  await close();
});

test("a link shows the same answer to somebody who has opened nothing before", async () => {
  const { page, close } = await openPage(browser, file);
  await settled(page);
  await typeLull(page, "8.5");
  const best = await page.locator(".best").textContent(),
    address = page.url();
  const other = await openPage(browser, address);
  await settled(other.page);
  assert.equal(await other.page.locator(".best").textContent(), best);
  await other.close();
  await close();
});

test("what was entered is there when the page is opened again without its address", async () => {
  const { page, close } = await openPage(browser, file);
  await settled(page);
  await typeLull(page, "7.5");
  await page.goto("about:blank");
  await page.goto(file);
  await settled(page);
  assert.equal(await page.getByLabel("Lull in kn").inputValue(), "7.5");
  await close();
});

test("stopped, the work is not taken up again until it is asked for", async () => {
  const { page, close } = await openPage(browser, file);
  await settled(page);
  const lull = page.getByLabel("Lull in kn"),
    again = page.getByRole("button", { name: "Work it out" });
  await lull.fill("8");
  await lull.press("Enter");
  await page.getByRole("button", { name: "Stop" }).click();
  await new Promise((on) => setTimeout(on, 1000));
  assert.ok(await again.isVisible());
  await again.click();
  await settled(page);
  assert.ok(!(await again.isVisible()));
  assert.equal(await page.locator(".answers.old").count(), 0);
  await close();
});

test("a broken address shows the page all the same", async () => {
  const { page, complaints, close } = await openPage(browser, file);
  for (const address of [
    "#nowhere",
    "#today?day.wind.lull=much",
    "#today?%ff",
    "#today?boat.nothing.here=1",
    "#%",
  ]) {
    await page.goto("about:blank");
    await page.goto(file + address);
    await settled(page);
    assert.deepEqual(complaints, [], address);
  }
  await close();
});
