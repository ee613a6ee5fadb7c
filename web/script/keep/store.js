// store.js - what the page shows, and how it got there: state, undo, address, the browser's memory.
// SPDX-License-Identifier: MIT
//
// A state: { view, speedUnit, more, set, ids, kept, refused, values, doubts }. `set` has the trees
// of boat, sailor and day, `values` and `doubts` what the engine read in them, `refused` by kind
// and path the texts that it did not take, `more` a view's own words (a slider, a pin), kept in
// the address too; `ids` and `kept`: records.js.

import { addressOf, readAddress } from "./address.js";
import { byKind, kinds } from "../base/kinds.js";
import { lastShown, onOtherTab, rememberShown } from "./memory.js";
import * as records from "./records.js";
import { settle, settleInto } from "./settle.js";
import { apply, fileOf, isAlike, textAt, withText } from "../base/tree.js";

const VIEW = "view"; // marks what stands in the browser's history as a view of this page

const isSame = (one, other) => JSON.stringify(one) === JSON.stringify(other);

const valuesOf = (answers) => ({
  values: byKind((kind) => answers[kind].values),
  doubts: byKind((kind) => answers[kind].faults),
});

/** Nothing is remembered and the address says nothing: the invented records will be shown. */
export const isFirstTime = () => location.hash === "" && lastShown() === null;

class Store {
  #engine;
  #start;
  #invented;
  #views;
  #state = null;
  #past = [];
  #future = [];
  #listeners = new Set();
  #turn = Promise.resolve();

  constructor(engine, invented, views) {
    this.#engine = engine;
    this.#invented = records.withIdentities(invented);
    this.#start = byKind((kind) => invented[kind][0]);
    this.#views = views;
  }

  async open() {
    this.#show(await this.#fromAddress(), "replace");
    addEventListener("popstate", (event) => this.#inTurn(() => this.#follow(event?.state)));
    onOtherTab((kind, id, tree) => this.takeOver(kind, id, tree));
  }

  get state() {
    return this.#state;
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
    if (isSame(more, this.#state.more)) return;
    if (isEdit) this.#mark();
    this.#show({ ...this.#state, more }, "replace");
  }

  /** The records of a kind at hand: [{ id, tree }], one's own first. */
  records(kind) {
    return this.#atHand(this.#state, kind);
  }

  /** { text, faults } of a text that is not taken at a path; else undefined. */
  refusedAt(kind, path) {
    return this.#state.refused[kind][path];
  }
  /** Forgets refused texts: one, of a kind at a path, or all. */
  drop(kind, path) {
    return this.#inTurn(() => {
      const { [path]: _, ...others } = this.#state.refused[kind] ?? {};
      const none = byKind(() => ({}));
      this.#mark();
      const refused = kind ? { ...this.#state.refused, [kind]: others } : none;
      this.#show({ ...this.#state, refused }, "replace");
    });
  }
  /** The faults and doubts of a text at a path, without taking it. */
  async trial(kind, path, text) {
    return (await this.#settledWith(kind, path, text)).faults;
  }
  /** Takes a text, or keeps it aside where it is faulty. Returns its faults and the doubts. */
  put(kind, path, text) {
    return this.#inTurn(async () => {
      const { tree, refused, faults } = await this.#settledWith(kind, path, text);
      await this.#take(kind, tree, refused);
      return faults;
    });
  }
  /** The record in use changed as a whole, if that is sound. Returns the faults. */
  choose(kind, tree) {
    return this.#ifSound(kind, tree, () => this.#take(kind, tree, this.#stillRefused(kind, tree)));
  }
  /** A new record, kept and in use, if it is sound; one at hand that is alike is used. */
  add(kind, tree) {
    return this.#ifSound(kind, tree, (sound) =>
      this.#use(kind, sound, records.identityOf(this.records(kind), sound) ?? undefined),
    );
  }
  /** A record to begin with, under a name. */
  async begin(kind, name) {
    const text = await this.#engine.ask("starter", kind);
    const { written } = await this.#engine.ask("read", 0, kind, kind, text);
    return this.add(kind, { ...written, name });
  }
  /** Uses a record at hand. */
  use(kind, id) {
    const { tree } = this.records(kind).find((one) => one.id === id);
    return this.#ifSound(kind, tree, () => this.#use(kind, tree, id));
  }
  /** Keeps the record in use as one more, under a name. Returns the faults of the name. */
  keepAs(kind, name) {
    const tree = { ...this.#state.set[kind], name };
    return this.#ifSound(kind, tree, () => this.#use(kind, tree));
  }
  /** Keeps logged days, [{ id, tree }], as one change. */
  keepDays(days) {
    return this.#inTurn(() => {
      const next = records.withDays(this.#state, days);
      if (isSame(next.kept, this.#state.kept)) return;
      this.#mark();
      this.#change(next);
    });
  }
  /** Forgets a kept record, or a logged day; one in use stays in use. */
  forget(kind, id) {
    return this.#inTurn(() => {
      this.#mark();
      this.#change(records.without(this.#state, kind, id));
    });
  }

