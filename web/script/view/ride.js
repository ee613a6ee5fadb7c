// ride.js - the view Ride: the boat through the day's gusts and chop, as a moving picture.
// SPDX-License-Identifier: MIT

import { answerLine } from "../answer/answer_line.js";
import { fromWords, toWords } from "../answer/asked.js";
import { make } from "../base/dom.js";
import { sizes } from "../flight/side.js";
import { latest } from "../base/latest.js";
import { KNOT, told } from "../base/number.js";
import { eventList, sumCard } from "../ride/cards.js";
import { clockTime, rideClock } from "../ride/clock.js";
import { labelsOf, pinOf } from "../form/pin_field.js";
import { helm, MINUTES, movable } from "../ride/helm.js";
import { opened } from "../ride/history.js";
import { rideSide } from "../ride/side.js";
import { overview, traces } from "../ride/traces.js";
import { resultRow } from "../base/rows.js";

const REST = 400; // [ms] after the last move, before another ride is sailed
const EVERY = 0.1; // [s] from row to row
const spokenKeys = ["wind", "speed", "clearance", "pitch", "heel", "wand", "flap"];

function question(page, state, courses) {
  const { more } = state;
  const seed = Number(more.seed ?? 1),
    minutes = Number(more.minutes),
    course = courses.indexOf(more.course);
  const ask = {
    pin: pinOf(page, state),
    course: Math.max(course, 0),
    seed: Number.isSafeInteger(seed) && seed >= 0 ? seed : 1,
    minutes: MINUTES.includes(minutes) ? minutes : 3,
  };
  for (const key of movable) ask[key] = fromWords(more[key]);
  ask.wind ??= state.values.day.wind?.mean || 12 * KNOT;
  return ask;
}

/** A moment in a sentence, for those who do not see the picture. */
function spoken(time, now, tables, unit) {
  const said = spokenKeys.map((key) => {
    const row = resultRow(tables, "trace", key);
    return `${tables.moment_names[key]} ${told(row, now[key], unit)}`;
  });
  return `At ${clockTime(time)}: ${said.join(", ")}.`;
}

/** The moving picture, its curves, all of it small: show(ride, state), update(ride, time, now). */
function rideStage(tables) {
  const picture = make("div", { class: "pictures" });
  const curves = make("div", {});
  const whole = make("div", {});
  let drawn = "";
  let side;
  let strips;
  return {
    picture,
    curves,
    whole,
    show(ride, { values: { boat }, speedUnit }) {
      if (drawn !== ride.boat) {
        drawn = ride.boat;
        side = rideSide(sizes(boat), ride.boat);
        picture.replaceChildren(side.element);
      }
      strips = { traces: traces(tables, ride, boat, speedUnit), whole: overview(ride) };
      curves.replaceChildren(strips.traces.element);
      whole.replaceChildren(strips.whole.element);
    },
    update(ride, time, now) {
      side.update(now, ride);
      strips.traces.update(time, now);
      strips.whole.update(time);
    },
    say(words) {
      side.element.setAttribute("aria-label", words);
    },
  };
}

class RideView {
  #page;
  #box;
  #stage;
  #steer;
  #events;
  #sum;
  #clock;
  #line;
  #ask;
  #set;
  #sailed = null;
  #rest = 0;
  #isOpen = true;
  #sail = latest((isLast) => this.#sailOnce(isLast));

  constructor(page, main) {
    this.#page = page;
    this.#stage = rideStage(page.tables);
    this.#steer = helm(page, (change) => this.#move(change));
    this.#events = eventList((time) => this.#clock.to(time));
    this.#sum = sumCard();
    this.#clock = rideClock({
      onTime: (time, isPlaying) => this.#showMoment(time, isPlaying),
      moments: () => this.#events.moments(),
    });
    const { picture, curves, whole } = this.#stage;
    const playing = make("div", { class: "playing" }, whole, this.#clock.element);
    const stage = make("div", { class: "stage" }, picture, playing, curves);
    this.#line = answerLine(page, this.#steer.element, stage);
    this.#box = make(
      "div",
      { class: "ride", "aria-busy": "true" },
      this.#line.element,
      make("div", { class: "seen" }, this.#line.old, stage),
      [this.#steer, this.#events, this.#sum].map((one) => one.element),
    );
    main.append(this.#box);
  }

  update(state) {
    this.#ask = question(this.#page, state, this.#page.tables.courses);
    this.#set = this.#page.texts(state.set);
    this.#steer.update(this.#ask, state, this.#sailed);
    this.#mark(true);
    this.#sail().catch((error) =>
      this.#page.say.status(`The engine broke down: ${error.message}. Move a slider to try again.`),
    );
  }

  close() {
    this.#isOpen = false;
    clearTimeout(this.#rest);
    this.#clock.close();
    this.#line.close();
  }

  #mark(isBusy) {
    this.#box.setAttribute("aria-busy", isBusy);
    const words = this.#sailed?.told.sum[0] ?? "";
    this.#line.show({ isCurrent: !isBusy, isStopped: false, words });
  }

  async #sailOnce(isLast) {
    const asked = { ...this.#ask, seconds: 60 * this.#ask.minutes, every: EVERY };
    const answer = await this.#page.engine.ask("ride", 0, this.#set, asked);
    if (this.#isOpen && answer.drawn && isLast()) this.#show(answer);
  }

  #show(answer) {
    const { state } = this.#page.store;
    this.#sailed = opened(answer, this.#page.tables.results.trace.rows);
    this.#stage.show(this.#sailed, state);
    this.#events.show(this.#sailed);
    this.#sum.show(this.#sailed);
    this.#steer.update(this.#ask, state, this.#sailed);
    this.#clock.begin(this.#sailed.seconds);
    this.#mark(false);
  }

  #showMoment(time, isPlaying) {
    if (!this.#sailed) return;
    const now = this.#sailed.moment(time);
    this.#stage.update(this.#sailed, time, now);
    this.#events.update(time);
    if (!isPlaying)
      this.#stage.say(spoken(time, now, this.#page.tables, this.#page.store.state.speedUnit));
  }

  #move(change) {
    this.#ask = { ...this.#ask, ...change };
    if (!Number.isSafeInteger(this.#ask.seed) || this.#ask.seed < 0) this.#ask.seed = 1;
    clearTimeout(this.#rest);
    this.#mark(true);
    this.#rest = setTimeout(() => this.#tellAddress(), REST); // which sails it, by way of update
  }

  #tellAddress() {
    const { store, tables } = this.#page;
    const ask = this.#ask;
    const before = store.state;
    store.say({
      pin: labelsOf(store.state)[ask.pin],
      course: tables.courses[ask.course],
      seed: String(ask.seed),
      minutes: String(ask.minutes),
      ...Object.fromEntries(movable.map((key) => [key, toWords(key, ask[key])])),
    });
    if (store.state === before) this.update(before); // moved there and back
  }
}

export const ride = { name: "ride", title: "Ride", open: (page, main) => new RideView(page, main) };
