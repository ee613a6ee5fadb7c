// told.test.mjs - the page is told every answer as `lullwise ... --json` writes it: the same keys,
// texts and truths, and the same numbers to the bit.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { engineIn } from "../script/engine/module.js";
import { unpack } from "../script/engine/parcel.js";
import { lullwise } from "./desk.mjs";
import { learnedOf, ofDemo } from "./learned.mjs";

const CASES = 200; // random sailors, winds, pins and courses
const DAYS = Number(process.env.LW_DAYS ?? 2); // random days; each takes a minute

const module = await WebAssembly.compile(
  await readFile(new URL("../../build/page/page_engine.wasm", import.meta.url)),
);
const engine = await engineIn(module);
const { questions, signs } = engine.ask("tables");
const demo = async (name) => readFile(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
const texts = { boat: await demo("heron"), sailor: await demo("light"), day: await demo("breeze") };

// What each question is asked with; one that is not named here is asked with nothing.
const asked = {
  hold: { pin: "A", left: "5 nmi", "builds-to": "17 kn" },
  fly: { pin: "B", wind: "14 kn" },
  modes: { pin: "B" },
  ride: { pin: "B", minutes: "2", seed: "7" },
  why: { sign: ["bow-up", "touches"], pin: "B" },
  foil: { part: "main", speed: "8:12:2 kn" },
  card: { date: "2026-05-17" },
};

let folder;
before(async () => {
  folder = await mkdtemp(join(tmpdir(), "told-"));
});
after(() => rm(folder, { recursive: true }));

/** The answer as the page is told it, or why it is not taken. */
function byPage(set, name, options) {
  engine.load(0, set);
  const { is_taken, refusal } = engine.question(0, name, options);
  if (!is_taken) return refusal;
  for (let done = 0, steps; done < (steps = engine.askSteps(0)); )
    while (done < steps) engine.calls.lw_web_ask_step(0, done++);
  return unpack(engine.told("ask_tell", 0).parcel);
}

async function byCommand(set, name, options) {
  const words = [name, "--json"];
  for (const [kind, text] of Object.entries(set)) {
    await writeFile(join(folder, `${kind}.yaml`), text);
    words.push(`--${kind}`, join(folder, `${kind}.yaml`));
  }
  for (const [option, texts] of Object.entries(options))
    for (const text of [texts].flat()) words.push(`--${option}`, text);
  const { stdout, stderr } = lullwise(words);
  return stdout ? JSON.parse(stdout) : stderr;
}

// assert.deepEqual tells 0 from -0; how members are shown stands under a symbol, which is left out.
const plain = (value) => {
  if (Array.isArray(value)) return value.map(plain);
  if (!value || typeof value !== "object") return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, plain(one)]));
};

const fits = ({ takes }, set) =>
  Object.fromEntries(Object.entries(set).filter(([kind]) => takes.split(" ").includes(kind)));

const named = (wanted) => questions.find(({ name }) => name === wanted);

for (const question of questions) {
  test(`the demo's ${question.name} is told alike`, async () => {
    const set = fits(question, texts),
      options = asked[question.name] ?? {};
    const told = byPage(texts, question.name, options);
    assert.ok(Object.keys(told).length > 3, JSON.stringify(told).slice(0, 200));
    assert.deepEqual(plain(told), await byCommand(set, question.name, options));
  });
}

test("what was learned is put in as by --learned, and into no other boat", async () => {
  const options = { pin: "B", minutes: "2", seed: "7" };
  const measured = plain(byPage({ ...texts, learned: "" }, "ride", options));
  const learned = plain(byPage({ ...texts, learned: ofDemo }, "ride", options));
  assert.deepEqual(learned, await byCommand({ ...texts, learned: ofDemo }, "ride", options));
  assert.notDeepEqual(learned, measured);
  engine.read(0, "day", "day", texts.day); // as a form does: the others still have it
  assert.deepEqual(plain(byPage({ ...texts, learned: ofDemo }, "ride", options)), learned);
  assert.deepEqual(plain(byPage({ ...texts, learned: "" }, "ride", options)), measured);
  const other = { ...texts, learned: learnedOf("0123456789abcdef") };
  assert.deepEqual(plain(byPage(other, "ride", options)), measured);
});

