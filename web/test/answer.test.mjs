// answer.test.mjs - what is said first; the answer in sight while one edits, and never an old one
// without a word that it is.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, settled, sizes, until } from "./browser.mjs";
import { pickedByProgram } from "./desk.mjs";

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

const phone = { width: 390, height: 844 };
const gale = "day.wind.lull=18 kn&day.wind.mean=24 kn&day.wind.puff=32 kn";
const open = (words, size) => openPage(browser, `${file}#today?${encodeURI(words)}`, size);

for (const [name, size] of Object.entries({ phone, laptop: sizes.laptop })) {
  test(`in a gale a ${name} says first, in the largest letters, that no pin holds it`, async () => {
    const { page, complaints, close } = await open(gale, size);
    await settled(page);
    const head = page.locator(".answers h2").first();
    assert.equal(await head.textContent(), "No pin holds this wind");
    assert.match(await page.locator(".best .would").textContent(), /Pin D holds most.*What ends/);
    const largest = await page.evaluate(() =>
      Math.max(
        ...[...document.querySelectorAll("body *")]
          .filter((one) => one.checkVisibility() && !one.matches("h2, .unseen"))
          .map((one) => parseFloat(getComputedStyle(one).fontSize)),
      ),
    );
    const own = await head.evaluate((one) => parseFloat(getComputedStyle(one).fontSize));
    assert.ok(own > largest, `${own} px, something else has ${largest}`);
    const bottom = await head.evaluate((one) => one.getBoundingClientRect().bottom);
    assert.ok(bottom < size.height / 2, `${bottom} px`);
    assert.deepEqual(complaints, []);
    await close();
  });

  test(`on a ${name} the answer is in sight while any field has the focus`, async () => {
    const { page, close } = await open("", size);
    await settled(page);
    const line = page.locator(".answer-line p");
    const summary = page.locator(".fold > summary");
    if (await summary.isVisible()) await summary.click();
    await page.evaluate(() => {
      for (const one of document.querySelectorAll(".fold details.card")) one.open = true;
    });
    const fields = await page.locator(".fold :is(input, select):visible").all();
    assert.ok(fields.length > 15, `${fields.length} fields`);
    for (const field of fields) {
      await field.focus();
      const seen = await field.evaluate((one) => {
        const [own, at] = [one, document.querySelector(".answer-line")].map((box) =>
          box.getBoundingClientRect(),
        );
        return { isClear: own.top >= at.bottom, isIn: at.top >= 0 && at.bottom <= innerHeight };
      });
      assert.deepEqual(seen, { isClear: true, isIn: true }, await field.getAttribute("id"));
    }
    assert.equal(await line.textContent(), pickedByProgram().line);
    await close();
  });
}

// Of every frame: what the line says, which pin stands on the first card and what stands above it.
async function watch(page) {
  await page.evaluate(() => {
    const seen = (globalThis.seen = []);
    document.addEventListener("input", () => (globalThis.begun ??= performance.now()), true);
    const shown = (selector) => {
      const one = document.querySelector(selector);
      return one?.checkVisibility() ? one.textContent : "";
    };
    (function look() {
      seen.push({
        at: performance.now(),
        line: document.querySelector(".answer-line p").textContent,
        pin: shown(".best .pin"),
        above: shown(".old-line"),
        status: shown(".status"),
      });
      requestAnimationFrame(look);
    })();
  });
}

for (const [name, size] of Object.entries({ phone, laptop: sizes.laptop })) {
  test(`on a ${name} no old pin stands without the word that it is worked out anew`, async () => {
    const { page, complaints, close } = await open("", size);
    await settled(page);
    const summary = page.locator(".fold > summary");
    if (await summary.isVisible()) await summary.click();
    await watch(page);
    const mean = page.getByLabel("Mean in kn");
    await mean.fill("15");
    await new Promise((on) => setTimeout(on, 500));
    await mean.press("Enter");
    await until(async () => page.url().includes("day.wind.mean"), "the mean in the address");
    await settled(page);
    const { seen, begun } = await page.evaluate(() => ({
      seen: globalThis.seen,
      begun: globalThis.begun,
    }));
    const last = seen.at(-1);
    const told = pickedByProgram(["wind.mean=15 kn"]);
    assert.equal(last.pin, told.best.pin);
    assert.equal(last.line, told.line);
    assert.equal(last.above, "");
    const first = seen.find(({ line }) => line.startsWith("Working"));
    assert.ok(first.at - begun < 100, `${first.at - begun} ms`);
    for (const { at, line, pin, above, status } of seen) {
      if (at < first.at) continue;
      assert.ok(pin === last.pin || above.startsWith("Working"), `${pin}: ${above}`);
      assert.ok(line === last.line || line.startsWith("Working"), line);
      assert.ok(!/pin/i.test(status), status);
    }
    assert.deepEqual(complaints, []);
    await close();
  });
}

test("what is typed and taken back leaves the answer as it stood; stopped is said", async () => {
  const { page, close } = await open("", sizes.laptop);
  await settled(page);
  const line = page.locator(".answer-line p"),
    lull = page.getByLabel("Lull in kn"),
    [was, told] = [await lull.inputValue(), await line.textContent()];
  await lull.fill("9");
  assert.match(await line.textContent(), /^Working/);
  await lull.fill(was);
  await lull.press("Tab");
  await until(async () => (await line.textContent()) === told, "the answer that stood");
  await lull.fill("9");
  await lull.press("Enter");
  await page.getByRole("button", { name: "Stop" }).click();
  await until(async () => /^Stopped/.test(await line.textContent()), "that it is stopped");
  assert.ok(await page.locator(".old-line").isVisible());
  await close();
});

test("on a phone a tap beside the line leads from the open form to the answer", async () => {
  const { page, close } = await open("", phone);
  await settled(page);
  await page.locator(".fold > summary").click();
  await page.getByRole("button", { name: "See it" }).click();
  const top = await page.locator(".best h2").evaluate((one) => one.getBoundingClientRect().top);
  assert.ok(top >= 0 && top < 500, `${top} px`);
  await close();
});
