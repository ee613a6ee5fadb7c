// work_bar.js - progress of long work, a button that stops it, another that begins it again.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";

/**
 * { element, run(work), stop() }: run shows a work { answer, stop } until it has ended; again null:
 * what begins it stands elsewhere.
 */
export function workBar(label, again = null) {
  const bar = make("progress", { max: "1", value: "0", "aria-label": label });
  const words = make("span", { "aria-hidden": "true" }); // the bar speaks for itself
  const stop = make("button", { type: "button", onclick: () => halt() }, "Stop");
  const begin = make("button", { type: "button", hidden: true, onclick: again }, "Work it out");
  const element = make("div", { class: "working" }, words, bar, stop, begin);
  let now = null;

  function show(isBusy, isWanting) {
    element.classList.toggle("busy", isBusy);
    words.hidden = bar.hidden = stop.hidden = !isBusy;
    begin.hidden = !isWanting || !again;
  }

  function tell(part) {
    bar.value = part;
    words.textContent = `${label}: ${Math.floor(100 * part)} %`;
  }

  function halt() {
    now?.stop();
    now = null;
    show(false, true);
  }

  show(false, false);
  return {
    element,
    /** begin(onProgress) starts the work; null when it was stopped or another took its place. */
    async run(begin) {
      now?.stop();
      tell(0);
      const own = (now = begin((done, of) => {
        if (own === now) tell(done / of);
      }));
      show(true, false);
      try {
        const answer = await own.answer;
        if (own !== now) return null;
        now = null;
        show(false, false);
        return answer;
      } catch (error) {
        if (own === now) halt();
        throw error;
      }
    },
    stop: () => {
      now?.stop();
      now = null;
      show(false, false);
    },
    halt,
  };
}
