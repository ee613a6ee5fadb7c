// log.test.mjs - the view Log: days added, changed, taken out and had again, compared as the
// command does, moved to its logbook and back without doubling, in two tabs.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, settled, sizes, until, violations } from "./browser.mjs";
import { lullwise, openDesk } from "./desk.mjs";
import { ofDemo } from "./learned.mjs";

let browser, folder;
before(async () => {
  browser = await openBrowser();
  folder = await mkdtemp(join(tmpdir(), "lullwise-log-"));
});
after(async () => {
  await browser?.close();
  await rm(folder, { recursive: true });
});

const demo = (name) => fileURLToPath(new URL(`../../demo/${name}.yaml`, import.meta.url));
const files = ["--boat", demo("heron"), "--sailor", demo("light"), "--day", demo("breeze")];

/** Runs `lullwise log WORDS --logbook NAME.db`, which must end well; returns what it prints. */
function log(book, ...words) {
  const ended = lullwise(["log", ...words, "--logbook", `${book}.db`], folder);
  assert.equal(ended.status, 0, ended.stderr);
  return ended.stdout;
}

async function openLog(words = "", ...more) {
  const opened = await openPage(browser, `${file}#log${words}`, ...more);
  await settled(opened.page);
  return opened;
}

const days = (page) => page.locator(".day");
const titles = (page) => page.locator(".day > summary b").allTextContents();
const hasDays = (page, count) =>
  until(async () => (await days(page).count()) === count, `${count} days`);

/** Keeps the day with a pin; its card is open then. */
async function add(page, pin) {
  const before = await days(page).count();
  await page.locator(`[data-pin="${pin}"]`).click();
  await hasDays(page, before + 1);
  await page.locator(".day[open] .logged").first().waitFor();
  await settled(page);
}

const fieldIn = (page, path) => page.locator(`.day[open] [data-at="log.${path}"]`);
const kept = (page) =>
  page.evaluate(() =>
    Object.keys(localStorage)
      .filter((key) => key.startsWith("lullwise.record.log."))
      .sort()
      .map((key) => JSON.parse(localStorage[key])),
  );
const keeps = (page, holds, what) => until(async () => holds(await kept(page)), what);

/** The file that the page saves, by its name in the folder. */
async function save(page, name) {
  const coming = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the days" }).click();
  await (await coming).saveAs(join(folder, name));
  return JSON.parse(await readFile(join(folder, name), "utf8"));
}

async function take(page, name) {
  await page.evaluate(() => document.querySelector(".log [role=status]").replaceChildren());
  await page.locator('input[aria-label="A file of days"]').setInputFiles(join(folder, name));
  const said = page.locator(".log [role=status]");
  await until(async () => (await said.textContent()) !== "", "what was taken");
  return said.textContent();
}

const today = () => {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60000).toISOString().slice(0, 10);
};

test("a tap on the pin keeps the day that stands on Today, as the command does", async () => {
  const { page, complaints, close } = await openLog("?day.wind.mean=13+kn");
  await add(page, "B");
  assert.deepEqual(await titles(page), [`${today()}, pin B`]);
  const [day] = (await save(page, "one.json")).days;
  log("same", "add", ...files, "--pin", "B", "--set", "wind.mean=13 kn");
  const [own] = JSON.parse(log("same", "export")).days;
  const bare = ({ id, boat_record, sailor_record, ...rest }) => rest;
  assert.match(day.id, /^[0-9a-f]{16}$/);
  assert.deepEqual(bare(day), bare(own));
  assert.match(day.boat_record, /main_foil/);
  assert.deepEqual(complaints, []);
  await close();
});

