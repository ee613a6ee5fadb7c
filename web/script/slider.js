// slider.js - one number as a slider with steps down and up; where it may, left for the engine to choose.
// SPDX-License-Identifier: MIT

import { freshId, make } from "./dom.js";
import { shownUnit, told } from "./number.js";

/**
 * row: of the quantity; step in its shown unit (or a function of the unit); bounds { low, high } in SI;
 * free: what is chosen while the number is left open ("for speed"), or nothing when it never is.
 * onMove(si or null) with every move. Returns { element, update({ si, isFree, speedUnit, bounds }) }.
 */
export function slider({ label, row, step, free, onMove }) {
  const id = freshId();
  let now = { si: 0, isFree: false, speedUnit: "kn", bounds: { low: 0, high: 1 } };
  const unit = () => shownUnit(row, now.speedUnit);
  const stepNow = () => (unit().unit === "m/s" ? step / 2 : step);
  const within = (si) => Math.min(Math.max(si, now.bounds.low), now.bounds.high);

  const input = make("input", {
    type: "range",
    id,
    oninput: () => move(Number(input.value) * unit().inSi),
  });
  const value = make("output", { for: id });
  const nudge = (sign) =>
    make(
      "button",
      {
        type: "button",
        class: "step",
        "aria-label": `${sign < 0 ? "Less" : "More"}: ${label}`,
        onclick: () => {
          const by = stepNow(),
            at = now.si / unit().inSi / by;
          move(
            (sign < 0 ? Math.ceil(at - 1 - 1e-6) : Math.floor(at + 1 + 1e-6)) * by * unit().inSi,
          );
        },
      },
      sign < 0 ? "−" : "+",
    );
  const isOpen =
    free &&
    make("input", {
      type: "checkbox",
      onchange: () => onMove(isOpen.checked ? null : within(now.si)),
    });

  function move(si) {
    show({ ...now, si: within(si), isFree: false });
    onMove(now.si);
  }

  function show(next) {
    now = next;
    const { inSi } = unit();
    // The bounds stand on whole steps, so that every value that is shown can be had.
    const low = Math.ceil(now.bounds.low / inSi / stepNow() - 1e-6) * stepNow();
    for (const [name, at] of [
      ["min", low],
      ["max", now.bounds.high / inSi],
      ["step", stepNow()],
    ])
      input[name] = at;
    input.value = now.si / inSi;
    const text = told(row, now.si, now.speedUnit).replace("-", "−");
    value.textContent = text;
    input.setAttribute("aria-valuetext", now.isFree ? `${text}, ${free}` : text);
    if (isOpen) isOpen.checked = now.isFree;
  }

  return {
    element: make(
      "div",
      { class: "slide" },
      make("p", {}, make("label", { for: id }, label), " ", value),
      free && make("label", { class: "open" }, isOpen, free),
      make("div", { class: "entry stepped" }, nudge(-1), input, nudge(1)),
    ),
    update: (next) => show({ ...now, ...next }),
  };
}
