// store.js - what the page shows, and how it got there: state, undo, address, the browser's memory.
// SPDX-License-Identifier: MIT
//
// A state: { view, speedUnit, more, set, values, doubts }. `set` has the trees of boat, sailor and
// day, `values` and `doubts` what the engine read in them, `more` a view's own words (a slider, a
// pin), kept in the address too.

import { Drafts } from "./drafts.js";
import { apply, differences, fileOf } from "./tree.js";

export const kinds = ["boat", "sailor", "day"];
const KEPT = "lullwise.kept";
const LAST = "lullwise.last";

function remembered(key) {
  try {
    return JSON.parse(localStorage.getItem(key));
  } catch {
    return null;
  }
}

function remember(key, value) {
  try {
    localStorage.setItem(key, JSON.stringify(value));
  } catch {
    /* a private window: not kept */
  }
}

/** Nothing is remembered and the address says nothing: the invented records will be shown. */
export const isFirstTime = () => location.hash === "" && remembered(LAST) === null;

function readAddress() {
  const [view, query = ""] = location.hash.slice(1).split("?");
  const changed = {};
  const more = {};
  let speedUnit = null;
  for (const [key, text] of new URLSearchParams(query)) {
    const [first] = key.split(".");
    if (kinds.includes(first) && key.includes("."))
      (changed[first] ??= []).push([key.slice(first.length + 1), text]);
    else if (key === "speed") speedUnit = text;
    else more[key] = text;
  }
  return { view, changed, more, speedUnit, hasQuery: query !== "" };
}

function addressOf(state, start) {
  const query = new URLSearchParams();
  if (state.speedUnit !== "kn") query.set("speed", state.speedUnit);
  for (const [key, text] of Object.entries(state.more)) if (text !== null) query.set(key, text);
  for (const kind of kinds) {
    for (const [path, text] of differences(state.set[kind], start[kind]))
      query.append(`${kind}.${path}`, text);
  }
  const words = query.toString();
  return `#${state.view}${words ? `?${words}` : ""}`;
}

class Store {
  #engine;
  #start;
  #kept;
  #views;
  #drafts = new Drafts((kind, tree) => this.#readTree(kind, tree));
  #state = null;
  #past = [];
  #future = [];
  #listeners = new Set();
  #turn = Promise.resolve();

  constructor(engine, start, kept, views) {
    this.#engine = engine;
    this.#start = start;
    this.#kept = kept;
    this.#views = views;
  }

