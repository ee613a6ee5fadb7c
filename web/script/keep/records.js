// records.js - the boats, sailors and days at hand, each with an identity of its own.
// SPDX-License-Identifier: MIT
//
// Invented ones are always there and never change: an edit makes a copy. What a link brings has
// no identity (null) until it is kept or edited. `kept` is a part of the state, so that undo
// reaches it: { boat: [{ id, tree }], ..., log: [...] }, logged days among it; `ids` tells which
// record is in use, by kind.

import { byKind, keptKinds, kinds, LOG } from "../base/kinds.js";
import { freshIdentity, keepRecord, keptRecords, recordsByName } from "./memory.js";
import { apply, differences, isAlike } from "../base/tree.js";

const INVENTED = "invented-";
const MARK = / \(invented\)$/;

export const isInvented = (id) => id?.startsWith(INVENTED) ?? false;

/** Invented trees by kind, with identities. */
export const withIdentities = (invented) =>
  byKind((kind) => invented[kind].map((tree, i) => ({ id: `${INVENTED}${i}`, tree })));

/** What this browser keeps, records kept by name among it. */
export function openKept(invented) {
  const byName = recordsByName();
  for (const kind of kinds) {
    for (const tree of byName[kind] ?? []) {
      if (!invented[kind].some((one) => isAlike(one.tree, tree)))
        keepRecord(kind, freshIdentity(), tree);
    }
  }
  return keptRecords();
}

/** What records are called: of those of one name the later ones are numbered. */
export function namesOf(records) {
  const seen = new Map();
  return records.map(({ tree }) => {
    const name = tree.name || "without a name";
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    return count > 1 ? `${name} · ${count}` : name;
  });
}

/** Which record a tree is, one that was thought of before others; null: none is like it. */
export function identityOf(records, tree, thoughtOf) {
  const alike = records.filter((one) => isAlike(one.tree, tree)).map((one) => one.id);
  return alike.find((id) => id === thoughtOf) ?? alike[0] ?? null;
}

// In the order in which records came to be, as memory.js has them.
const withRecord = (list, id, tree) =>
  [...list.filter((one) => one.id !== id), { id, tree }].sort((one, two) =>
    one.id < two.id ? -1 : 1,
  );

/** The state with a record kept and in use; without id it is a new one. */
export function inUse(state, kind, tree, id = freshIdentity()) {
  const own = isInvented(id) ? state.kept[kind] : withRecord(state.kept[kind], id, tree);
  return {
    ...state,
    set: { ...state.set, [kind]: tree },
    ids: { ...state.ids, [kind]: id },
    kept: { ...state.kept, [kind]: own },
  };
}

/** The state with the record in use changed; of an invented one, or a link's, a copy is. */
export function edited(state, kind, tree) {
  const id = state.ids[kind];
  if (id !== null && !isInvented(id)) return inUse(state, kind, tree, id);
  const isNamed = tree.name !== state.set[kind].name;
  if (id === null || isNamed || !MARK.test(tree.name)) return inUse(state, kind, tree);
  return inUse(state, kind, { ...tree, name: `${tree.name.replace(MARK, "")}, changed` });
}

/** The state with logged days, [{ id, tree }]. */
export const withDays = (state, days) => ({
  ...state,
  kept: {
    ...state.kept,
    [LOG]: days.reduce((list, { id, tree }) => withRecord(list, id, tree), state.kept[LOG]),
  },
});

/** The state without a kept record; if it is in use it stays so, unkept. */
export const without = (state, kind, id) => ({
  ...state,
  ids: state.ids[kind] === id ? { ...state.ids, [kind]: null } : state.ids,
  kept: { ...state.kept, [kind]: state.kept[kind].filter((one) => one.id !== id) },
});

/** The state with what another tab made of a record: what was changed there, and nothing else. */
export function withOthers(state, kind, id, { before, after }) {
  if (after === null) return without(state, kind, id);
  const own = state.kept[kind].find((one) => one.id === id)?.tree;
  const isBehind = !own || !before || isAlike(own, before);
  const tree = isBehind ? after : apply(own, differences(after, before));
  const kept = { ...state.kept, [kind]: withRecord(state.kept[kind], id, tree) };
  const set = state.ids[kind] === id ? { ...state.set, [kind]: tree } : state.set;
  return { ...state, kept, set };
}

/** Makes what the browser keeps what the state has. */
export function keepChanges(was, is) {
  for (const kind of keptKinds) {
    if (was[kind] === is[kind]) continue;
    const before = new Map(was[kind].map(({ id, tree }) => [id, tree]));
    for (const { id, tree } of is[kind]) {
      if (before.get(id) !== tree) keepRecord(kind, id, tree);
      before.delete(id);
    }
    for (const id of before.keys()) keepRecord(kind, id, null);
  }
}