const shares = async (name) => {
  const other = await engineIn(module),
    parts = [];
  for (const one of [engine, other]) {
    one.load(0, texts);
    one.question(0, name);
  }
  for (let steps; parts.length < (steps = engine.askSteps(0)); ) {
    const begun = parts.length;
    for (let step = steps; step-- > begun; )
      parts[step] = (step % 3 ? other : engine).askStep(0, step);
    for (const one of [engine, other]) parts.forEach((part, step) => one.askTake(0, step, part));
  }
  const shared = unpack(other.told("ask_tell", 0).parcel);
  assert.deepEqual(plain(shared), await byCommand(fits(named(name), texts), name, {}));
};
for (const name of ["pick", "sensitivity"])
  test(`steps of ${name} shared by two engines, in any order, are put together to the same`, () =>
    shares(name));

test("every shown column has a head, a unit and digits from the engine", () => {
  const { places } = byPage(texts, "pick", {});
  for (const column of places.columns)
    assert.deepEqual(Object.keys(column), ["key", "head", "unit", "digits", "form"]);
});

let seed = 11;
function random() {
  seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0; // the same stream each time
  return seed / 2 ** 32;
}
const one = (list) => list[Math.floor(random() * list.length)];
const between = (low, high, digits) => (low + (high - low) * random()).toFixed(digits);

test(`${CASES} flights of random sailors in random winds are told alike`, async () => {
  for (let i = 0; i < CASES; i++) {
    const sailor = texts.sailor.replace(/^( *mass: *)[\d.]+/m, `$1${between(50, 110, 1)}`);
    const options = {
      pin: one(["A", "B", "C", "D"]),
      wind: `${between(4, 26, 2)} kn`,
      course: one(["upwind", "reach", "downwind"]),
    };
    const set = { ...texts, sailor },
      name = i % 10 ? "fly" : "modes";
    assert.deepEqual(
      plain(byPage(set, name, options)),
      await byCommand(set, name, options),
      JSON.stringify([i, name, options]),
    );
  }
});

const ofDay = {
  pick: () => ({}),
  hold: () => ({
    pin: one(["A", "B", "C", "D"]),
    left: "3 nmi",
    "builds-to": `${between(8, 20, 1)} kn`,
  }),
  range: () => ({ pin: one(["A", "B", "C", "D"]) }),
  swims: () => ({}),
  why: () => ({ sign: one(signs).key, course: one(["upwind", "reach", "downwind"]) }),
  ride: () => ({ pin: one(["A", "B", "C", "D"]), minutes: "3", seed: between(1, 1000, 0) }),
};

test(`${DAYS} random days are told alike by every question that takes a day`, async () => {
  for (let i = 0; i < DAYS; i++) {
    const mean = Number(between(7, 18, 1));
    const winds = { lull: 0.75 * mean, mean, puff: 1.3 * mean };
    const put = (text, [key, wind]) =>
      text.replace(new RegExp(`^( *${key}: *)[\\d.]+`, "m"), `$1${wind.toFixed(1)}`);
    const set = {
      boat: texts.boat,
      sailor: texts.sailor.replace(/^( *mass: *)[\d.]+/m, `$1${between(50, 110, 1)}`),
      day: Object.entries(winds).reduce(put, texts.day),
    };
    assert.notEqual(set.day, texts.day);
    for (const [name, optionsOf] of Object.entries(ofDay)) {
      const options = optionsOf();
      const said = JSON.stringify([i, winds, name, options]);
      assert.deepEqual(
        plain(byPage(set, name, options)),
        await byCommand(set, name, options),
        said,
      );
    }
  }
});
