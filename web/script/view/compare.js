// compare.js - the view Compare: the present boat, sailor and day, and the same with something changed.
// SPDX-License-Identifier: MIT

import { card, freshId, make, table } from "../dom.js";
import { numberField, sentenceOf } from "../field.js";
import { fixed, heading, shownUnit, signed, time, told, wind, words } from "../number.js";
import { openOther } from "../other.js";
import { rangeChart } from "../range_chart.js";
import { kinds } from "../store.js";
import { textAt } from "../tree.js";
import { workBar } from "../work_bar.js";

const PAUSE = 400; // [ms] after the last change, before the long work begins
const FIELDS = 8; // lines of a kind shown as fields; more are told in a table

// What is asked most, each with a change to begin from, in its row's unit.  [judged]
const often = [
  ["Heavier sailor", "sailor", "person.mass", 10],
  ["Larger main foil", "boat", "main_foil.span", 6],
  ["Longer wand", "boat", "linkage.wand_length", 0.1],
  ["More gearing", "boat", "linkage.gearing", 0.05],
];

/** Every line of the files: [{ kind, path, label, row }], in their order. */
function linesOf(tables, set) {
  return kinds.flatMap((kind) =>
    tables.records[kind].sections.flatMap(({ kind: form, table: { key, title, rows } }) => {
      const group =
        title.toLowerCase() === kind ? heading(kind) : `${heading(kind)}, ${title.toLowerCase()}`;
      const line = (path, label, row) => ({ kind, path, label, row, group });
      if (form === "plain") {
        return set[kind][key]
          ? rows.map((row) => line(`${key}.${row.key}`, words(row.key), row))
          : [];
      }
      if (form === "labelled")
        return (set[kind][key] ?? []).map(({ label }) =>
          line(`${key}.${label}`, `pin ${label}`, rows[0]),
        );
      if (form !== "list") return [];
      return (set[kind][key] ?? []).flatMap((_, i) =>
        rows.map((row) => line(`${key}.${i}.${row.key}`, `${i + 1}: ${words(row.key)}`, row)),
      );
    }),
  );
}

const valueAt = (values, { kind, path }) => {
  const [section, ...rest] = path.split(".");
  if (section === "pins")
    return values[kind].pins.find(({ label }) => label === rest.join("."))?.value;
  return rest.reduce((at, key) => at?.[key], values[kind][section]);
};

function otherField(page, other, kind) {
  const id = freshId();
  const select = make("select", {
    id,
    onchange: () =>
      other.choose(
        kind,
        select.selectedIndex
          ? page.store.kept[kind].filter(isAnother)[select.selectedIndex - 1]
          : page.store.state.set[kind],
      ),
  });
  const isAnother = (tree) => tree.name !== page.store.state.set[kind].name;
  return {
    element: make("div", { class: "field" }, make("label", { for: id }, `Another ${kind}`), select),
    update() {
      const list = page.store.kept[kind].filter(isAnother),
        name = other.now.set[kind]?.name;
      const at = list.findIndex((tree) => tree.name === name);
      select.replaceChildren(
        make("option", {}, "as it is"),
        ...list.map((tree) => make("option", {}, tree.name)),
        ...(at < 0 && isAnother({ name }) ? [make("option", {}, name)] : []),
      );
      select.selectedIndex = isAnother({ name }) ? (at < 0 ? list.length : at) + 1 : 0;
    },
  };
}

function pinField(page, word, title) {
  const id = freshId();
  const select = make("select", {
    id,
    onchange: () =>
      page.store.say({ [word]: select.selectedIndex ? select.value : null }, { isEdit: true }),
  });
  return {
    element: make("div", { class: "field" }, make("label", { for: id }, title), select),
    update(set, label) {
      const labels = (set.boat?.pins ?? []).map((one) => one.label);
      select.replaceChildren(
        make("option", {}, "the first in its ranking"),
        ...labels.map((one) => make("option", { value: one }, one)),
      );
      select.selectedIndex = labels.indexOf(label) + 1;
    },
  };
}

