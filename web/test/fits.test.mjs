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

async function look(page, view) {
  await goTo(page, view);
  const folded = await wrongWith(page);
  await unfold(page);
  await settled(page);
  return [...folded, ...(await wrongWith(page))];
}

const all = Object.keys(days);
const looks = [
  [16, [360, 740], all.slice(0, 2)],
  [16, [390, 844], all],
  [16, [768, 1024], all.slice(0, 2)],
  [16, [1366, 768], all],
  [16, [683, 384], all.slice(0, 2)], // the laptop's at 200 %
  [16, [384, 512], all.slice(0, 1)], // the tablet's at 200 %
  [32, [360, 740], all.slice(1, 2)],
  [32, [390, 844], all],
];

for (const [letters, [width, height], shown] of looks) {
  test(`at ${width} px, letters of ${letters} px, all fits and can be pressed`, async (t) => {
    const browser = await openBrowser(letters);
    t.after(() => browser.close());
    for (const day of shown) {
      const address = `${file}#today?signs=bow-up+touches&${encodeURI(days[day])}`;
      const { page, complaints, close } = await openPage(browser, address, { width, height });
      await page.evaluate(seen);
      for (const view of views)
        assert.deepEqual([...new Set(await look(page, view))], [], `${view}, ${day}`);
      assert.deepEqual(complaints, []);
      await close();
    }
  });
}
