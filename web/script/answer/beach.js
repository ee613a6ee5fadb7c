// beach.js - a card in letters that fill a phone, to be read at arm's length while one rigs.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";

/** A button that shows a copy of a card over everything else until it is put away. */
export function beachButton(card) {
  function show() {
    const copy = card.cloneNode(true);
    for (const tool of copy.querySelectorAll("button")) tool.remove();
    const away = make("button", { type: "button", onclick: () => dialog.close() }, "Put away");
    const dialog = make(
      "dialog",
      {
        class: "beach",
        "aria-label": "In large letters",
        autofocus: true,
        onclose: () => dialog.remove(),
      },
      copy,
      away,
    );
    document.body.append(dialog);
    dialog.showModal();
  }
  return make("button", { type: "button", class: "large", onclick: show }, "In large letters");
}
