// module.js - the engine's WebAssembly module: its memory, its calls, its parcels.
// SPDX-License-Identifier: MIT
//
// The module asks its surroundings for nothing but a way to end; a failed assertion is told on the
// console. The same code runs in the page's worker and, in the tests, in node.

import { kinds } from "../base/kinds.js";
import { unpack } from "./parcel.js";

const utf8 = new TextEncoder();
const REFUSED = 52; // WASI's "not implemented"

function surroundings(module, memory) {
  const told = (fd, list, count, written) => {
    const view = new DataView(memory().buffer);
    let size = 0;
    let text = "";
    for (let i = 0; i < count; i++) {
      const start = view.getUint32(list + 8 * i, true);
      const length = view.getUint32(list + 8 * i + 4, true);
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

class EngineModule {
  calls;
  #held = [{ learned: "" }, { learned: "" }]; // the texts that each slot has read

  constructor(calls) {
    this.calls = calls;
  }

  /** Numbers for a call that reads its question from the room. */
  put(numbers) {
    const room = this.calls.lw_web_room(8 * numbers.length);
    new Float64Array(this.calls.memory.buffer, room, numbers.length).set(numbers);
  }

  /** Calls lw_web_<name> and unpacks what it hands over. */
  ask(name, ...numbers) {
    this.calls[`lw_web_${name}`](...numbers);
    return unpack(this.#parcel());
  }
  /** The same, still packed: how members are told does not pass from a worker to the page. */
  told(name, ...numbers) {
    this.calls[`lw_web_${name}`](...numbers);
    return { parcel: this.#parcel().slice() };
  }
  #parcel() {
    const start = this.calls.lw_web_parcel();
    const length = this.calls.lw_web_parcel_length();
    return new Uint8Array(this.calls.memory.buffer, start, length);
  }

  chart(slot, { width, winds, bars, labels }) {
    const numbers = Float64Array.of(width, bars.length, ...winds, ...bars.flat());
    const words = utf8.encode(labels.map((label) => `${label}\0`).join(""));
    const length = this.#putAll([new Uint8Array(numbers.buffer), words]);
    return this.ask("chart", slot, length);
  }

  /**
   * Asks a slot a question by its name, with options as on a command line, a list for one that is
   * given again: { is_taken, ... }.
   */
  question(slot, name, options = {}) {
    const given = Object.entries(options)
      .flatMap(([option, texts]) => [texts].flat().map((text) => [option, text]))
      .filter(([, text]) => text !== undefined && text !== "");
    const words = [name, ...given.flat()].map((word) => `${word}\0`);
    return this.ask("ask", slot, this.#putAll([utf8.encode(words.join(""))]));
  }
  /** Of the question asked of a slot last: how many steps can be done by now. */
  askSteps(slot) {
    return this.calls.lw_web_ask_steps(slot);
  }
  /** One step, as bytes for `askTake` in another worker. */
  askStep(slot, step) {
    this.calls.lw_web_ask_step(slot, step);
    return this.#bytesLeft(this.calls.lw_web_ask_part(slot));
  }
  askTake(slot, step, bytes) {
    this.#putAll([bytes]);
    this.calls.lw_web_ask_take(slot, step);
  }

  /**
   * Reads a file, a text or its bytes; kind null: the engine finds out. What is faulty leaves the
   * slot as it was.
   */
  read(slot, kind, name, text) {
    const head = utf8.encode(`${name}\0`);
    const body = typeof text === "string" ? utf8.encode(text) : text;
    const length = this.#putAll([head, body]);
    const answer = this.ask("read", slot, kind ? kinds.indexOf(kind) : -1, length);
    if (answer.is_sound) this.#held[slot][answer.record] = text;
    if (answer.is_sound && this.#held[slot].learned) this.#held[slot].learned = null;
    return answer;
  }

  /**
   * Makes a slot hold { boat, sailor, day } or some of them as texts, speeds told in set.speed, and
   * put into them what was learned, set.learned.
   */
  load(slot, set) {
    this.#putAll([utf8.encode(set.speed ?? "kn")]);
    this.calls.lw_web_speak(slot);
    const held = this.#held[slot];
    const { learned } = set;
    const isOther = learned !== undefined && held.learned !== learned;
    const fresh = kinds.filter((kind) => set[kind] !== undefined && held[kind] !== set[kind]);
    if (!fresh.length && !isOther) return;
    // what was learned is in all of them
    const all = isOther || held.learned ? kinds.filter((kind) => set[kind] !== undefined) : fresh;
    for (const kind of all) this.read(slot, kind, kind, set[kind]);
    if (learned) this.learn(slot, learned);
    held.learned = learned ?? (held.learned === "" ? "" : null);
  }

  /** Puts the text of what was learned into a slot as it was read: { is_sound, faults, told }. */
  learn(slot, text) {
    this.#held[slot].learned = text;
    return this.told("learn", slot, this.putText(text));
  }

  /** A row of a section as bytes. */
  row(slot, name, number) {
    this.calls.lw_web_row(slot, name, number);
    return this.#bytesLeft(this.calls.lw_web_row_size());
  }
  /** A section's polar as bytes, from all its rows. */
  polar(slot, name, rows) {
    this.#putAll(rows);
    this.calls.lw_web_polar(slot, name);
    return this.#bytesLeft(this.calls.lw_web_polar_size());
  }
  /** All polars of the slot's boat. */
  takeSections(slot, polars) {
    this.#putAll(polars);
    this.calls.lw_web_sections_take(slot);
  }

  /** Both slots side by side, each with the pin of a label; "": with its first. */
  compare(labels) {
    return this.told("compare", this.#putAll([utf8.encode(labels.join("\0"))]));
  }

  /** Puts a text into the room; returns its bytes. */
  putText(text) {
    return this.#putAll([utf8.encode(text)]);
  }

  // A copy of the bytes that a call left in the room.
  #bytesLeft(count) {
    return new Uint8Array(this.calls.memory.buffer, this.calls.lw_web_room(count), count).slice();
  }

  // Bytes for a call that reads them, one part behind the other; returns how many.
  #putAll(parts) {
    const length = parts.reduce((sum, part) => sum + part.length, 0);
    const room = this.calls.lw_web_room(length);
    const bytes = new Uint8Array(this.calls.memory.buffer, room, length);
    let at = 0;
    for (const part of parts) {
      bytes.set(part, at);
      at += part.length;
    }
    return length;
  }
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
  return new EngineModule(calls);
}
