// about.js - what the page is, until it has started; then which records are invented ones.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";
import { heading } from "../base/number.js";
import { kinds } from "../base/kinds.js";
import { isInvented } from "../keep/records.js";

const listed = (words) =>
  words.length > 1 ? `${words.slice(0, -1).join(", ")} and ${words.at(-1)}` : words[0];

/** The line that page.html begins with; it goes when boat, sailor and day are the reader's own. */
export function aboutLine(store) {
  const element = document.getElementById("about");
  const text = make("span", {});
  const toForms = (kind) => store.go(kind === "day" ? "today" : "boat");
  let first = kinds[0];
  element.replaceChildren(
    text,
    make("button", { type: "button", onclick: () => toForms(first) }, "Put in your own"),
  );
  store.onChange(({ ids }) => {
    const invented = kinds.filter((kind) => isInvented(ids[kind]));
    [first] = invented;
    element.hidden = !invented.length;
    text.textContent =
      invented.length > 0 &&
      `${heading(listed(invented))} ${invented.length > 1 ? "are" : "is"} invented.`;
  });
  return element;
}