  /** What was made of a record elsewhere, in every state; null: forgotten. */
  takeOver(kind, id, tree) {
    return this.#inTurn(() => this.#takeOver(kind, id, tree));
  }

  /** When all that was asked for so far is done. */
  idle() {
    return this.#turn;
  }

  // Changes one after the other: each begins with what the last has left.
  #inTurn(begin) {
    return (this.#turn = this.#turn.then(begin, begin));
  }

  // What is refused of a kind at the paths that a changed tree leaves as they are.
  #stillRefused(kind, tree) {
    const { set, refused } = this.#state;
    const isLeft = ([path]) => isSame(textAt(tree, path), textAt(set[kind], path));
    return Object.fromEntries(Object.entries(refused[kind]).filter(isLeft));
  }

  #ifSound(kind, tree, then) {
    return this.#inTurn(async () => {
      const { is_sound, faults } = await this.#readTree(kind, tree);
      if (is_sound) await then(tree);
      return faults;
    });
  }

  #readTree(kind, tree) {
    return this.#engine.ask("read", 0, kind, kind, fileOf(tree));
  }

  #settledWith(kind, path, text) {
    const { set, refused } = this.#state;
    const read = (tree) => this.#readTree(kind, tree);
    return settleInto(read, set[kind], refused[kind], [path, text], withText);
  }

  // A record with a link's texts; the one to start with, where it is sound with none of them.
  async #settled(kind, from, texts) {
    const read = (tree) => this.#readTree(kind, tree);
    const found = await settle(read, (some) => apply(from, some), texts);
    return found.answer.is_sound ? found : settle(read, () => this.#start[kind], []);
  }

  // Back and forward lead through views of this page, marked by it: what was entered stays. Any
  // other address is a link.
  async #follow(mark) {
    if (location.hash === addressOf(this.#state, this.#start)) return;
    const { view } = readAddress();
    if (mark === VIEW && this.#views.includes(view)) {
      this.#show({ ...this.#state, view }, "replace");
      return;
    }
    const next = await this.#fromAddress();
    this.#mark();
    this.#show(next, "replace");
  }

  // The state with what the engine reads in its set, read anew where that is not the present one;
  // null when some of it is faulty.
  async #read(next) {
    const { set, values, doubts } = this.#state;
    const answers = {};
    for (const kind of kinds) {
      if (next.set[kind] === set[kind])
        answers[kind] = { is_sound: true, values: values[kind], faults: doubts[kind] };
      else answers[kind] = await this.#readTree(kind, next.set[kind]);
      if (!answers[kind].is_sound) return null;
    }
    return { ...next, ...valuesOf(answers) };
  }

  #show(next, how) {
    const address = addressOf(next, this.#start);
    this.#state = next;
    if (how === "push" && address !== location.hash) history.pushState(VIEW, "", address);
    else if (how) history.replaceState(VIEW, "", address);
    const { view, speedUnit, more, set, ids, refused } = next;
    rememberShown({ view, speedUnit, more, set, ids, refused });
    for (const listener of this.#listeners) listener(next);
  }

  // Shows a state, and makes the browser keep what it has.
  #change(next) {
    records.keepChanges(this.#state.kept, next.kept);
    this.#show(next, "replace");
  }

  async #take(kind, tree, refused) {
    const aside = { ...this.#state, refused: { ...this.#state.refused, [kind]: refused } };
    const isNew = !isSame(tree, this.#state.set[kind]);
    if (!isNew && isSame(aside.refused, this.#state.refused)) return;
    const next = isNew ? await this.#read(records.edited(aside, kind, tree)) : aside;
    this.#mark();
    this.#change(next);
  }

  async #use(kind, tree, id) {
    const aside = { ...this.#state, refused: { ...this.#state.refused, [kind]: {} } };
    const next = await this.#read(records.inUse(aside, kind, tree, id));
    this.#mark();
    this.#change(next);
  }

  // What is so now can be had again.
  #mark() {
    this.#past.push(this.#state);
    this.#future.length = 0;
  }

  // To the last state that is still sound, with what other tabs have made of its records.
  async #step(from, to) {
    let next = null;
    while (!next && from.length) next = await this.#read(from.pop());
    if (!next) return;
    to.push(this.#state);
    this.#change(next);
  }

  // What another tab made of a record, in every state that one can come to.
  async #takeOver(kind, id, after) {
    const before = this.#state.kept[kind].find((one) => one.id === id)?.tree ?? null;
    const take = (state) => records.withOthers(state, kind, id, { before, after });
    this.#past = this.#past.map(take);
    this.#future = this.#future.map(take);
    this.#show((await this.#read(take(this.#state))) ?? this.#state, "replace");
  }

  async #fromAddress() {
    const address = readAddress();
    const last = lastShown();
    const isTold = address.hasQuery || this.#state !== null;
    const base = this.#base(last);
    const found = {};
    for (const kind of kinds) {
      found[kind] = isTold
        ? await this.#settled(kind, this.#start[kind], address.changed[kind] ?? [])
        : await this.#settled(kind, base.set[kind], []);
    }
    return {
      ...this.#identified(base, found),
      ...valuesOf(byKind((kind) => found[kind].answer)),
      view: this.#views.includes(address.view) ? address.view : base.view,
      speedUnit: address.speedUnit ?? (isTold ? "kn" : base.speedUnit),
      more: isTold ? address.more : base.more,
    };
  }

  // What was shown last, in this tab or in any, with what was made of its records since; at first
  // the invented set.
  #base(last) {
    const none = byKind(() => ({}));
    const kept = this.#state?.kept ?? records.openKept(this.#invented);
    const first = { view: this.#views[0], speedUnit: "kn", more: {}, set: this.#start };
    const base = { ...first, refused: none, ...(this.#state ?? last), kept };
    const treeOf = (kind) => kept[kind].find((one) => one.id === base.ids?.[kind])?.tree;
    const set = byKind((kind) => treeOf(kind) ?? base.set[kind]);
    const idOf = (kind) => this.#identity(base, kind, set[kind], base.ids?.[kind]);
    return { ...base, set, ids: byKind(idOf) };
  }

  // Which record a tree is: the one that it was, none if it was none, else one that is alike.
  #identity(state, kind, tree, was) {
    return was === null ? null : records.identityOf(this.#atHand(state, kind), tree, was);
  }

  #atHand({ kept }, kind) {
    return [...kept[kind], ...this.#invented[kind]];
  }

  // Which records a set is of; what was refused of it is still refused after a reload.
  #identified(base, found) {
    const isBase = (kind) => isAlike(found[kind].tree, base.set[kind]);
    const wasId = (kind) => (isBase(kind) ? base.ids[kind] : undefined);
    const ids = byKind((kind) => this.#identity(base, kind, found[kind].tree, wasId(kind)));
    const treeOf = (kind) =>
      this.#atHand(base, kind).find((one) => one.id === ids[kind])?.tree ?? found[kind].tree;
    const isReload = this.#state === null;
    const still = (kind) => ({
      ...(isReload && isBase(kind) ? base.refused[kind] : {}),
      ...found[kind].refused,
    });
    return { ...base, set: byKind(treeOf), ids, refused: byKind(still) };
  }
}

/** invented: lists of trees by kind, always at hand; the first of each is shown at first. */
export async function openStore(engine, invented, views) {
  const store = new Store(engine, invented, views);
  await store.open();
  return store;
}
