// drafts.js - texts that the engine found faulty, kept aside until their record is sound.
// SPDX-License-Identifier: MIT

import { withText } from "./tree.js";

export class Drafts {
  #texts = {}; // by kind and path
  #read;

  /** read(kind, tree): what the engine says of a record. */
  constructor(read) {
    this.#read = read;
  }

  #of(kind) {
    return (this.#texts[kind] ??= {});
  }

  has(kind, path) {
    return path in this.#of(kind);
  }

  drop(kind, path) {
    delete this.#of(kind)[path];
  }

  forget(kind) {
    this.#texts[kind] = {};
  }

  /** What the engine says of a tree with a text, and with the drafts of its kind, in it. */
  async trial(tree, kind, path, text) {
    let whole = tree;
    for (const [draft, written] of Object.entries({ ...this.#of(kind), [path]: text })) {
      whole = withText(whole, draft, written);
    }
    return { tree: whole, ...(await this.#read(kind, whole)) };
  }

  /** Hands `take` the tree with a text if it is sound, else keeps the text. Returns the faults. */
  async put(tree, kind, path, text, take) {
    const { tree: whole, is_sound, faults } = await this.trial(tree, kind, path, text);
    if (is_sound) {
      this.forget(kind);
      await take(whole);
    } else this.#of(kind)[path] = text;
    return faults;
  }
}
