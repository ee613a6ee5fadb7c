// module.js - the engine's WebAssembly module: its memory, its calls, its parcels.
// SPDX-License-Identifier: MIT
//
// The module asks its surroundings for nothing but a way to end; a failed assertion is told on the
// console. The same code runs in the page's worker and, in the tests, in node.

import { unpack } from "./parcel.js";

const REFUSED = 52; // WASI's "not implemented"
export const kinds = ["boat", "sailor", "day"]; // in the order of lw_records

function surroundings(module, memory) {
  const told = (fd, list, count, written) => {
    const view = new DataView(memory().buffer);
    let size = 0, text = "";
    for (let i = 0; i < count; i++) {
      const start = view.getUint32(list + 8 * i, true), length = view.getUint32(list + 8 * i + 4, true);
      text += new TextDecoder().decode(new Uint8Array(memory().buffer, start, length));
      size += length;
    }
    view.setUint32(written, size, true);
    console.error(text.trimEnd());
    return 0;
  };
  const imports = {};
  for (const { module: from, name } of WebAssembly.Module.imports(module)) {
    imports[from] ??= {};
    imports[from][name] = () => REFUSED;
    if (name === "fd_write") imports[from][name] = told;
    if (name === "proc_exit") imports[from][name] = () => { throw new Error("the engine ended"); };
  }
  return imports;
}

/** The engine in a compiled module: one function for each question. */
export async function engineIn(module) {
  let calls;
  const instance = await WebAssembly.instantiate(module, surroundings(module, () => calls.memory));
  calls = instance.exports;
  calls._initialize();
  const held = [{}, {}]; // the texts that each slot has read

  function write(text) {
    const bytes = new TextEncoder().encode(text);
    const room = calls.lw_web_room(bytes.length);
    new Uint8Array(calls.memory.buffer, room, bytes.length).set(bytes);
    return bytes.length;
  }

  function parcel() {
    const start = calls.lw_web_parcel(), length = calls.lw_web_parcel_length();
    return unpack(new Uint8Array(calls.memory.buffer, start, length));
  }

  /** Calls lw_web_<name> and unpacks what it hands over. */
  function ask(name, ...numbers) {
    calls[`lw_web_${name}`](...numbers);
    return parcel();
  }

  /** Reads a file; kind null: the engine finds out. What is faulty leaves the slot as it was. */
  function read(slot, kind, name, text) {
    const length = write(`${name}\0${text}`);
    const answer = ask("read", slot, kind ? kinds.indexOf(kind) : -1, length);
    if (answer.is_sound) held[slot][answer.record] = text;
    return answer;
  }

  /** Makes a slot hold a set: { boat, sailor, day } as texts. */
  function load(slot, set) {
    for (const kind of kinds) {
      if (held[slot][kind] !== set[kind]) read(slot, kind, kind, set[kind]);
    }
  }

  return { calls, ask, read, load };
}