test("what is tapped and typed is kept as the engine reads it, and undone one by one", async () => {
  const { page, complaints, close } = await openLog();
  await add(page, "B");
  await page.locator(".day[open]").getByText("Too strong", { exact: true }).click();
  await keeps(page, ([day]) => day.verdict === "too-strong", "the verdict");
  await fieldIn(page, "outing.swims").getByRole("button", { name: "More" }).click();
  await keeps(page, ([day]) => day.outing.swims === "1", "a swim");
  await fieldIn(page, "turns.upwind").locator("input").fill("3,5");
  await fieldIn(page, "turns.upwind").locator("input").press("Enter");
  await keeps(page, ([day]) => day.turns?.upwind === "3.5", "turns");
  await page.locator('.day[open] [data-sign="hops"]').click();
  await page.locator('.day[open] [data-sign="bow-up"]').click();
  await keeps(page, ([day]) => day.signs === "bow-up hops", "both signs");
  await fieldIn(page, "notes").locator("textarea").fill("Held it.\nLate puff.");
  await fieldIn(page, "notes").locator("textarea").press("Tab");
  await keeps(page, ([day]) => day.notes === "Held it.\nLate puff.", "notes");
  await settled(page);
  assert.match((await titles(page))[0], /pin B: too strong/);
  await fieldIn(page, "turns.upwind").locator("input").fill("");
  await fieldIn(page, "turns.upwind").locator("input").press("Enter");
  await keeps(page, ([day]) => day.turns === undefined || !day.turns.upwind, "turns not told");
  const undo = page.getByRole("button", { name: "Undo" });
  for (const holds of [
    ([day]) => day.turns.upwind === "3.5",
    ([day]) => day.notes === undefined,
    ([day]) => day.signs === "hops",
    ([day]) => day.signs === undefined,
    ([day]) => day.turns === undefined,
    ([day]) => day.outing.swims === undefined,
    ([day]) => day.verdict === undefined,
    (all) => all.length === 0,
  ]) {
    await undo.click();
    await keeps(page, holds, `${holds}`);
  }
  await page.getByRole("button", { name: "Redo" }).click();
  await keeps(page, (all) => all.length === 1, "the day again");
  assert.deepEqual(complaints, []);
  await close();
});

test("what cannot be is refused beside its box, in the engine's words, and not kept", async () => {
  const { page, close } = await openLog();
  await add(page, "B");
  for (const [path, text, words] of [
    ["wind.lull", "20", /in this order/i],
    ["outing.swims", "1.5", /whole number/i],
    ["turns.reach", "300", /outside its range/i],
    ["date", "2026-02-30", /no date of the calendar/i],
    ["date", "9999-12-31", /still to come/i],
  ]) {
    const was = JSON.stringify(await kept(page));
    await fieldIn(page, path).locator("input").fill(text);
    await fieldIn(page, path).locator("input").press("Enter");
    const note = () => fieldIn(page, path).locator(".note").allTextContents();
    await until(async () => words.test(await note()), `${path} refused`);
    assert.equal(JSON.stringify(await kept(page)), was);
  }
  await close();
});

test("a day taken out is had again by undo, and the newest stands first", async () => {
  const { page, close } = await openLog();
  await add(page, "A");
  await fieldIn(page, "date").locator("input").fill("2026-05-17");
  await fieldIn(page, "date").locator("input").press("Enter");
  await until(async () => (await titles(page))[0].startsWith("2026-05-17"), "another date");
  await page.locator(".day[open] > summary").click();
  await add(page, "B");
  assert.deepEqual(await titles(page), [`${today()}, pin B`, "2026-05-17, pin A"]);
  await page.locator(".day[open]").getByRole("button", { name: "Remove this day" }).click();
  await hasDays(page, 1);
  await page.getByRole("button", { name: "Undo" }).click();
  await hasDays(page, 2);
  await page.reload();
  await settled(page);
  assert.equal((await titles(page)).length, 2);
  await close();
});

// Three days that differ in what counts, by the command; the page then has the same of them.
function season(book) {
  log(book, "add", ...files, "--pin", "B", "--date", "2026-05-17", "--set", "verdict=right");
  const windy = ["--set", "wind.puff=22 kn", "--set", "wind.mean=17 kn", "--set", "outing.swims=3"];
  log(book, "add", ...files, "--pin", "D", "--date", "2026-06-01", ...windy);
  const heavy = ["--boat", demo("heron"), "--sailor", demo("heavy"), "--day", demo("breeze")];
  log(
    book,
    "add",
    ...heavy,
    "--pin",
    "A",
    "--date",
    "2026-06-02",
    "--sign",
    "hops",
    "--notes",
    "“One”,\ntwo",
  );
}

