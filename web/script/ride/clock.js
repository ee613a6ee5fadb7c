// clock.js - plays a ride: play and pause, slower, to any moment, all by ordinary controls.
// SPDX-License-Identifier: MIT

import { freshId, make } from "../base/dom.js";

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
  const within = String(Math.floor(tenths / 10) % 60).padStart(2, "0");
  return `${Math.floor(tenths / 600)}:${within}.${tenths % 10}`;
}

class RideClock {
  #onTime;
  #moments;
  #still = matchMedia("(prefers-reduced-motion: reduce)");
  #time = 0;
  #shown = 0;
  #seconds = 1;
  #frame = 0;
  #last = 0;
  #output = make("output");
  #button = make("button", {
    type: "button",
    class: "play",
    onclick: () => (this.#frame ? this.#pause() : this.#play()),
  });
  #pace = make(
    "select",
    { "aria-label": "How fast" },
    paces.map(([, name]) => make("option", {}, name)),
  );
  #input = make("input", {
    type: "range",
    id: freshId(),
    min: 0,
    step: 0.1,
    oninput: () => this.to(Number(this.#input.value)),
  });

  constructor({ onTime, moments }) {
    this.#onTime = onTime;
    this.#moments = moments;
    this.#output.htmlFor = this.#input.id;
    const step = (sign, name) =>
      make("button", { type: "button", onclick: () => this.#toNext(sign) }, name);
    this.element = make(
      "div",
      { class: "clock" },
      make(
        "div",
        { class: "keys" },
        this.#button,
        step(-1, "Event before"),
        step(1, "Next event"),
        this.#pace,
      ),
      make("p", {}, make("label", { for: this.#input.id }, "Moment"), " ", this.#output),
      this.#input,
    );
    this.#label();
  }

  begin(length) {
    this.#seconds = length;
    this.#input.max = length;
    this.to(0);
  }

  to(moment) {
    this.#time = Math.min(Math.max(moment, 0), this.#seconds);
    this.#pause();
  }

  close() {
    cancelAnimationFrame(this.#frame);
  }

  #toNext(sign) {
    const isAhead = (at) => (sign > 0 ? at > this.#time + 0.05 : at < this.#time - 0.05);
    const ahead = this.#moments().filter(isAhead);
    if (ahead.length) this.to(sign > 0 ? Math.min(...ahead) : Math.max(...ahead));
  }

  #show() {
    const now = clockTime(this.#time);
    this.#shown = this.#time;
    this.#input.value = this.#time;
    this.#output.textContent = `${now} of ${clockTime(this.#seconds)}`;
    this.#input.setAttribute("aria-valuetext", now);
    this.#onTime(this.#time, this.#frame !== 0);
  }

  #tick(stamp) {
    const passed = this.#last ? Math.min((stamp - this.#last) / 1000, 0.1) : 0;
    const [pace] = paces[this.#pace.selectedIndex];
    this.#last = stamp;
    this.#time = Math.min(this.#time + passed * pace, this.#seconds);
    this.#next();
    if (this.#time >= this.#seconds) this.#pause();
    else if (!this.#still.matches || Math.abs(this.#time - this.#shown) >= STILL) this.#show();
  }

  #next() {
    this.#frame = requestAnimationFrame((stamp) => this.#tick(stamp));
  }

  #label() {
    this.#button.textContent = this.#frame ? "Pause" : "Play";
  }

  #play() {
    if (this.#time >= this.#seconds) this.#time = 0;
    this.#last = 0;
    this.#next();
    this.#label();
  }

  #pause() {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    this.#label();
    this.#show();
  }
}

/**
 * { element, begin(seconds), to(time), close() }. onTime(time, isPlaying) with every picture;
 * `moments` answers the times that one steps among.
 */
export const rideClock = (one) => new RideClock(one);
