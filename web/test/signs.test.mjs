// signs.test.mjs - the view Signs in Chromium: tapped or by keyboard, told as `lullwise why` tells
// it, contradictions and unknown signs said, links, and how long an answer takes.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, settled, sizes, until, violations } from "./browser.mjs";
import { lullwise } from "./desk.mjs";

const demo = (name) => new URL(`../../demo/${name}.yaml`, import.meta.url).pathname;
const files = ["--boat", demo("heron"), "--sailor", demo("light"), "--day", demo("breeze")];
const plain = (text) => text.replace(/\s+/g, " ").trim();

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

async function openSigns(words = "", size = sizes.phone, more = {}) {
  const opened = await openPage(browser, `${file}#signs${words}`, size, more);
  await settled(opened.page);
  return opened;
}

const sign = (page, name) => page.getByRole("button", { name, exact: true });
const line = (page) => page.locator(".answer-line p").textContent();
const stops = (page) => page.locator(".care").first().locator("li").count();
const answered = (page) => page.locator(".signs .trust").waitFor({ timeout: 120_000 });

/** What the command says, blanks as one. */
const printed = (words) => plain(lullwise(["why", ...files, ...words]).stdout);
const toldOf = (words) => JSON.parse(lullwise(["why", ...files, "--json", ...words]).stdout);

/** The words of the picture that the command draws so wide. */
function drawnBy(words, width) {
  const folder = mkdtempSync(join(tmpdir(), "lullwise-"));
  const svg = join(folder, "sides.svg");
  lullwise(["why", ...files, ...words, "--width", String(width), "--svg", svg]);
  const text = readFileSync(svg, "utf8");
  rmSync(folder, { recursive: true });
  return [...text.matchAll(/<text [^>]*>([^<]*)</g)].map(([, words]) => words);
}

async function isPrinted(page, words) {
  const text = printed(words);
  const told = page.locator(".signs .answers").locator("li, .note, .said, h2, tbody td, tbody th");
  const all = await told.allInnerTexts();
  assert.ok(all.length > 10);
  for (const one of all) assert.ok(text.includes(plain(one)), `${one}\n${text}`);
}

test("nothing tapped: she says to tap, the signs are the engine's in its order", async () => {
  const { page, complaints, close } = await openSigns();
  assert.equal(await line(page), "Tap what the boat does.");
  const keys = await page
    .locator("[data-sign]")
    .evaluateAll((all) => all.map((one) => one.dataset.sign));
  const { stderr } = lullwise(["why", ...files]);
  assert.ok(plain(stderr).endsWith(keys.join(", ")), `${keys}\n${stderr}`);
  assert.deepEqual(complaints, []);
  await close();
});

test("a tap is answered as by the command, the first move in the line that stays", async () => {
  const { page, complaints, close } = await openSigns(
    "?pin=B",
    { ...sizes.phone },
    { hasTouch: true },
  );
  await sign(page, "Bow up, stern low").tap();
  await answered(page);
  assert.equal(await sign(page, "✓ Bow up, stern low").getAttribute("aria-pressed"), "true");
  const words = ["--sign", "bow-up", "--pin", "B", "--course", "upwind"];
  const [first] = toldOf(words).moves.rows;
  assert.equal((await line(page)).toLowerCase(), first.says.toLowerCase());
  await isPrinted(page, words);
  await page.getByRole("button", { name: "See it" }).tap();
  await page.locator(".signs .trust").scrollIntoViewIfNeeded();
  const { y } = await page.locator(".answer-line").boundingBox();
  assert.ok(y >= 0 && y < 10, `the line stands at ${y} px`);
  assert.deepEqual(complaints, []);
  await close();
});