test("the days nearest are told in the words of `lullwise log near`", async () => {
  season("near");
  const { page, close } = await openLog();
  log("near", "export", "-o", "near.json");
  assert.match(await take(page, "near.json"), /3 days added to this browser; 0 were there/);
  await hasDays(page, 3);
  await settled(page);
  const near = JSON.parse(log("near", "near", ...files, "--json"));
  const card = page.locator(".answers > .card").first();
  const rows = await card.locator("tbody tr").allTextContents();
  assert.equal(rows.length, 3);
  near.near.rows.forEach(({ date, pin, why }, i) => {
    assert.ok(rows[i].startsWith(date + pin) && rows[i].endsWith(why), `${rows[i]}, ${why}`);
  });
  const text = await card.textContent();
  for (const sentence of [near.question, ...near.trust])
    assert.ok(text.includes(sentence), sentence);
  await close();
});

test("days go to the command's logbook and back, and none is doubled", async () => {
  season("there");
  const { page, close } = await openLog();
  await add(page, "C");
  await page.locator(".day[open]").getByText("Right", { exact: true }).click();
  await keeps(page, ([day]) => day.verdict === "right", "the verdict");
  await save(page, "page.json");
  assert.match(log("there", "import", "page.json"), /1 day added.* 0 were there/s);
  assert.match(log("there", "import", "page.json"), /0 days added.* 1 was there/s);
  for (const [name, words] of [
    ["all.json", ["export", "-o", "all.json"]],
    ["all.csv", ["export", "--csv", "all.csv"]],
  ]) {
    log("there", ...words);
    assert.match(await take(page, name), /there already/);
    await hasDays(page, 4);
  }
  assert.match(await take(page, "all.json"), /0 days added to this browser; 4 were there already/);
  assert.doesNotMatch(await take(page, "all.csv"), /changed in one/);
  await save(page, "again.json");
  assert.match(log("there", "import", "again.json"), /0 days added.* 4 were there already\.\n/s);
  const bare = (text) => JSON.parse(text).days.sort((one, two) => (one.id < two.id ? -1 : 1));
  assert.deepEqual(
    bare(await readFile(join(folder, "again.json"), "utf8")),
    bare(log("there", "export")),
  );
  await close();
});

test("a file that is none, or faulty in one day, is refused with why", async () => {
  season("bad");
  const { page, complaints, close } = await openLog();
  const all = JSON.parse(log("bad", "export"));
  const [first, ...others] = all.days;
  for (const [text, words] of [
    ["", /nothing was taken/],
    ["{", /nothing was taken/],
    ["{}", /no export of a logbook/],
    [JSON.stringify({ ...all, lullwise_logbook: 1000 }), /another version/],
    [JSON.stringify({ ...all, units: { "wind.lull": "m/s" } }), /units/],
    [
      JSON.stringify({ ...all, days: [...others, { ...first, pin: "Q" }] }),
      /3 .*no pin of this label/,
    ],
    [JSON.stringify({ ...all, days: [{ ...first, pin: 3 }] }), /pin is of the wrong kind/i],
    [JSON.stringify({ ...all, days: [{ ...first, pinn: "B" }] }), /pinn/],
    [JSON.stringify({ ...all, days: [7] }), /nothing was taken/],
    ["date,pin\n2026-05-17,B\n", /nothing was taken/],
  ]) {
    await writeFile(join(folder, "bad.json"), text);
    assert.match(await take(page, "bad.json"), words, text.slice(0, 60));
    assert.deepEqual(await kept(page), []);
  }
  assert.deepEqual(complaints, []);
  await close();
});

