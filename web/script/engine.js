// engine.js - the page's way to the engine: a worker for short questions, others for long work.
// SPDX-License-Identifier: MIT

import { openSections } from "./sections.js";

const LONG_MOST = 4; // workers for long work
const WITH_SECTIONS = ["fly", "advice", "pictures", "ride"]; // short questions that need them

// The module lies in the page as text: gzip, then base64.
export async function moduleFrom(text) {
  const packed = Uint8Array.from(atob(text.trim()), (letter) => letter.charCodeAt(0));
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return WebAssembly.compile(await new Response(stream).arrayBuffer());
}

// One worker: ask(question, ...words), and the boat whose sections it was handed. It is started anew when the engine in it breaks down.
function thread(module, source) {
  const open = new Map();
  const self = { ask, boat: "" };
  let worker,
    last = 0;

  function start() {
    self.boat = "";
    const address = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
    worker = new Worker(address);
    worker.onmessage = ({ data: { id, answer, error } }) => {
      if (error !== undefined) return restart(error);
      open.get(id)?.resolve(answer);
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

/**
 * prepare(boat): begins with what takes longest, the sections of a boat, from its text.
 * ask(question, ...words): a short question, answered in its turn.
 * choice(slot, set, onProgress), sensitivities(slot, set, onProgress): long work, its steps shared
 * among workers: { answer, stop }; the answer is null once it is stopped. onProgress(done, of).
 * comparison(sets, labels, onProgress): two sets, and a pin's label for each ("": its first).
 */
export async function openEngine({ textContent: packed, dataset: { hash } }, source) {
  const module = moduleFrom(packed); // workers start meanwhile
  const short = thread(module, source);
  const long = Array.from({ length: Math.min(navigator.hardwareConcurrency || 2, LONG_MOST) }, () =>
    thread(module, source),
  );
  await module;

  // Each worker takes the next of so many steps, behind those that are there: one(ask, step).
  async function share(steps, work, one, parts = []) {
    let next = parts.length,
      done = parts.length;
    await Promise.all(
      long.map(async ({ ask }) => {
        while (next < steps && !work.isStopped) {
          const step = next++;
          parts[step] = await one(ask, step);
          if (!work.isStopped) work.onProgress?.(++done, steps);
        }
      }),
    );
    return parts;
  }

  const polarsOf = openSections(long[0].ask, share, hash);

  // Hands a worker the sections of a boat, once.
  async function ready(thread, slot, { boat }) {
    const polars = await polarsOf(slot, boat);
    if (thread.boat === boat) return;
    thread.boat = boat;
    thread.ask("take sections", slot, { boat }, polars).catch(() => {}); // the question after it fails too
  }

  let line = Promise.resolve(); // short questions keep their order

  function ask(question, slot, set, ...words) {
    if (!WITH_SECTIONS.includes(question)) return short.ask(question, slot, set, ...words);
    line = line.then(() => ready(short, slot, set)).catch(() => {}); // without, it takes longer
    return line.then(() => short.ask(question, slot, set, ...words));
  }

  async function outlook(slot, set, work) {
    await Promise.all(long.map((thread) => ready(thread, slot, set)));
    if (work.isStopped) return [];
    const parts = [],
      stepsNow = () => long[0].ask("choice steps", slot, set, parts);
    for (let steps; !work.isStopped && parts.length < (steps = await stepsNow()); ) {
      const known = [...parts];
      await share(steps, work, (ask, step) => ask("choice step", slot, set, known, step), parts);
    }
    return parts;
  }

  async function choice(slot, set, work) {
    const parts = await outlook(slot, set, work);
    return work.isStopped ? null : long[0].ask("choice whole", slot, set, parts);
  }

  // Every measurement to first order, then those that matter most anew; heaviest first.
  async function sensitivities(slot, set, work) {
    const heavier = (a, b) => b.weight - a.weight;
    const tell = work.onProgress;
    work.onProgress = null;
    const parts = await outlook(slot, set, work);
    if (work.isStopped) return null;
    const whole = await long[0].ask("sense", slot, set, parts);
    const all = whole.count + whole.anew;
    work.onProgress = (done) => tell?.(done, all);
    const first = await share(whole.count, work, (ask, row) =>
      ask("sense row", slot, set, parts, row, false),
    );
    const rows = first.filter((row) => row?.weight >= 0).sort(heavier);
    work.onProgress = (done) => tell?.(whole.count + done, all);
    const most = rows.slice(0, whole.anew);
    const anew = await share(most.length, work, (ask, i) =>
      ask("sense row", slot, set, parts, most[i].row, true),
    );
    return { ...whole, rows: [...anew.sort(heavier), ...rows.slice(whole.anew)] };
  }

  // What was worked out for the last comparison serves the next: only one of two sets has changed.
  let kept = new Map();
  const bare = (set) => JSON.stringify({ ...set, speed: "" });

  // Slot 0 as it is and slot 1 changed, side by side.
  async function comparison(sets, labels, work) {
    const tell = work.onProgress,
      missing = sets.filter((set) => !kept.has(bare(set))).length;
    const found = new Map();
    let before = 0;
    for (const [slot, set] of sets.entries()) {
      const key = bare(set);
      if (found.has(key)) continue;
      work.onProgress = (done, of) => tell?.(before + done / of, missing);
      const isKept = kept.has(key),
        parts = kept.get(key) ?? (await outlook(slot, set, work));
      if (work.isStopped) return null;
      found.set(key, parts);
      kept.set(key, parts);
      if (!isKept) before++;
    }
    kept = found;
    return long[0].ask(
      "compare",
      sets,
      sets.map((set) => found.get(bare(set))),
      labels,
    );
  }

  const stoppable = (begin) => (slot, set, onProgress) => {
    const work = { isStopped: false, onProgress };
    return {
      answer: begin(slot, set, work).then((got) => (work.isStopped ? null : got)),
      stop: () => {
        work.isStopped = true;
      },
    };
  };

  return {
    ask,
    prepare: (boat) => {
      polarsOf(0, boat).catch(() => {});
    },
    choice: stoppable(choice),
    sensitivities: stoppable(sensitivities),
    comparison: stoppable(comparison),
  };
}