  async open() {
    this.#show(await this.#fromAddress(), "replace");
    addEventListener("popstate", async () => {
      if (location.hash === addressOf(this.#state, this.#start)) return;
      this.#show(await this.#fromAddress(), null);
    });
  }

  get state() {
    return this.#state;
  }
  get kept() {
    return this.#kept;
  }
  get canUndo() {
    return this.#past.length > 0;
  }
  get canRedo() {
    return this.#future.length > 0;
  }
  undo() {
    return this.#inTurn(() => this.#step(this.#past, this.#future));
  }
  redo() {
    return this.#inTurn(() => this.#step(this.#future, this.#past));
  }
  onChange(listener) {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  go(view) {
    this.#show({ ...this.#state, view }, "push");
  }
  setSpeedUnit(speedUnit) {
    this.#show({ ...this.#state, speedUnit }, "replace");
  }
  /** A view's own words: kept in the address; a slider's moves are not undone, an edit is. */
  say(words, { isEdit = false } = {}) {
    const more = { ...this.#state.more, ...words };
    if (JSON.stringify(more) === JSON.stringify(this.#state.more)) return;
    if (isEdit) this.#mark();
    this.#show({ ...this.#state, more }, "replace");
  }

  hasDraft(kind, path) {
    return this.#drafts.has(kind, path);
  }
  /** Forgets a faulty text. */
  drop(kind, path) {
    this.#drafts.drop(kind, path);
  }
  /** What the engine says of a text at a path, without taking it. */
  trial(kind, path, text) {
    return this.#drafts.trial(this.#state.set[kind], kind, path, text);
  }
  /** Takes a text; a faulty one is kept aside until the record is sound. Returns the faults. */
  put(kind, path, text) {
    return this.#inTurn(() => {
      const isNew = (tree) => JSON.stringify(tree) !== JSON.stringify(this.#state.set[kind]);
      const take = async (tree) => {
        if (isNew(tree)) await this.#take(kind, tree);
      };
      return this.#drafts.put(this.#state.set[kind], kind, path, text, take);
    });
  }
  /** Another boat, sailor or day as a whole, if it is sound. Returns the faults. */
  choose(kind, tree) {
    return this.#inTurn(async () => {
      const { is_sound, faults } = await this.#readTree(kind, tree);
      if (is_sound) {
        this.#drafts.forget(kind);
        await this.#take(kind, tree);
      }
      return faults;
    });
  }
  /** Forgets a kept record by name; the one in use stays in use. */
  forget(kind, name) {
    this.#kept[kind] = this.#kept[kind].filter((one) => one.name !== name);
    remember(KEPT, this.#kept);
    this.#show(this.#state, "replace");
  }

  // Changes one after the other: each begins with what the last has left.
  #inTurn(begin) {
    return (this.#turn = this.#turn.then(begin, begin));
  }

  #readTree(kind, tree) {
    return this.#engine.ask("read", 0, kind, kind, fileOf(tree));
  }

  // The state with what the engine reads in its set; null when some of it is faulty.
  async #read(next) {
    const values = {};
    const doubts = {};
    for (const kind of kinds) {
      const answer = await this.#readTree(kind, next.set[kind]);
      if (!answer.is_sound) return null;
      values[kind] = answer.values;
      doubts[kind] = answer.faults;
    }
    return { ...next, values, doubts };
  }

  #show(next, how) {
    const address = addressOf(next, this.#start);
    this.#state = next;
    if (how === "push" && address !== location.hash) history.pushState(null, "", address);
    else if (how) history.replaceState(null, "", address);
    const { view, speedUnit, more, set } = next;
    remember(LAST, { view, speedUnit, more, set });
    for (const listener of this.#listeners) listener(next);
  }

  async #take(kind, tree) {
    const sound = await this.#read({ ...this.#state, set: { ...this.#state.set, [kind]: tree } });
    if (!sound) return;
    this.#mark();
    this.#show(sound, "replace");
    this.#keep();
  }

  // What was changed here is kept under its name; what a link brings is only looked at.
  #keep() {
    for (const kind of kinds) {
      const list = this.#kept[kind];
      const tree = this.#state.set[kind];
      const at = list.findIndex((one) => one.name === tree.name);
      if (at < 0) list.push(tree);
      else list[at] = tree;
    }
    remember(KEPT, this.#kept);
  }

  // What is so now can be had again.
  #mark() {
    this.#past.push(this.#state);
    this.#future.length = 0;
  }

  #step(from, to) {
    if (!from.length) return;
    to.push(this.#state);
    for (const kind of kinds) this.#drafts.forget(kind);
    this.#show(from.pop(), "replace");
  }

  async #fromAddress() {
    const address = readAddress();
    const next = this.#stateOf(address, address.hasQuery || this.#state !== null);
    return (await this.#read(next)) ?? this.#read({ ...next, set: structuredClone(this.#start) });
  }

  // isTold: the address says all of it; else what was last shown in this browser stays.
  #stateOf({ view, changed, more, speedUnit, hasQuery }, isTold) {
    const last = hasQuery || !this.#state ? remembered(LAST) : null;
    const first = { view: this.#views[0], speedUnit: "kn", more: {} };
    const base = this.#state ?? { ...first, set: structuredClone(this.#start), ...last };
    const linked = (kind) => [kind, apply(this.#start[kind], changed[kind] ?? [])];
    return {
      view: this.#views.includes(view) ? view : base.view,
      speedUnit: speedUnit ?? (isTold ? "kn" : base.speedUnit),
      more: isTold ? more : base.more,
      set: isTold ? Object.fromEntries(kinds.map(linked)) : base.set,
    };
  }
}

/** start: { boat, sailor, day } trees; invented: lists of trees by kind, kept at first. */
export async function openStore(engine, start, invented, views) {
  const store = new Store(engine, start, remembered(KEPT) ?? invented, views);
  await store.open();
  return store;
}
