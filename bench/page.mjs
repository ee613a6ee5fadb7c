// page.mjs - how fast the page is in Chromium, beside the native program in the same run.
// SPDX-License-Identifier: MIT
//
// Medians and greatest of REPEATS; page and program take turns, so that a busy machine slows both.

import { availableParallelism } from "node:os";
import { file, openBrowser, openPage, settled } from "../web/test/browser.mjs";
import { pickedByProgram } from "../web/test/desk.mjs";

const REPEATS = 9,
  MOVES = 40;
const FIRST = ".best";

const sorted = (values) => values.toSorted((a, b) => a - b);
const median = (values) => sorted(values)[values.length >> 1];
const told = (values) =>
  `${median(values).toFixed(0)} ms (at most ${Math.max(...values).toFixed(0)})`;
const line = (name, ...words) => console.log(name.padEnd(34), ...words);

/** In the page: answers after how many ms since `since` a selector or a change was painted. */
const helpers = `
  globalThis.whenPainted = (holds, since) => new Promise((on) => {
    const look = () => {
      if (!holds()) return;
      observer.disconnect();
      requestAnimationFrame(() => setTimeout(() => on(performance.now() - since)));
    };
    const observer = new MutationObserver(look);
    const all = { subtree: true, childList: true, attributes: true, characterData: true };
    observer.observe(document, all);
    look();
  });
`;

async function coldOpen(browser) {
  const context = await browser.newContext({ viewport: { width: 1366, height: 768 } });
  const page = await context.newPage();
  await page.addInitScript(
    `${helpers} globalThis.first = whenPainted(() => document.querySelector("${FIRST}"), 0);`,
  );
  await page.goto(file, { waitUntil: "commit" });
  const spent = await page.evaluate(() => globalThis.first);
  await context.close();
  return spent;
}

/** A slider moved by a step each time; until the picture is another and painted. */
async function slide(browser) {
  const { page, close } = await openPage(browser, `${file}#flight?wind=9+kn&heading=100+deg&pin=B`);
  await settled(page);
  await page.evaluate(helpers);
  const spent = await page.evaluate(async (moves) => {
    const wind = document.querySelector(".helm input[type=range]"),
      spent = [];
    // words may stay alike
    const picture = () => document.querySelector(".stage [role=img]").innerHTML;
    for (let i = 0; i < moves; i++) {
      const was = picture(),
        since = performance.now();
      wind.value = Number(wind.value) + (i < moves / 2 ? 1 : -1) * Number(wind.step);
      wind.dispatchEvent(new Event("input", { bubbles: true }));
      spent.push(await globalThis.whenPainted(() => picture() !== was, since));
      await new Promise((on) => setTimeout(on, 50));
    }
    return spent;
  }, MOVES);
  await close();
  return spent;
}

/** The choice for the demo day with a lull of its own each time, from its change to the answer. */
async function choose(page, lull) {
  const field = page.getByLabel("Lull in kn");
  const spent = page.evaluate(() => {
    const answers = document.querySelector(".answers");
    let isAsked = false;
    const isAnswered = () => {
      const isBusy = answers.getAttribute("aria-busy") === "true";
      isAsked ||= isBusy;
      return isAsked && !isBusy;
    };
    return new Promise((on) => {
      addEventListener("change", () => on(globalThis.whenPainted(isAnswered, performance.now())), {
        capture: true,
        once: true,
      });
    });
  });
  await field.fill(lull);
  await field.press("Enter");
  return spent;
}

function chooseNatively(lull) {
  const since = performance.now();
  pickedByProgram([`wind.lull=${lull} kn`]);
  return performance.now() - since;
}

const browser = await openBrowser();
console.log(`page in Chromium ${browser.version()}, on ${availableParallelism()} processors\n`);

const cold = [];
for (let i = 0; i < REPEATS; i++) cold.push(await coldOpen(browser));
line("first answer on a cold open", told(cold), "target 1,000 ms");

const { page, close } = await openPage(browser, file);
await settled(page);
await page.evaluate(helpers);
const chosen = [],
  natively = [];
for (let i = 0; i < REPEATS; i++) {
  const lull = (9.5 + 0.1 * i).toFixed(1);
  chosen.push(await choose(page, lull));
  natively.push(chooseNatively(lull));
}
await close();
line("choice for the demo day", told(chosen));
line("  lullwise pick", told(natively));
line("  ratio", (median(chosen) / median(natively)).toFixed(2), "target 3");

line("slider moved, new flight shown", told(await slide(browser)), "target 50 ms");
await browser.close();
