// other.js - the set that the present one is compared with: itself, and what differs in it.
// SPDX-License-Identifier: MIT
//
// What differs stands in the address as "with.sailor.person.mass=80 kg"; a whole other boat is all
// the lines in which it differs. Fields edit it through a store of its own, like that of the page.

import { byKind, kinds } from "../base/kinds.js";
import { settleInto } from "./settle.js";
import { apply, differences, fileOf, textAt, withText } from "../base/tree.js";

const mark = "with.";

/** [path, text] of what differs in one kind, by the words of a view. */
const changesOf = (more, kind) =>
  Object.entries(more)
    .filter(([key, text]) => text !== null && key.startsWith(`${mark}${kind}.`))
    .map(([key, text]) => [key.slice(mark.length + kind.length + 1), text]);

// A store for fields of the other set; read(kind, tree), say(kind, tree).
function openFields(page, now, read, say) {
  const refused = byKind(() => ({}));
  const found = (kind, path, text) =>
    settleInto((tree) => read(kind, tree), now.set[kind], refused[kind], [path, text], withText);
  let turn = Promise.resolve();
  /** One after the other: each begins with what the last has left. */
  const inTurn = (begin) => (turn = turn.then(begin, begin));

  async function take(kind, path, text) {
    const one = await found(kind, path, text);
    refused[kind] = one.refused;
    say(kind, one.tree);
    return one.faults;
  }

  return {
    get state() {
      return { ...now, speedUnit: page.store.state.speedUnit };
    },
    refusedAt: (kind, path) => refused[kind][path],
    drop(kind, path) {
      if (path) delete refused[kind][path];
      else refused[kind] = {};
    },
    trial: async (kind, path, text) => (await found(kind, path, text)).faults,
    inTurn,
    put: (kind, path, text) => inTurn(() => take(kind, path, text)),
    /** When all that was put so far is said. */
    idle: () => turn,
  };
}

export function openOther(page) {
  const read = (kind, tree) => page.engine.ask("read", 1, kind, kind, fileOf(tree));
  const now = { set: {}, values: {}, doubts: {}, faults: {} };
  const store = openFields(page, now, read, say);

  function say(kind, tree) {
    const { set, more } = page.store.state;
    now.set[kind] = tree;
    const key = (path) => `${mark}${kind}.${path}`;
    page.store.say(
      Object.fromEntries([
        ...changesOf(more, kind).map(([path]) => [key(path), null]),
        ...differences(tree, set[kind]).map(([path, text]) => [key(path), text]),
      ]),
      { isEdit: true },
    );
  }

  async function readAll() {
    const { state } = page.store;
    for (const kind of kinds) {
      const tree = apply(state.set[kind], changesOf(state.more, kind));
      const answer = await read(kind, tree);
      const isSound = answer.is_sound;
      now.faults[kind] = isSound ? [] : answer.faults;
      now.set[kind] = isSound ? tree : state.set[kind];
      now.values[kind] = isSound ? answer.values : state.values[kind];
      now.doubts[kind] = isSound ? answer.faults : state.doubts[kind];
    }
    return kinds.every((kind) => !now.faults[kind].length);
  }

  return {
    now,
    changesOf,
    /** For fields: the page with the other set in its store. */
    page: { ...page, store },
    /** Takes another boat, sailor or day as a whole; the present one again: nothing differs. */
    choose: (kind, tree) =>
      store.inTurn(() => {
        store.drop(kind);
        say(kind, tree);
      }),
    /** A line as it is again. */
    takeBack: (kind, path) =>
      store.inTurn(() => {
        store.drop(kind, path);
        say(kind, withText(now.set[kind], path, textAt(page.store.state.set[kind], path) ?? null));
      }),
    /** Reads what the address says when its turn has come; true when all of it is sound. */
    update: () => store.inTurn(readAll),
  };
}
