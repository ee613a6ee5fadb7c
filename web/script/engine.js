// engine.js - the page's way to the engine: two workers, one for short questions, one for long.
// SPDX-License-Identifier: MIT

// The module lies in the page as text: gzip, then base64.
async function moduleFrom(text) {
  const packed = Uint8Array.from(atob(text.trim()), (letter) => letter.charCodeAt(0));
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return WebAssembly.compile(await new Response(stream).arrayBuffer());
}

// One worker and the questions it has not answered yet. It is started anew when it breaks down.
function thread(module, source) {
  const open = new Map();
  let worker, last = 0;

  function start() {
    const address = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
    worker = new Worker(address);
    worker.onmessage = ({ data }) => {
      const one = open.get(data.id);
      if (!one) return;
      if ("done" in data) return one.onProgress?.(data.done, data.of);
      open.delete(data.id);
      if ("error" in data) {
        restart(data.error);
        one.reject(new Error(data.error));
      } else one.resolve(data.answer);
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
  return {
    ask(question, words, onProgress) {
      const id = ++last;
      const answer = new Promise((resolve, reject) => open.set(id, { resolve, reject, onProgress }));
      worker.postMessage({ id, question, words });
      return { answer, stop: () => worker.postMessage({ stop: id }) };
    },
  };
}

/**
 * ask(question, ...words): a short one, answered in its turn.
 * work(question, words, onProgress): a long one: { answer, stop }; answer is null when stopped.
 */
export async function openEngine(packed, source) {
  const module = await moduleFrom(packed);
  const short = thread(module, source), long = thread(module, source);
  return {
    ask: (question, ...words) => short.ask(question, words).answer,
    work: (question, words, onProgress) => long.ask(question, words, onProgress),
  };
}
