// engine.js - the page's way to the engine: a worker for short questions, others for long work.
// SPDX-License-Identifier: MIT

const LONG_MOST = 4; // workers for long work

// The module lies in the page as text: gzip, then base64.
async function moduleFrom(text) {
  const packed = Uint8Array.from(atob(text.trim()), (letter) => letter.charCodeAt(0));
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return WebAssembly.compile(await new Response(stream).arrayBuffer());
}

// One worker: ask(question, ...words). It is started anew when the engine in it breaks down.
function thread(module, source) {
  const open = new Map();
  let worker, last = 0;

  function start() {
    const address = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
    worker = new Worker(address);
    worker.onmessage = ({ data: { id, answer, error } }) => {
      if (error !== undefined) return restart(error);
      open.get(id)?.resolve(answer);
      open.delete(id);
    };
    worker.postMessage({ module });
  }

  function restart(why) {
    worker.terminate();
    for (const one of open.values()) one.reject(new Error(why));
    open.clear();
    start();
  }

  start();
  return (question, ...words) => new Promise((resolve, reject) => {
    const id = ++last;
    open.set(id, { resolve, reject });
    worker.postMessage({ id, question, words });
  });
}

/**
 * ask(question, ...words): a short question, answered in its turn.
 * work(name, slot, set, onProgress): long work, its steps shared among workers: { answer, stop };
 * the answer is null once it is stopped. onProgress(done, of).
 */
export async function openEngine(packed, source) {
  const module = await moduleFrom(packed);
  const short = thread(module, source);
  const long = Array.from({ length: Math.min(navigator.hardwareConcurrency || 2, LONG_MOST) }, () => thread(module, source));

  async function allSteps(name, slot, set, isStopped, onProgress) {
    const steps = await long[0](`${name} steps`, slot, set);
    const parts = [];
    let next = 0, done = 0;
    await Promise.all(long.map(async (ask) => {
      while (next < steps && !isStopped()) {
        const step = next++;
        parts[step] = await ask(`${name} step`, slot, set, step);
        if (!isStopped()) onProgress?.(++done, steps);
      }
    }));
    return isStopped() ? null : long[0](`${name} whole`, slot, set, parts);
  }

  return {
    ask: short,
    work(name, slot, set, onProgress) {
      let stopped = false;
      const answer = allSteps(name, slot, set, () => stopped, onProgress);
      return { answer: answer.then((got) => (stopped ? null : got)), stop: () => { stopped = true; } };
    },
  };
}
