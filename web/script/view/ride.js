// ride.js - the view Ride: the boat through the day's gusts and chop, as a moving picture.
// SPDX-License-Identifier: MIT

import { fromWords, toWords } from "../asked.js";
import { card, freshId, make } from "../dom.js";
import { sizes } from "../flight_side.js";
import { latest } from "../latest.js";
import { fixed, KNOT, told } from "../number.js";
import { pinField } from "../pin_field.js";
import { clockTime, rideClock } from "../ride_clock.js";
import { rideSide } from "../ride_side.js";
import { overview, traces } from "../ride_traces.js";
import { slider } from "../slider.js";

const REST = 400; // [ms] after the last move, before another ride is sailed
const EVERY = 0.1; // [s] from row to row
const MINUTES = [1, 3, 5, 10];
const DEG = Math.PI / 180;
const WINDS = { low: 4 * KNOT, high: 34 * KNOT };
const HEADINGS = { low: 30 * DEG, high: 180 * DEG };
const movable = ["wind", "heading", "turns"];

const labelsOf = (state) => state.values.boat.pins.map((pin) => pin.label);

function question(state, courses) {
  const { more } = state,
    labels = labelsOf(state),
    pin = labels.indexOf(more.pin);
  const seed = Number(more.seed ?? 1),
    minutes = Number(more.minutes),
    course = courses.indexOf(more.course);
  const ask = {
    pin: pin < 0 ? Math.floor(labels.length / 2) : pin,
    course: Math.max(course, 0),
    seed: Number.isSafeInteger(seed) && seed >= 0 ? seed : 1,
    minutes: MINUTES.includes(minutes) ? minutes : 3,
  };
  for (const key of movable) ask[key] = fromWords(more[key]);
  ask.wind ??= state.values.day.wind?.mean || 12 * KNOT;
  return ask;
}

/** A ride with its columns, and any moment of it. */
function opened(answer, rows) {
  const { history, width, every, events } = answer,
    count = history.length / width;
  const column = (key) => {
    const at = rows.findIndex((row) => row.key === key);
    return Float64Array.from({ length: count }, (_, i) => history[i * width + at]);
  };
  const swims = [];
  for (const { what, is_swim, at } of events) {
    if (is_swim) swims.push([at.time, (count - 1) * every]);
    else if (what === "again" && swims.length) swims.at(-1)[1] = at.time;
  }
  // Between two rows straight on; not across a fall, where one jumps into the water.
  function moment(time) {
    const part = Math.min(time / every, count - 1),
      from = Math.min(Math.floor(part + 1e-9), count - 2);
    const jumps = events.some(
      ({ is_swim, at }) =>
        is_swim && at.time > from * every && at.time <= (from + 1) * every + 1e-9,
    );
    const share = jumps ? 0 : part - from;
    const value = (j) =>
      history[from * width + j] * (1 - share) + history[(from + 1) * width + j] * share;
    const now = Object.fromEntries(rows.map((row, j) => [row.key, value(j)]));
    return {
      ...now,
      water: Array.from({ length: width - rows.length }, (_, j) => value(rows.length + j)),
    };
  }
  return { ...answer, seconds: (count - 1) * every, swims, column, moment };
}

function eventList(rows, onPick) {
  const list = make("ol", {});
  const row = (key) => rows.find((one) => one.key === key);
  const sceneOf = (at, unit) =>
    `wind ${told(row("wind"), at.wind, unit)}, hull ${fixed(100 * at.clearance, 0)} cm up, ` +
    `bow up ${told(row("pitch"), at.pitch)}`;
  const section = make("section", { class: "card events" }, make("h2", {}, "What happened"), list);
  let buttons = [];
  return {
    element: section,
    show(ride, speedUnit) {
      buttons = ride.events.map(({ says, is_swim, at }) =>
        make(
          "button",
          { type: "button", class: is_swim && "fall", onclick: () => onPick(at.time) },
          make("span", { class: "when" }, clockTime(at.time)),
          make("span", {}, says),
          make("small", {}, sceneOf(at, speedUnit).replace(/-/g, "−")),
        ),
      );
      const end = make("li", { class: "note" }, `${clockTime(ride.seconds)} end: ${ride.end}.`);
      list.replaceChildren(...buttons.map((button) => make("li", {}, button)), end);
    },
    update(ride, time) {
      ride.events.forEach(({ at }, i) =>
        buttons[i].classList.toggle("past", at.time <= time + 0.05),
      );
    },
  };
}

