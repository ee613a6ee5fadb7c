// unused.js - a line over every view: which texts are not used, with a way to each.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";
import { heading } from "../base/number.js";
import { kinds } from "../base/kinds.js";
import { waits } from "../form/together.js";
import { spoken } from "../base/tree.js";

const viewOf = (kind) => (kind === "day" ? "today" : "boat");

const nameOf = (kind, path) =>
  path.includes(".") ? spoken(path) : heading(`${path} of the ${kind}`);

// Goes to the field of a path and opens what it is folded into; false where there is none.
function goToField(store, kind, path) {
  const find = () => document.querySelector(`main [data-at="${CSS.escape(`${kind}.${path}`)}"]`);
  if (!find()) store.go(viewOf(kind));
  const field = find();
  for (let at = field; at; at = at.parentElement) if (at.matches("details")) at.open = true;
  field?.querySelector("input, textarea")?.focus();
}

/** What stands in it follows the store. */
export function unusedLine(store) {
  const list = make("ul", {});
  const head = make("span", {});
  const back = { type: "button", onclick: () => store.drop() };
  const element = make(
    "section",
    { class: "unused", role: "status", hidden: true },
    make("b", {}, head),
    list,
    make("button", back, "Leave them out"),
  );
  const entryOf = (kind, path, { text }) =>
    make(
      "li",
      {},
      make(
        "button",
        { type: "button", onclick: () => goToField(store, kind, path) },
        `${nameOf(kind, path)} “${text}”`,
      ),
    );
  function tell() {
    const { refused } = store.state;
    const all = kinds.flatMap((kind) =>
      Object.entries(refused[kind])
        .filter(([path, one]) => !waits(kind, path, one))
        .map(([path, one]) => entryOf(kind, path, one)),
    );
    element.hidden = !all.length;
    head.textContent =
      all.length === 1 ? "1 value is not used:" : `${all.length} values are not used:`;
    list.replaceChildren(...all);
  }
  store.onChange(tell);
  addEventListener("judged", tell);
  return element;
}
