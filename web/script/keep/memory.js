// memory.js - what this browser keeps: records one by one, and what was shown last.
// SPDX-License-Identifier: MIT
//
// Each record stands under a key of its own, so that what one tab keeps takes nothing from another.
// What was shown last is a tab's own; a new one begins with what any tab has shown.

import { keptKinds, LOG } from "../base/kinds.js";

const RECORD = "lullwise.record."; // and kind and identity
const WAITING = "lullwise.waiting."; // and identity: a logged day that the desk has not heard of
const AT_DESK = "lullwise.at-desk."; // and identity: a logged day as the desk had it last
const LAST = "lullwise.last";
const DAY_PIN = "lullwise.day-pin";
const LEARNED = "lullwise.learned";
const BY_NAME = "lullwise.kept"; // how records were kept before: lists of trees

/* A private window keeps nothing: it reads as empty, and nothing is said. */
function read(storage, key) {
  try {
    return JSON.parse(window[storage].getItem(key));
  } catch {
    return null;
  }
}

function write(storage, key, value) {
  try {
    if (value === null) window[storage].removeItem(key);
    else window[storage].setItem(key, JSON.stringify(value));
  } catch {
    /* not kept */
  }
}

function keys() {
  try {
    return Object.keys(localStorage);
  } catch {
    return [];
  }
}

const placeOf = (key) => key.slice(RECORD.length).split(/\.(.*)/);

/** An identity that nothing else has; later ones sort behind earlier ones. */
export const freshIdentity = () =>
  `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}`;

export const lastShown = () => read("sessionStorage", LAST) ?? read("localStorage", LAST);
export function rememberShown(state) {
  write("sessionStorage", LAST, state);
  write("localStorage", LAST, state);
}

/** The pin that was found for a set last: { of: the set in JSON, pin }, or null. */
export const lastDayPin = () => read("localStorage", DAY_PIN);
export const rememberDayPin = (found) => write("localStorage", DAY_PIN, found);

/** The file of what was learned that answers take; "": none. */
export const lastLearned = () => read("localStorage", LEARNED) ?? "";
export const rememberLearned = (text) => write("localStorage", LEARNED, text || null);

/** All kept records: { boat: [{ id, tree }], ..., log: [...] }, the oldest first. */
export function keptRecords() {
  const kept = Object.fromEntries(keptKinds.map((kind) => [kind, []]));
  for (const key of keys()
    .filter((one) => one.startsWith(RECORD))
    .sort()) {
    const [kind, id] = placeOf(key);
    const tree = read("localStorage", key);
    if (kept[kind] && tree) kept[kind].push({ id, tree });
  }
  return kept;
}

let tellWaiting = null; // at the desk: what is done when a day waits for it

/** Keeps a record under its identity; null forgets it. A logged day then waits for the desk. */
export function keepRecord(kind, id, tree, { isFromDesk = false } = {}) {
  write("localStorage", `${RECORD}${kind}.${id}`, tree);
  if (kind !== LOG || isFromDesk || !tellWaiting) return;
  keepWaiting(id, tree);
  tellWaiting();
}

/** A logged day that the desk is to hear of; null: it is forgotten. */
export const keepWaiting = (id, tree) => write("localStorage", WAITING + id, { tree });

/** A day as the desk had it last, in JSON; null: not known to have it. */
export function lastAtDesk(id) {
  const text = read("localStorage", AT_DESK + id);
  return typeof text === "string" ? text : null;
}
export const keepAtDesk = (id, text) => write("localStorage", AT_DESK + id, text);

/** At the desk: told() when a day is kept or forgotten. */
export function onWaiting(told) {
  tellWaiting = told;
}

/** Logged days that wait for the desk: by id the tree, null: forgotten. */
export const waiting = () =>
  Object.fromEntries(
    keys()
      .filter((key) => key.startsWith(WAITING))
      .map((key) => [key.slice(WAITING.length), read("localStorage", key)?.tree ?? null]),
  );

/** The desk has a day; unless it was changed meanwhile. */
export function waitsNoMore(id, tree) {
  const now = read("localStorage", WAITING + id);
  if (JSON.stringify(now?.tree) === JSON.stringify(tree)) write("localStorage", WAITING + id, null);
}

/** Whether a record stands there: a private window or a full one keeps nothing. */
export const isKept = (kind, id) => read("localStorage", `${RECORD}${kind}.${id}`) !== null;

/** Tells of records that another tab keeps or forgets: told(kind, id, tree or null). */
export function onOtherTab(told) {
  addEventListener("storage", ({ key, newValue }) => {
    if (!key?.startsWith(RECORD)) return;
    const [kind, id] = placeOf(key);
    if (keptKinds.includes(kind)) told(kind, id, newValue === null ? null : JSON.parse(newValue));
  });
}

/** The records kept by name, once: they are taken over under identities. */
export function recordsByName() {
  const lists = read("localStorage", BY_NAME) ?? {};
  write("localStorage", BY_NAME, null);
  return lists;
}
