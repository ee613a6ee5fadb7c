// drawing.js - pieces of a picture to scale: lines, arrows, sections, text that keeps its size.
// SPDX-License-Identifier: MIT

import { draw } from "./dom.js";

export const DEG = Math.PI / 180;

export const at = (...numbers) => numbers.map((x) => x.toFixed(1)).join(" ");
export const line = (x1, y1, x2, y2, kind) => draw("line", { x1, y1, x2, y2, class: kind });
export const put = (element, attributes) => {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
};

const ROOM = 280; // [px] of width that a picture has for each rem of its letters, at the least

/**
 * An svg hidden from screen readers (its figure speaks), whose text keeps its size on the screen
 * as far as there is room for it: { svg, px() }, in its units the sixteenth of the letters' rem.
 * onSize() when that changes.
 */
export function canvas([x, y, width, height], onSize, ...inside) {
  let px = 1;
  const svg = draw("svg", { viewBox: at(x, y, width, height), "aria-hidden": "true" }, ...inside);
  new ResizeObserver(() => {
    const { width: wide, height: high } = svg.getBoundingClientRect();
    if (!wide || !high) return;
    const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
    px = Math.max(width / wide, height / high) * Math.min(rem / 16, wide / ROOM);
    svg.style.setProperty("--px", px);
    onSize();
  }).observe(svg);
  return { svg, px: () => px };
}

const overlap = (one, other) =>
  one.x < other.x + other.width &&
  other.x < one.x + one.width &&
  one.y < other.y + other.height &&
  other.y < one.y + one.height;

// Nearest first: where it is, a line up, a line down, two up.
const shifts = (line) =>
  Array.from({ length: 9 }, (_, i) => Math.ceil(i / 2) * (i % 2 ? -line : line));

/** Moves words into the picture's box, and up or down where they would stand on others. */
export function setApart(texts, { left, right, top, bottom }) {
  const taken = [];
  for (const text of texts) {
    const { x: from, y, width, height } = text.getBBox();
    const x = Math.max(Math.min(from, right - width), left);
    const spots = shifts(height).map((dy) => ({ x, y: y + dy, width, height }));
    const isFree = (spot) =>
      spot.y >= top && spot.y + height <= bottom && !taken.some((one) => overlap(one, spot));
    const spot = spots.find(isFree) ?? spots[0];
    put(text, {
      x: at(Number(text.getAttribute("x")) + x - from),
      y: at(Number(text.getAttribute("y")) + spot.y - y),
    });
    taken.push(spot);
  }
}

/** A force: move([x, y] of its tail, [dx, dy], words, [x, y] of the words). */
export function arrow(anchor = "middle") {
  const shape = draw("path"),
    text = draw("text", { "text-anchor": anchor });
  const half = 2.2; // of the shaft
  return {
    element: draw("g", { class: "force" }, shape, text),
    text,
    move([x, y], [dx, dy], words, [textX, textY]) {
      const length = Math.hypot(dx, dy),
        u = length ? dx / length : 0,
        v = length ? dy / length : 0;
      const head = Math.min(13, 0.7 * length),
        wide = Math.max(half, 0.55 * head),
        neck = length - head;
      const corners = [
        [0, half],
        [neck, half],
        [neck, wide],
        [length, 0],
        [neck, -wide],
        [neck, -half],
        [0, -half],
      ];
      const turned = corners.map(([along, across]) =>
        at(x + u * along - v * across, y + v * along + u * across),
      );
      shape.setAttribute("d", `M${turned.join("L")}Z`);
      text.textContent = words;
      put(text, { x: at(textX), y: at(textY) });
    },
  };
}

// Half the thickness of the four-digit sections, in chords [naca-460]; closed at the tail.
const half = (t) =>
  5 * (0.2969 * Math.sqrt(t) - 0.126 * t - 0.3516 * t ** 2 + 0.2843 * t ** 3 - 0.1036 * t ** 4);

/** Outline of a symmetric section, nose at 0, tail to the left, from one part to another. */
export function section(chord, thickness, from = 0, to = 1) {
  const parts = Array.from({ length: 17 }, (_, i) => from + ((to - from) * i * i) / 256);
  const side = (sign) => parts.map((t) => at(-t * chord, sign * thickness * chord * half(t)));
  return `M${[...side(-1), ...side(1).reverse()].join("L")}Z`;
}
