// walk.test.mjs - random walks of two tabs: nothing entered is lost or used unseen.
// SPDX-License-Identifier: MIT
//
// The page's own store and engine, in node; of a browser there are address, history and storage.
// A walk is acts as a reader's: typing, undo, links, reloads, copies, forgetting. LW_WALKS=500 for
// a long one.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import vm from "node:vm";
import { build } from "esbuild";
import { kinds } from "../script/base/kinds.js";
import { engineIn } from "../script/engine/module.js";
import { randomFrom } from "./random.mjs";

const WALKS = Number(process.env.LW_WALKS ?? 15);
const ACTS = 40;

// Alike, whatever page made them; if not, told from where they part.
function same(one, other) {
  const sorted = (key, value) =>
    value && typeof value === "object" && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort())
      : value;
  const [is, wanted] = [one, other].map((value) => JSON.stringify(value, sorted));
  let at = 0;
  while (at < is.length && is[at] === wanted[at]) at++;
  const about = (text) => text.slice(Math.max(0, at - 60), at + 60);
  assert.ok(is === wanted, `${about(is)}\n instead of ${about(wanted)}`);
}

const demo = (name) => readFile(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
const module = new URL("../../build/page/page_engine.wasm", import.meta.url);
const engine = await engineIn(await WebAssembly.compile(await readFile(module)));
const read = (kind, text) => engine.read(0, kind, kind, text);
const written = async (kind, name) => read(kind, await demo(name)).written;
const invented = {
  boat: [await written("boat", "heron")],
  sailor: [await written("sailor", "light"), await written("sailor", "heavy")],
  day: [await written("day", "breeze")],
};
const ask = async (question, ...words) =>
  question === "starter"
    ? engine.ask("write", -1, kinds.indexOf(words[0])).text
    : engine.read(...words);

const scriptFolder = fileURLToPath(new URL("../script", import.meta.url));
const bundled = await build({
  stdin: {
    contents: `export { openStore } from "./keep/store.js";
               export { addressOf } from "./keep/address.js";
               export { isAlike, learnSections, textAt } from "./base/tree.js";`,
    resolveDir: scriptFolder,
  },
  bundle: true,
  write: false,
  format: "iife",
  globalName: "page",
});
const script = new vm.Script(bundled.outputFiles[0].text);

// What a tab's page may do to storage: others are told of it.
function storage(held, onWrite) {
  const api = {
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, text) => write(key, `${text}`),
    removeItem: (key) => write(key, null),
  };
  function write(key, text) {
    if ((held.get(key) ?? null) === text) return;
    if (text === null) held.delete(key);
    else held.set(key, text);
    onWrite(key, text);
  }
  return new Proxy(api, {
    ownKeys: () => [...held.keys()],
    getOwnPropertyDescriptor: () => ({ enumerable: true, configurable: true }),
  });
}

class Browser {
  local = new Map();
  tabs = [];

  open(hash = "") {
    const tab = new Tab(this, hash);
    this.tabs.push(tab);
    return tab.load();
  }
  tell(from, key, newValue) {
    for (const tab of this.tabs) if (tab !== from) tab.fire("storage", { key, newValue });
  }
  async rest() {
    for (let i = 0; i < 3; i++) for (const tab of this.tabs) await tab.store.idle();
  }
}

class Tab {
  session = new Map();
  location;
  #browser;
  #listeners;

  constructor(browser, hash) {
    this.#browser = browser;
    this.location = { hash };
  }

