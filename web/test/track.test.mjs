// track.test.mjs - a sailed track on the view Log: told and drawn by the desk as the command does,
// kept with its day; a page from a file says what does it.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { file, openBrowser, openPage, settled, until, violations } from "./browser.mjs";
import { lullwise, openDesk } from "./desk.mjs";

let browser, folder;
before(async () => {
  browser = await openBrowser();
  folder = await mkdtemp(join(tmpdir(), "lullwise-track-"));
  run("invent", "season", "--days", "1");
  run("log", "import", "season/days.csv", "--logbook", "bare.db");
  const columns = JSON.parse(run("log", "export", "--logbook", "bare.db")).days[0];
  run("log", "edit", columns.id, ...unsaid(columns), "--logbook", "bare.db");
});
after(async () => {
  await browser?.close();
  await rm(folder, { recursive: true });
});

function run(...words) {
  const ended = lullwise(words, folder);
  assert.equal(ended.status, 0, ended.stderr);
  return ended.stdout;
}

const isOfTrack = (key) => key.startsWith("sailed.");
const unsaid = (day) =>
  Object.keys(day)
    .filter(isOfTrack)
    .flatMap((key) => ["--set", `${key}=none`]);
const sailedOf = (day) => Object.entries(day).filter(([key]) => isOfTrack(key));
const firstIn = (book) => JSON.parse(run("log", "export", "--logbook", book)).days[0];

const TRACK = join("season", "invented-001.csv");
const open = (page, ...paths) =>
  page
    .locator('input[aria-label="A track"]')
    .setInputFiles(paths.map((path) => join(folder, path)));
const marksOf = (text) => (text.match(/<(path|text|circle|rect)/g) ?? []).length;
const drawnOn = (page) =>
  page
    .locator(`${["path", "text", "circle", "rect"].map((one) => `.log .picture svg ${one}`)}`)
    .count();

test("at the desk a track is told, drawn and kept as by the command", async (t) => {
  const desk = await openDesk(undefined, join(folder, "bare.db"));
  t.after(() => desk.close());
  const { page, complaints, close } = await openPage(browser, `${desk.address}#log`);
  await until(async () => (await page.locator(".day").count()) === 1, "the day");
  await open(page, TRACK);
  const keep = page.getByRole("button", { name: /^Keep with 2024-01-01, pin/ });
  await keep.waitFor();
  run("track", TRACK, "--svg", "own.svg");
  const own = await readFile(join(folder, "own.svg"), "utf8");
  assert.equal(await drawnOn(page), marksOf(own));
  assert.deepEqual(await violations(page), []);
  await keep.click();
  const isTold = () => firstIn("bare.db")["sailed.flying"] !== null;
  await until(isTold, "what the track tells in the logbook");
  const day = firstIn("bare.db");
  assert.match(day.tracks, /^[0-9a-f]{16} invented-001\.csv$/);
  run("log", "import", "season/days.csv", "--logbook", "own.db");
  run("log", "edit", day.id, "--track", TRACK, "--logbook", "own.db");
  assert.deepEqual(sailedOf(day), sailedOf(firstIn("own.db")));
  assert.equal(day.tracks, firstIn("own.db").tracks);
  await page.getByRole("button", { name: "Undo" }).click();
  await until(() => !isTold(), "the day without it");
  assert.deepEqual(complaints, []);
  await close();
});

const demo = (name) => fileURLToPath(new URL(`../../demo/${name}.yaml`, import.meta.url));
const OF_DEMO = ["--boat", "heron", "--sailor", "light", "--day", "breeze"].map((word) =>
  word.startsWith("-") ? word : demo(word),
);

test("at the desk the model stands beside, and a wind that is given is taken", async (t) => {
  const desk = await openDesk(undefined, join(folder, "none.db"));
  t.after(() => desk.close());
  const { page, complaints, close } = await openPage(browser, `${desk.address}#log`);
  await open(page, TRACK, TRACK);
  await page.getByText("invented-001.csv, invented-001.csv are read.").waitFor();
  await page.getByText("of a time that was there already: dropped").waitFor();
  await open(page, TRACK);
  await page.getByText("invented-001.csv is read.").waitFor();
  const given = ["--wind-from", "140 deg", "--pin", "B"];
  run("track", TRACK, ...OF_DEMO, ...given, "--svg", "beside.svg");
  await page.locator(".log .choice", { hasText: "B" }).click();
  await page.getByText("with pin B in the day's mean wind").waitFor();
  await page.getByLabel("Wind from").fill("140");
  await page.getByLabel("Wind from").blur();
  await page.getByText("Wind from 140°, as given.").last().waitFor();
  assert.equal(await drawnOn(page), marksOf(await readFile(join(folder, "beside.svg"), "utf8")));
  await page.evaluate(await readFile(new URL("seen.js", import.meta.url), "utf8"));
  assert.deepEqual(await page.evaluate(() => globalThis.wrongWith(43.5)), []);
  assert.deepEqual(await violations(page), []);
  assert.deepEqual(complaints, []);
  await page.getByLabel("Wind from").fill("north");
  await page.getByLabel("Wind from").blur();
  await page.getByText("This is not a number (read: north)").waitFor();
  await close();
});

test("what is no track is refused in the desk's words; a closed desk is told of", async (t) => {
  const desk = await openDesk(undefined, join(folder, "none.db"));
  const { page, close } = await openPage(browser, `${desk.address}#log`);
  await settled(page);
  await open(page, join("season", "truth.yaml"));
  await page.getByText("truth.yaml: not read").waitFor();
  await open(page, TRACK);
  await page.getByText("No day of its date is kept").waitFor();
  await desk.close();
  await open(page, TRACK);
  await page.getByText("the desk is closed").waitFor();
  await close();
});

test("a page from a file says what reads tracks", async () => {
  const { page, complaints, close } = await openPage(browser, `${file}#log`);
  await settled(page);
  await page.getByText("This page reads no tracks by itself").waitFor();
  assert.equal(await page.locator('input[aria-label="A track"]').count(), 0);
  assert.deepEqual(complaints, []);
  await close();
});
