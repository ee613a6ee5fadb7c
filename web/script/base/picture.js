// picture.js - an SVG that the engine drew, put into the page.
// SPDX-License-Identifier: MIT

import { make } from "./dom.js";

const LEAST = 280; // wide that a picture is drawn; on less it is made smaller

/** The drawing, in whatever room there is. */
export function drawing(text) {
  const svg = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
  svg.removeAttribute("width");
  svg.removeAttribute("height");
  return document.importNode(svg, true);
}

/** Its own title is read to those who cannot see it. */
export function picture(title, text) {
  const svg = drawing(text);
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", svg.querySelector("title")?.textContent ?? title);
  return make("figure", { class: "picture" }, title && make("figcaption", {}, title), svg);
}

/** How wide a picture in an element is to be drawn for its letters to be as large as the page's. */
export function widthIn(element) {
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  return Math.max(Math.floor((16 * element.clientWidth) / rem), LEAST);
}

/** Calls onWidth(width) when the element has got another. */
export function onWidth(element, onWidth) {
  let last = 0;
  const observer = new ResizeObserver(() => {
    const width = element.clientWidth && widthIn(element);
    if (!width || width === last) return;
    last = width;
    onWidth(width);
  });
  observer.observe(element);
}
