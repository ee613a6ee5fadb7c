// module.js - the engine's WebAssembly module: its memory, its calls, its parcels.
// SPDX-License-Identifier: MIT
//
// The module asks its surroundings for nothing but a way to end; a failed assertion is told on the
// console. The same code runs in the page's worker and, in the tests, in node.

import { unpack } from "./parcel.js";

const utf8 = new TextEncoder();
const REFUSED = 52; // WASI's "not implemented"
export const kinds = ["boat", "sailor", "day"]; // in the order of lw_records

function surroundings(module, memory) {
  const told = (fd, list, count, written) => {
    const view = new DataView(memory().buffer);
    let size = 0,
      text = "";
    for (let i = 0; i < count; i++) {
      const start = view.getUint32(list + 8 * i, true),
        length = view.getUint32(list + 8 * i + 4, true);
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
    if (name === "proc_exit")
      imports[from][name] = () => {
        throw new Error("the engine ended");
      };
  }
  return imports;
}

/** The engine in a compiled module: one function for each question. */
export async function engineIn(module) {
  let calls;
  const instance = await WebAssembly.instantiate(
    module,
    surroundings(module, () => calls.memory),
  );
  calls = instance.exports;
  calls._initialize();
  const held = [{}, {}]; // the texts that each slot has read
  const begun = [0, 0]; // steps of the outlook that each slot has begun; 0: none

  /** Numbers for a call that reads its question from the room. */
  function put(numbers) {
    const room = calls.lw_web_room(8 * numbers.length);
    new Float64Array(calls.memory.buffer, room, numbers.length).set(numbers);
  }

  function parcel() {
    const start = calls.lw_web_parcel(),
      length = calls.lw_web_parcel_length();
    return unpack(new Uint8Array(calls.memory.buffer, start, length));
  }

  /** Calls lw_web_<name> and unpacks what it hands over. */
  function ask(name, ...numbers) {
    calls[`lw_web_${name}`](...numbers);
    return parcel();
  }

  /** A copy of the bytes that a call left in the room; and bytes for a call that reads them. */
  const bytesLeft = (count) =>
    new Uint8Array(calls.memory.buffer, calls.lw_web_room(count), count).slice();
  function putBytes(bytes) {
    const room = calls.lw_web_room(bytes.length);
    new Uint8Array(calls.memory.buffer, room, bytes.length).set(bytes);
  }

  /**
   * Reads a file, a text or its bytes; kind null: the engine finds out. What is faulty leaves the
   * slot as it was.
   */
  function read(slot, kind, name, text) {
    const head = utf8.encode(`${name}\0`),
      body = typeof text === "string" ? utf8.encode(text) : text;
    const bytes = new Uint8Array(head.length + body.length);
    bytes.set(head);
    bytes.set(body, head.length);
    putBytes(bytes);
    const answer = ask("read", slot, kind ? kinds.indexOf(kind) : -1, bytes.length);
    if (answer.is_sound) {
      held[slot][answer.record] = text;
      begun[slot] = 0;
    }
    return answer;
  }

  /** Makes a slot hold a set: { boat, sailor, day } as texts or some of them, speeds told in set.speed. */
  function load(slot, set) {
    putBytes(utf8.encode(set.speed ?? "kn"));
    calls.lw_web_speak(slot);
    for (const kind of kinds) {
      if (set[kind] !== undefined && held[slot][kind] !== set[kind])
        read(slot, kind, kind, set[kind]);
    }
  }

  /** Begins a slot's outlook, unless it is begun: whether it has steps. */
  const begin = (slot) => (begun[slot] ||= calls.lw_web_begin(slot));

  function putAll(parts) {
    const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
    let at = 0;
    for (const part of parts) (bytes.set(part, at), (at += part.length));
    putBytes(bytes);
  }

  return {
    calls,
    ask,
    put,
    read,
    load,
    begin,
    /** A row of a section as bytes; a section's polar as bytes, from all its rows; both taken for the slot's boat. */
    row(slot, name, number) {
      calls.lw_web_row(slot, name, number);
      return bytesLeft(calls.lw_web_row_size());
    },
    polar(slot, name, rows) {
      putAll(rows);
      calls.lw_web_polar(slot, name);
      return bytesLeft(calls.lw_web_polar_size());
    },
    takeSections(slot, polars) {
      putAll(polars);
      calls.lw_web_sections_take(slot);
    },
    /** What one step of the outlook works out, as bytes for `take` in another worker. */
    step(slot, step) {
      calls.lw_web_step(slot, step);
      return bytesLeft(calls.lw_web_part_size());
    },
    /** How many steps can be done, once those before are done or taken; and as if none were. */
    steps: (slot) => calls.lw_web_steps(slot),
    forget: (slot) => calls.lw_web_forget(slot),
    take(slot, step, bytes) {
      putBytes(bytes);
      calls.lw_web_take(slot, step);
    },
    /** Both slots side by side, each with the pin of a label; "": with its first. */
    compare(labels) {
      const bytes = utf8.encode(labels.join("\0"));
      putBytes(bytes);
      return ask("compare", bytes.length);
    },
  };
}
