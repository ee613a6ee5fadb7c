// stroll.test.mjs - through the page itself at random, without waiting for it: in the end every
// card of every view is that of a page opened afresh at the same address.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { file, goTo, openBrowser, openPage, settled, sizes, views } from "./browser.mjs";
import { randomFrom } from "./random.mjs";

const STROLLS = Number(process.env.LW_STROLLS ?? 2);
const ACTS = 40;

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

// What is typed where: sound values, and some that are refused.
const typed = [
  ["day.wind.lull", ["6", "9,5", "11", "much"]],
  ["day.wind.mean", ["11.5", "13", "14"]],
  ["day.wind.puff", ["15", "17", "19"]],
  ["sailor.person.mass", ["62", "78", "900", "88"]],
  ["boat.main_foil.span", ["95", "105", "7000"]],
  ["boat.rig.sail_area", ["7", "8.5", "80"]],
];
const links = [
  "#today?sailor.name=Friend&sailor.person.mass=90+kg",
  "#flight?day.wind.mean=14+kn&pin=B&wind=13+kn",
  "#ride?day.wind.lull=7+kn&boat.main_foil.span=1.02+m&pin=C&minutes=1",
  "#compare?day.wind.lull=30+kn&sailor.person.mass=71+kg",
];

const SHORT = { timeout: 1500 }; // [ms] for what may be gone with its view by then

function unfoldAbout(one) {
  for (let up = one; up; up = up.parentElement) if (up.matches("details")) up.open = true;
}

const acts = {
  async type({ page, pick }) {
    const [at, texts] = pick(typed);
    const input = page.locator(`main [data-at="${at}"] input[type=text]`).first();
    if (!(await input.count())) return;
    await input.evaluate(unfoldAbout, undefined, SHORT);
    await input.fill(pick(texts), SHORT);
    await input.press("Enter", SHORT);
  },
  async step({ page, pick }) {
    const buttons = await page.locator("main .step:visible").all();
    if (buttons.length) await pick(buttons).click(SHORT);
  },
  async slide({ page, pick }) {
    const sliders = await page.locator("main .slide input[type=range]").all();
    if (sliders.length)
      await pick(sliders).press(pick(["ArrowLeft", "ArrowRight", "PageUp"]), SHORT);
  },
  async undo({ page, pick }) {
    const button = page.getByRole("button", { name: pick(["Undo", "Redo"]) });
    if (await button.isEnabled()) await button.click();
  },
  go: async ({ page, pick }) => page.locator(`nav a[href="#${pick(views)}"]`).click(),
  follow: async ({ page, pick }) =>
    page.evaluate((hash) => {
      location.hash = hash;
    }, pick(links)),
  async reload({ page }) {
    await page.reload();
    await page.locator("main h1").waitFor({ state: "attached" });
  },
};
const often = { type: 9, step: 7, slide: 6, undo: 5, go: 7, follow: 2, reload: 1 };
const bag = Object.entries(often).flatMap(([act, count]) => Array(count).fill(act));

const answers = [
  ".answers > *",
  ".answer-line p",
  ".outcome",
  ".margins",
  ".figures",
  ".trust",
  ".events",
  ".pins",
  ".panel",
];

/** All that a view answers, in words; what differs by who opened it (bars, forms) is left out. */
async function cardsOf(page, view) {
  await goTo(page, view);
  await page.evaluate(() => {
    for (const one of document.querySelectorAll("main details")) one.open = false;
  });
  return page.locator(`main :is(${answers.join(", ")})`).allTextContents();
}

async function stroll(seed) {
  const random = randomFrom(seed);
  const pick = (list) => list[Math.floor(random() * list.length)];
  const { page, complaints, close } = await openPage(browser, file, sizes.laptop);
  await page.locator("main h1").waitFor({ state: "attached" });
  const done = [];
  for (let i = 0; i < ACTS; i++) {
    done.push(pick(bag));
    await acts[done.at(-1)]({ page, pick }).catch((error) => {
      if (error.name !== "TimeoutError") throw error;
    });
  }
  await new Promise((on) => setTimeout(on, 600)); // what waits for a pause in typing
  await settled(page);
  await goTo(page, "today");
  const fresh = await openPage(browser, page.url(), sizes.laptop);
  await settled(fresh.page);
  for (const view of views.filter((one) => one !== "boat")) {
    const [mine, theirs] = [await cardsOf(page, view), await cardsOf(fresh.page, view)];
    assert.ok(mine.length > 0, view);
    assert.deepEqual(mine, theirs, `stroll ${seed}, ${view}: ${done.join(" ")}\n${page.url()}`);
  }
  assert.deepEqual(complaints, []);
  await fresh.close();
  await close();
}

for (let seed = 1; seed <= STROLLS; seed++)
  test(`stroll ${seed}: every card is that of a fresh page`, () => stroll(seed));