test("by keyboard two signs are told at once, taken back, and cleared", async () => {
  const { page, close } = await openSigns("?pin=B", sizes.laptop);
  for (const name of ["Touches down", "Bow up, stern low"]) {
    await sign(page, name).focus();
    await page.keyboard.press("Space");
  }
  await until(async () => /signs=bow-up\+touches/.test(page.url()), "both in the address");
  await answered(page);
  const both = ["--sign", "bow-up", "--sign", "touches", "--pin", "B"];
  await until(async () => (await stops(page)) === 2, "the answer of both");
  await isPrinted(page, both);
  await page.keyboard.press("Enter");
  await until(async () => /signs=touches$/.test(page.url()), "one in the address");
  await until(async () => (await stops(page)) === 1, "the answer of one");
  await sign(page, "Clear").press("Enter");
  assert.equal(await line(page), "Tap what the boat does.");
  assert.doesNotMatch(page.url(), /signs=/);
  await close();
});

test("what is known is told with it: course, wind, turns and what a photo reads", async () => {
  const { page, complaints, close } = await openSigns("?pin=B&signs=low", sizes.laptop);
  await answered(page);
  await page.getByLabel("reach", { exact: true }).check();
  await page.getByRole("button", { name: "More: Wind", exact: true }).click();
  await page.getByLabel("Turns", { exact: true }).fill("0.5");
  await page.getByText("What a photo reads").click();
  await page.getByLabel("Bow", { exact: true }).fill("1,5");
  await page.getByLabel("Ride height", { exact: true }).fill("30");
  await page.getByLabel("Ride height", { exact: true }).blur();
  await until(async () => /ride-height=30/.test(page.url()), "all in the address");
  await settled(page);
  const known = ["--course", "reach", "--wind", "13 kn", "--turns", "0.5 turns"];
  const photo = ["--bow", "1.5 deg", "--ride-height", "30 cm"];
  const words = ["--sign", "low", "--pin", "B", ...known, ...photo];
  assert.ok(
    plain(await page.locator(".signs .answers > .note").innerText()) === toldOf(words).question,
  );
  await isPrinted(page, words);
  await page.getByLabel("Turns", { exact: true }).fill("99");
  await page.getByLabel("Turns", { exact: true }).blur();
  await page.locator(".refused").waitFor();
  const said = await page.locator(".refused").innerText();
  const { stderr } = lullwise(["why", ...files, "--sign", "low", "--turns", "99 turns"]);
  const [, name, what, band] = /^(\S+): (.*); expected: (.*)$/.exec(said);
  for (const part of [name, what, band])
    assert.ok(plain(stderr).toLowerCase().includes(part.toLowerCase()), `${part}\n${stderr}`);
  assert.deepEqual(complaints, []);
  await close();
});

test("the line has the move whose change is told, ashore too; no flight, no picture", async () => {
  const { page, close } = await openSigns("?signs=breaches&pin=A&wind=20+kn");
  await answered(page);
  const words = ["--sign", "breaches", "--pin", "A", "--wind", "20 kn"];
  const first = (await line(page)).toLowerCase();
  assert.ok(printed(words).toLowerCase().includes(`then, if you ${first}`), first);
  assert.equal(await page.locator(".told-change .picture").count(), 1);
  await close();
  const { page: other, close: closeOther } = await openSigns("?signs=stays-down&wind=8+kn");
  await answered(other);
  assert.equal(await other.locator(".told-change").count(), 1);
  assert.equal(await other.locator(".told-change .picture").count(), 0);
  await closeOther();
});

test("in a calm she is told that none flies, and from what wind one does", async () => {
  const { page, complaints, close } = await openSigns("?signs=drops&wind=3+kn");
  await answered(page);
  const words = ["--sign", "drops", "--wind", "3 kn"];
  assert.equal(await line(page), toldOf(words).no_flight);
  await isPrinted(page, words);
  assert.deepEqual(complaints, []);
  await close();
});

