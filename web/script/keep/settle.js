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

// All texts but those that are blamed, as long as blaming helps: those that are sound together, and
// what is read with them.
async function blameless(read, build, texts) {
  let taken = texts;
  for (;;) {
    const answer = await read(build(taken));
    if (answer.is_sound || !taken.length) return { taken, answer };
    const isBlamed = ([path]) => answer.faults.some((one) => isWrong(one) && bears(one, path));
    const kept = taken.filter((one) => !isBlamed(one));
    taken = kept.length < taken.length ? kept : [];
  }
}

// In the order in which they were given.
const inOrder = (texts, taken) => texts.filter((one) => taken.includes(one));

/**
 * read(tree): what the engine says; build(texts): the record with texts [path, text]. Returns
 * { tree, answer, refused }: what is read in the tree, sound where it is so with none of the texts;
 * refused has { text, faults } by path.
 */
export async function settle(read, build, texts) {
  let { taken, answer } = await blameless(read, build, texts);
  const refused = {};
  for (let isNews = taken.length < texts.length; isNews; ) {
    isNews = false;
    for (const one of texts.filter((text) => !taken.includes(text))) {
      const [path, text] = one;
      const found = await read(build(inOrder(texts, [...taken, one])));
      if (found.is_sound) {
        taken = [...taken, one];
        answer = found;
        isNews = true;
      } else refused[path] = { text, faults: faultsAt(found, path) };
    }
  }
  for (const [path] of taken) delete refused[path];
  return { tree: build(inOrder(texts, taken)), answer, refused };
}

/**
 * The same for texts put into a record one by one: those refused before, and one more. `faults`
 * beside it are those of that one, or the doubts of the record.
 */
export async function settleInto(read, tree, refused, [path, text], withText) {
  const { [path]: _, ...others } = refused;
  const texts = [...Object.entries(others).map(([at, one]) => [at, one.text]), [path, text]];
  const build = (some) => some.reduce((whole, [at, one]) => withText(whole, at, one), tree);
  const found = await settle(read, build, texts);
  return { ...found, faults: found.refused[path]?.faults ?? found.answer.faults };
}
