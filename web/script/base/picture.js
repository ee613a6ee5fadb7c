// picture.js - an SVG that the engine drew, put into the page.
// SPDX-License-Identifier: MIT

import { make } from "./dom.js";

/** On white in either theme, as on paper; its own title is read to those who cannot see it. */
export function picture(title, text) {
  const svg = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", svg.querySelector("title")?.textContent ?? title);
  svg.removeAttribute("width");
  svg.removeAttribute("height");
  return make(
    "figure",
    { class: "picture" },
    title && make("figcaption", {}, title),
    document.importNode(svg, true),
  );
}
