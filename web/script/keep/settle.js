// settle.js - takes of texts for a record all that are sound, says what is wrong with the rest.
// SPDX-License-Identifier: MIT
//
// Sound is what the engine says of the record as a whole. A text may be sound beside another only
// (a lull above the mean that was, and the new mean): each is tried again after one was taken.

const isWrong = (fault) => !fault.is_doubt;

/** Whether a fault speaks of a path ("main_foil.span", "legs.0.length"), or of all its section. */
export function bears(fault, path) {
  const place = path.replace(/\.(\d+)(?=\.|$)/, "[$1]");
  return [place, path, path.split(".")[0]].includes(fault.key);
}

/** The faults that speak of a path; of a refused text all, where none does. */
export function faultsAt({ faults }, path) {
  const own = faults.filter((fault) => bears(fault, path));
  return own.length ? own : faults.filter(isWrong);
}

// All texts but those that are blamed, as long as blaming helps: the texts that are sound together.
async function blameless(read, build, texts) {
  let taken = texts;
  for (;;) {
    const { is_sound, faults } = await read(build(taken));
    if (is_sound) return taken;
    const kept = taken.filter(([path]) => !faults.some((one) => isWrong(one) && bears(one, path)));
    if (kept.length === taken.length) return [];
    taken = kept;
  }
}

// In the order in which they were given.
const inOrder = (texts, taken) => texts.filter((one) => taken.includes(one));

/**
 * read(tree): what the engine says; build(texts): the record with texts [path, text], sound with
 * none. Returns { tree, answer, refused }: refused has { text, faults } by path.
 */
export async function settle(read, build, texts) {
  let taken = await blameless(read, build, texts);
  const refused = {};
  for (let isNews = taken.length < texts.length; isNews; ) {
    isNews = false;
    for (const one of texts.filter((text) => !taken.includes(text))) {
      const [path, text] = one;
      const answer = await read(build(inOrder(texts, [...taken, one])));
      if (answer.is_sound) {
        taken = [...taken, one];
        isNews = true;
      } else refused[path] = { text, faults: faultsAt(answer, path) };
    }
  }
  for (const [path] of taken) delete refused[path];
  const tree = build(inOrder(texts, taken));
  return { tree, answer: await read(tree), refused };
}

/** The same for texts put into a record one by one: those refused before, and one more. */
export function settleInto(read, tree, refused, [path, text], withText) {
  const { [path]: _, ...others } = refused;
  const texts = [...Object.entries(others).map(([at, one]) => [at, one.text]), [path, text]];
  const build = (some) => some.reduce((whole, [at, one]) => withText(whole, at, one), tree);
  return settle(read, build, texts);
}
