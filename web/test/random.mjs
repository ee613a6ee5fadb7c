// random.mjs - chance of a test that is the same every time.
// SPDX-License-Identifier: MIT

/** Numbers from 0 to 1 by a seed (xorshift). */
export function randomFrom(seed) {
  let state = seed * 2654435761 + 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}
