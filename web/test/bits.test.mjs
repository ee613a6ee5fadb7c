// bits.test.mjs - the page answers with the bits of the native engine, and of the command line.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { engineIn } from "../script/engine/module.js";
import { fileOf, learnSections } from "../script/base/tree.js";
import { file, openBrowser, openPage, settled } from "./browser.mjs";
import { playInPage, playNatively } from "./calls.mjs";
import { lullwise } from "./desk.mjs";

// Boats, sailors and days, and a flight of each; a run takes every third of them: LW_RUN says
// which, `all` takes all.
const CASES = 1000;
const BOATS_ALIKE = 100; // boats one after the other that have the same foil sections
const CHOICE_EVERY = 100;
const ASKED_EVERY = 50; // of which the command line is asked, too
const RIDE_EVERY = 20;
const BROKEN = 3000; // files broken at random

const run = process.env.LW_RUN ?? "all";
const takesTurn = (i) => run === "all" || i % 3 === run % 3;

const module = await WebAssembly.compile(
  await readFile(new URL("../../build/page/page_engine.wasm", import.meta.url)),
);
const engine = await engineIn(module);
const tables = engine.ask("tables");
learnSections(tables);
const demo = async (name) => readFile(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
const texts = { boat: await demo("heron"), sailor: await demo("light"), day: await demo("breeze") };
const trees = Object.fromEntries(
  Object.entries(texts).map(([kind, text]) => [kind, engine.read(0, kind, kind, text).written]),
);

let seed = 4;
function random() {
  // the same stream each time: a failure repeats
  seed = (seed + 0x9e3779b9) | 0;
  let z = Math.imul(seed ^ (seed >>> 16), 0x85ebca6b);
  z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
  return ((z ^ (z >>> 16)) >>> 0) / 2 ** 32;
}
const between = (low, high) => low + (high - low) * random();

// What a foil's section follows from: worked out in a second, so that a hundred boats share one.
const SECTION = /foil\.(thickness|zero_lift_angle|smooth|flap_chord|waves)$|linkage\.flap_.*_stop$/;

/** A tree in which every number at a path that fits is another, by up to that part of it. */
function varied(tree, part, fits, path = "") {
  if (typeof tree === "object") {
    const copy = Array.isArray(tree) ? [] : {};
    for (const [key, member] of Object.entries(tree))
      copy[key] = varied(member, part, fits, `${path}.${key}`);
    return copy;
  }
  const number = fits(path) && /^(-?[\d.]+)( \S.*)?$/.exec(tree);
  return number
    ? `${(number[1] * (1 + part * between(-1, 1))).toPrecision(6)}${number[2] ?? ""}`
    : tree;
}

/** Near the tree, or far from it; drawn again while the reader refuses it. */
function drawn(kind, from, most, fits) {
  for (let part = most; ; part *= 0.9) {
    const tree = varied(from, part, fits),
      text = fileOf(tree);
    const answer = engine.read(0, kind, kind, text);
    if (answer.is_sound) return { tree, text, values: answer.values };
  }
}

const rowOf = (table, key) => tables.results[table].rows.find((row) => row.key === key);
const degrees = rowOf("flight", "heading").in_si,
  turn = rowOf("flight", "turns").in_si;

let boat;
function drawnCase(i) {
  if (i % BOATS_ALIKE === 0)
    boat = drawn("boat", trees.boat, 0.2, (path) => SECTION.test(path)).tree;
  const from = { ...trees, boat },
    part = i % 2 ? 0.02 : 0.3;
  const set = Object.fromEntries(
    ["boat", "sailor", "day"].map((kind) => [
      kind,
      drawn(kind, from[kind], part, (path) => !SECTION.test(path)),
    ]),
  );
  const maybe = (x) => (random() < 0.3 ? x : NaN);
  const pins = set.boat.values.pins.map((pin) => pin.label),
    { aft_x, forward_x } = set.boat.values.place;
  return {
    set,
    pins,
    pin: Math.floor(random() * pins.length),
    wind: +between(3, 14).toFixed(2),
    heading: Math.round(between(30, 170)),
    heel: maybe(Math.round(between(0, 30))),
    place: maybe(+between(aft_x + 0.01, forward_x - 0.01).toFixed(2)),
    turns: maybe(+between(-3, 3).toFixed(1)),
  };
}

const cases = Array.from({ length: CASES }, (_, i) => drawnCase(i));
const askedOf = ({ pin, wind, heading, heel, place, turns }) => [
  pin,
  wind,
  heading * degrees,
  heel * degrees,
  place,
  turns * turn,
  420, // wide is the picture
];
const rideOf = (one, i) => {
  // seconds, every
  const [pin, wind, heading, , , turns] = askedOf(one);
  return [pin, wind, heading, turns, 0, i, 20, 0.1];
};
const callsOf = (one, i) => [
  ...["boat", "sailor", "day"].map((kind, record) => ({
    call: "read",
    record,
    name: kind,
    text: one.set[kind].text,
  })),
  { call: "fly", asked: askedOf(one) },
  ...(i % RIDE_EVERY === 0 ? [{ call: "ride", asked: rideOf(one, i) }] : []),
  ...(i % CHOICE_EVERY === 0 ? [{ call: "choice" }] : []),
];
const calls = cases.flatMap((one, i) => (takesTurn(i) ? callsOf(one, i) : []));

// What breaks YAML, and what its readers have disagreed about.
const SPLINTERS = [
  "[",
  "]",
  "{",
  "}",
  "?",
  ":",
  "-",
  ",",
  "#",
  '"',
  "'",
  "|",
  ">",
  "&a",
  "*a",
  "!",
  "!x",
  "%",
  "@",
  "`",
  "\n",
  " ",
  "\\",
  "? ",
  ": ",
  "- ",
  "\r",
  "...",
  "---",
  "\u0085",
  "\u2028",
  "\ufeff",
  "%YAML 1.2\n---\n",
  "%TAG ! a\n",
  '"\\/"',
  '"\\\'"',
  '"\\x4"',
  "\n---\n",
  "[?a]",
  "[a:b]",
  "{a:1}",
  '{"a":1}',
  "[-1]",
  "[a?b]",
  "::",
];

/** A file with some characters taken away, written twice, or others put between. */
function broken(text) {
  let now = text;
  const pick = (list) => list[Math.floor(random() * list.length)];
  for (let n = pick([1, 1, 2, 3, 6]); n > 0; n--) {
    const at = Math.floor(random() * now.length),
      how = random(),
      from = Math.floor(random() * now.length);
    const put =
      how < 0.6
        ? pick(SPLINTERS)
        : how < 0.8
          ? ""
          : now.slice(from, from + 1 + Math.floor(30 * random()));
    now = now.slice(0, at) + put + now.slice(how < 0.6 ? at : at + Math.floor(8 * random()));
  }
  return now;
}
const brokenCalls = Array.from({ length: BROKEN }, (_, i) => {
  const record = i % 3,
    kind = ["boat", "sailor", "day"][record];
  return {
    call: "read",
    record,
    name: kind,
    text: broken(i % 2 ? texts[kind] : fileOf(trees[kind])),
  };
});

let browser, folder;
before(async () => {
  browser = await openBrowser();
  folder = await mkdtemp(join(tmpdir(), "lullwise-test-"));
});
after(async () => {
  await browser?.close();
  await rm(folder, { recursive: true });
});

test(`of ${CASES} boats and days those of this run have the native bits in Chromium`, async () => {
  const { page, close } = await openPage(browser, file);
  await settled(page);
  const [inPage, natively] = await Promise.all([playInPage(page, calls), playNatively(calls)]);
  assert.equal(natively.length, calls.length + 1);
  const different = inPage.filter((hash, i) => hash !== natively[i]).length;
  assert.equal(different, 0, `of ${inPage.length} answers`);
  await close();
});

test(`${BROKEN} broken files get the same sentences in Chromium as natively`, async () => {
  const { page, close } = await openPage(browser, file);
  const [inPage, natively] = await Promise.all([
    playInPage(page, brokenCalls),
    playNatively(brokenCalls),
  ]);
  assert.equal(natively.length, brokenCalls.length + 1);
  const different = brokenCalls
    .filter((_, i) => inPage[i + 1] !== natively[i + 1])
    .map(({ text }) => text);
  assert.deepEqual(different, []);
  await close();
});

test("a good part of the broken files are refused, and a good part read", () => {
  const sound = brokenCalls.filter(
    ({ record, name, text }) =>
      engine.read(0, ["boat", "sailor", "day"][record], name, text).is_sound,
  ).length;
  assert.ok(sound >= 0.05 * BROKEN && sound <= 0.7 * BROKEN, `${sound} of ${BROKEN}`);
});

test("a good part of those boats fly, and a good part do not", () => {
  let flying = 0;
  for (const one of cases.slice(0, 100)) {
    for (const kind of ["boat", "sailor", "day"]) engine.read(0, kind, kind, one.set[kind].text);
    engine.put(askedOf(one));
    if (engine.ask("fly", 0).outcome === "flies") flying++;
  }
  assert.ok(flying >= 20 && flying <= 95, `${flying} of 100`);
});

// Members and numbers only, a negative zero as a zero.
const plain = (told) => JSON.parse(JSON.stringify(told));

test("the command line prints what the page is told, key by key and to the bit", async () => {
  for (let i = 0; i < CASES; i += ASKED_EVERY) {
    const one = cases[i];
    for (const kind of ["boat", "sailor", "day"]) {
      await writeFile(join(folder, kind), one.set[kind].text);
      engine.read(0, kind, kind, one.set[kind].text);
    }
    engine.put(askedOf(one));
    engine.ask("fly", 0);
    const told = engine.ask("fly_advice");
    const given = ["heel deg", "place m", "turns turns"]
      .map((name) => name.split(" "))
      .filter(([key]) => !isNaN(one[key]));
    const { stdout, stderr } = lullwise(
      [
        "fly",
        "--json",
        "--boat",
        "boat",
        "--sailor",
        "sailor",
        "--day",
        "day",
        "--pin",
        one.pins[one.pin],
        "--wind",
        `${one.wind} m/s`,
        "--heading",
        `${one.heading} deg`,
        ...given.map(([key, unit]) => `--${key}=${one[key]} ${unit}`),
      ],
      folder,
    );
    assert.ok(stdout, stderr);
    assert.deepEqual(plain(told), plain(JSON.parse(stdout)), `case ${i}`);
  }
});

test("the command line's ride is the page's of the same seed", async () => {
  const rows = tables.results.trace.rows;
  for (let i = 0; i < CASES; i += 5 * ASKED_EVERY) {
    const one = cases[i];
    for (const kind of ["boat", "sailor", "day"]) {
      await writeFile(join(folder, kind), one.set[kind].text);
      engine.read(0, kind, kind, one.set[kind].text);
    }
    engine.put(rideOf({ ...one, turns: NaN }, i));
    const { drawn, ...told } = engine.ask("ride", 0);
    const { history: own, width } = drawn;
    const { stdout, stderr } = lullwise(
      [
        "ride",
        "--json",
        "--boat",
        "boat",
        "--sailor",
        "sailor",
        "--day",
        "day",
        "--pin",
        one.pins[one.pin],
        "--wind",
        `${one.wind} m/s`,
        "--heading",
        `${one.heading} deg`,
        "--seed",
        `${i}`,
        "--minutes",
        "0.333333333333",
        "--every",
        "0.1 s",
      ],
      folder,
    );
    assert.ok(stdout, stderr);
    const printed = JSON.parse(stdout);
    const { history, ...rest } = printed;
    assert.deepEqual(plain(told), plain(rest), `case ${i}`);
    assert.equal(history.rows.length, own.length / width);
    history.rows.forEach((row, k) =>
      rows.forEach(({ key, in_si }, j) => {
        const here = own[k * width + j] / in_si;
        // twelve digits are told, and none beyond the 22nd place
        assert.ok(
          Math.abs(row[key] - here) <= 1e-11 * Math.abs(here) + 1e-22,
          `case ${i}, row ${k}: ${key} ${row[key]}, on the page ${here}`,
        );
      }),
    );
  }
});
