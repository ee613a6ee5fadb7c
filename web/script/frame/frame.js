// frame.js - what stands around every view: name, views, undo, speed unit, theme, files.
// SPDX-License-Identifier: MIT

import { aboutLine } from "./about.js";
import { linkTo, make } from "../base/dom.js";
import { dateAndTime } from "../base/clock.js";
import { offerFile, saveAll, takeFiles } from "./files.js";
import { kinds } from "../base/kinds.js";
import { namesOf } from "../keep/records.js";
import { unusedLine } from "./unused.js";

const THEME = "lullwise.theme";
const TOLD = 5000; // [ms] for which a status stands over the view
const themes = [
  ["auto", "as the device"],
  ["light", "light, for sun"],
  ["dark", "dark, for evening"],
];

function themeField() {
  const root = document.documentElement;
  let now = "auto";
  try {
    now = localStorage.getItem(THEME) ?? "auto";
  } catch {
    /* not kept */
  }
  root.dataset.theme = now;
  const select = make(
    "select",
    {
      id: "theme",
      onchange: () => {
        root.dataset.theme = select.value;
        try {
          localStorage.setItem(THEME, select.value);
        } catch {
          /* not kept */
        }
      },
    },
    themes.map(([key, text]) => make("option", { value: key, selected: key === now }, text)),
  );
  return make("div", { class: "field" }, make("label", { for: "theme" }, "Theme"), select);
}

function unitField(store) {
  const select = make(
    "select",
    { id: "speed", onchange: () => store.setSpeedUnit(select.value) },
    ["kn", "m/s"].map((unit) => make("option", { value: unit }, unit === "kn" ? "knots" : "m/s")),
  );
  store.onChange((state) => {
    select.value = state.speedUnit;
  });
  return make("div", { class: "field" }, make("label", { for: "speed" }, "Speeds in"), select);
}

// What this browser keeps beside what is in use.
function keptTools(store, say) {
  const select = make("select", { id: "kept" });
  const button = make("button", { type: "button", onclick: forget }, "Forget it");
  const element = make(
    "div",
    { class: "field kept" },
    make("label", { for: "kept" }, "Kept in this browser, not in use"),
    select,
    button,
  );
  let others = [];

  async function forget() {
    const { kind, id, name } = others[select.selectedIndex];
    await store.forget(kind, id);
    say.status(`Forgotten: ${name}. Undo brings it back.`);
  }
  store.onChange((state) => {
    others = kinds.flatMap((kind) => {
      const names = namesOf(state.kept[kind]);
      return state.kept[kind]
        .map(({ id }, i) => ({ kind, id, name: names[i] }))
        .filter(({ id }) => id !== state.ids[kind]);
    });
    select.replaceChildren(
      ...others.map(({ kind, name }) => make("option", {}, `${kind}: ${name}`)),
    );
    element.hidden = !others.length;
  });
  return element;
}

// The link with all that is shown; where a browser lets no page copy, it stands there to be copied.
function linkTool(say) {
  const text = make("input", {
    type: "text",
    readonly: true,
    hidden: true,
    "aria-label": "The link",
  });
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(location.href);
      say.status("The link is copied: boat, sailor, day and this view are in it.");
    } catch {
      text.hidden = false;
      text.value = location.href;
      text.select();
    }
  };
  return [make("button", { type: "button", onclick: copy }, "Copy the link"), text];
}

function fileTools(page, say) {
  const picker = make("input", {
    type: "file",
    multiple: true,
    accept: ".yaml,.yml,.txt",
    class: "unseen",
    tabindex: "-1",
    "aria-label": "Boat, sailor or day files",
    onchange: async () => {
      await takeFiles(page, [...picker.files], say);
      picker.value = "";
    },
  });
  addEventListener("dragover", (event) => event.preventDefault());
  addEventListener("drop", (event) => {
    event.preventDefault();
    if (event.dataTransfer.files.length) takeFiles(page, [...event.dataTransfer.files], say);
  });
  return [
    picker,
    make("button", { type: "button", onclick: () => picker.click() }, "Open files"),
    make("button", { type: "button", onclick: () => saveAll(page) }, "Save all three"),
    kinds.map((kind) =>
      make("button", { type: "button", onclick: () => offerFile(page, kind) }, `Save the ${kind}`),
    ),
    linkTool(say),
    make("button", { type: "button", onclick: () => print() }, "Print"),
  ];
}

// On paper nothing is folded away.
function unfoldToPrint() {
  let opened = [];
  addEventListener("beforeprint", () => {
    opened = [...document.querySelectorAll("main details.card:not([open])")];
    for (const one of opened) one.open = true;
  });
  addEventListener("afterprint", () => {
    for (const one of opened) one.open = false;
  });
}

// How things are said to the reader: { status, faults, say }.
function teller() {
  const status = make("p", { class: "status", role: "status" });
  const faults = make("section", { class: "told", role: "alert" });
  const putAway = { type: "button", onclick: () => faults.replaceChildren() };
  return {
    status,
    faults,
    say: {
      status(text) {
        const line = make("span", {}, text);
        status.replaceChildren(line);
        setTimeout(() => line.remove(), TOLD);
      },
      faults(...lines) {
        faults.replaceChildren(...lines);
        if (lines.length) faults.append(make("button", putAway, "Put away"));
      },
    },
  };
}

function undoTools(store) {
  const undo = make("button", { type: "button", onclick: () => store.undo() }, "Undo");
  const redo = make("button", { type: "button", onclick: () => store.redo() }, "Redo");
  store.onChange(() => {
    undo.disabled = !store.canUndo;
    redo.disabled = !store.canRedo;
  });
  addEventListener("keydown", (event) => {
    const isText = event.target.matches("input[type=text], textarea");
    if (isText || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
    event.preventDefault();
    if (event.shiftKey) store.redo();
    else store.undo();
  });
  return make("div", { class: "undo" }, undo, redo);
}

function viewLinks(store, views) {
  const links = views.map((view) =>
    linkTo(`#${view.name}`, () => store.go(view.name), {}, view.title),
  );
  store.onChange((state) =>
    views.forEach((view, i) => {
      if (view.name === state.view) links[i].setAttribute("aria-current", "page");
      else links[i].removeAttribute("aria-current");
    }),
  );
  return make("nav", { "aria-label": "Views" }, links);
}

// On a print: of what it is, and when.
function paperLine(store) {
  const paper = make("p", { class: "paper" });
  const tell = ({ set }) => {
    paper.textContent = [...kinds.map((kind) => set[kind].name), dateAndTime()].join(" · ");
  };
  store.onChange(tell);
  addEventListener("beforeprint", () => tell(store.state));
  return paper;
}

const tools = (page, say) =>
  make(
    "details",
    { class: "tools" },
    make("summary", {}, "Files", make("span", { class: "roomy" }, "and settings")),
    make(
      "div",
      { class: "sheet" },
      fileTools(page, say),
      unitField(page.store),
      themeField(),
      keptTools(page.store, say),
    ),
  );

/** Builds the frame; returns where the view goes and how to say things to the reader. */
export function buildFrame(page, views) {
  const { store } = page;
  const { status, faults, say } = teller();
  const main = make("main", { id: "view", tabindex: "-1" });
  document.body.append(
    linkTo("#view", () => main.focus(), { class: "skip" }, "To the view"),
    make(
      "header",
      {},
      make("p", { class: "name" }, "Lullwise"),
      paperLine(store),
      undoTools(store),
      tools(page, say),
    ),
    viewLinks(store, views),
    aboutLine(store),
    unusedLine(store),
    faults,
    main,
    status,
  );
  unfoldToPrint();
  return { main, say };
}
