// choice_cards.js - a day's choice as cards: the pin to sail first, then reasons, turns, numbers.
// SPDX-License-Identifier: MIT

import { card, make, table } from "./dom.js";
import { fixed, KNOT, signed, time, wind } from "./number.js";
import { rangeChart } from "./range_chart.js";

const gustKeys = ["lull", "mean", "puff"];
const turned = (turns, isSure) => (isSure ? signed(turns, 1) : `(${signed(turns, 1)})`);
const turnsOf = (place) =>
  gustKeys.map((key) => turned(place.prospect[`turns_${key}`], place[`flies_in_${key}`]));
const fliesInAll = (place) => gustKeys.every((key) => place[`flies_in_${key}`]);
const lightest = () =>
  make(
    "p",
    { class: "note" },
    "( ) does not fly in that wind: turns for the lightest in which she does",
  );

const keys = (pairs) =>
  make(
    "dl",
    { class: "keys" },
    pairs.map(([name, value]) => make("div", {}, make("dt", {}, name), make("dd", {}, value))),
  );

// The first place: what is pinned ashore, how far it is held, what is wound afloat.
function bestCard(answer, unit) {
  const [first] = answer.places,
    { seconds, held_up_to: held } = first.prospect;
  const over = held - answer.gusts.puff;
  return make(
    "section",
    { class: "card best" },
    make("h2", {}, "Pin ", make("b", { class: "pin" }, first.label)),
    over < 0 && make("p", { class: "unheld" }, make("b", {}, "Not held in the puffs")),
    keys([
      ["held to puffs of", wind(held, unit)],
      ...(held > 0
        ? [[over < 0 ? "under the puffs" : "over the puffs", wind(Math.abs(over), unit)]]
        : []),
      ["round the course", time(seconds)],
    ]),
    make("p", { class: "caption" }, `Rudder lift on, in turns, ${answer.turns_course}`),
    keys(turnsOf(first).map((turns, i) => [gustKeys[i], turns])),
    !fliesInAll(first) && lightest(),
    make("p", {}, first.label, " is ", first.sentence, "."),
  );
}

function ranking(answer) {
  return make(
    "ol",
    { class: "ranking" },
    answer.places.map((place) =>
      make(
        "li",
        {},
        make("b", { class: "pin" }, place.label),
        make("p", {}, place.sentence, "."),
        place.behind && make("p", { class: "note" }, place.behind, "."),
      ),
    ),
  );
}

function numbers(answer, unit) {
  return table(
    "Each pin round the course",
    ["pin", "time", "flying", "swims", "launches", "stays up", "held to"],
    answer.places.map(({ label, prospect: p }) => [
      label,
      p.seconds > 0 ? time(p.seconds) : "none",
      `${(100 * p.flying).toFixed(0)} %`,
      p.seconds > 0 ? `${p.swims.toFixed(2)} ± ${p.swims_error.toFixed(2)}` : "–",
      wind(p.launches_at, unit),
      wind(p.stays_up_at, unit),
      wind(p.held_up_to, unit),
    ]),
  );
}

function turns(answer) {
  const flying = answer.places.filter((place) => place.flies);
  return [
    table(
      `Rudder lift on, in turns from the reference mark, ${answer.turns_course}`,
      ["pin", ...gustKeys],
      flying.map((place) => [place.label, ...turnsOf(place)]),
    ),
    !flying.every(fliesInAll) && lightest(),
  ];
}

// Turns in every wind of the gusts, on the course that they are told for.
function turnsThrough(answer, unit) {
  const speed = unit === "m/s" ? 1 : KNOT;
  const from = Math.floor(answer.gusts.lull / KNOT),
    to = Math.ceil(answer.gusts.puff / KNOT);
  const knots = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const cell = (range, knot) => {
    const at = range.winds.find((one) => Math.round(one.wind / KNOT) === knot);
    return at ? turned(at.turns, range.has_hold && at.wind <= range.limits.held_up_to) : "–";
  };
  return [
    table(
      `Turns through the band, wind in ${unit}, ${answer.turns_course}`,
      ["pin", ...knots.map((knot) => fixed((knot * KNOT) / speed, unit === "kn" ? 0 : 1))],
      answer.places.map((place) => {
        const range = place.ranges.find((one) => one.course === answer.turns_course);
        return [place.label, ...knots.map((knot) => cell(range, knot))];
      }),
    ),
    make("p", { class: "note" }, "( ) more than is held; – does not fly"),
  ];
}

const EVERY = "every leg";

// The chart of one course, or of what holds on every leg.
function chartCard(page, answer, state) {
  const courses = [EVERY, ...answer.places[0].ranges.map((range) => range.course)];
  const course = courses.includes(state.more.course) ? state.more.course : EVERY;
  const rows = [...answer.places]
    .sort((a, b) => a.pin - b.pin)
    .map((place) => ({
      label: place.label,
      limits:
        course === EVERY
          ? place.prospect
          : place.ranges.find((range) => range.course === course).limits,
    }));
  const id = "chart-course";
  const select = make(
    "select",
    {
      id,
      onchange: () => page.store.say({ course: select.value === EVERY ? null : select.value }),
    },
    courses.map((one) => make("option", { selected: one === course }, one)),
  );
  return card(
    "From what wind, up to what wind",
    make("div", { class: "field aside" }, make("label", { for: id }, "On"), select),
    rangeChart(rows, answer.gusts, state.speedUnit),
  );
}

function otherwise(answer, unit) {
  const step = `${Number(fixed(answer.wind_step / (unit === "m/s" ? 1 : KNOT), 1))} ${unit}`;
  return make(
    "dl",
    { class: "orders" },
    make("dt", {}, `${step} less`),
    make("dd", {}, answer.less),
    make("dt", {}, `${step} more`),
    make("dd", {}, answer.more),
  );
}

const calmer = (answer) =>
  make(
    "ul",
    {},
    answer.calmer.map((step) =>
      make("li", {}, make("b", {}, `${step.from} to ${step.to}`), ": ", step.sentence, "."),
    ),
  );

/** The cards of an answer, in the order of their worth. */
export function choiceCards(page, answer, state) {
  const unit = state.speedUnit;
  const cautions = make(
    "section",
    { class: "card care" },
    make("h2", {}, "Take care"),
    make(
      "ul",
      {},
      answer.cautions.map((line) => make("li", {}, line)),
    ),
  );
  const first = answer.flies
    ? bestCard(answer, unit)
    : make(
        "section",
        { class: "card best" },
        make("h2", {}, "Nothing flies"),
        make("p", {}, answer.no_flight),
      );
  return [
    first,
    cautions,
    chartCard(page, answer, state),
    ...(answer.flies
      ? [
          card("Why each stands where it stands", ranking(answer)),
          card("If the wind is otherwise", otherwise(answer, unit)),
          make(
            "section",
            { class: "card rudder" },
            make("h2", {}, "Rudder"),
            turns(answer),
            turnsThrough(answer, unit),
          ),
          ...(answer.calmer.length ? [card("One pin calmer", calmer(answer))] : []),
        ]
      : []),
    card("In numbers", numbers(answer, unit)),
  ];
}
