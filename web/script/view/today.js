// today.js - the view Today: lulls, puffs, sea, course and who sails; which set-up, and why.
// SPDX-License-Identifier: MIT

import { make, table } from "../dom.js";
import { keptField, nameField, numberField, wordField } from "../field.js";
import { KNOT, fixed, signed, time, wind } from "../number.js";
import { rangeChart } from "../range_chart.js";
import { sectionForm } from "../section.js";
import { windForm } from "../wind_form.js";

const PAUSE = 250; // [ms] after the last change, before the long work begins

function form(page, gusts) {
  const winds = windForm(page, gusts);
  const aims = wordField(page, "day", "aim", "Aim", page.tables.aims);
  const who = keptField(page, "sailor", "Who sails");
  const mass = numberField(page, "sailor", "person.mass", { stepped: true });
  const boat = keptField(page, "boat", "Boat");
  const day = keptField(page, "day", "Day");
  const name = nameField(page, "day");
  const inWindForm = ["lull", "mean", "puff"], elsewhere = ["forecast", "readings"];
  const sections = page.tables.records.day.sections.filter((one) => !elsewhere.includes(one.table.key))
    .map((section) => sectionForm(page, "day", section, inWindForm));

  const fields = [winds, aims, who, mass, boat, day, name, ...sections];
  return {
    first: make("div", { class: "ask" },
      card("Wind", winds.element),
      card("Who and what for", who.element, mass.element, aims.element)),
    more: make("div", { class: "ask more" },
      card("Boat and day", boat.element, day.element, name.element),
      sections.map((section) => section.element)),
    update(state) { for (const field of fields) field.update(state); },
  };
}

function ranking(answer, unit) {
  return make("ol", { class: "ranking" }, answer.places.map((place) => make("li", {},
    make("b", { class: "pin" }, place.label), make("p", {}, place.sentence, "."))));
}

function numbers(answer, unit) {
  return table("Each pin round the course",
    ["pin", "time", "flying", "swims", "launches", "stays up", "held to"],
    answer.places.map(({ label, prospect: p }) => [
      label, time(p.seconds), `${(100 * p.flying).toFixed(0)} %`, p.swims.toFixed(2),
      wind(p.launches_at, unit), wind(p.stays_up_at, unit), wind(p.held_up_to, unit)]));
}

function turns(answer) {
  const cell = (turns, flies) => (flies ? signed(turns, 1) : `(${signed(turns, 1)})`);
  const flying = answer.places.filter((place) => place.prospect.flying > 0);
  const isAll = flying.every((place) => place.flies_in_lull && place.flies_in_mean && place.flies_in_puff);
  return [
    table(`Rudder lift on, in turns from the reference mark, ${answer.turns_course}`, ["pin", "lull", "mean", "puff"],
      flying.map((place) => [place.label,
        cell(place.prospect.turns_lull, place.flies_in_lull),
        cell(place.prospect.turns_mean, place.flies_in_mean),
        cell(place.prospect.turns_puff, place.flies_in_puff)])),
    !isAll && make("p", { class: "note" }, "( ) does not fly in that wind: turns for the lightest in which she does"),
  ];
}

// Turns in every wind of the gusts, on the course that they are told for.
function turnsThrough(answer, unit) {
  const speed = unit === "m/s" ? 1 : KNOT;
  const from = Math.floor(answer.gusts.lull / KNOT), to = Math.ceil(answer.gusts.puff / KNOT);
  const knots = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const cell = (range, knot) => {
    const at = range.winds.find((one) => Math.round(one.wind / KNOT) === knot);
    if (!at) return "–";
    return range.has_hold && at.wind <= range.limits.held_up_to ? signed(at.turns, 1) : `(${signed(at.turns, 1)})`;
  };
  return [
    table(`Turns through the band, wind in ${unit}, ${answer.turns_course}`,
      ["pin", ...knots.map((knot) => fixed((knot * KNOT) / speed, unit === "kn" ? 0 : 1))],
      answer.places.map((place) => {
        const range = place.ranges.find((one) => one.course === answer.turns_course);
        return [place.label, ...knots.map((knot) => cell(range, knot))];
      })),
    make("p", { class: "note" }, "( ) more than is held; – does not fly"),
  ];
}

const EVERY = "every leg";

// The chart of one course, or of what holds on every leg.
function chartCard(page, answer, state) {
  const unit = state.speedUnit, courses = [EVERY, ...answer.places[0].ranges.map((range) => range.course)];
  const course = courses.includes(state.more.course) ? state.more.course : EVERY;
  const rows = [...answer.places].sort((a, b) => a.pin - b.pin).map((place) => ({
    label: place.label,
    limits: course === EVERY ? place.prospect : place.ranges.find((range) => range.course === course).limits,
  }));
  const id = "chart-course";
  const select = make("select", { id, onchange: () => page.store.say({ course: select.value === EVERY ? null : select.value }) },
    courses.map((one) => make("option", { selected: one === course }, one)));
  return card("From what wind, up to what wind",
    make("div", { class: "field aside" }, make("label", { for: id }, "On"), select),
    rangeChart(rows, answer.gusts, unit));
}

