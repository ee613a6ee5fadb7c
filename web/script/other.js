// other.js - the set that the present one is compared with: the present one, and what differs in it.
// SPDX-License-Identifier: MIT
//
// What differs stands in the address as "with.sailor.person.mass=80 kg"; a whole other boat is all
// the lines in which it differs. Fields edit it through a store of its own, like that of the page.

import { kinds } from "./store.js";
import { apply, differences, fileOf, textAt, withText } from "./tree.js";

const mark = "with.";

/** [path, text] of what differs in one kind, by the words of a view. */
const changesOf = (more, kind) =>
  Object.entries(more)
    .filter(([key, text]) => text !== null && key.startsWith(`${mark}${kind}.`))
    .map(([key, text]) => [key.slice(mark.length + kind.length + 1), text]);

export function openOther(page) {
  const drafts = Object.fromEntries(kinds.map((kind) => [kind, {}]));
  const read = (kind, tree) => page.engine.ask("read", 1, kind, kind, fileOf(tree));
  const now = { set: {}, values: {}, doubts: {}, faults: {} };

  function say(kind, tree) {
    const own = page.store.state.set[kind],
      words = {};
    for (const [path] of changesOf(page.store.state.more, kind))
      words[`${mark}${kind}.${path}`] = null;
    for (const [path, text] of differences(tree, own)) words[`${mark}${kind}.${path}`] = text;
    page.store.say(words, { isEdit: true });
  }

  const store = {
    get state() {
      return { ...now, speedUnit: page.store.state.speedUnit };
    },
    hasDraft: (kind, path) => path in drafts[kind],
    async trial(kind, path, text) {
      let tree = now.set[kind];
      for (const [draft, written] of Object.entries({ ...drafts[kind], [path]: text }))
        tree = withText(tree, draft, written);
      return { tree, ...(await read(kind, tree)) };
    },
    async put(kind, path, text) {
      const { tree, is_sound, faults } = await this.trial(kind, path, text);
      if (is_sound) {
        drafts[kind] = {};
        say(kind, tree);
      } else drafts[kind][path] = text;
      return faults;
    },
  };

  return {
    now,
    changesOf,
    /** For fields: the page with the other set in its store. */
    page: { ...page, store },
    /** Takes another boat, sailor or day as a whole; the present one again: nothing differs. */
    choose(kind, tree) {
      drafts[kind] = {};
      say(kind, tree);
    },
    /** A line as it is again. */
    takeBack(kind, path) {
      delete drafts[kind][path];
      say(kind, withText(now.set[kind], path, textAt(page.store.state.set[kind], path) ?? null));
    },
    /** Reads what the address says; true when all of it is sound. */
    async update(state) {
      for (const kind of kinds) {
        const tree = apply(state.set[kind], changesOf(state.more, kind));
        const answer = await read(kind, tree);
        now.faults[kind] = answer.is_sound ? [] : answer.faults;
        now.set[kind] = answer.is_sound ? tree : state.set[kind];
        now.values[kind] = answer.is_sound ? answer.values : state.values[kind];
        now.doubts[kind] = answer.is_sound ? answer.faults : state.doubts[kind];
      }
      return kinds.every((kind) => !now.faults[kind].length);
    },
  };
}