/** Chooses what differs: other records, single lines, pins, or a file. */
function form(page, other) {
  const { tables } = page;
  const others = kinds.map((kind) => otherField(page, other, kind));
  const pins = [
    pinField(page, "pin-now", "Pin, as it is"),
    pinField(page, "pin-then", "Pin, changed"),
  ];
  const rowId = freshId(),
    changes = make("div", { class: "changes" }),
    faults = make("div", { role: "alert" });
  const rows = make("select", {
    id: rowId,
    onchange: () => {
      if (rows.value) pick(lines[rows.value]);
      rows.value = "";
    },
  });
  const picker = make("input", {
    type: "file",
    accept: ".yaml,.yml,.txt",
    class: "unseen",
    tabindex: "-1",
    "aria-label": "A file to compare with",
    onchange: async () => {
      await takeFile(picker.files[0]);
      picker.value = "";
    },
  });
  let lines = [],
    shown = "",
    fields = new Map(),
    picked = new Set();
  const idOf = ({ kind, path }) => `${kind}.${path}`;

  async function takeFile(file) {
    const answer = await page.engine.ask(
      "read",
      1,
      null,
      file.name,
      new Uint8Array(await file.arrayBuffer()),
    );
    const told = (text) => make("p", { class: "note" }, text);
    faults.replaceChildren(
      ...(answer.is_sound
        ? []
        : answer.faults.map((fault) =>
            told(
              `${file.name}${fault.line ? `:${fault.line}` : ""} ${fault.key} ${sentenceOf(fault)}`,
            ),
          )),
    );
    if (answer.is_sound) other.choose(answer.record, answer.written);
  }

  function pick(line) {
    picked.add(idOf(line));
    lay(page.store.state);
    fields.get(idOf(line))?.element.querySelector("input").focus();
  }

  function begin([, kind, path, by]) {
    const line = lines.find((one) => one.kind === kind && one.path === path);
    const si = valueAt(other.now.values, line),
      unit = line.row.unit;
    picked.add(idOf(line));
    other.page.store.put(
      kind,
      path,
      `${Number((si / line.row.in_si + by).toFixed(6))}${unit ? ` ${unit}` : ""}`,
    );
  }

  function lineField(line) {
    const field = numberField(other.page, line.kind, line.path, {
      stepped: true,
      label: `${line.group}: ${line.label}`,
    });
    const now = make("span", {});
    const back = make(
      "button",
      {
        type: "button",
        "aria-label": `Take back: ${line.label}`,
        onclick: () => {
          picked.delete(idOf(line));
          fields.get(idOf(line)).takenBack();
        },
      },
      "Take back",
    );
    return {
      element: make(
        "div",
        { class: "change" },
        field.element,
        make("p", { class: "now" }, now, back),
      ),
      takenBack: () => {
        other.takeBack(line.kind, line.path);
        lay(page.store.state);
      },
      update(state) {
        field.update(other.page.store.state);
        const si = valueAt(state.values, line);
        now.textContent =
          si === undefined
            ? "as it is: not there"
            : `as it is ${told(line.row, si, state.speedUnit)}`;
      },
    };
  }

  // A field for each line that differs or was picked; of a whole other record a table.
  function lay(state) {
    const differing = kinds.map((kind) =>
      lines.filter(
        (line) =>
          line.kind === kind &&
          (picked.has(idOf(line)) ||
            textAt(state.set[kind], line.path) !== textAt(other.now.set[kind], line.path)),
      ),
    );
    const shownLines = differing.flatMap((of) =>
      of.length > FIELDS ? of.filter((line) => picked.has(idOf(line))) : of,
    );
    const key = JSON.stringify([
      shownLines.map(idOf),
      differing.map((of) =>
        of.map((line) => [idOf(line), textAt(other.now.set[line.kind], line.path)]),
      ),
    ]);
    if (key !== shown) {
      shown = key;
      fields = new Map(
        shownLines.map((line) => [idOf(line), fields.get(idOf(line)) ?? lineField(line)]),
      );
      const long = differing
        .filter((of) => of.length > FIELDS)
        .map((of) =>
          make(
            "details",
            {},
            make("summary", {}, `${of.length} lines of the ${of[0].kind} differ`),
            table(
              `${heading(of[0].kind)}, as it is and changed`,
              ["line", "as it is", "changed"],
              of.map((line) => [
                `${line.group}: ${line.label}`,
                ...[state, other.now].map((side) => {
                  const si = valueAt(side.values, line);
                  return si === undefined ? "not there" : told(line.row, si, state.speedUnit);
                }),
              ]),
            ),
          ),
        );
      const elements = [...[...fields.values()].map((field) => field.element), ...long];
      changes.replaceChildren(
        ...(elements.length
          ? elements
          : [
              make(
                "p",
                { class: "note" },
                "Nothing differs yet: choose a line, a file, or two pins.",
              ),
            ]),
      );
    }
    for (const field of fields.values()) field.update(state);
  }

  return {
    element: make(
      "form",
      { class: "ask", onsubmit: (event) => event.preventDefault() },
      make(
        "section",
        { class: "card" },
        make("h2", {}, "What differs"),
        changes,
        faults,
        make(
          "div",
          { class: "often" },
          often.map((one) => make("button", { type: "button", onclick: () => begin(one) }, one[0])),
        ),
        make("div", { class: "field" }, make("label", { for: rowId }, "Change a line"), rows),
        make("button", { type: "button", onclick: () => picker.click() }, "Compare with a file"),
        picker,
      ),
      make(
        "details",
        { class: "card", open: true },
        make("summary", {}, make("h2", {}, "Another sailor, boat or day; two pins")),
        others.map((one) => one.element),
        pins.map((one) => one.element),
      ),
    ),
    update(state) {
      lines = linesOf(tables, other.now.set);
      const groups = new Map();
      for (const [i, line] of lines.entries()) {
        if (!groups.has(line.group))
          groups.set(line.group, make("optgroup", { label: line.group }));
        groups.get(line.group).append(make("option", { value: i }, heading(line.label)));
      }
      rows.replaceChildren(make("option", { value: "" }, "choose a line"), ...groups.values());
      for (const one of others) one.update();
      pins[0].update(state.set, state.more["pin-now"]);
      pins[1].update(other.now.set, state.more["pin-then"]);
      const wrong = kinds.flatMap((kind) => other.now.faults[kind]);
      faults.replaceChildren(
        ...wrong.map((fault) => make("p", { class: "note" }, `${fault.key} ${sentenceOf(fault)}`)),
      );
      lay(state);
    },
  };
}

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

