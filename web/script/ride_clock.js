// ride_clock.js - plays a ride: play and pause, slower, to any moment, all by ordinary controls.
// SPDX-License-Identifier: MIT

import { freshId, make } from "./dom.js";

const STILL = 1; // [s] from picture to picture for those who want less motion
const paces = [
  [1, "real speed"],
  [0.5, "half speed"],
  [0.25, "a quarter"],
  [0.1, "a tenth"],
];

/** "1:23.4". */
export function clockTime(seconds) {
  const tenths = Math.round(10 * seconds);
  return `${Math.floor(tenths / 600)}:${String(Math.floor(tenths / 10) % 60).padStart(2, "0")}.${tenths % 10}`;
}

/**
 * { element, begin(seconds), to(time), close() }. onTime(time, isPlaying) with every picture; `moments`
 * answers the times that one steps among.
 */
export function rideClock({ onTime, moments }) {
  const still = matchMedia("(prefers-reduced-motion: reduce)"),
    id = freshId();
  let time = 0,
    shown = 0,
    seconds = 1,
    frame = 0,
    last = 0;

  const button = make("button", {
    type: "button",
    class: "play",
    onclick: () => (frame ? pause() : play()),
  });
  const pace = make(
    "select",
    { "aria-label": "How fast" },
    paces.map(([, name]) => make("option", {}, name)),
  );
  const input = make("input", {
    type: "range",
    id,
    min: 0,
    step: 0.1,
    oninput: () => to(Number(input.value)),
  });
  const output = make("output", { for: id });
  const step = (sign, name) =>
    make("button", { type: "button", onclick: () => toNext(sign) }, name);

  function toNext(sign) {
    const ahead = moments().filter((at) => (sign > 0 ? at > time + 0.05 : at < time - 0.05));
    if (ahead.length) to(sign > 0 ? Math.min(...ahead) : Math.max(...ahead));
  }

  function show() {
    shown = time;
    input.value = time;
    output.textContent = `${clockTime(time)} of ${clockTime(seconds)}`;
    input.setAttribute("aria-valuetext", clockTime(time));
    onTime(time, frame !== 0);
  }

  function tick(stamp) {
    const passed = last ? Math.min((stamp - last) / 1000, 0.1) : 0;
    last = stamp;
    time = Math.min(time + passed * paces[pace.selectedIndex][0], seconds);
    frame = requestAnimationFrame(tick);
    if (time >= seconds) pause();
    else if (!still.matches || Math.abs(time - shown) >= STILL) show();
  }

  function label() {
    button.textContent = frame ? "Pause" : "Play";
  }

  function play() {
    if (time >= seconds) time = 0;
    last = 0;
    frame = requestAnimationFrame(tick);
    label();
  }

  function pause() {
    cancelAnimationFrame(frame);
    frame = 0;
    label();
    show();
  }

  function to(moment) {
    time = Math.min(Math.max(moment, 0), seconds);
    pause();
  }

  label();
  return {
    element: make(
      "div",
      { class: "clock" },
      make("div", { class: "keys" }, button, step(-1, "Event before"), step(1, "Next event"), pace),
      make("p", {}, make("label", { for: id }, "Moment"), " ", output),
      input,
    ),
    begin(length) {
      seconds = length;
      input.max = length;
      to(0);
    },
    to,
    close: () => cancelAnimationFrame(frame),
  };
}
