// answer_line.js - the answer in a line that stays in sight while one edits; from the moment that
// anything is changed until it is the answer of what is entered, that it is being worked out.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";

const WORKING = "Working …";
const TYPING = "Working … once you press Enter or leave the field.";
const STOPPED = "Stopped: not worked out for what is entered.";
const OLD = "What stands here is for other values.";

/**
 * For a form and its answers. Returns { element, old, show(now), close() }: `element` belongs above
 * the form, `old` above the answers; now: { isCurrent, isStopped, words }.
 */
export function answerLine(page, form, answers) {
  const text = make("p", { role: "status" });
  const toAnswer = make("button", { type: "button", onclick: go }, "See it");
  const element = make("div", { class: "answer-line" }, text, toAnswer);
  const old = make("p", { class: "old-line", hidden: true });
  let now = { isCurrent: false, isStopped: false, words: "" };
  let isTyping = false;
  let isOpen = true;

  function go() {
    if (form.matches("details")) form.open = false;
    answers.scrollIntoView();
  }

  function words() {
    if (isTyping) return TYPING;
    if (now.isCurrent) return now.words;
    return now.isStopped ? STOPPED : WORKING;
  }

  function draw() {
    const isOld = isTyping || !now.isCurrent;
    const said = words();
    if (text.textContent !== said) text.textContent = said;
    old.textContent = `${said} ${OLD}`;
    old.hidden = !isOld || !answers.childElementCount;
    element.classList.toggle("old", isOld);
    answers.classList.toggle("old", isOld);
  }

  // A slider needs no Enter.
  function type({ target }) {
    isTyping = target.type !== "range";
    draw();
  }

  // What is entered is the store's when its turn has come.
  async function settle() {
    await page.store.idle();
    if (!isOpen) return;
    isTyping = false;
    draw();
  }

  form.addEventListener("input", type);
  form.addEventListener("change", settle);
  form.addEventListener("focusout", settle);
  return {
    element,
    old,
    show(next) {
      now = next;
      draw();
    },
    close() {
      isOpen = false;
    },
  };
}