test("two tabs: what each adds and changes stands in both", async () => {
  const { page, close } = await openLog();
  await add(page, "B");
  const other = await page.context().newPage();
  await other.goto(`${file}#log`);
  await settled(other);
  await hasDays(other, 1);
  await add(other, "C");
  await hasDays(page, 2);
  await other.locator(".day", { hasText: "pin B" }).locator("summary").first().click();
  const inOther = other.locator(".day", { hasText: "pin B" });
  await inOther.getByText("Too weak", { exact: true }).click();
  await fieldIn(page, "outing.swims").locator("input").fill("4");
  await fieldIn(page, "outing.swims").locator("input").press("Enter");
  const both = (all) => all.some((day) => day.verdict === "too-weak" && day.outing.swims === "4");
  await keeps(page, both, "what both told");
  await until(
    async () => (await titles(page)).some((title) => /pin B: too weak/.test(title)),
    "it",
  );
  await close();
});

test("what was learned is shown and kept; days stay of the boat as measured", async () => {
  const { page, complaints, close } = await openLog();
  const card = page.locator(".card", { hasText: "What was learned" });
  const has = (words) => until(async () => words.test(await card.textContent()), `${words}`);
  const open = async (name, text) => {
    await writeFile(join(folder, name), text);
    const picker = page.locator('input[aria-label="A file of what was learned"]');
    await picker.setInputFiles(join(folder, name));
  };
  await open("bad.yaml", "learned: 3");
  await has(/nothing was taken/);
  await open("learned.yaml", ofDemo);
  await has(/6 days.*All answers of this page take it.*0\.50°.*± 0\.12°/s);
  await page.reload();
  await settled(page);
  await has(/± 0\.12°/);
  await add(page, "B");
  const [day] = (await save(page, "learned.json")).days;
  assert.match(day.boat_record, /greatest_lift: 1\.20/);
  await card.getByRole("button", { name: "Leave it out" }).click();
  await has(/Take in what/);
  assert.deepEqual(complaints, []);
  await close();
});

// What the logbook has; null while it is being made.
function listed(book) {
  const ended = lullwise(["log", "list", "--json", "--logbook", `${book}.db`], folder);
  if (ended.status !== 0) return null;
  return JSON.parse(ended.stdout).days.rows.map(({ pin, verdict }) => `${pin} ${verdict}`);
}
const hasListed = (book, days) => until(() => `${listed(book)}` === `${days}`, `${days} in it`);
const look = (page) => page.evaluate(() => dispatchEvent(new Event("focus")));

test("at the desk the days are those of its logbook, both ways", async (t) => {
  season("desk");
  const desk = await openDesk(undefined, join(folder, "desk.db"));
  t.after(() => desk.close());
  const { page, complaints, close } = await openPage(browser, `${desk.address}#log`);
  await hasDays(page, 3);
  await until(
    async () => /3 days in the desk's logbook/.test(await page.textContent(".days")),
    "it",
  );
  await add(page, "C");
  await page.locator(".day[open]").getByText("Too weak", { exact: true }).click();
  await hasListed("desk", ["B right", "D null", "A null", "C too weak"]);
  log("desk", "edit", "2026-06-02", "--set", "verdict=right", "--set", "outing.swims=7");
  log("desk", "remove", "2026-05-17");
  await look(page);
  await hasDays(page, 3);
  await until(async () => (await titles(page)).some((title) => /pin A: right/.test(title)), "it");
  await page.locator(".day[open]").getByRole("button", { name: "Remove this day" }).click();
  await hasListed("desk", ["D null", "A right"]);
  await page.getByRole("button", { name: "Undo" }).click();
  await hasListed("desk", ["D null", "A right", "C too weak"]);
  assert.deepEqual(complaints, []);
  await close();
});

