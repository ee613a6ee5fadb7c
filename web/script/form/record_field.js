// record_field.js - which boat, sailor or day: those at hand, a new one, a copy, a link's kept.
// SPDX-License-Identifier: MIT

import { freshId, make } from "../base/dom.js";
import { isInvented, namesOf } from "../keep/records.js";

const NEW = { boat: "New boat", sailor: "New sailor", day: "New day" };

// Records in their groups, one's own first; a link's behind them.
function options(list, linked) {
  const names = namesOf(list);
  const of = (isWanted) =>
    list.flatMap(({ id }, i) => (isWanted(id) ? [make("option", { value: id }, names[i])] : []));
  const group = (label, inside) => inside.length > 0 && make("optgroup", { label }, inside);
  return [
    group(
      "Yours",
      of((id) => !isInvented(id)),
    ),
    group("Invented", of(isInvented)),
    linked && group("From a link, not kept", [make("option", { value: "" }, linked)]),
  ].filter(Boolean);
}

/** { element, update(state) }. */
export function recordField(page, kind, title) {
  const id = freshId();
  const { store } = page;
  const select = make("select", { id, onchange: () => store.use(kind, select.value) });
  const button = (text, onclick) =>
    make("button", { type: "button", "aria-label": `${text}: ${kind}`, onclick }, text);
  const nameNow = () => store.state.set[kind].name;
  const keep = button("Keep it", () => store.keepAs(kind, nameNow()));
  const copy = button("Copy", () => store.keepAs(kind, `${nameNow()}, copy`));
  const fresh = button("New", () => store.begin(kind, NEW[kind]));
  return {
    element: make(
      "div",
      { class: "field" },
      make("label", { for: id }, title),
      select,
      make("div", { class: "beside" }, keep, copy, fresh),
    ),
    update(state) {
      const isLinked = state.ids[kind] === null;
      select.replaceChildren(...options(store.records(kind), isLinked && (nameNow() || kind)));
      select.value = state.ids[kind] ?? "";
      keep.hidden = !isLinked;
    },
  };
}
