// modes_card.js - what becomes of a small disturbance of a flight: the words of `lullwise modes`.
// SPDX-License-Identifier: MIT

import { make, table } from "./dom.js";
import { fixed } from "./number.js";

const seconds = (time) =>
  time < 999.5 ? `${fixed(time, time < 99.95 ? 1 : 0)} s` : Number.isFinite(time) ? "long" : "–";
const rowOf = (mode) => [
  mode.name,
  `${mode.grows ? "×2 " : ""}${seconds(mode.seconds)}`,
  seconds(mode.period),
  mode.together || "–",
];
const modesTable = (caption, modes) =>
  modes.length
    ? table(caption, ["mostly", "half gone", "swing", "together"], modes.map(rowOf))
    : make("p", { class: "note" }, `${caption}: all are over before they are seen.`);

/** { element, show(answer) }; begins folded, for it is told when asked: onOpen(). */
export function modesCard(onOpen) {
  const inside = make("div", {});
  const element = make(
    "details",
    {
      class: "card modes",
      ontoggle: () => {
        if (element.open) onOpen();
      },
    },
    make("summary", {}, make("h2", {}, "Small motions")),
    inside,
  );
  return {
    element,
    show(answer) {
      if (!answer?.verdict) return inside.replaceChildren();
      inside.replaceChildren(
        make("p", {}, answer.verdict),
        modesTable("As sailed: body, sheet and helm answer what the sailor sees", answer.sailed),
        modesTable("Left alone: body, sheet and helm stay where they are", answer.alone),
        ...(answer.wand
          ? [
              make("p", { class: "caption" }, "Ride height by wand and flap"),
              make(
                "dl",
                { class: "orders" },
                Object.entries(answer.wand).map(([name, text]) => [
                  make("dt", {}, name),
                  make("dd", {}, text),
                ]),
              ),
            ]
          : []),
        ...answer.trust.map((line) => make("p", { class: "note" }, line)),
      );
    },
  };
}