test("signs that contradict each other are told so, in the line too", async () => {
  const { page, close } = await openSigns("?signs=bow-up", sizes.phone);
  await answered(page);
  await sign(page, "Bow down").click();
  await page.locator(".refused").waitFor({ timeout: 60_000 });
  const { stderr } = lullwise(["why", ...files, "--sign", "bow-up", "--sign", "bow-down"]);
  const said = await page.locator(".refused").innerText();
  assert.match(said, /contradict each other/);
  assert.ok(plain(stderr).endsWith(plain(said)), stderr);
  assert.equal(await line(page), said);
  assert.equal(await page.locator(".trust").count(), 0);
  await close();
});

test("a link with signs opens the same; where it names no pin, none is told", async () => {
  const { page, close } = await openSigns("?pin=C", sizes.laptop);
  await sign(page, "Drops in lulls").click();
  await answered(page);
  const other = await openPage(browser, page.url(), sizes.laptop);
  await answered(other.page);
  const all = (one) => one.locator(".signs .answers").innerText();
  assert.equal(await all(other.page), await all(page));
  assert.equal(await line(other.page), await line(page));
  await other.close();
  const { page: third, close: closeThird } = await openSigns("?signs=drops");
  await answered(third);
  assert.match(await all(third), /Pin not told/);
  await closeThird();
  await close();
});

test("an unknown sign of a link is told with the nearest, and gone with the next tap", async () => {
  const { page, complaints, close } = await openSigns("?signs=bow-upp+low");
  await page.locator(".refused").waitFor({ timeout: 60_000 });
  assert.match(
    await page.locator(".refused").innerText(),
    /no sign "bow-upp"; did you mean bow-up/,
  );
  assert.match(await line(page), /did you mean/);
  await sign(page, "Touches down").click();
  await answered(page);
  assert.match(page.url(), /signs=low\+touches/);
  assert.deepEqual(complaints, []);
  await close();
});

test("what is answered is accessible in both themes", async () => {
  const { page, close } = await openSigns("?signs=bow-up+touches&pin=B");
  await answered(page);
  for (const colorScheme of ["light", "dark"]) {
    await page.emulateMedia({ colorScheme });
    await settled(page);
    assert.deepEqual(await violations(page), [], colorScheme);
  }
  await close();
});

test("the picture now and then is the command's, side by side where there is room", async () => {
  const { page, close } = await openSigns("?signs=bow-up&pin=B", sizes.laptop);
  await answered(page);
  const picture = page.locator(".told-change .picture svg");
  const words = ["--sign", "bow-up", "--pin", "B"];
  const boxOf = async () => (await picture.getAttribute("viewBox")).split(" ").map(Number);
  const texts = () => picture.locator("text").allTextContents();
  const [, , wide, high] = await boxOf();
  assert.deepEqual(await texts(), drawnBy(words, wide));
  assert.match(await picture.getAttribute("aria-label"), /now and after the first move/);
  await page.setViewportSize({ width: 390, height: 844 });
  await until(async () => (await boxOf())[2] < 400, "a picture for a narrow page");
  const [, , narrow, tall] = await boxOf();
  assert.ok(narrow < wide && tall > high, "one under the other");
  await close();
});

test("an answer after a tap, the engine warm", async (t) => {
  const { page, close } = await openSigns("?signs=low&pin=B");
  await answered(page);
  const taken = () =>
    page.evaluate(
      () =>
        new Promise((resolve) => {
          const words = document.querySelector(".answer-line");
          const began = performance.now();
          new MutationObserver((_, observer) => {
            if (words.classList.contains("old")) return;
            observer.disconnect();
            resolve(performance.now() - began);
          }).observe(words, { attributes: true });
          document.querySelector("[data-sign=touches]").click();
        }),
    );
  const times = [];
  for (let i = 0; i < 9; i++) times.push(await taken());
  times.sort((one, other) => one - other);
  t.diagnostic(`median ${times[4].toFixed(0)} ms, greatest ${times[8].toFixed(0)} ms`);
  assert.equal(times.length, 9);
  await close();
});
