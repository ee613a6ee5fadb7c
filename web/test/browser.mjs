// browser.mjs - Debian's Chromium, opened for a test of the page; every request it makes is kept.
// SPDX-License-Identifier: MIT

import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { chromium } from "playwright-core";

const flags = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export const sizes = { phone: { width: 360, height: 740 }, laptop: { width: 1366, height: 768 } };

/** The page as a file. */
export const file = new URL("../../build/page/lullwise.html", import.meta.url).href;

/** The views, by the names that stand in the address. */
export const views = ["today", "boat", "flight", "ride", "signs", "compare", "card", "log"];

/** letters: [px] that the reader has chosen for letters. */
export const openBrowser = (letters = 16) =>
  chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: [...flags, `--blink-settings=defaultFontSize=${letters}`],
  });

/** A fresh context with one page at an address: { page, requests, complaints, close }. */
export async function openPage(browser, address, size = sizes.laptop, more = {}) {
  const context = await browser.newContext({ viewport: size, ...more });
  const page = await context.newPage();
  const requests = [],
    complaints = [];
  page.on("request", (request) => requests.push(request.url()));
  page.on("pageerror", (error) => complaints.push(`${error}`));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  await page.goto(address);
  return { page, requests, complaints, close: () => context.close() };
}

/** Waits until a condition holds (waitForFunction needs eval, which the page forbids). */
export async function until(holds, what, patience = 180_000) {
  for (const end = Date.now() + patience; Date.now() < end; ) {
    if (await holds()) return;
    await new Promise((on) => setTimeout(on, 50));
  }
  throw new Error(`in vain: ${what}`);
}

/** Waits until the view has something to show, works nothing out any more and moves nothing. */
export const settled = (page) =>
  until(
    () =>
      page.evaluate(() => {
        const main = document.querySelector("main");
        return (
          main?.children.length > 1 &&
          !main.querySelector("[aria-busy=true]") &&
          !document.getAnimations().length
        );
      }),
    "the view at rest",
  );

/** Goes to a view as a reader does, and waits until it is at rest. */
export async function goTo(page, view) {
  await page.locator(`nav a[href="#${view}"]`).click();
  await until(async () => new URL(page.url()).hash.startsWith(`#${view}`), `the view ${view}`);
  await settled(page);
}

const axe = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

/** What axe-core finds against the page, in words. */
export async function violations(page) {
  if (!(await page.evaluate(() => "axe" in globalThis)))
    await page.evaluate(await readFile(axe, "utf8"));
  const found = await page.evaluate(async () => (await globalThis.axe.run()).violations);
  return found.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.target} ${node.failureSummary}`),
  );
}