// Every pin of either boat in the order of their places: where it stands, its time, up to what wind.
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
    const at = choice.places.findIndex((one) => one.label === label),
      prospect = choice.places[at]?.prospect;
    const held =
      prospect?.held_up_to > 0
        ? `held to ${wind(prospect.held_up_to, speedUnit)}`
        : "held in no wind";
    return make(
      "td",
      {},
      at < 0
        ? "not there"
        : `${at + 1}. ${prospect.seconds > 0 ? `in ${time(prospect.seconds)}` : "cannot be sailed"}, ${held}`,
    );
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

function show(page, answer) {
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

export const compare = {
  name: "compare",
  title: "Compare",
  open(page, main) {
    const other = openOther(page),
      ask = form(page, other);
    const answers = make("div", { class: "answers" });
    const bar = workBar("Working out both", () => begin());
    main.append(
      make("div", { class: "today compare" }, ask.element, make("div", {}, bar.element, answers)),
    );
    let asked = "",
      waiting = 0,
      answer = null,
      answered = "",
      isOpen = true,
      turn = 0;

    async function begin() {
      const mine = asked,
        { more, set } = page.store.state;
      const sets = [set, other.now.set].map(page.texts),
        labels = [more["pin-now"] ?? "", more["pin-then"] ?? ""];
      try {
        const got = await bar.run((onProgress) => page.engine.comparison(sets, labels, onProgress));
        if (!got || !isOpen) return;
        ((answer = got), (answered = mine));
        tell();
        page.say.status(answer.differences?.[0] ?? "");
      } catch (error) {
        page.say.status(
          `The engine broke down: ${error.message}. Change a value, or work it out again.`,
        );
      }
    }

    // The same question twice: nothing to work out.
    function isAlike({ more, set }) {
      const [one, two] = [set, other.now.set].map((of) => JSON.stringify(page.texts(of)));
      return one === two && (more["pin-now"] ?? "") === (more["pin-then"] ?? "");
    }

    function rest() {
      bar.stop();
      ((answer = null), (answered = asked));
      tell();
      answers.replaceChildren(
        make("p", { class: "note" }, "Nothing differs: the answer is Today's."),
      );
    }

    function tell() {
      answers.classList.toggle("old", answered !== asked);
      answers.setAttribute("aria-busy", answered !== asked);
      if (!answer) return;
      answers.replaceChildren(
        ...(answer.differences
          ? show(page, answer)
          : [make("p", {}, "One of the two has no pins to choose among.")]),
      );
    }

    return {
      async update(state) {
        const own = ++turn,
          isSound = await other.update(state);
        if (!isOpen || own !== turn) return;
        ask.update(state);
        if (!isSound) return;
        const isFirst = asked === "";
        const now = JSON.stringify([
          state.set,
          other.now.set,
          state.more["pin-now"],
          state.more["pin-then"],
          state.speedUnit,
        ]);
        if (now === asked) return;
        asked = now;
        clearTimeout(waiting);
        if (isAlike(state)) return rest();
        tell();
        waiting = setTimeout(begin, isFirst ? 0 : PAUSE);
      },
      close() {
        isOpen = false;
        clearTimeout(waiting);
        bar.stop();
      },
    };
  },
};
