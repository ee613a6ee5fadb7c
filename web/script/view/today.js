// today.js - the view Today: lulls, puffs, sea, course and who sails; which set-up, and why.
// SPDX-License-Identifier: MIT

import { make, table } from "../dom.js";
import { keptField, numberField, wordField } from "../field.js";
import { told, signed, time, wind } from "../number.js";
import { rangeChart } from "../range_chart.js";

const PAUSE = 250; // [ms] after the last change, before the long work begins

function form(page) {
  const sure = (path, options) => numberField(page, "day", path, options);
  const winds = ["lull", "mean", "puff"].map((key) => sure(`wind.${key}`, { stepped: true }));
  const around = ["sea.fetch", "sea.height", "water.temperature", "air.temperature"].map((path) =>
    sure(path, { label: path.startsWith("water") ? "Water" : path.startsWith("air") ? "Air" : undefined }));
  const aims = wordField(page, "day", "aim", "Aim", page.tables.aims);
  const who = keptField(page, "sailor", "Who sails");
  const mass = numberField(page, "sailor", "person.mass", { stepped: true });
  const boat = keptField(page, "boat", "Boat");
  const day = keptField(page, "day", "Day");
  const legs = make("div", { class: "legs" });
  let legFields = [], legCount = -1;

  function lay(count) {
    legCount = count;
    legFields = [];
    const rows = [];
    for (let i = 0; i < count; i++) {
      const pair = ["heading", "length"].map((key) => sure(`legs.${i}.${key}`));
      legFields.push(...pair);
      rows.push(make("fieldset", { class: "pair" }, make("legend", {}, `Leg ${i + 1}`), pair.map((field) => field.element)));
    }
    legs.replaceChildren(...rows);
  }

  const section = (title, ...inside) => make("section", { class: "card" }, make("h2", {}, title), inside);
  const fields = [...winds, ...around, aims, who, mass, boat, day];
  const element = make("form", { class: "ask", onsubmit: (event) => event.preventDefault() },
    section("Wind", make("div", { class: "winds" }, winds.map((field) => field.element))),
    section("Who and what for", who.element, mass.element, aims.element),
    make("details", { class: "card" }, make("summary", {}, make("h2", {}, "Sea, course, boat")),
      make("div", { class: "pair" }, around.map((field) => field.element)), legs,
      boat.element, day.element));
  return {
    element,
    update(state) {
      const count = state.values.day.legs.length;
      if (count !== legCount) lay(count);
      for (const field of [...fields, ...legFields]) field.update(state);
    },
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

const card = (title, ...inside) => make("section", { class: "card" }, make("h2", {}, title), inside);

function show(answer, state) {
  const unit = state.speedUnit;
  const first = answer.places[0];
  const rows = [...answer.places].sort((a, b) => a.pin - b.pin)
    .map((place) => ({ label: place.label, limits: place.prospect }));
  const cautions = make("section", { class: "card care" }, make("h2", {}, "Take care"),
    make("ul", {}, answer.cautions.map((line) => make("li", {}, line))));
  if (!answer.flies) {
    return [
      make("section", { class: "card best" }, make("h2", {}, "Nothing flies"), make("p", {}, answer.no_flight)),
      cautions, card("From what wind, up to what wind", rangeChart(rows, answer.gusts, unit)),
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
    card("From what wind, up to what wind", rangeChart(rows, answer.gusts, unit)),
    card("Why each stands where it stands", ranking(answer, unit)),
    card("If the wind is otherwise", make("dl", { class: "orders" },
      make("dt", {}, `${wind(answer.wind_step, unit)} less`), make("dd", {}, answer.less),
      make("dt", {}, `${wind(answer.wind_step, unit)} more`), make("dd", {}, answer.more))),
    card("Rudder", turns(answer)),
    answer.calmer.length > 0 && card("One pin calmer", make("ul", {}, answer.calmer.map((step) =>
      make("li", {}, make("b", {}, `${step.from} to ${step.to}`), ": ", step.sentence, ".")))),
    card("In numbers", numbers(answer, unit)),
  ];
}

export const today = {
  name: "today",
  title: "Today",
  open(page, main) {
    const ask = form(page);
    const bar = make("progress", { max: "1", value: "0", "aria-label": "Working out the day" });
    const stop = make("button", { type: "button", onclick: () => halt() }, "Stop");
    const again = make("button", { type: "button", hidden: true, onclick: () => begin() }, "Work it out");
    const working = make("div", { class: "working" }, bar, stop, again);
    const answers = make("div", { class: "answers" });
    main.append(make("div", { class: "today" }, ask.element, make("div", {}, working, answers)));
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
        answers.replaceChildren(...show(answer, page.store.state).filter(Boolean));
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
          if (answer && answered === asked) answers.replaceChildren(...show(answer, state).filter(Boolean));
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
