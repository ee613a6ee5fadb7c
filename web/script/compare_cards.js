// compare_cards.js - two choices side by side: what the change does, number by number, pin by pin.
// SPDX-License-Identifier: MIT

import { card, make } from "./dom.js";
import { fixed, heading, shownUnit, signed, time, told, wind } from "./number.js";
import { rangeChart } from "./range_chart.js";

// A number of a prospect on both sides, and how much more the second is, as shown.
function compared(row, places, speedUnit) {
  const [one, two] = places.map((place) => place.prospect[row.key]);
  const flies = places.map((place) => place[row.key.replace("turns_", "flies_in_")] ?? true);
  if (flies.includes(false))
    return [one, two]
      .map((turns, i) => (flies[i] ? told(row, turns, speedUnit) : "does not fly"))
      .concat("");
  if (row.key === "seconds" && !(one > 0 && two > 0))
    return [one, two]
      .map((seconds) => (seconds > 0 ? time(seconds) : "cannot be sailed"))
      .concat("");
  if (row.unit === "s")
    return [
      time(one),
      time(two),
      difference(
        Math.round(two) - Math.round(one),
        (x) => `${x > 0 ? "+" : "−"}${time(Math.abs(x))}`,
      ),
    ];
  if (row.unit === "kn") {
    const { inSi } = shownUnit(row, speedUnit),
      more = Number(fixed(two / inSi, 1)) - Number(fixed(one / inSi, 1));
    return [
      wind(one, speedUnit),
      wind(two, speedUnit),
      one > 0 && two > 0 ? difference(more, (x) => `${signed(x, 1)} ${speedUnit}`) : "",
    ];
  }
  const shown = (si) => Number(fixed(si / row.in_si, row.decimals)),
    unit = row.unit ? ` ${row.unit}` : "";
  return [
    told(row, one, speedUnit),
    told(row, two, speedUnit),
    difference(shown(two) - shown(one), (x) => `${signed(x, row.decimals)}${unit}`),
  ].map((text) => text.replace("-", "−"));
}

const difference = (more, tell) => (Math.abs(more) < 1e-9 ? "=" : tell(more));

function sideBySide(rows, sides, speedUnit) {
  const head = make(
    "tr",
    {},
    ["as it is", "changed", "difference"].map((text) => make("th", { scope: "col" }, text)),
  );
  const body = (name, cells, doc) =>
    make(
      "tbody",
      {},
      make("tr", {}, make("th", { scope: "rowgroup", colspan: 3, title: doc }, name)),
      make(
        "tr",
        {},
        cells.map((cell) => make("td", {}, cell)),
      ),
    );
  return make(
    "table",
    { class: "sides" },
    make("thead", {}, head),
    body("Pin", [...sides.map((side) => make("b", { class: "pin" }, side.label)), ""]),
    rows.map((row) =>
      body(heading(row.doc.split(/[;:]/)[0]), compared(row, sides, speedUnit), row.doc),
    ),
    body("What ends it", [...sides.map((side) => side.ends_by), ""]),
  );
}

// Every pin of either boat, most lift first: where it stands, its time, up to what wind.
function everyPin(choices, speedUnit) {
  const labels = [
    ...new Set(
      choices
        .flatMap((choice) => choice.places)
        .sort((a, b) => a.pin - b.pin)
        .map((place) => place.label),
    ),
  ];
  const cell = (choice, label) => {
    const at = choice.places.findIndex((one) => one.label === label);
    if (at < 0) return make("td", {}, "not there");
    const { held_up_to: hold, seconds } = choice.places[at].prospect;
    const held = hold > 0 ? `held to ${wind(hold, speedUnit)}` : "held in no wind";
    const sailed = seconds > 0 ? `in ${time(seconds)}` : "cannot be sailed";
    return make("td", {}, `${at + 1}. ${sailed}, ${held}`);
  };
  return make(
    "table",
    { class: "sides" },
    make(
      "thead",
      {},
      make(
        "tr",
        {},
        ["as it is", "changed"].map((text) => make("th", { scope: "col" }, text)),
      ),
    ),
    labels.map((label) =>
      make(
        "tbody",
        {},
        make("tr", {}, make("th", { scope: "rowgroup", colspan: 2 }, `Pin ${label}`)),
        make(
          "tr",
          {},
          choices.map((choice) => cell(choice, label)),
        ),
      ),
    ),
  );
}

/** The cards of an answer, in the order of their worth. */
export function compareCards(page, answer) {
  const { speedUnit } = page.store.state,
    [one, two] = answer.choices;
  const sides = [one, two].map((choice, i) =>
    choice.places.find((place) => place.label === (i ? answer.changed : answer.as_is)),
  );
  const rows = sides.map((side, i) => ({
    label: `${i ? "changed" : "as it is"}, ${side.label}`,
    limits: side.prospect,
  }));
  const isOneDay = JSON.stringify(one.gusts) === JSON.stringify(two.gusts);
  const charts = isOneDay
    ? rangeChart(rows, one.gusts, speedUnit)
    : [one, two].map((choice, i) => rangeChart([rows[i]], choice.gusts, speedUnit));
  return [
    make(
      "section",
      { class: "card best" },
      make("h2", {}, "What the change does"),
      make(
        "ul",
        {},
        answer.differences.map((line) => make("li", {}, line)),
      ),
      make("p", { class: "note" }, "Differences are surer than the numbers themselves."),
    ),
    card("Side by side", sideBySide(page.tables.results.prospect.rows, sides, speedUnit)),
    card("From what wind, up to what wind", make("div", { class: "named" }, charts)),
    card("Every pin", everyPin(answer.choices, speedUnit)),
    make(
      "section",
      { class: "card care" },
      make("h2", {}, "Take care, changed"),
      make(
        "ul",
        {},
        two.cautions.map((line) => make("li", {}, line)),
      ),
    ),
  ];
}
