// latest.js - one question at a time; of those that come meanwhile only the last is asked.
// SPDX-License-Identifier: MIT

/** Returns begin(): runs `once`, and again while it was begun meanwhile. once(isLast()). */
export function latest(once) {
  let isBusy = false;
  let isWanted = false;
  return async function begin() {
    if (isBusy) {
      isWanted = true;
      return;
    }
    isBusy = true;
    try {
      do {
        isWanted = false;
        await once(() => !isWanted);
      } while (isWanted);
    } finally {
      isBusy = false;
    }
  };
}
