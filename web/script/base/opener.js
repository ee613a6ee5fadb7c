// opener.js - a button that opens files.
// SPDX-License-Identifier: MIT

import { make } from "./dom.js";

/**
 * [picker, button]: the picker is unseen, and found by its label; take(file) is called for one
 * after the other.
 */
export function opener(words, label, accept, take) {
  const picker = make("input", {
    type: "file",
    accept,
    class: "unseen",
    tabindex: "-1",
    "aria-label": label,
    async onchange() {
      for (const file of [...picker.files]) await take(file);
      picker.value = "";
    },
  });
  return [picker, make("button", { type: "button", onclick: () => picker.click() }, words)];
}
