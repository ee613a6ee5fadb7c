// views.test.mjs - every view, on a phone and a laptop, from a file and from the desk, in both themes.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { after, before, test } from "node:test";
import { file, goTo, openBrowser, openPage, settled, sizes, views } from "./browser.mjs";
import { openDesk } from "./desk.mjs";

const axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
let browser, desk;
before(async () => { [browser, desk] = await Promise.all([openBrowser(), openDesk()]); });
after(async () => { await Promise.all([browser?.close(), desk?.close()]); });

/** What axe-core finds against the page, in words. */
async function violations(page) {
  if (!await page.evaluate(() => "axe" in globalThis)) await page.evaluate(axe);
  const found = await page.evaluate(async () => (await globalThis.axe.run()).violations);
  return found.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target} ${node.failureSummary}`));
}

const isWithin = (page) => page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);

for (const [place, addressOf] of [["a file", () => file], ["the desk", () => desk.address]]) {
  for (const [name, size] of Object.entries(sizes)) {
    test(`from ${place} on a ${name} every view opens, fits, asks no network and is accessible`, async () => {
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
      const own = ["/", "/app.webmanifest", "/offline.js", "/icon.svg"].map((path) => new URL(path, desk.address).href);
      const strange = requests.filter((one) => one !== file && !own.includes(one) && !one.startsWith("blob:"));
      assert.deepEqual(strange, []);
      assert.deepEqual(complaints, []);
      await close();
    });
  }
}

test("at 320 px and on a screen of 4K every view fits", async () => {
  for (const size of [{ width: 320, height: 568 }, { width: 3840, height: 2160 }]) {
    const { page, close } = await openPage(browser, file, size);
    await settled(page);
    for (const view of views) {
      await goTo(page, view);
      assert.ok(await isWithin(page), `${view} is wider than ${size.width} px`);
    }
    await close();
  }
});

test("the page is shorter than 500 kB", async () => {
  assert.ok((await readFile(new URL(file))).length < 500_000);
});
