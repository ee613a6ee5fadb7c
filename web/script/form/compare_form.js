// compare_form.js - chooses what differs: other records, single lines, pins, or a file.
// SPDX-License-Identifier: MIT

import { freshId, make } from "../base/dom.js";
import { numberField, sentenceOf } from "./field.js";
import { heading, told, words } from "../base/number.js";
import { opener } from "../base/opener.js";
import { namesOf } from "../keep/records.js";
import { kinds } from "../base/kinds.js";
import { isAlike, textAt } from "../base/tree.js";

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
  const isAnother = (tree) => !isAlike(tree, page.store.state.set[kind]);
  const others = () => page.store.records(kind).filter(({ tree }) => isAnother(tree));
  const select = make("select", {
    id,
    onchange: () =>
      other.choose(kind, others()[select.selectedIndex - 1]?.tree ?? page.store.state.set[kind]),
  });
  return {
    element: make("div", { class: "field" }, make("label", { for: id }, `Another ${kind}`), select),
    update() {
      const list = others(),
        now = other.now.set[kind];
      const at = list.findIndex(({ tree }) => isAlike(tree, now));
      const isElsewhere = at < 0 && now.name !== page.store.state.set[kind].name;
      const names = [...namesOf(list), ...(isElsewhere ? [now.name] : [])];
      select.replaceChildren(
        make("option", {}, "as it is"),
        ...names.map((name) => make("option", {}, name)),
      );
      select.selectedIndex = isElsewhere ? names.length : at + 1;
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

const idOf = ({ kind, path }) => `${kind}.${path}`;
const toldAt = (side, line, unit) => {
  const si = valueAt(side.values, line);
  return si === undefined ? "not there" : told(line.row, si, unit);
};

// A line as a field, with what it is now and a way back to that.
function lineField(other, line, onBack) {
  const label = `${line.group}: ${line.label}`;
  const field = numberField(other.page, line.kind, line.path, { stepped: true, label });
  const now = make("span", {});
  const back = make(
    "button",
    { type: "button", "aria-label": `Take back: ${line.label}`, onclick: onBack },
    "Take back",
  );
  return {
    element: make(
      "div",
      { class: "change" },
      field.element,
      make("p", { class: "now" }, now, back),
    ),
    update(state) {
      const is = toldAt(state, line, state.speedUnit);
      field.update(other.page.store.state);
      now.textContent = is === "not there" ? "as it is: not there" : `as it is ${is}`;
    },
  };
}

// The lines in which a whole other record differs, folded away.
function lineList(lines, state, then) {
  const [{ kind }] = lines;
  const lineOf = (line) => {
    const [is, other] = [state, then].map((side) => toldAt(side, line, state.speedUnit));
    return make("li", {}, `${line.group}: ${line.label} ${other}, as it is ${is}`);
  };
  return make(
    "details",
    {},
    make("summary", {}, `${lines.length} lines of the ${kind} differ`),
    make("ul", {}, lines.map(lineOf)),
  );
}

/** A field for each line that differs or was picked; of a whole other record a table. */
class ChangedLines {
  #page;
  #other;
  #picked = new Set();
  #fields = new Map();
  #shown = "";
  #lines = [];
  element = make("div", { class: "changes" });

  constructor(page, other) {
    this.#page = page;
    this.#other = other;
  }

  update(lines, state) {
    this.#lines = lines;
    this.#lay(state);
  }

  /** A field for a line, though it does not differ yet. */
  pick(line) {
    this.begin(line);
    this.#lay(this.#page.store.state);
    this.#fields.get(idOf(line))?.element.querySelector("input").focus();
  }

  begin(line) {
    this.#picked.add(idOf(line));
  }

  #takeBack(line) {
    this.#picked.delete(idOf(line));
    this.#other.takeBack(line.kind, line.path);
    this.#lay(this.#page.store.state);
  }

  #text(line) {
    return textAt(this.#other.now.set[line.kind], line.path);
  }

  // By kind.
  #differing(state) {
    const isIn = (line) =>
      this.#picked.has(idOf(line)) || textAt(state.set[line.kind], line.path) !== this.#text(line);
    return kinds.map((kind) => this.#lines.filter((line) => line.kind === kind && isIn(line)));
  }

  #lay(state) {
    const differing = this.#differing(state);
    const asFields = differing.flatMap((of) =>
      of.length > FIELDS ? of.filter((line) => this.#picked.has(idOf(line))) : of,
    );
    const texts = differing.map((of) => of.map((line) => [idOf(line), this.#text(line)]));
    const key = JSON.stringify([asFields.map(idOf), texts]);
    if (key !== this.#shown) {
      this.#shown = key;
      this.#build(asFields, differing, state);
    }
    for (const field of this.#fields.values()) field.update(state);
  }

  #build(asFields, differing, state) {
    const fieldOf = (line) =>
      this.#fields.get(idOf(line)) ?? lineField(this.#other, line, () => this.#takeBack(line));
    this.#fields = new Map(asFields.map((line) => [idOf(line), fieldOf(line)]));
    const tables = differing
      .filter((of) => of.length > FIELDS)
      .map((of) => lineList(of, state, this.#other.now));
    const elements = [...[...this.#fields.values()].map((field) => field.element), ...tables];
    const none = "Nothing differs yet: choose a line, a file, or two pins.";
    this.element.replaceChildren(
      ...(elements.length ? elements : [make("p", { class: "note" }, none)]),
    );
  }
}

// A menu of all lines, each in its group.
function lineMenu(onPick) {
  const id = freshId();
  let lines = [];
  const select = make("select", {
    id,
    onchange: () => {
      if (select.value) onPick(lines[select.value]);
      select.value = "";
    },
  });
  return {
    element: make("div", { class: "field" }, make("label", { for: id }, "Change a line"), select),
    update(now) {
      lines = now;
      const groups = new Map();
      for (const [i, { group, label }] of lines.entries()) {
        if (!groups.has(group)) groups.set(group, make("optgroup", { label: group }));
        groups.get(group).append(make("option", { value: i }, heading(label)));
      }
      select.replaceChildren(make("option", { value: "" }, "choose a line"), ...groups.values());
    },
  };
}

const fileButton = (onFile) =>
  opener("Compare with a file", "A file to compare with", ".yaml,.yml,.txt", onFile);

class CompareForm {
  #page;
  #other;
  #others;
  #pins;
  #changes;
  #menu;
  #faults = make("div", { role: "alert" });

  constructor(page, other) {
    this.#page = page;
    this.#other = other;
    this.#others = kinds.map((kind) => otherField(page, other, kind));
    this.#pins = [
      pinField(page, "pin-now", "Pin, as it is"),
      pinField(page, "pin-then", "Pin, changed"),
    ];
    this.#changes = new ChangedLines(page, other);
    this.#menu = lineMenu((line) => this.#changes.pick(line));
    this.element = make(
      "form",
      { class: "ask", onsubmit: (event) => event.preventDefault() },
      this.#differs(),
      make(
        "details",
        { class: "card", open: true },
        make("summary", {}, make("h2", {}, "Another sailor, boat or day; two pins")),
        [...this.#others, ...this.#pins].map((one) => one.element),
      ),
    );
  }

  update(state) {
    const { now } = this.#other;
    const lines = linesOf(this.#page.tables, now.set);
    this.#menu.update(lines);
    for (const one of this.#others) one.update();
    this.#pins[0].update(state.set, state.more["pin-now"]);
    this.#pins[1].update(now.set, state.more["pin-then"]);
    const wrong = kinds.flatMap((kind) => now.faults[kind]);
    this.#complain(wrong.map((fault) => `${fault.key} ${sentenceOf(fault)}`));
    this.#changes.update(lines, state);
  }

  #differs() {
    const starts = often.map((one) =>
      make("button", { type: "button", onclick: () => this.#begin(one) }, one[0]),
    );
    return make(
      "section",
      { class: "card" },
      make("h2", {}, "What differs"),
      this.#changes.element,
      this.#faults,
      make("div", { class: "often" }, starts),
      this.#menu.element,
      fileButton((file) => this.#takeFile(file)),
    );
  }

  #complain(lines) {
    this.#faults.replaceChildren(...lines.map((line) => make("p", { class: "note" }, line)));
  }

  async #takeFile(file) {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const answer = await this.#page.engine.ask("read", 1, null, file.name, bytes);
    const at = (fault) => `${file.name}${fault.line ? `:${fault.line}` : ""}`;
    const wrong = answer.is_sound ? [] : answer.faults;
    this.#complain(wrong.map((fault) => `${at(fault)} ${fault.key} ${sentenceOf(fault)}`));
    if (answer.is_sound) this.#other.choose(answer.record, answer.written);
  }

  // A tap may come before what the address says is read.
  async #begin([, kind, path, by]) {
    await this.#other.page.store.idle();
    const lines = linesOf(this.#page.tables, this.#other.now.set);
    const line = lines.find((one) => one.kind === kind && one.path === path);
    const { in_si, unit } = line.row;
    const more = valueAt(this.#other.now.values, line) / in_si + by;
    this.#changes.begin(line);
    this.#other.page.store.put(kind, path, `${Number(more.toFixed(6))}${unit ? ` ${unit}` : ""}`);
  }
}

/** { element, update(state) }; other: of openOther. */
export const compareForm = (page, other) => new CompareForm(page, other);
