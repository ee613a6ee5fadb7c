// worker.js - the engine's own thread: takes questions one after the other, long ones in steps.
// SPDX-License-Identifier: MIT

import { engineIn, kinds } from "./module.js";

let engine;
const stopped = new Set();

// Lets messages in: the next one may say stop.
const breath = () => new Promise((on) => setTimeout(on, 0));

/** What can be asked: each takes (slot, set, ...) and answers with plain objects. */
const questions = {
  tables: () => engine.ask("tables"),
  read: (slot, kind, name, text) => engine.read(slot, kind, name, text),
  write(slot, set, kind) {
    engine.load(slot, set);
    return engine.ask("write", slot, kinds.indexOf(kind)).text;
  },
  async choice(slot, set, { id }) {
    engine.load(slot, set);
    const steps = engine.calls.lw_web_begin(slot);
    for (let step = 0; step < steps; step++) {
      postMessage({ id, done: step, of: steps });
      await breath();
      if (stopped.has(id)) return null;
      engine.calls.lw_web_step(slot, step);
    }
    return engine.ask("choice", slot);
  },
};

async function answer({ id, question, words }) {
  try {
    postMessage({ id, answer: await questions[question](...words, { id }) });
  } catch (error) {
    postMessage({ id, error: `${error.message ?? error}` });
  }
  stopped.delete(id);
}

let line = Promise.resolve();
onmessage = ({ data }) => {
  if (data.module) line = line.then(async () => { engine = await engineIn(data.module); });
  else if (data.stop) stopped.add(data.stop);
  else line = line.then(() => answer(data));
};
