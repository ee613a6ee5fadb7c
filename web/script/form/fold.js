// fold.js - a form that is folded to one line where the screen is narrow, open where it is wide.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";

const wide = matchMedia("(min-width: 62rem)"); // as in base.css

/** { element, line, close() }: `line` is what one sees of it while it is folded. */
export function fold(...inside) {
  const line = make("summary", {});
  const element = make("details", { class: "fold" }, line, make("div", { class: "ask" }, inside));
  const lay = () => {
    element.open = wide.matches;
  };
  wide.addEventListener("change", lay);
  lay();
  return { element, line, close: () => wide.removeEventListener("change", lay) };
}
