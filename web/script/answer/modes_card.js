// modes_card.js - what becomes of a small disturbance of a flight: the words of `lullwise modes`.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";
import { drawTold } from "./told.js";

const parts = ["answer", "as_sailed", "left_alone", "wand", "trust"];

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
      inside.replaceChildren(
        make("div", { class: "tree" }, answer?.answer ? drawTold(answer, parts) : []),
      );
    },
  };
}
