// frame.js - what stands around every view: name, views, undo, speed unit, theme, files.
// SPDX-License-Identifier: MIT

import { make } from "./dom.js";
import { offerFile, takeFiles } from "./files.js";

const THEME = "lullwise.theme";
const themes = [["auto", "as the device"], ["light", "light, for sun"], ["dark", "dark, for evening"]];

function themeField() {
  const root = document.documentElement;
  let now = "auto";
  try { now = localStorage.getItem(THEME) ?? "auto"; } catch { /* not kept */ }
  root.dataset.theme = now;
  const select = make("select", {
    id: "theme", onchange: () => {
      root.dataset.theme = select.value;
      try { localStorage.setItem(THEME, select.value); } catch { /* not kept */ }
    },
  }, themes.map(([key, text]) => make("option", { value: key, selected: key === now }, text)));
  return make("div", { class: "field" }, make("label", { for: "theme" }, "Theme"), select);
}

function unitField(store) {
  const select = make("select", { id: "speed", onchange: () => store.setSpeedUnit(select.value) },
    ["kn", "m/s"].map((unit) => make("option", { value: unit }, unit === "kn" ? "knots" : "m/s")));
  store.onChange((state) => { select.value = state.speedUnit; });
  return make("div", { class: "field" }, make("label", { for: "speed" }, "Speeds in"), select);
}

function fileTools(page, say) {
  const picker = make("input", {
    type: "file", multiple: true, accept: ".yaml,.yml,.txt", class: "unseen", tabindex: "-1",
    "aria-label": "Boat, sailor or day files", onchange: async () => {
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
    make("button", { type: "button", onclick: () => picker.click() }, "Open a file"),
    ["boat", "sailor", "day"].map((kind) =>
      make("button", { type: "button", onclick: () => offerFile(page, kind) }, `Save the ${kind}`)),
    make("button", { type: "button", onclick: () => print() }, "Print"),
  ];
}

/** Builds the frame; returns where the view goes and how to say things to the reader. */
export function buildFrame(page, views) {
  const { store } = page;
  const status = make("p", { class: "status", role: "status" });
  const faults = make("section", { class: "told", role: "alert" });
  const main = make("main", { id: "view", tabindex: "-1" });
  const say = {
    status: (text) => status.replaceChildren(make("span", {}, text)),
    faults: (...lines) => faults.replaceChildren(...(lines.length ? [
      ...lines, make("button", { type: "button", onclick: () => faults.replaceChildren() }, "Put away")] : [])),
  };
  const undo = make("button", { type: "button", onclick: store.undo }, "Undo");
  const redo = make("button", { type: "button", onclick: store.redo }, "Redo");
  const links = views.map((view) => make("a", {
    href: `#${view.name}`, onclick: (event) => { event.preventDefault(); store.go(view.name); },
  }, view.title));

  const tools = make("details", { class: "tools" },
    make("summary", {}, "Files and settings"),
    make("div", { class: "sheet" }, fileTools(page, say), unitField(store), themeField()));
  document.body.append(
    make("a", { class: "skip", href: "#view", onclick: (event) => { event.preventDefault(); main.focus(); } }, "To the view"),
    make("header", {}, make("p", { class: "name" }, "Lullwise"),
      make("div", { class: "undo" }, undo, redo), tools),
    make("nav", { "aria-label": "Views" }, links),
    faults, main, status);

  addEventListener("keydown", (event) => {
    const isText = event.target.matches("input[type=text], textarea");
    if (isText || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
    event.preventDefault();
    if (event.shiftKey) store.redo(); else store.undo();
  });
  store.onChange((state) => {
    undo.disabled = !store.canUndo;
    redo.disabled = !store.canRedo;
    views.forEach((view, i) => {
      if (view.name === state.view) links[i].setAttribute("aria-current", "page");
      else links[i].removeAttribute("aria-current");
    });
  });
  return { main, say };
}
