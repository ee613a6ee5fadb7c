// opener.js - a button that opens files.
// SPDX-License-Identifier: MIT

import { make } from "./dom.js";

/**
 * [picker, button]: the picker is unseen, and found by its label; take(file) is called, or, where
 * several may be opened at once, take(files).
 */
export function opener(words, label, accept, take, isMany = false) {
  const picker = make("input", {
    type: "file",
    accept,
    multiple: isMany,
    class: "unseen",
    tabindex: "-1",
    "aria-label": label,
    async onchange() {
      const files = [...picker.files];
      if (files.length) await take(isMany ? files : files[0]);
      picker.value = "";
    },
  });
  return [picker, make("button", { type: "button", onclick: () => picker.click() }, words)];
}
