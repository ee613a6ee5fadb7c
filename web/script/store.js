// store.js - what the page shows, and how it got there: state, undo, address, memory of the browser.
// SPDX-License-Identifier: MIT
//
// A state: { view, speedUnit, more, set, values, doubts }. `set` has the trees of boat, sailor and
// day, `values` and `doubts` what the engine read in them, `more` a view's own words (a slider, a
// pin), kept in the address too.

import { apply, differences, fileOf, withText } from "./tree.js";

export const kinds = ["boat", "sailor", "day"];
const KEPT = "lullwise.kept",
  LAST = "lullwise.last";

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

/** Whether nothing is remembered and the address says nothing: the invented records will be shown. */
export const isFirstTime = () => location.hash === "" && remembered(LAST) === null;

function readAddress() {
  const [view, query = ""] = location.hash.slice(1).split("?");
  const changed = {},
    more = {};
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

/** start: { boat, sailor, day } trees; kept: lists of trees by kind, the invented ones. */
export async function openStore(engine, start, invented, views) {
  const listeners = new Set();
  const past = [],
    future = [];
  const kept = remembered(KEPT) ?? invented;
  const drafts = Object.fromEntries(kinds.map((kind) => [kind, {}]));
  let state;

  const readTree = (kind, tree) => engine.ask("read", 0, kind, kind, fileOf(tree));

  /** The state with what the engine reads in its set; null when some of it is faulty. */
  async function read(next) {
    const values = {},
      doubts = {};
    for (const kind of kinds) {
      const answer = await readTree(kind, next.set[kind]);
      if (!answer.is_sound) return null;
      values[kind] = answer.values;
      doubts[kind] = answer.faults;
    }
    return { ...next, values, doubts };
  }

  // What was changed here is kept under its name; what a link brings is only looked at.
  function keep() {
    for (const kind of kinds) {
      const list = kept[kind],
        tree = state.set[kind];
      const at = list.findIndex((one) => one.name === tree.name);
      if (at < 0) list.push(tree);
      else list[at] = tree;
    }
    remember(KEPT, kept);
  }

  function show(next, how) {
    const address = addressOf(next, start);
    state = next;
    if (how === "push" && address !== location.hash) history.pushState(null, "", address);
    else if (how) history.replaceState(null, "", address);
    remember(LAST, {
      view: state.view,
      speedUnit: state.speedUnit,
      more: state.more,
      set: state.set,
    });
    for (const listener of listeners) listener(state);
  }

  async function change(next, how = "replace") {
    const sound = await read(next);
    if (!sound) return false;
    past.push(state);
    future.length = 0;
    show(sound, how);
    keep();
    return true;
  }

  // Changes one after the other: each begins with what the last has left.
  let turn = Promise.resolve();
  const inTurn = (begin) => (turn = turn.then(begin, begin));

  async function put(kind, path, text) {
    const { tree, is_sound, faults } = await trial(kind, path, text);
    if (is_sound) {
      drafts[kind] = {};
      if (JSON.stringify(tree) !== JSON.stringify(state.set[kind])) {
        await change({ ...state, set: { ...state.set, [kind]: tree } });
      }
    } else drafts[kind][path] = text;
    return faults;
  }

  async function choose(kind, tree) {
    const { is_sound, faults } = await readTree(kind, tree);
    if (is_sound) {
      drafts[kind] = {};
      await change({ ...state, set: { ...state.set, [kind]: tree } });
    }
    return faults;
  }

  async function trial(kind, path, text) {
    let tree = state.set[kind];
    for (const [draft, written] of Object.entries({ ...drafts[kind], [path]: text })) {
      tree = withText(tree, draft, written);
    }
    return { tree, ...(await readTree(kind, tree)) };
  }

  function step(from, to) {
    if (!from.length) return;
    to.push(state);
    for (const kind of kinds) drafts[kind] = {};
    show(from.pop(), "replace");
  }

  async function fromAddress() {
    const { view, changed, more, speedUnit, hasQuery } = readAddress();
    const last = hasQuery || !state ? remembered(LAST) : null;
    const base = state ?? {
      view: views[0],
      speedUnit: "kn",
      more: {},
      set: structuredClone(start),
      ...last,
    };
    const set =
      hasQuery || state
        ? Object.fromEntries(kinds.map((kind) => [kind, apply(start[kind], changed[kind] ?? [])]))
        : base.set;
    const next = {
      view: views.includes(view) ? view : base.view,
      speedUnit: speedUnit ?? (hasQuery || state ? "kn" : base.speedUnit),
      more: hasQuery || state ? more : base.more,
      set,
    };
    return (await read(next)) ?? read({ ...next, set: structuredClone(start) });
  }

  show(await fromAddress(), "replace");
  addEventListener("popstate", async () => {
    if (location.hash !== addressOf(state, start)) show(await fromAddress(), null);
  });

  return {
    get state() {
      return state;
    },
    get kept() {
      return kept;
    },
    get canUndo() {
      return past.length > 0;
    },
    get canRedo() {
      return future.length > 0;
    },
    undo: () => inTurn(() => step(past, future)),
    redo: () => inTurn(() => step(future, past)),
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },

    go: (view) => show({ ...state, view }, "push"),
    setSpeedUnit: (speedUnit) => show({ ...state, speedUnit }, "replace"),
    /** A view's own words: kept in the address; a slider's moves are not undone, an edit is. */
    say(words, { isEdit = false } = {}) {
      const more = { ...state.more, ...words };
      if (JSON.stringify(more) === JSON.stringify(state.more)) return;
      if (isEdit) (past.push(state), (future.length = 0));
      show({ ...state, more }, "replace");
    },

    hasDraft: (kind, path) => path in drafts[kind],
    /** Forgets a faulty text. */
    drop: (kind, path) => {
      delete drafts[kind][path];
    },

    /** What the engine says of a text at a path, without taking it. */
    trial,
    /** Takes a text; a faulty one is kept aside until the record is sound. Returns the faults. */
    put: (kind, path, text) => inTurn(() => put(kind, path, text)),
    /** Another boat, sailor or day as a whole, if it is sound. Returns the faults. */
    choose: (kind, tree) => inTurn(() => choose(kind, tree)),
    /** Forgets a kept record by name; the one in use stays in use. */
    forget(kind, name) {
      kept[kind] = kept[kind].filter((one) => one.name !== name);
      remember(KEPT, kept);
      show(state, "replace");
    },
  };
}