const card = (title, ...inside) => make("section", { class: "card" }, make("h2", {}, title), inside);

function show(page, answer, state) {
  const unit = state.speedUnit;
  const step = `${Number(fixed(answer.wind_step / (unit === "m/s" ? 1 : KNOT), 1))} ${unit}`;
  const first = answer.places[0];
  const cautions = make("section", { class: "card care" }, make("h2", {}, "Take care"),
    make("ul", {}, answer.cautions.map((line) => make("li", {}, line))));
  if (!answer.flies) {
    return [
      make("section", { class: "card best" }, make("h2", {}, "Nothing flies"), make("p", {}, answer.no_flight)),
      cautions, chartCard(page, answer, state),
      card("In numbers", numbers(answer, unit)),
    ];
  }
  return [
    make("section", { class: "card best" },
      make("h2", {}, "Pin ", make("b", { class: "pin" }, first.label)),
      make("p", {}, first.label, " is ", first.sentence, "."),
      make("dl", { class: "keys" }, [
        ["round the course", time(first.prospect.seconds)],
        ["held to", wind(first.prospect.held_up_to, unit)],
        ["rudder, mean wind", `${signed(first.prospect.turns_mean, 1)} turns`],
      ].map(([name, value]) => make("div", {}, make("dt", {}, name), make("dd", {}, value))))),
    cautions,
    chartCard(page, answer, state),
    card("Why each stands where it stands", ranking(answer, unit)),
    card("If the wind is otherwise", make("dl", { class: "orders" },
      make("dt", {}, `${step} less`), make("dd", {}, answer.less),
      make("dt", {}, `${step} more`), make("dd", {}, answer.more))),
    card("Rudder", turns(answer), turnsThrough(answer, unit)),
    answer.calmer.length > 0 && card("One pin calmer", make("ul", {}, answer.calmer.map((step) =>
      make("li", {}, make("b", {}, `${step.from} to ${step.to}`), ": ", step.sentence, ".")))),
    card("In numbers", numbers(answer, unit)),
  ];
}

export const today = {
  name: "today",
  title: "Today",
  open(page, main) {
    const ask = form(page, () => answer?.gusts ?? page.store.state.values.day.wind);
    const bar = make("progress", { max: "1", value: "0", "aria-label": "Working out the day" });
    const stop = make("button", { type: "button", onclick: () => halt() }, "Stop");
    const again = make("button", { type: "button", hidden: true, onclick: () => begin() }, "Work it out");
    const working = make("div", { class: "working" }, bar, stop, again);
    const answers = make("div", { class: "answers" });
    main.append(make("div", { class: "today" }, ask.first, make("div", { class: "told-all" }, working, answers), ask.more));
    let asked = "", work = null, waiting = 0, answer = null, answered = "";

    function mark(isBusy) {
      working.classList.toggle("busy", isBusy);
      bar.hidden = stop.hidden = !isBusy;
      again.hidden = isBusy || answered === asked;
      answers.classList.toggle("old", answered !== asked);
      answers.setAttribute("aria-busy", isBusy);
    }

    function halt() {
      clearTimeout(waiting);
      work?.stop();
      work = null;
      mark(false);
      page.say.status("Stopped: the answer is for other values.");
    }

    async function begin() {
      const { state } = page.store, mine = asked;
      work?.stop();
      bar.value = 0;
      const own = (work = page.engine.choice(0, page.texts(state.set), (done, of) => {
        if (own === work) bar.value = done / of;
      }));
      mark(true);
      try {
        const got = await own.answer;
        if (own !== work || !got) return;
        answer = got, answered = mine, work = null;
        answers.replaceChildren(...show(page, answer, page.store.state).filter(Boolean));
        page.say.status(answer.flies ? `Pin ${answer.places[0].label} for this day` : "Nothing flies on this day");
      } catch (error) {
        if (own === work) work = null;
        page.say.status(`The engine broke down: ${error.message}. Change a value, or work it out again.`);
      }
      mark(false);
    }

    return {
      update(state) {
        ask.update(state);
        const now = JSON.stringify([state.set, state.speedUnit]);
        if (now === asked) {
          if (answer && answered === asked) answers.replaceChildren(...show(page, answer, state).filter(Boolean));
          return;
        }
        const isFirst = asked === "";
        asked = now;
        mark(true);
        clearTimeout(waiting);
        waiting = setTimeout(begin, isFirst ? 0 : PAUSE);
      },
      close() { clearTimeout(waiting); work?.stop(); },
    };
  },
};
