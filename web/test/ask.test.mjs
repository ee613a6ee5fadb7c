// ask.test.mjs - a question without a view of its own, asked on Today: refused, answered, made old.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { lullwise } from "./desk.mjs";
import { file, openBrowser, openPage, sizes } from "./browser.mjs";

const demo = (name) => new URL(`../../demo/${name}.yaml`, import.meta.url).pathname;
const words = ["--boat", demo("heron"), "--sailor", demo("light"), "--day", demo("breeze")];
const plain = (text) => text.replace(/\s+/g, " ").trim();

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

for (const [name, size] of Object.entries(sizes)) {
  test(`hold or stop on a ${name}: refused, then told as on the command line`, async () => {
    const { page, complaints, close } = await openPage(browser, file, size);
    await page.locator(".answers[aria-busy=false] .card").first().waitFor({ timeout: 240_000 });
    const hold = page.locator("#ask-hold");
    await hold.locator("summary").click();
    await hold.getByRole("button", { name: "Work it out" }).click();
    await hold.getByText("which pin is in the boat?").waitFor({ timeout: 120_000 });
    await hold.getByLabel("Pin", { exact: true }).selectOption("A");
    await hold.getByLabel("Left").fill("5");
    await hold.getByLabel("Builds to").fill("17");
    await hold.getByRole("button", { name: "Work it out" }).click();
    await hold.locator("table").first().waitFor({ timeout: 240_000 });
    const asked = ["--pin", "A", "--left", "5 nmi", "--builds-to", "17 kn"];
    const printed = plain(lullwise(["hold", ...words, ...asked]).stdout);
    for (const line of await hold.locator(".tree p, .tree li").allInnerTexts())
      assert.ok(printed.includes(plain(line)), `${line}\n${printed}`);
    for (const row of await hold.locator("tbody tr").allInnerTexts())
      assert.ok(printed.includes(plain(row)), `${row}\n${printed}`);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
    const mass = page.getByLabel("Mass", { exact: true });
    if (await mass.isVisible()) {
      await mass.fill("80");
      await mass.blur();
      await page.locator(".question-answer.old").waitFor();
    }
    assert.deepEqual(complaints, []);
    await close();
  });
}