function rateList(rows) {
  const list = make("dl", { class: "figures" });
  return {
    element: list,
    show(rates, speedUnit) {
      list.replaceChildren(
        ...rows
          .filter((row) => row.unit !== "/h" || rates[row.key] > 0)
          .map((row) =>
            make(
              "div",
              {},
              make("dt", {}, row.doc),
              make("dd", {}, told(row, rates[row.key], speedUnit).replace("-", "−")),
            ),
          ),
      );
    },
  };
}

function selectField(label, options, onPick) {
  const id = freshId(),
    select = make(
      "select",
      { id, onchange: () => onPick(select.selectedIndex) },
      options.map((text) => make("option", {}, text)),
    );
  return {
    element: make("div", { class: "field" }, make("label", { for: id }, label), select),
    select,
  };
}

function seedField(onPick) {
  const id = freshId();
  const input = make("input", {
    type: "text",
    inputmode: "numeric",
    id,
    onchange: () => onPick(Number(input.value)),
  });
  return {
    element: make(
      "div",
      { class: "field" },
      make("label", { for: id }, "Seed of gusts and waves"),
      make(
        "div",
        { class: "entry" },
        make("div", { class: "box" }, input),
        make(
          "button",
          { type: "button", onclick: () => onPick(Number(input.value) + 1) },
          "Other gusts",
        ),
      ),
    ),
    update(seed) {
      input.value = seed;
    },
  };
}

function helm(page, onMove) {
  const row = (key) => page.tables.results.trace.rows.find((one) => one.key === key);
  const sliders = {
    wind: { label: "Mean wind", row: row("wind"), step: 0.5 },
    heading: { label: "Heading", row: row("heading"), step: 1, free: "best VMG" },
    turns: { label: "Rudder lift on", row: row("turns"), step: 0.1, free: "for speed" },
  };
  for (const [key, one] of Object.entries(sliders))
    sliders[key] = slider({ ...one, onMove: (si) => onMove({ [key]: si }) });
  const pins = pinField((pin) => onMove({ pin })),
    seed = seedField((n) => onMove({ seed: n }));
  const course = selectField("Course", page.tables.courses, (i) =>
    onMove({ course: i, heading: null }),
  );
  const minutes = selectField("Minutes", MINUTES.map(String), (i) =>
    onMove({ minutes: MINUTES[i] }),
  );
  return {
    element: make(
      "form",
      { class: "card helm", onsubmit: (event) => event.preventDefault() },
      pins.element,
      sliders.wind.element,
      course.element,
      sliders.heading.element,
      sliders.turns.element,
      seed.element,
      minutes.element,
    ),
    update(ask, state, ride) {
      const { rudder } = state.values.boat,
        { speedUnit } = state;
      const bounds = {
        wind: WINDS,
        heading: HEADINGS,
        turns: { low: rudder.least_turns, high: rudder.most_turns },
      };
      pins.update(labelsOf(state), ask.pin);
      for (const key of movable) {
        const isFree = ask[key] === null;
        sliders[key].update({
          bounds: bounds[key],
          speedUnit,
          isFree,
          ...(isFree
            ? ride && { si: Math.abs(ride[key]) * Math.sign(key === "heading" ? 1 : ride[key]) }
            : { si: ask[key] }),
        });
      }
      course.select.selectedIndex = ask.course;
      minutes.select.selectedIndex = MINUTES.indexOf(ask.minutes);
      seed.update(ask.seed);
    },
  };
}

/** A moment in a sentence, for those who do not see the picture. */
function spoken(time, now, rows, unit) {
  const tell = (key) =>
    told(
      rows.find((row) => row.key === key),
      now[key],
      unit,
    );
  return (
    `At ${clockTime(time)}: wind ${tell("wind")}, speed ${tell("speed")}, ` +
    `hull ${tell("clearance")} above the water, bow up ${tell("pitch")}, ` +
    `windward heel ${tell("heel")}, wand ${tell("wand")}, flap ${tell("flap")}.`
  );
}