test("what is kept while the desk is closed waits for it, none is doubled or lost", async (t) => {
  log("wait", "add", ...files, "--pin", "B", "--date", "2026-05-17");
  const desk = await openDesk(undefined, join(folder, "wait.db"));
  const { page, close } = await openPage(browser, `${desk.address}#log`);
  await hasDays(page, 1);
  await desk.close();
  await add(page, "C");
  await look(page);
  await until(
    async () => /until the desk is open/.test(await page.textContent(".days")),
    "waiting",
  );
  log("wait", "add", ...files, "--pin", "D", "--date", "2026-05-18");
  const again = await openDesk(desk.port, join(folder, "wait.db"));
  t.after(() => again.close());
  await look(page);
  await hasDays(page, 3);
  await hasListed("wait", ["B null", "D null", "C null"]);
  await again.close();
  await rm(join(folder, "wait.db"));
  const anew = await openDesk(desk.port, join(folder, "wait.db"));
  t.after(() => anew.close());
  await look(page);
  await hasListed("wait", ["B null", "D null", "C null"]);
  await hasDays(page, 3);
  await close();
});

test("a day changed here and in the logbook meanwhile is kept as two, and told", async (t) => {
  log("both", "add", ...files, "--pin", "B", "--date", "2026-05-17");
  const desk = await openDesk(undefined, join(folder, "both.db"));
  const { page, close } = await openPage(browser, `${desk.address}#log`);
  await hasDays(page, 1);
  await desk.close();
  await page.locator(".day > summary").first().click();
  await page.locator(".day[open] .logged").first().waitFor();
  await page.locator(".day[open]").getByText("Too weak", { exact: true }).click();
  await keeps(page, ([day]) => day.verdict === "too-weak", "the verdict");
  log("both", "edit", "2026-05-17", "--set", "verdict=too-strong");
  const again = await openDesk(desk.port, join(folder, "both.db"));
  t.after(() => again.close());
  await look(page);
  await until(
    async () => /2026-05-17, pin B.*both are kept/.test(await page.textContent(".status")),
    "told",
  );
  await until(() => listed("both")?.length === 2, "both in the logbook");
  assert.deepEqual(listed("both").sort(), ["B too strong", "B too weak"]);
  await hasDays(page, 2);
  await look(page);
  await settled(page);
  assert.deepEqual(listed("both").sort(), ["B too strong", "B too weak"]);
  await close();
});

test("the last day that the command takes out does not come back from the page", async (t) => {
  log("last", "add", ...files, "--pin", "B", "--date", "2026-05-17");
  const desk = await openDesk(undefined, join(folder, "last.db"));
  t.after(() => desk.close());
  const { page, close } = await openPage(browser, `${desk.address}#log`);
  await hasDays(page, 1);
  log("last", "remove", "last");
  await look(page);
  await hasDays(page, 0);
  await look(page);
  await settled(page);
  assert.deepEqual(listed("last"), []);
  assert.deepEqual(await kept(page), []);
  await close();
});

test("a logbook that cannot be written is told of, and the day stays in the browser", async (t) => {
  await writeFile(join(folder, "no.db"), "this is no logbook, but a text");
  const desk = await openDesk(undefined, join(folder, "no.db"));
  t.after(() => desk.close());
  const { page, close } = await openPage(browser, `${desk.address}#log`);
  await settled(page);
  await add(page, "B");
  await until(async () => /no logbook/.test(await page.textContent(".told")), "why");
  assert.equal((await kept(page)).length, 1);
  await close();
});

test("with one of its days open the view is accessible and fits 320 px and 360 px", async () => {
  season("fits");
  log("fits", "export", "-o", "fits.json");
  for (const size of [{ width: 320, height: 568 }, sizes.phone, sizes.laptop]) {
    const { page, complaints, close } = await openLog("", size);
    await take(page, "fits.json");
    await hasDays(page, 3);
    await page.locator(".day > summary").first().click();
    await page.locator(".day[open] .logged").waitFor();
    for (const colorScheme of ["light", "dark"]) {
      await page.emulateMedia({ colorScheme });
      await settled(page);
      assert.deepEqual(await violations(page), [], `${size.width}, ${colorScheme}`);
    }
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
    assert.deepEqual(complaints, []);
    await close();
  }
});
