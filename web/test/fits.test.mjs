// fits.test.mjs - every view at many sizes, letters twice as large, nine pins, long names, gale and
// calm: nothing stands on anything else, nothing is off the side, what is pressed is 44 px.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { file, goTo, openBrowser, openPage, settled, views } from "./browser.mjs";

const TARGET = 43.5; // [px] that what is pressed is high and wide, but for rounding

const name = "A very long name that a proud owner gave to his beloved boat";
const ninePins = Array.from(
  { length: 9 },
  (_, i) => `boat.pins.Longest pin ${i}=${(4.4 - i / 2).toFixed(1)} deg`,
);
const days = {
  "the demo day": "",
  "nine pins and long names": [
    ...["boat", "sailor", "day"].map((kind) => `${kind}.name=${name}`),
    ...ninePins,
  ].join("&"),
  "a gale": "day.wind.lull=28 kn&day.wind.mean=34 kn&day.wind.puff=45 kn",
  "a calm": "day.wind.lull=2 kn&day.wind.mean=3 kn&day.wind.puff=4 kn",
};

const seen = await readFile(new URL("seen.js", import.meta.url), "utf8");
const wrongWith = (page) => page.evaluate((target) => globalThis.wrongWith(target), TARGET);

const unfold = (page) =>
  page.evaluate(() => {
    for (const one of document.querySelectorAll("main details")) one.open = true;
  });

/** As it stands after a change of size: drawings that follow their width are drawn by then. */
async function resized(page, [width, height]) {
  await page.setViewportSize({ width, height });
  await page.evaluate(() => new Promise((on) => requestAnimationFrame(() => setTimeout(on, 50))));
  await settled(page);
}

/** What is wrong with a view at every size, as it opens and with all unfolded. */
async function look(page, view, sizes) {
  const found = [];
  await goTo(page, view);
  for (const unfolds of [false, true]) {
    if (unfolds) await unfold(page);
    for (const size of sizes) {
      await resized(page, size);
      found.push(...(await wrongWith(page)).map((one) => `${size.join(" x ")}: ${one}`));
    }
  }
  return found;
}

const phone = [390, 844],
  laptop = [1366, 768];
const more = [
  [360, 740],
  [768, 1024],
  [683, 384], // the laptop's at 200 %
];
const looks = [
  [16, "the demo day", [phone, ...more, laptop, [384, 512]]], // the last: the tablet's at 200 %
  [16, "nine pins and long names", [phone, ...more, laptop]],
  [16, "a gale", [phone, laptop]],
  [16, "a calm", [phone, laptop]],
  [32, "the demo day", [phone]],
  [32, "nine pins and long names", [[360, 740], phone]],
  [32, "a gale", [phone]],
  [32, "a calm", [phone]],
];

for (const [letters, day, sizes] of looks) {
  test(`${day}, letters of ${letters} px: at every size all fits and can be pressed`, async (t) => {
    const browser = await openBrowser(letters);
    t.after(() => browser.close());
    const address = `${file}#today?signs=bow-up+touches&${encodeURI(days[day])}`;
    const [width, height] = sizes[0];
    const { page, complaints, close } = await openPage(browser, address, { width, height });
    await page.evaluate(seen);
    for (const view of views)
      assert.deepEqual([...new Set(await look(page, view, sizes))], [], `${view}, ${day}`);
    assert.deepEqual(complaints, []);
    await close();
  });
}
