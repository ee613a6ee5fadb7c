// smoke.test.mjs - the page as a file, in Chromium: from a blank page to a choice.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { openBrowser, openPage, sizes, until } from "./browser.mjs";

const address = new URL("../../build/page/lullwise.html", import.meta.url).href;
let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

for (const [name, size] of Object.entries(sizes)) {
  test(`on a ${name} the page opens from a file and ranks every pin of the demo boat`, async () => {
    const { page, requests, complaints, close } = await openPage(browser, address, size);
    const ranking = page.locator(".ranking li");
    await ranking.first().waitFor({ timeout: 60_000 });
    assert.equal(await ranking.count(), 4);
    assert.deepEqual(complaints, []);
    assert.ok(
      requests.every((one) => one === address || one.startsWith("blob:")),
      requests.join("\n"),
    );
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
    await close();
  });
}

test("less wind with a decimal comma has another answer, undo the first", async () => {
  const { page, close } = await openPage(browser, address);
  const first = page.locator(".best");
  await first.waitFor({ timeout: 60_000 });
  const was = await first.textContent();
  for (const [name, text] of [
    ["Lull", "7,5"],
    ["Mean", "8,5"],
    ["Puff", "9,5"],
  ]) {
    await page.getByLabel(`${name} in kn`).fill(text);
    await page.getByLabel(`${name} in kn`).press("Enter");
  }
  await until(async () => (await first.textContent()) !== was, "another answer");
  assert.match(page.url(), /day\.wind\.puff=9%2C5\+kn/);
  for (let i = 0; i < 3; i++) await page.getByRole("button", { name: "Undo" }).click();
  await until(async () => (await first.textContent()) === was, "the first answer again");
  await close();
});
