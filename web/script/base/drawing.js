// drawing.js - pieces of a picture to scale: lines, arrows, sections.
// SPDX-License-Identifier: MIT

import { draw } from "./dom.js";

export const DEG = Math.PI / 180;

export const at = (...numbers) => numbers.map((x) => x.toFixed(1)).join(" ");
export const line = (x1, y1, x2, y2, kind) => draw("line", { x1, y1, x2, y2, class: kind });
export const put = (element, attributes) => {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
};

/** An svg hidden from screen readers: its figure speaks. */
export const canvas = ([x, y, width, height], ...inside) =>
  draw("svg", { viewBox: at(x, y, width, height), "aria-hidden": "true" }, ...inside);

/** A force: move([x, y] of its tail, [dx, dy]). */
export function arrow() {
  const shape = draw("path");
  const half = 2.2; // of the shaft
  return {
    element: draw("g", { class: "force" }, shape),
    move([x, y], [dx, dy]) {
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
