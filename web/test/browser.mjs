// browser.mjs - Debian's Chromium, opened for a test of the page; every request it makes is kept.
// SPDX-License-Identifier: MIT

import { chromium } from "playwright-core";

const flags = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync"];

export const sizes = { phone: { width: 360, height: 740 }, laptop: { width: 1366, height: 768 } };

export const openBrowser = () => chromium.launch({ executablePath: "/usr/bin/chromium", args: flags });

/** A fresh context with one page at an address: { page, requests, complaints, close }. */
export async function openPage(browser, address, size = sizes.laptop, more = {}) {
  const context = await browser.newContext({ viewport: size, ...more });
  const page = await context.newPage();
  const requests = [], complaints = [];
  page.on("request", (request) => requests.push(request.url()));
  page.on("pageerror", (error) => complaints.push(`${error}`));
  page.on("console", (message) => { if (message.type() === "error") complaints.push(message.text()); });
  await page.goto(address);
  return { page, requests, complaints, close: () => context.close() };
}

/** Waits until a condition holds (waitForFunction needs eval, which the page forbids). */
export async function until(holds, what, patience = 60_000) {
  for (const end = Date.now() + patience; Date.now() < end;) {
    if (await holds()) return;
    await new Promise((on) => setTimeout(on, 50));
  }
  throw new Error(`in vain: ${what}`);
}
