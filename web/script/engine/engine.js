// engine.js - the page's way to the engine: a worker for short questions, others for long work.
// SPDX-License-Identifier: MIT

import { unpack } from "./parcel.js";
import { openSections } from "./sections.js";

const LONG_MOST = 4; // workers for long work
const WITH_SECTIONS = ["fly", "advice", "pictures", "ride"]; // short questions that need them

// The module lies in the page as text: gzip, then base64.
export async function moduleFrom(text) {
  const packed = Uint8Array.from(atob(text.trim()), (letter) => letter.charCodeAt(0));
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return WebAssembly.compile(await new Response(stream).arrayBuffer());
}

// What came packed, wherever it stands in an answer; bytes of a step stay bytes.
function unpacked(answer) {
  if (answer?.parcel) return unpack(answer.parcel);
  if (Array.isArray(answer)) return answer.map(unpacked);
  if (!answer || Object.getPrototypeOf(answer) !== Object.prototype) return answer;
  return Object.fromEntries(Object.entries(answer).map(([key, one]) => [key, unpacked(one)]));
}

// One worker: ask(question, ...words), and the boat whose sections it was handed. It is started
// anew when the engine in it breaks down.
function thread(module, source) {
  const open = new Map();
  const self = { ask, boat: "" };
  let worker;
  let last = 0;

  function start() {
    self.boat = "";
    const address = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
    worker = new Worker(address);
    worker.onmessage = ({ data: { id, answer, error } }) => {
      if (error !== undefined) return restart(error);
      open.get(id)?.resolve(unpacked(answer));
      open.delete(id);
    };
    module.then((compiled) => worker.postMessage({ module: compiled }));
  }

  function restart(why) {
    worker.terminate();
    for (const one of open.values()) one.reject(new Error(why));
    open.clear();
    start();
  }

  function ask(question, ...words) {
    return new Promise((resolve, reject) => {
      const id = ++last;
      open.set(id, { resolve, reject });
      worker.postMessage({ id, question, words });
    });
  }

  start();
  return self;
}

// Each worker takes the next of so many steps, behind those that are there: one(ask, step).
async function share(threads, steps, work, one, parts = []) {
  let next = parts.length;
  let done = parts.length;
  await Promise.all(
    threads.map(async ({ ask }) => {
      while (next < steps && !work.isStopped) {
        const step = next++;
        parts[step] = await one(ask, step);
        if (!work.isStopped) work.onProgress?.(++done, steps);
      }
    }),
  );
  return parts;
}

const bare = (set) => JSON.stringify({ ...set, speed: "" });

class Engine {
  #short;
  #long;
  #polarsOf;
  #line = Promise.resolve(); // short questions keep their order
  #last = 0; // questions so far
  #kept = new Map(); // parts of the last comparison's choices: only one of two sets has changed

  constructor(short, long, hash) {
    this.#short = short;
    this.#long = long;
    this.#polarsOf = openSections(long[0].ask, (...words) => share(long, ...words), hash);
  }

  /** Begins with what takes longest, the sections of a boat, from its text. */
  prepare(boat) {
    this.#polarsOf(0, boat).catch(() => {});
  }

  /** A short question, answered in its turn. */
  ask(question, slot, set, ...words) {
    const one = () => this.#short.ask(question, slot, set, ...words);
    if (!WITH_SECTIONS.includes(question)) return one();
    // without its sections it takes longer
    this.#line = this.#line.then(() => this.#ready(this.#short, slot, set)).catch(() => {});
    return this.#line.then(one);
  }

  /**
   * Any question by its name, with options as on a command line, its steps shared among workers:
   * { answer, stop }; the answer is { told, svg, back } (pages, where options.svg asks for them) or
   * { refused: { refusal, faults } }, and null
   * once it is stopped. onProgress(done, of).
   */
  question(slot, set, onProgress, name, options = {}) {
    return this.#begin(onProgress, (work) => this.#question(slot, set, work, name, options));
  }

  /** Slot 0 as it is and slot 1 changed, side by side; a pin's label for each ("": its first). */
  comparison(sets, labels, onProgress) {
    return this.#begin(onProgress, (work) => this.#comparison(sets, labels, work, onProgress));
  }

  async #question(slot, set, work, name, options) {
    const asked = this.#asked(name, options);
    const { refused, parts } = await this.#parts(slot, set, work, asked);
    if (work.isStopped || refused) return { refused };
    return this.#long[0].ask("ask whole", slot, set, asked, parts);
  }

  #asked(name, options = {}) {
    return { number: ++this.#last, name, options };
  }

  // What all its steps work out; null where they are not shared.
  async #parts(slot, set, work, asked) {
    await Promise.all(this.#long.map((thread) => this.#ready(thread, slot, set)));
    if (work.isStopped) return {};
    const first = await this.#long[0].ask("ask begun", slot, set, asked);
    if (!first.is_taken) return { refused: first };
    if (!first.isShared) return { parts: null };
    const parts = [];
    const stepsNow = () => this.#long[0].ask("ask steps", slot, set, asked, parts);
    for (let steps; !work.isStopped && parts.length < (steps = await stepsNow()); ) {
      const known = [...parts];
      const one = (ask, step) => ask("ask step", slot, set, asked, known, step);
      await share(this.#long, steps, work, one, parts);
    }
    return { parts };
  }

  #begin(onProgress, run) {
    const work = { isStopped: false, onProgress };
    return {
      answer: run(work).then((got) => (work.isStopped ? null : got)),
      stop: () => {
        work.isStopped = true;
      },
    };
  }

  // Hands a worker the sections of a boat, once.
  async #ready(thread, slot, { boat }) {
    const polars = await this.#polarsOf(slot, boat);
    if (thread.boat === boat) return;
    thread.boat = boat;
    // if it fails the question after it fails too
    thread.ask("take sections", slot, { boat }, polars).catch(() => {});
  }

  async #choice(slot, set, work) {
    return (await this.#parts(slot, set, work, this.#asked("pick"))).parts;
  }

  async #comparison(sets, labels, work, onProgress) {
    const missing = sets.filter((set) => !this.#kept.has(bare(set))).length;
    const found = new Map();
    let before = 0;
    for (const [slot, set] of sets.entries()) {
      const key = bare(set);
      if (found.has(key)) continue;
      work.onProgress = (done, of) => onProgress?.(before + done / of, missing);
      const isKept = this.#kept.has(key);
      const parts = this.#kept.get(key) ?? (await this.#choice(slot, set, work));
      if (work.isStopped) return null;
      found.set(key, parts);
      this.#kept.set(key, parts);
      if (!isKept) before++;
    }
    this.#kept = found;
    const parts = sets.map((set) => found.get(bare(set)));
    const asked = sets.map(() => this.#asked("pick"));
    return this.#long[0].ask("compare", sets, asked, parts, labels);
  }
}

export async function openEngine({ textContent: packed, dataset: { hash } }, source) {
  const module = moduleFrom(packed); // workers start meanwhile
  const short = thread(module, source);
  const count = Math.min(navigator.hardwareConcurrency || 2, LONG_MOST);
  const long = Array.from({ length: count }, () => thread(module, source));
  await module;
  return new Engine(short, long, hash);
}