  fire(event, detail) {
    return Promise.all((this.#listeners.get(event) ?? []).map((listener) => listener(detail)));
  }

  /** A page in this tab, as after a reload. */
  async load() {
    this.#listeners = new Map();
    const hear = (event, listener) =>
      this.#listeners.set(event, [...(this.#listeners.get(event) ?? []), listener]);
    const move = (_, __, address) => {
      this.location.hash = address;
    };
    const window = {
      location: this.location,
      history: { pushState: move, replaceState: move },
      addEventListener: hear,
      localStorage: storage(this.#browser.local, (key, text) =>
        this.#browser.tell(this, key, text),
      ),
      sessionStorage: storage(this.session, () => {}),
      structuredClone,
      URLSearchParams,
    };
    window.window = window;
    script.runInNewContext(window);
    this.page = window.page;
    this.page.learnSections(engine.ask("tables"));
    this.store = await this.page.openStore({ ask }, invented, ["today", "boat"]);
    return this;
  }

  /** Follows a link in this tab. */
  async follow(hash) {
    this.location.hash = hash;
    await this.fire("popstate");
  }

  /** What a reader sees. */
  seen() {
    const { set, ids, refused, kept } = this.store.state;
    const texts = kinds.map((kind) =>
      Object.entries(refused[kind]).map(([at, { text }]) => [at, text]),
    );
    return structuredClone([set, ids, texts, kept]);
  }
}

const paths = {
  boat: [
    ["main_foil.span", ["0.9 m", "1.05 m", "70 m", "wide"]],
    ["rig.sail_area", ["7 m2", "8.5 m2", "80 m2"]],
    ["pins.A", ["5 deg", "50 deg", "5.5 deg"]],
    ["pins.E", ["0.2 deg", "x"]],
    ["name", ["Tern", ""]],
  ],
  sailor: [
    ["person.mass", ["72 kg", "80 kg", "900 kg", "64"]],
    ["person.skill", ["0", "1", "7"]],
    ["person.least_heel", ["5 deg", "15 deg", "25 deg"]],
    ["person.most_heel", ["12 deg", "20 deg"]],
  ],
  day: [
    ["wind.lull", ["6 kn", "9 kn", "14 kn", "much"]],
    ["wind.mean", ["8 kn", "12 kn", "16 kn"]],
    ["wind.puff", ["10 kn", "15 kn", "20 kn"]],
    ["legs.0.length", ["1 nmi", "0"]],
    ["aim", ["easy", "none"]],
  ],
};
const links = [
  "#today",
  "#today?sailor.name=Friend&sailor.person.mass=90+kg",
  "#boat?boat.main_foil.span=70+m&boat.rig.sail_area=7+m2&day.wind.lull=6+kn",
  "#today?day.wind.lull=30+kn&day.wind.puff=14+kn&boat.no.such=1",
  "#today?boat.pins.A=4+deg&boat.pins.B=x&day.legs.0.heading=20+deg&day.legs.0.length=2+nmi",
];

/** One walk: what is done, and what must be so after it. */
class Walk {
  #random;
  #browser = new Browser();
  done = [];

  constructor(seed) {
    this.#random = randomFrom(seed);
  }

  #pick(list) {
    return list[Math.floor(this.#random() * list.length)];
  }

  async go() {
    await this.#browser.open();
    await this.#browser.open();
    for (let i = 0; i < ACTS; i++) {
      const tab = this.#pick(this.#browser.tabs);
      const act = this.#pick([
        "type",
        "type",
        "type",
        "type",
        "turnBack",
        "useAny",
        "copy",
        "begin",
        "forget",
        "link",
        "reload",
        "broken",
        "oneLegMore",
        "leaveOut",
      ]);
      this.done.push(`${this.#browser.tabs.indexOf(tab)} ${act}`);
      await this[act](tab);
      await this.#browser.rest();
      for (const one of this.#browser.tabs) this.#check(one);
    }
    for (const one of this.#browser.tabs) await this.#checkLink(one);
  }

  async type({ store, page }) {
    const kind = this.#pick(kinds);
    const [path, texts] = this.#pick(paths[kind]);
    const text = this.#pick(texts);
    const aside = structuredClone(store.state.refused[kind]);
    await store.put(kind, path, text);
    for (const [at, wanted] of [
      ...Object.entries(aside).map(([p, one]) => [p, one.text]),
      [path, text],
    ]) {
      if (at === path && wanted !== text) continue;
      const refused = store.state.refused[kind][at];
      if (refused) assert.ok(refused.text === wanted && refused.faults.length > 0, at);
      else assert.equal(page.textAt(store.state.set[kind], at), wanted, at);
    }
  }

  async turnBack({ store, seen }) {
    const now = () => seen.call({ store });
    if (!store.canUndo) return;
    const before = now();
    const count = 1 + Math.floor(4 * this.#random());
    let undone = 0;
    for (; undone < count && store.canUndo; undone++) await store.undo();
    for (; undone > 0; undone--) await store.redo();
    same(now(), before);
    if (this.#random() < 0.5) await store.undo();
  }

  async useAny({ store }) {
    const kind = this.#pick(kinds);
    const { id, tree } = this.#pick(store.records(kind));
    await store.use(kind, id);
    same(store.state.set[kind], tree);
  }

  copy = ({ store }) => store.keepAs("sailor", `Copy ${Math.floor(9 * this.#random())}`);
  begin = ({ store }) => store.begin(this.#pick(kinds), "New");
  leaveOut = ({ store }) => store.drop();

  async forget({ store }) {
    const kind = this.#pick(kinds);
    const own = store.state.kept[kind];
    if (!own.length) return;
    const { id } = this.#pick(own);
    const before = structuredClone([store.state.set, store.state.kept]);
    await store.forget(kind, id);
    assert.ok(!store.records(kind).some((one) => one.id === id));
    await store.undo();
    same([store.state.set, store.state.kept], before);
    await store.redo();
  }

  async oneLegMore({ store }) {
    const { legs } = store.state.set.day;
    if (legs.length > 5) return;
    const aside = structuredClone(store.state.refused);
    await store.choose("day", { ...store.state.set.day, legs: [...legs, legs.at(-1)] });
    assert.equal(store.state.set.day.legs.length, legs.length + 1);
    same(store.state.refused, aside);
  }

  async link(tab) {
    const link = this.#pick(links);
    if (link === tab.location.hash) return; // a browser goes nowhere then
    const kept = structuredClone(tab.store.state.kept);
    await tab.follow(link);
    same(tab.store.state.kept, kept);
    for (const [key, text] of new URLSearchParams(link.split("?")[1])) {
      const [kind, ...path] = key.split(".");
      const { set, refused } = tab.store.state;
      const at = path.join(".");
      assert.equal(refused[kind][at]?.text ?? tab.page.textAt(set[kind], at), text, key);
    }
  }

  async reload(tab) {
    const before = tab.seen();
    await tab.load();
    same(tab.seen(), before);
  }

  async broken(tab) {
    const before = tab.seen();
    const kind = this.#pick(kinds);
    const faults = await tab.store.choose(kind, {
      ...tab.store.state.set[kind],
      nothing: { here: "1" },
    });
    assert.ok(faults.length);
    same(tab.seen(), before);
  }

  // One's own records stand as they are used, and as the browser keeps them.
  #check({ store, page }) {
    const { set, ids, kept, refused } = store.state;
    for (const kind of kinds) {
      const own = kept[kind].find(({ id }) => id === ids[kind])?.tree;
      if (own) same(own, set[kind]);
      const stored = Object.keys(this.#stored(kind)).length;
      assert.equal(stored, kept[kind].length, `kept of ${kind}`);
      for (const { id, tree } of kept[kind]) same(this.#stored(kind)[id], tree);
      assert.ok(read(kind, JSON.stringify(plain(set[kind]))).is_sound);
      for (const [at, { text }] of Object.entries(refused[kind]))
        assert.notEqual(page.textAt(set[kind], at), text, `${at} is refused and used`);
    }
    same(
      store
        .records("sailor")
        .slice(-2)
        .map((one) => one.tree),
      invented.sailor,
    );
  }

  #stored(kind) {
    const head = `lullwise.record.${kind}.`;
    const own = [...this.#browser.local].filter(([key]) => key.startsWith(head));
    return Object.fromEntries(own.map(([key, text]) => [key.slice(head.length), JSON.parse(text)]));
  }

  // The address, opened where nothing is kept, has the same boat, sailor and day.
  async #checkLink({ store, location }) {
    const fresh = await new Browser().open(location.hash);
    for (const kind of kinds)
      assert.ok(fresh.page.isAlike(fresh.store.state.set[kind], store.state.set[kind]), kind);
  }
}

// A record as JSON that the engine reads: labelled lists as maps.
const plain = (tree) =>
  tree.pins
    ? { ...tree, pins: Object.fromEntries(tree.pins.map(({ label, text }) => [label, text])) }
    : tree;

test(`${WALKS} walks of ${ACTS} acts in two tabs lose nothing and use nothing unseen`, async () => {
  for (let seed = 1; seed <= WALKS; seed++) {
    const walk = new Walk(seed);
    try {
      await walk.go();
    } catch (error) {
      error.message = `walk ${seed}, after ${walk.done.slice(-6).join(", ")}: ${error.message}`;
      throw error;
    }
  }
});

test("a record that the engine reads no more does not keep the page from opening", async () => {
  const browser = new Browser();
  const boat = { ...invented.boat[0], name: "Old", nothing: { here: "1" } };
  const set = { boat, sailor: invented.sailor[1], day: invented.day[0] };
  browser.local.set("lullwise.record.boat.a", JSON.stringify(boat));
  const ids = { boat: "a", sailor: "invented-1", day: "invented-0" };
  browser.local.set("lullwise.last", JSON.stringify({ view: "today", set, ids }));
  const { store } = await browser.open();
  same(store.state.set, { ...set, boat: invented.boat[0] });
  assert.ok(store.state.values.boat.pins.length > 0);
  assert.equal(store.state.kept.boat.length, 1);
});
