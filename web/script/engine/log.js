// log.js - questions about logged days, which the engine holds as the page keeps them.
// SPDX-License-Identifier: MIT
//
// A day is a list of [column, text]; days are such lists by their ids.

const closed = (words) => words.map((word) => `${word}\0`).join("");

class HeldDays {
  #engine;
  #holder = null; // the module that holds them; one that broke down holds nothing any more
  #held = new Map(); // by id the day in JSON
  #faulty = new Map(); // by id what is wrong with it

  /** engine(): the module that is there by then. */
  constructor(engine) {
    this.#engine = engine;
  }

  /** What is wrong with those that cannot be held: [id, faults]. */
  get unread() {
    return [...this.#faulty];
  }

  take(today, fields, holds) {
    const engine = this.#engine();
    return engine.ask("log_take", engine.putText(closed([today, ...fields.flat()])), holds);
  }

  /** Makes the module hold just these. */
  hold(days) {
    if (this.#holder !== this.#engine()) this.#held.clear();
    this.#holder = this.#engine();
    for (const id of this.#held.keys()) if (!days[id]) this.#drop(id);
    for (const [id, fields] of Object.entries(days)) {
      const text = JSON.stringify(fields);
      if (this.#held.get(id) === text) continue;
      this.#drop(id);
      this.#held.set(id, text);
      const { is_sound, faults } = this.take("", fields, 1);
      if (!is_sound) this.#faulty.set(id, faults);
    }
  }

  #drop(id) {
    const engine = this.#engine();
    engine.calls.lw_web_log_drop(engine.putText(id));
    this.#held.delete(id);
    this.#faulty.delete(id);
  }
}

// Today, the id, and options as on a command line, a list for one that is given again.
const asked = (today, id, options) =>
  closed([
    today,
    id,
    ...Object.entries(options).flatMap(([option, texts]) =>
      [texts].flat().flatMap((text) => [option, text]),
    ),
  ]);

/** A set without what was learned: so a day is logged. */
export const asMeasured = (set) => ({ ...set, learned: "" });

/** engine(): the module that is there by then. */
export function logQuestions(engine) {
  const held = new HeldDays(engine);
  const put = (text) => engine().putText(text);
  return {
    "log read": (today, fields) => held.take(today, fields, 0),
    "log csv": (today, text) => engine().ask("log_csv", put(`${today}\0${text}`)),
    /** A new day of a slot's boat, sailor and day; options as of `lullwise log add`. */
    "log begin"(slot, set, today, id, options) {
      engine().load(slot, asMeasured(set));
      return engine().ask("log_begin", slot, put(asked(today, id, options)));
    },
    "log change"(days, today, id, options) {
      held.hold(days);
      return engine().ask("log_change", put(asked(today, id, options)));
    },
    /** All, the newest first, and what is wrong with each that is faulty. */
    "log days"(slot, set, days, place) {
      engine().load(slot, asMeasured(set));
      held.hold(days);
      return { told: engine().told("log_days", put(place)), unread: held.unread };
    },
    "log show"(days, id) {
      held.hold(days);
      return engine().told("log_show", put(id));
    },
    "log near"(slot, set, days) {
      engine().load(slot, asMeasured(set));
      held.hold(days);
      return engine().told("log_near", slot);
    },
    "log imported": (place, { added, known, different }) =>
      engine().told("log_imported", put(place), added, known, different),
  };
}
