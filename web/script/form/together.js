// together.js - fields that are judged as one: what is wrong between them waits until one leaves.
// SPDX-License-Identifier: MIT

import { freshId, make } from "../base/dom.js";
import { sentenceOf } from "./field.js";

const GROUP = "together";

/** Whether a fault is between the fields of a section, not of one of them. */
export const isBetween = (fault, path) => fault.key === path.split(".")[0];

/** A refused text waits while one is among the fields beside which alone it is wrong. */
export function waits(kind, path, { faults }) {
  const group = document.activeElement?.closest(`.${GROUP}`);
  return (
    Boolean(group?.querySelector(`[data-at="${CSS.escape(`${kind}.${path}`)}"]`)) &&
    !group.classList.contains("judged") &&
    faults.every((fault) => fault.is_doubt || isBetween(fault, path))
  );
}

/** fields: { path, field }, which leave to this what is between them. */
export function together(page, kind, title, fields) {
  const note = make("p", { class: "note", id: freshId(), role: "alert" });
  const element = make(
    "fieldset",
    { class: GROUP, "aria-describedby": note.id },
    make("legend", { class: "unseen" }, title),
    fields.map(({ field }) => field.element),
    make("div", { class: "between faulty" }, note),
  );
  const leaves = ({ relatedTarget }) => !element.contains(relatedTarget);
  element.addEventListener("focusout", (event) => leaves(event) && judge(true));
  element.addEventListener("input", () => judge(false));
  element.addEventListener("keydown", ({ key }) => key === "Enter" && judge(true));

  // Judged: one has left, or has said that it is done.
  function judge(isDone) {
    element.classList.toggle("judged", isDone);
    tell();
    element.dispatchEvent(new Event("judged", { bubbles: true }));
  }

  function tell() {
    const isJudged = element.classList.contains("judged");
    const sentences = new Set();
    for (const { path, field } of fields) {
      const faults = isJudged ? (page.store.refusedAt(kind, path)?.faults ?? []) : [];
      const between = faults.filter((fault) => !fault.is_doubt && isBetween(fault, path));
      field.accuse(between.length > 0);
      for (const fault of between) sentences.add(sentenceOf(fault));
    }
    note.textContent = [...sentences].join(". ");
  }

  return {
    element,
    update(state) {
      for (const { field } of fields) field.update(state);
      tell();
    },
  };
}
