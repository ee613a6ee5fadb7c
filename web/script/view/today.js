// today.js - the view Today: lulls, puffs, sea, course and who sails; which set-up, and why.
// SPDX-License-Identifier: MIT

import { choiceCards } from "../choice_cards.js";
import { dayForm } from "../day_form.js";
import { make } from "../dom.js";
import { workBar } from "../work_bar.js";

const PAUSE = 250; // [ms] after the last change, before the long work begins

export const today = {
  name: "today",
  title: "Today",
  open(page, main) {
    let asked = "",
      answered = "",
      answer = null,
      waiting = 0,
      isOpen = true;
    const ask = dayForm(page, () => answer?.gusts ?? page.store.state.values.day.wind);
    const bar = workBar("Working out the day", () => begin());
    const answers = make("div", { class: "answers choice-made" });
    main.append(
      make("div", { class: "today" }, ask.element, make("div", {}, bar.element, answers)),
    );

    function mark(isBusy) {
      answers.classList.toggle("old", answered !== asked);
      answers.setAttribute("aria-busy", isBusy);
    }

    function tell(state) {
      answers.replaceChildren(...choiceCards(page, answer, state));
      ask.update(state);
    }

    async function begin() {
      const mine = asked;
      mark(true);
      try {
        const texts = page.texts(page.store.state.set);
        const got = await bar.run((onProgress) => page.engine.choice(0, texts, onProgress));
        if (!isOpen || mine !== asked) return;
        if (got) {
          ((answer = got), (answered = mine));
          tell(page.store.state);
        }
        page.say.status(
          !got
            ? "Stopped: the answer is for other values."
            : answer.flies
              ? `Pin ${answer.places[0].label} for this day`
              : "Nothing flies on this day",
        );
      } catch (error) {
        page.say.status(
          `The engine broke down: ${error.message}. Change a value, or work it out again.`,
        );
      }
      mark(false);
    }

    return {
      update(state) {
        ask.update(state);
        const now = JSON.stringify([state.set, state.speedUnit]);
        if (now === asked) {
          if (answer && answered === asked) tell(state);
          return;
        }
        const isFirst = asked === "";
        asked = now;
        bar.stop();
        mark(true);
        clearTimeout(waiting);
        waiting = setTimeout(begin, isFirst ? 0 : PAUSE);
      },
      close() {
        isOpen = false;
        clearTimeout(waiting);
        bar.stop();
        ask.close();
      },
    };
  },
};
