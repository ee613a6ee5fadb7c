// worker.js - the engine's own thread: takes questions one after the other.
// SPDX-License-Identifier: MIT

import { kinds } from "../base/kinds.js";
import { asMeasured, logQuestions } from "./log.js";
import { engineIn } from "./module.js";

let engine;

const begun = [{ number: 0 }, { number: 0 }]; // the question that was asked of each slot last

// Begun anew unless it was the last, with what other workers worked out. Asked again it has another
// number.
function beginAsked(slot, set, { number, name, options }, parts) {
  engine.load(slot, set);
  if (begun[slot].number !== number)
    begun[slot] = { number, ...engine.question(slot, name, options) };
  const { is_taken, refusal, faults } = begun[slot];
  if (is_taken) parts.forEach((part, step) => engine.askTake(slot, step, part));
  return { is_taken, refusal, faults };
}

/** What can be asked: each takes (slot, set, ...) and answers with plain objects. */
const questions = {
  tables: () => engine.ask("tables"),
  read: (slot, kind, name, text) => engine.read(slot, kind, name, text),
  write(slot, set, kind) {
    engine.load(slot, asMeasured(set));
    return engine.ask("write", slot, kinds.indexOf(kind)).text;
  },
  /** What was learned, put into a set: { is_sound, faults, told }. */
  learned(slot, set, text) {
    engine.load(slot, asMeasured(set));
    return engine.learn(slot, text);
  },
  /** A record to begin with. */
  starter: (kind) => engine.ask("write", -1, kinds.indexOf(kind)).text,
  /** asked: { pin, wind, heading, heel, place, turns } in SI, what is left out is chosen; width. */
  fly(slot, set, asked) {
    engine.load(slot, set);
    engine.put(
      ["pin", "wind", "heading", "heel", "place", "turns", "width"].map((key) => asked[key] ?? NaN),
    );
    return engine.told("fly", slot);
  },
  advice(slot, set, asked) {
    questions.fly(slot, set, asked);
    return engine.ask("fly_advice").answer.advice;
  },
  /** The motions about that flight. */
  modes(slot, set, asked) {
    questions.fly(slot, set, asked);
    return engine.told("fly_modes");
  },
  /** Lull, mean and puff in SI, and how they came about. */
  wind(slot, set) {
    engine.load(slot, set);
    return engine.ask("wind", slot);
  },
  pictures(slot, set) {
    engine.load(slot, set);
    return engine.ask("pictures", slot);
  },
  /** asked: { width, winds: [lull, mean, puff], bars: [[take-off, up, held]], labels } as told. */
  chart(slot, set, asked) {
    engine.load(slot, set);
    return engine.chart(slot, asked);
  },
  /** asked: { pin, wind, heading, turns, course, seed, seconds, every } in SI. */
  ride(slot, set, asked) {
    engine.load(slot, set);
    engine.put(
      ["pin", "wind", "heading", "turns", "course", "seed", "seconds", "every"].map(
        (key) => asked[key] ?? NaN,
      ),
    );
    return engine.told("ride", slot);
  },
  // The sections of a boat's foils, for sections.js to hand out: which; a row; a polar; taken.
  sections(slot, set) {
    engine.load(slot, set);
    return engine.ask("sections", slot);
  },
  row(slot, set, name, number) {
    engine.load(slot, set);
    return engine.row(slot, name, number);
  },
  polar(slot, set, name, rows) {
    engine.load(slot, set);
    return engine.polar(slot, name, rows);
  },
  "take sections"(slot, set, polars) {
    engine.load(slot, set);
    engine.takeSections(slot, polars);
  },
  // Any question, asked as { number, name, options }, its steps handed out by engine.js: how many
  // can be done when those of the parts are; one of them, which rests on those; the answer, steps
  // done here or taken.
  "ask begun"(slot, set, asked) {
    const isBegun = beginAsked(slot, set, asked, []);
    return { ...isBegun, isShared: isBegun.is_taken && engine.calls.lw_web_ask_part(slot) > 0 };
  },
  "ask steps"(slot, set, asked, parts) {
    beginAsked(slot, set, asked, parts);
    return engine.askSteps(slot);
  },
  "ask step"(slot, set, asked, parts, step) {
    beginAsked(slot, set, asked, parts);
    return engine.askStep(slot, step);
  },
  "ask whole"(slot, set, asked, parts) {
    const { is_taken, ...why } = beginAsked(slot, set, asked, parts ?? []);
    if (!is_taken) return { refused: why };
    if (!parts)
      for (let done = 0, steps; done < (steps = engine.askSteps(slot)); )
        while (done < steps) engine.calls.lw_web_ask_step(slot, done++);
    const told = engine.told("ask_tell", slot); // which puts the steps together: to be drawn, too
    return { told, ...(asked.options.svg && engine.ask("ask_draw", slot)) };
  },
  // Both slots' choices side by side; labels of the pins wanted, "" for the first.
  compare(sets, asked, parts, labels) {
    const choices = [0, 1].map(
      (slot) => questions["ask whole"](slot, sets[slot], asked[slot], parts[slot]).told,
    );
    return { choices, compared: engine.compare(labels) };
  },
  ...logQuestions(() => engine),
};

function answer({ id, question, words }) {
  try {
    postMessage({ id, answer: questions[question](...words) });
  } catch (error) {
    postMessage({ id, error: `${error.message ?? error}` });
  }
}

let line = Promise.resolve();
onmessage = ({ data }) => {
  if (data.module)
    line = line.then(async () => {
      engine = await engineIn(data.module);
    });
  else line = line.then(() => answer(data));
};
