// sections.js - the sections of a boat's foils: worked out by all workers, kept, handed to each.
// SPDX-License-Identifier: MIT
//
// They take longest of all that a boat needs, and stay the same while only other things change. The
// browser keeps the last few, under the hash of the engine: another engine begins anew.

const KEPT = "lullwise.sections",
  MOST = 4;

const toText = (bytes) => btoa(String.fromCharCode(...bytes));
const fromText = (text) => Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));

/** Polars by their keys as they were left here by the same engine. */
function remembered(engineHash) {
  try {
    const { engine, polars } = JSON.parse(localStorage.getItem(KEPT));
    return engine === engineHash
      ? new Map(polars.map(([key, text]) => [key, fromText(text)]))
      : new Map();
  } catch {
    return new Map();
  }
}

function remember(engine, polars) {
  const texts = [...polars].map(([key, bytes]) => [key, toText(bytes)]);
  try {
    localStorage.setItem(KEPT, JSON.stringify({ engine, polars: texts }));
  } catch {
    /* not kept */
  }
}

/**
 * The way to the polars of a boat, as bytes, main foil first, from its text. ask: a worker's;
 * share: engine.js's, which gives each of so many steps to the next worker that is free.
 */
export function openSections(ask, share, engineHash) {
  const kept = remembered(engineHash); // bytes by key
  const coming = new Map(); // promises by key
  const boats = new Map(); // promises by the text of a boat

  async function workOut(slot, boat, missing) {
    const tasks = missing.flatMap(({ name, rows }) =>
      Array.from({ length: rows }, (_, row) => ({ name, row })),
    );
    const rows = await share(tasks.length, {}, (worker, i) =>
      worker("row", slot, { boat }, tasks[i].name, tasks[i].row),
    );
    return Promise.all(
      missing.map(({ name }) =>
        ask(
          "polar",
          slot,
          { boat },
          name,
          rows.filter((_, i) => tasks[i].name === name),
        ),
      ),
    );
  }

  function keep(key, bytes) {
    coming.delete(key);
    kept.delete(key);
    kept.set(key, bytes); // the youngest last
    for (const old of [...kept.keys()].slice(0, -MOST)) kept.delete(old);
    remember(engineHash, kept);
  }

  async function polarsOf(slot, boat) {
    const { size, sections } = await ask("sections", slot, { boat });
    const isThere = ({ key }) => coming.has(key) || kept.get(key)?.length === size;
    const missing = sections
      .map((section, name) => ({ ...section, name }))
      .filter((section) => !isThere(section));
    const all = workOut(slot, boat, missing);
    missing.forEach(({ key }, i) => {
      const one = all.then((polars) => (keep(key, polars[i]), polars[i]));
      one.catch(() => coming.delete(key));
      coming.set(key, one);
    });
    return Promise.all(sections.map(({ key }) => coming.get(key) ?? kept.get(key)));
  }

  return function ofBoat(slot, boat) {
    if (boats.has(boat)) return boats.get(boat);
    const found = polarsOf(slot, boat);
    found.catch(() => boats.delete(boat));
    boats.set(boat, found);
    for (const old of [...boats.keys()].slice(0, -MOST)) boats.delete(old);
    return found;
  };
}
