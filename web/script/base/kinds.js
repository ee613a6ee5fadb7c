// kinds.js - the kinds of record that make a set.
// SPDX-License-Identifier: MIT

export const kinds = ["boat", "sailor", "day"]; // in the order of lw_records

/** What make(kind) gives, by kind. */
export const byKind = (give) => Object.fromEntries(kinds.map((kind) => [kind, give(kind)]));

/** What is kept: those, and logged days. */
export const LOG = "log";
export const keptKinds = [...kinds, LOG];
