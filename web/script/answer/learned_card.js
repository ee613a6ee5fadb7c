// learned_card.js - what was learned from logged days: taken from its file, shown, left out again.
// SPDX-License-Identifier: MIT

import { card, make } from "../base/dom.js";
import { opener } from "../base/opener.js";
import { rememberLearned } from "../keep/memory.js";
import { faultLines } from "./fault_lines.js";
import { drawTold } from "./told.js";

/** { element, update(state) }: answers of the page take what is shown. */
export function learnedCard(page) {
  const shown = make("div", { class: "tree" });
  const leave = make("button", { type: "button", onclick: () => use("") }, "Leave it out");
  let asked = "";

  function use(text) {
    page.learned = text;
    rememberLearned(text);
    return update(page.store.state);
  }

  const ask = (text) => page.engine.ask("learned", 0, page.texts(page.store.state.set), text);

  async function take(file) {
    const text = await file.text();
    const { is_sound, faults } = await ask(text);
    if (is_sound) return use(text);
    shown.replaceChildren(...faultLines(`${file.name}: nothing was taken`, faults));
  }

  async function update(state) {
    const now = JSON.stringify([page.learned, state.set, state.speedUnit]);
    if (now === asked) return;
    asked = now;
    leave.hidden = !page.learned;
    const note = "Take in what `lullwise learn -o FILE` has learned of the boat from such days.";
    if (!page.learned) return shown.replaceChildren(make("p", { class: "note" }, note));
    const { told } = await ask(page.learned);
    if (now === asked) shown.replaceChildren(...drawTold(told).flat(9));
  }

  const open = opener("Open a file", "A file of what was learned", ".yaml", take);
  const tools = make("div", { class: "beside" }, open, leave);
  return { element: card("What was learned", shown, tools), update };
}
