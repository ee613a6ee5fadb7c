// field.js - one number or word of a record as a form field, made from its row.
// SPDX-License-Identifier: MIT

import { freshId, make } from "./dom.js";
import { entry, heading, shownUnit, withUnit, words } from "./number.js";

function rowOf(tables, kind, section, key) {
  const found = tables.records[kind].sections.find((one) => one.table.key === section);
  return found.table.rows.find((row) => row.key === key) ?? found.table.rows[0];
}

/** What is told below a field: faults first, then doubts. */
export function sentenceOf(fault) {
  const parts = [fault.sentence];
  if (fault.expected) parts.push(`expected: ${fault.expected}`);
  if (fault.hint) parts.push(`did you mean ${fault.hint}?`);
  return heading(parts.join("; "));
}

const bears = (fault, path) => fault.key === path || fault.key === path.split(".")[0];

/**
 * A number with its unit, its way of measuring, and steps down and up where `stepped`.
 * path: "wind.lull", "legs.0.length". Returns { element, update(state) }.
 */
export function numberField(page, kind, path, { stepped = false, label } = {}) {
  const [section, ...rest] = path.split(".");
  const row = rowOf(page.tables, kind, section, rest.at(-1));
  const id = freshId(),
    noteId = freshId(),
    helpId = freshId();
  const input = make("input", {
    id,
    type: "text",
    inputmode: "decimal",
    autocomplete: "off",
    "aria-describedby": noteId,
    oninput: () => flag(typed()),
    onchange: () => take(typed()),
  });
  const unit = make("span", { class: "unit", "aria-hidden": "true" });
  const labelUnit = make("span", { class: "unseen" });
  const note = make("p", { class: "note", id: noteId });
  const name = label ?? heading(words(row.key));
  const help = make(
    "details",
    { class: "how" },
    make("summary", { "aria-label": `How to measure: ${name}` }, "?"),
    make(
      "p",
      { id: helpId },
      row.doc,
      " ",
      make(
        "span",
        { class: "band" },
        `${row.range}${row.usual && row.usual !== row.range ? `; usually ${row.usual}` : ""}`,
      ),
    ),
  );
  const stepBy = (sign) =>
    make(
      "button",
      {
        type: "button",
        class: "step",
        "aria-label": `${sign < 0 ? "Less" : "More"}: ${name}`,
        onclick: () => nudge(sign),
      },
      sign < 0 ? "−" : "+",
    );

  const shown = () => shownUnit(row, page.store.state.speedUnit);
  const typed = () => withUnit(input.value, shown().unit);
  const isLabelled = page.tables.records[kind].sections.some(
    (one) => one.kind === "labelled" && one.table.key === section,
  );
  function valueNow() {
    const values = page.store.state.values[kind][section];
    if (isLabelled) return values.find((one) => one.label === rest.join("."))?.value;
    return rest.reduce((at, key) => at?.[key], values);
  }

  function tell(faults) {
    const mine = faults.filter((fault) => bears(fault, path.replace(/\.(\d+)/, "[$1]")));
    const isFaulty = mine.some((fault) => !fault.is_doubt);
    note.textContent = mine.map(sentenceOf).join(". ");
    input.setAttribute("aria-invalid", isFaulty);
    element.classList.toggle("faulty", isFaulty);
    element.classList.toggle("doubtful", !isFaulty && mine.length > 0);
  }

  async function flag(text) {
    const { faults } = await page.store.trial(kind, path, text);
    if (text === typed()) tell(faults);
  }

  async function take(text) {
    tell(await page.store.put(kind, path, text));
  }

  function nudge(sign) {
    const { unit: as, inSi } = shown();
    const by = ((row.error || 10 ** -row.decimals) * row.in_si) / inSi / 2;
    const was = Number(input.value.replace(",", ".")),
      least = (row.min * row.in_si) / inSi;
    const most = (row.max * row.in_si) / inSi;
    const next = Math.min(Math.max(was + sign * by, least), most);
    input.value = String(Number(next.toFixed(row.decimals + 1)));
    take(withUnit(input.value, as));
  }

  const element = make(
    "div",
    { class: "field" },
    make("label", { for: id }, name, " ", labelUnit),
    help,
    make(
      "div",
      { class: stepped ? "entry stepped" : "entry" },
      stepped && stepBy(-1),
      make("span", { class: "box" }, input, unit),
      stepped && stepBy(1),
    ),
    note,
  );

  return {
    element,
    update(state) {
      unit.textContent = shown().unit;
      labelUnit.textContent = shown().unit ? `in ${shown().unit}` : "";
      const si = valueNow();
      if (si === undefined) return;
      const text = entry(row, si, state.speedUnit);
      if (page.store.hasDraft(kind, path)) return;
      input.value = text;
      tell(state.doubts[kind]);
    },
  };
}

/** The name of a record. */
export function nameField(page, kind) {
  const id = freshId(),
    noteId = freshId();
  const note = make("p", { class: "note", id: noteId });
  const input = make("input", {
    id,
    type: "text",
    autocomplete: "off",
    "aria-describedby": noteId,
    onchange: async () => {
      const faults = await page.store.put(kind, "name", input.value);
      note.textContent = faults
        .filter((fault) => fault.key === "name")
        .map(sentenceOf)
        .join(". ");
    },
  });
  return {
    element: make(
      "div",
      { class: "field" },
      make("label", { for: id }, "Name"),
      make("div", { class: "entry" }, make("span", { class: "box" }, input)),
      note,
    ),
    update(state) {
      if (!page.store.hasDraft(kind, "name")) input.value = state.values[kind].name;
    },
  };
}

/** One of some words as large buttons: [{ key, doc }]. */
export function wordField(page, kind, path, title, choices) {
  const name = freshId();
  const inputs = choices.map(({ key, doc }) => {
    const input = make("input", {
      type: "radio",
      name,
      value: key,
      onchange: () => page.store.put(kind, path, key),
    });
    return {
      input,
      element: make(
        "label",
        { class: "choice" },
        input,
        make("span", {}, heading(key), doc && make("small", {}, doc)),
      ),
    };
  });
  return {
    element: make(
      "fieldset",
      { class: "choices" },
      make("legend", {}, title),
      inputs.map((one) => one.element),
    ),
    update(state) {
      for (const { input } of inputs) input.checked = state.values[kind][path] === input.value;
    },
  };
}

/** Which of the kept boats, sailors or days. */
export function keptField(page, kind, title) {
  const id = freshId();
  const select = make("select", {
    id,
    onchange: () =>
      page.store.choose(
        kind,
        page.store.kept[kind][select.selectedIndex] ?? page.store.state.set[kind],
      ),
  });
  return {
    element: make("div", { class: "field" }, make("label", { for: id }, title), select),
    update(state) {
      const list = page.store.kept[kind],
        at = list.findIndex((tree) => tree.name === state.set[kind].name);
      const names = [...list.map((tree) => tree.name), ...(at < 0 ? [state.set[kind].name] : [])]; // a link's is not kept
      select.replaceChildren(...names.map((name) => make("option", {}, name)));
      select.selectedIndex = at < 0 ? list.length : at;
    },
  };
}
