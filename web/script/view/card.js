// card.js - the view Card: both pages of what is carried afloat, to look at, print and save.
// SPDX-License-Identifier: MIT

import { drawRefusal, drawTold } from "../answer/told.js";
import { freshId, make } from "../base/dom.js";
import { picture } from "../base/picture.js";
import { withUnit } from "../base/number.js";
import { saveAs } from "../base/save.js";
import { workBar } from "../answer/work_bar.js";

const PAUSE = 400; // [ms] after the last change, before the long work begins

function selectField(label, keys, onchange) {
  const id = freshId();
  const select = make(
    "select",
    { id, onchange },
    keys.map((key) => make("option", { value: key }, key)),
  );
  const element = make("div", { class: "field" }, make("label", { for: id }, label), select);
  return { element, text: () => select.value };
}

function seasonField({ help, unit }, onchange) {
  const id = freshId();
  const input = make("input", { id, type: "text", onchange });
  return {
    element: make(
      "div",
      { class: "field" },
      make("label", { for: id }, "Season"),
      make("div", { class: "entry" }, make("span", { class: "box" }, input)),
      make("p", { class: "note" }, help.replace(/--season /, "")),
    ),
    text() {
      const text = input.value.trim();
      const last = text.lastIndexOf(":") + 1; // the unit of all stands behind the last number
      return text && text.slice(0, last) + withUnit(text.slice(last), unit);
    },
  };
}

class Card {
  #page;
  #paper;
  #season;
  #bar = workBar("The card", () => this.#begin());
  #sheet = new CSSStyleSheet(); // the size of the paper, while this view is open
  #pages = make("div", { class: "pages pictures", "aria-live": "polite" });
  #told = make("details", { class: "card" });
  #print = make("button", { type: "button", onclick: () => print() }, "Print");
  #save = make("button", { type: "button", onclick: () => this.#saveAll() }, "Save as SVG");
  #asked = "";
  #drawn = [];
  #waiting = 0;
  #isOpen = true;

  constructor(page, main) {
    const { papers, options } = page.tables;
    const again = () => this.update();
    this.#page = page;
    this.#paper = selectField(
      "Paper",
      papers.map(({ key }) => key),
      again,
    );
    this.#season = seasonField(options.season, again);
    const tools = make("div", { class: "beside" }, this.#print, this.#save);
    const fields = [this.#paper.element, this.#season.element, tools];
    const asking = make("div", { class: "asking" }, make("div", { class: "card" }, fields));
    const answers = make("div", { class: "answers" }, this.#bar.element, this.#pages, this.#told);
    main.append(make("div", { class: "today" }, asking, answers));
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, this.#sheet];
    this.#show([], null);
  }

  update() {
    const now = this.#key();
    if (now === this.#asked) return;
    const isFirst = this.#asked === "";
    this.#asked = now;
    this.#bar.stop();
    this.#pages.setAttribute("aria-busy", "true");
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => this.#begin(), isFirst ? 0 : PAUSE);
  }

  close() {
    this.#isOpen = false;
    clearTimeout(this.#waiting);
    this.#bar.stop();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== this.#sheet);
  }

  #options() {
    const date = new Date().toISOString().slice(0, 10);
    return { paper: this.#paper.text(), season: this.#season.text(), date, svg: "-" };
  }

  #key() {
    const { set, speedUnit } = this.#page.store.state;
    return JSON.stringify([set, speedUnit, this.#options()]);
  }

  async #begin() {
    const { engine, store, say, texts } = this.#page;
    const mine = this.#asked;
    this.#pages.setAttribute("aria-busy", "true");
    try {
      const got = await this.#bar.run((onProgress) =>
        engine.question(0, texts(store.state.set), onProgress, "card", this.#options()),
      );
      if (!this.#isOpen || mine !== this.#asked) return;
      if (got?.refused) this.#refuse(got.refused);
      else if (got) this.#show([got.svg, got.back], got.told);
    } catch (error) {
      say.status(`The engine broke down: ${error.message}. Change a value, or work it out again.`);
    }
    this.#pages.setAttribute("aria-busy", "false");
  }

  #refuse(refused) {
    this.#show([], null);
    this.#pages.replaceChildren(...drawRefusal(refused));
  }

  #show(drawn, told) {
    const { size } = this.#page.tables.papers.find(({ key }) => key === this.#paper.text());
    this.#drawn = drawn;
    this.#print.disabled = this.#save.disabled = this.#told.hidden = !told;
    this.#sheet.replaceSync(`@page { size: ${size}; margin: 0; }`);
    this.#pages.replaceChildren(
      ...drawn.map((svg, i) => picture(i ? "Second page" : "First page", svg)),
    );
    this.#told.replaceChildren(
      make("summary", {}, make("h2", {}, "As text")),
      make("div", { class: "tree" }, told && drawTold(told)),
    );
  }

  #saveAll() {
    this.#drawn.forEach((svg, i) => saveAs(i ? "card-2.svg" : "card.svg", svg, "image/svg+xml"));
  }
}

export const card = { name: "card", title: "Card", open: (page, main) => new Card(page, main) };
