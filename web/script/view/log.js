// log.js - the view Log: days as they were sailed, and those most like the day on Today.
// SPDX-License-Identifier: MIT

import { dayCard } from "../answer/day_card.js";
import { faultLines } from "../answer/fault_lines.js";
import { learnedCard } from "../answer/learned_card.js";
import { trackCard } from "../answer/track_card.js";
import { drawTold } from "../answer/told.js";
import { dateHere } from "../base/clock.js";
import { card, make } from "../base/dom.js";
import { LOG } from "../base/kinds.js";
import { latest } from "../base/latest.js";
import { opener } from "../base/opener.js";
import { offerDays, takeDays } from "../frame/days_file.js";
import { labelsOf } from "../form/pin_field.js";
import { daysOf, freshDayId, treeOf } from "../keep/days.js";
import { isKept } from "../keep/memory.js";

class LogView {
  #page;
  #pins = make("div", { class: "targets" });
  #what = make("p", { class: "note" });
  #near = make("div", { class: "tree" });
  #says = make("p", {});
  #list = make("div", {});
  #taken = make("div", { role: "status" }); // of files
  #faults = make("div", { class: "tree" });
  #cards = new Map(); // by id
  #save = make("button", { type: "button", onclick: () => offerDays(this.#page) }, "Save the days");
  #answers = make("div", { class: "answers log" });
  #learned; // what days have taught
  #asked = "";
  #isOpen = true;
  #tell = latest(() => this.#tellOnce());

  constructor(page, main) {
    this.#page = page;
    this.#learned = learnedCard(page);
    const asking = make(
      "div",
      { class: "asking" },
      card("Sailed? Tap the pin", this.#pins, this.#what),
    );
    const tools = make("div", { class: "beside" }, this.#save, this.#opener());
    const days = make("section", { class: "days" }, make("h2", {}, "Days"));
    days.append(this.#says, this.#faults, this.#list);
    const track = trackCard(page);
    this.#answers.append(
      card("Like the day on Today", this.#near),
      days,
      track.element,
      card("Days as a file", tools, this.#taken),
      this.#learned.element,
    );
    const view = make("div", { class: "today" }, asking, this.#answers);
    track.watch(view);
    main.append(view);
    page.deskDays.watch(() => this.update(page.store.state));
    page.deskDays.sync();
  }

  update(state) {
    this.#showPins(state);
    this.#save.disabled = !state.kept[LOG].length;
    for (const one of this.#cards.values()) one.update();
    this.#learned.update(state);
    const { place } = this.#page.deskDays;
    const asked = JSON.stringify([state.set, state.speedUnit, state.kept[LOG], place]);
    if (asked === this.#asked) return;
    this.#asked = asked;
    this.#answers.setAttribute("aria-busy", "true");
    this.#tell().catch((error) =>
      this.#page.say.status(`The engine broke down: ${error.message}.`),
    );
  }

  close() {
    this.#isOpen = false;
    this.#page.deskDays.watch(() => {});
  }

  #opener() {
    const take = async (file) => {
      this.#taken.replaceChildren(...(await takeDays(this.#page, file, this.#page.deskDays.place)));
    };
    return opener("Open a file of days", "A file of days", ".json,.csv", take);
  }

  #showPins(state) {
    const { boat, sailor, day } = state.set;
    const labels = labelsOf(state);
    const names = [day, boat, sailor].map(({ name }) => name).join(", ");
    this.#what.textContent = `Kept with it: ${names}, all as they stand now.`;
    if (`${[...this.#pins.children].map((one) => one.dataset.pin)}` === `${labels}`) return;
    this.#pins.replaceChildren(
      ...labels.map((pin) => {
        const properties = { type: "button", "data-pin": pin, onclick: () => this.#add(pin) };
        return make("button", properties, `Pin ${pin}`);
      }),
    );
  }

  async #add(pin) {
    const { engine, store, texts, say } = this.#page;
    const id = freshDayId();
    const today = dateHere();
    const asked = ["log begin", 0, texts(store.state.set), today, id, { pin }];
    const { is_sound, faults, days } = await engine.ask(...asked);
    if (!is_sound) return say.faults(...faultLines("Not kept", faults));
    await store.keepDays([{ id, tree: treeOf(days[0]) }]);
    this.#cardOf(id).open();
    say.status(
      isKept(LOG, id)
        ? "The day is kept. Undo takes it back."
        : "This browser keeps nothing: save the days as a file before it is closed.",
    );
  }

  #cardOf(id) {
    if (!this.#cards.has(id)) this.#cards.set(id, dayCard(this.#page, id));
    return this.#cards.get(id);
  }

  async #tellOnce() {
    const { engine, store, texts, deskDays } = this.#page;
    const { state } = store;
    const mine = this.#asked;
    const days = daysOf(state);
    const set = texts(state.set);
    const { told, unread } = await engine.ask("log days", 0, set, days, deskDays.place);
    const near = await engine.ask("log near", 0, set, days);
    if (!this.#isOpen || mine !== this.#asked) return;
    this.#near.replaceChildren(...drawTold(near).flat(9));
    this.#says.textContent = told.says;
    this.#faults.replaceChildren(...unread.flatMap(([id, faults]) => faultLines(id, faults)));
    this.#showDays(told.days);
    this.#answers.setAttribute("aria-busy", "false");
  }

  // An open card stays where it is, with what is being typed in it.
  #showDays(days) {
    const cards = days.map((told) => {
      const one = this.#cardOf(told.id);
      one.tell(told);
      return one.element;
    });
    for (const [id] of this.#cards) if (!days.some((one) => one.id === id)) this.#cards.delete(id);
    const isSame = cards.length === this.#list.children.length;
    if (isSame && cards.every((one, i) => one === this.#list.children[i])) return;
    this.#list.replaceChildren(...cards);
  }
}

export const log = { name: "log", title: "Log", open: (page, main) => new LogView(page, main) };
