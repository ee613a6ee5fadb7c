// boat.js - the view Boat: every measurement with how to take it, what is doubtful, what matters most.
// SPDX-License-Identifier: MIT

import { card, make, table } from "../dom.js";
import { keptField, nameField, sentenceOf } from "../field.js";
import { fixed, signed, KNOT, words } from "../number.js";
import { picture } from "../picture.js";
import { sectionForm } from "../section.js";

function doubtList(page, state) {
  const doubts = ["boat", "sailor"].flatMap((kind) => state.doubts[kind]);
  if (!doubts.length) return make("p", {}, "Every value is within what is usual.");
  return make(
    "ul",
    {},
    doubts.map((doubt) =>
      make("li", {}, make("b", {}, words(doubt.key.replace(".", ": "))), ", ", sentenceOf(doubt)),
    ),
  );
}

// Which measurement is worth taking better: long work, when asked for.
function sensitivityCard(page) {
  const bar = make("progress", {
    max: "1",
    value: "0",
    hidden: true,
    "aria-label": "Moving each measurement",
  });
  const found = make("div");
  let work = null;
  const button = make(
    "button",
    { type: "button", onclick: () => (work ? stop() : begin()) },
    "Find out",
  );

  function rest() {
    work = null;
    bar.hidden = true;
    button.textContent = "Find out";
  }
  function stop() {
    work?.stop();
    rest();
    page.say.status("Stopped.");
  }
  function tell(answer, unit) {
    if (!answer.flies)
      return [
        make("p", {}, "What matters most cannot be told: nothing flies in the winds of this day."),
      ];
    const speed = unit === "m/s" ? 1 : KNOT;
    const rows = answer.rows
      .slice(0, answer.anew)
      .map((row) => [
        words(row.key.replace(".", ": ")),
        `± ${row.error}${row.unit ? ` ${row.unit}` : ""}`,
        `${signed(row.hold / speed, 1)} ${unit}`,
        `${signed(row.seconds, 0)} s`,
        row.first_instead ? `pin ${row.first_instead}` : "–",
      ]);
    return [
      make(
        "p",
        {},
        `Pin ${answer.pin} is held to ${fixed(answer.held_up_to / speed, 1)} ${unit} and takes ${fixed(answer.seconds, 0)} s round the course of the day. With a measurement one error larger, these change by:`,
      ),
      table(
        "Measurements, what matters most first",
        ["measurement", "error", "held to", "time", "would put first"],
        rows,
      ),
    ];
  }
  async function begin() {
    const { state } = page.store;
    const own = (work = page.engine.sensitivities(0, page.texts(state.set), (done, of) => {
      bar.value = done / of;
    }));
    bar.hidden = false;
    bar.value = 0;
    button.textContent = "Stop";
    try {
      const answer = await own.answer;
      if (own !== work) return;
      if (answer) found.replaceChildren(...tell(answer, state.speedUnit));
    } catch (error) {
      page.say.status(`The engine broke down: ${error.message}.`);
    }
    if (own === work) rest();
  }
  return {
    element: card(
      "Which measurement matters most",
      make(
        "p",
        {},
        "Moves each measurement by what a tape may be wrong, and looks at what becomes of the day's choice.",
      ),
      make("div", { class: "working" }, button, bar),
      found,
    ),
    update() {
      found.replaceChildren();
      if (work) stop();
    },
    close: stop,
  };
}

export const boat = {
  name: "boat",
  title: "Boat",
  open(page, main) {
    const parts = ["boat", "sailor"].flatMap((kind) => [
      { element: make("h2", { class: "record" }, page.tables.records[kind].title), update() {} },
      keptField(page, kind, kind === "boat" ? "Which boat" : "Who sails"),
      nameField(page, kind),
      ...page.tables.records[kind].sections.map((section) => sectionForm(page, kind, section)),
    ]);
    const sides = { side: "From the side", foils: "The foils", drag: "Hull and foil" };
    const pictures = make("div", { class: "pictures" });
    const doubts = make("div");
    const most = sensitivityCard(page);
    main.append(
      make(
        "div",
        { class: "today" },
        make(
          "div",
          { class: "ask" },
          parts.map((part) => part.element),
        ),
        make(
          "div",
          { class: "answers" },
          card("Unusual values", doubts),
          most.element,
          make("section", { class: "card" }, make("h2", {}, "As measured"), pictures),
        ),
      ),
    );
    let drawn = "",
      told = "";

    async function drawAll(state) {
      const mine = (drawn = JSON.stringify(state.set));
      const texts = await page.engine.ask("pictures", 0, page.texts(state.set));
      if (mine !== drawn) return;
      pictures.replaceChildren(
        ...Object.entries(sides).map(([key, title]) => picture(title, texts[key])),
      );
    }

    return {
      update(state) {
        for (const part of parts) part.update(state);
        doubts.replaceChildren(doubtList(page, state));
        const now = JSON.stringify([state.set, state.speedUnit]);
        if (now !== told) most.update();
        told = now;
        if (JSON.stringify(state.set) !== drawn) drawAll(state);
      },
      close: most.close,
    };
  },
};