/** What a ride came to: { element, show(ride, unit) }. */
function sumCard(rows) {
  const scene = make("p", { class: "note" });
  const trim = make("p", { class: "note" });
  const sum = make("p", { class: "outcome" });
  const counts = rateList(rows);
  const warning =
    "One ride tells little of rates: other seeds are other gusts and waves of the same day. " +
    "The same seed at the command line (lullwise ride) is the same ride.";
  const note = make("p", { class: "note" }, warning);
  return {
    element: card("What it came to", scene, trim, sum, counts.element, note),
    show(ride, unit) {
      counts.show(ride.rates, unit);
      scene.textContent = ride.scene;
      trim.textContent = ride.trim;
      sum.textContent = ride.sum;
    },
  };
}

/** The moving picture, its curves, all of it small: show(ride, state), update(ride, time, now). */
function rideStage(rows) {
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
      if (drawn !== JSON.stringify(boat)) {
        drawn = JSON.stringify(boat);
        side = rideSide(sizes(boat));
        picture.replaceChildren(side.element);
      }
      strips = { traces: traces(rows, ride, boat, speedUnit), whole: overview(ride) };
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
  #rows;
  #stage;
  #steer;
  #events;
  #sum;
  #clock;
  #ask;
  #set;
  #sailed = null;
  #rest = 0;
  #isOpen = true;
  #sail = latest((isLast) => this.#sailOnce(isLast));

  constructor(page, main) {
    const { trace, ride_rates: rates } = page.tables.results;
    this.#page = page;
    this.#rows = trace.rows;
    this.#stage = rideStage(trace.rows);
    this.#steer = helm(page, (change) => this.#move(change));
    this.#events = eventList(trace.rows, (time) => this.#clock.to(time));
    this.#sum = sumCard(rates.rows);
    this.#clock = rideClock({
      onTime: (time, isPlaying) => this.#showMoment(time, isPlaying),
      moments: () => this.#sailed?.events.map(({ at }) => at.time) ?? [],
    });
    const { picture, curves, whole } = this.#stage;
    const playing = make("div", { class: "playing" }, whole, this.#clock.element);
    this.#box = make(
      "div",
      { class: "ride", "aria-busy": "true" },
      make("div", { class: "stage" }, picture, curves, playing),
      [this.#steer, this.#events, this.#sum].map((one) => one.element),
    );
    main.append(this.#box);
  }

  update(state) {
    this.#ask = question(state, this.#page.tables.courses);
    this.#set = this.#page.texts(state.set);
    this.#steer.update(this.#ask, state, this.#sailed);
    this.#box.setAttribute("aria-busy", "true");
    this.#sail().catch((error) =>
      this.#page.say.status(`The engine broke down: ${error.message}. Move a slider to try again.`),
    );
  }

  close() {
    this.#isOpen = false;
    clearTimeout(this.#rest);
    this.#clock.close();
  }

  async #sailOnce(isLast) {
    const asked = { ...this.#ask, seconds: 60 * this.#ask.minutes, every: EVERY };
    const answer = await this.#page.engine.ask("ride", 0, this.#set, asked);
    if (this.#isOpen && answer.history && isLast()) this.#show(answer);
  }

  #show(answer) {
    const { state } = this.#page.store;
    this.#sailed = opened(answer, this.#rows);
    this.#stage.show(this.#sailed, state);
    this.#events.show(this.#sailed, state.speedUnit);
    this.#sum.show(this.#sailed, state.speedUnit);
    this.#steer.update(this.#ask, state, this.#sailed);
    this.#clock.begin(this.#sailed.seconds);
    this.#box.setAttribute("aria-busy", "false");
  }

  #showMoment(time, isPlaying) {
    if (!this.#sailed) return;
    const now = this.#sailed.moment(time);
    this.#stage.update(this.#sailed, time, now);
    this.#events.update(this.#sailed, time);
    if (!isPlaying)
      this.#stage.say(spoken(time, now, this.#rows, this.#page.store.state.speedUnit));
  }

  #move(change) {
    this.#ask = { ...this.#ask, ...change };
    if (!Number.isSafeInteger(this.#ask.seed) || this.#ask.seed < 0) this.#ask.seed = 1;
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#tellAddress(), REST); // which sails it, by way of update
  }

  #tellAddress() {
    const { store, tables } = this.#page;
    const ask = this.#ask;
    store.say({
      pin: labelsOf(store.state)[ask.pin],
      course: tables.courses[ask.course],
      seed: String(ask.seed),
      minutes: String(ask.minutes),
      ...Object.fromEntries(movable.map((key) => [key, toWords(key, ask[key])])),
    });
  }
}

export const ride = { name: "ride", title: "Ride", open: (page, main) => new RideView(page, main) };
