// desk_days.js - logged days at the desk: the browser's are made those of the desk's logbook.
// SPDX-License-Identifier: MIT
//
// What is kept or forgotten here goes to the desk at once, or waits until the desk is open again;
// what the desk has then takes the place of what is here. So nothing is lost while it is closed. A
// day that was changed on both sides meanwhile is the page's. A day that the desk has not any more
// is forgotten here only if it had it and has others: a logbook that is gone is written anew.

import { LOG } from "../base/kinds.js";
import { dayOf, daysInFile, fileOfDays, treeOf } from "./days.js";
import { keepRecord, keepWaiting, onWaiting, waiting, wasAtDesk, waitsNoMore } from "./memory.js";

const AT = "/days";
const CLOSED = new Error("the desk is closed");

class DeskDays {
  #page;
  #turn = Promise.resolve();
  #isThere = false;
  #told = ""; // what the desk refused last
  #onPlace = () => {};

  constructor(page) {
    this.#page = page;
  }

  /** Where days are kept, as it stands in a sentence. */
  get place() {
    return this.#isThere ? "the desk's logbook" : "this browser, until the desk is open";
  }

  /** told() when the place is another. */
  watch(told) {
    this.#onPlace = told;
  }

  /** Both ways; one after the other. */
  sync() {
    const once = async () => {
      const { place } = this;
      await this.#sync();
      if (place !== this.place) this.#onPlace();
    };
    return (this.#turn = this.#turn.then(once, once));
  }

  async #sync() {
    try {
      await this.#push();
      if (!Object.keys(waiting()).length) await this.#pull();
      this.#isThere = true;
    } catch (error) {
      this.#isThere = false;
      if (error !== CLOSED && error.message !== this.#told) this.#page.say.faults(error.message);
      this.#told = error.message;
    }
  }

  async #asked(path, more) {
    const answer = await fetch(path, { ...more, cache: "no-store" }).catch(() => null);
    if (!answer || answer.status === 204) throw CLOSED; // as desk/parts/offline.js tells it
    const text = await answer.text();
    if (!answer.ok) throw new Error(`The desk does not take a day: ${text}`);
    return text;
  }

  // What waits, each by itself; what was changed again meanwhile goes on waiting.
  async #push() {
    for (const [id, tree] of Object.entries(waiting())) {
      const body = tree && fileOfDays(this.#page.tables.log, [{ tree }]);
      if (body) await this.#asked(AT, { method: "POST", body });
      else await this.#asked(`${AT}/${id}`, { method: "DELETE" });
      wasAtDesk(id, true);
      waitsNoMore(id, tree);
    }
  }

  async #pull() {
    const { engine, store, tables } = this.#page;
    const text = await this.#asked(AT);
    const inLog = (tree) => JSON.stringify(dayOf(tables.log, tree));
    const here = new Map(store.state.kept[LOG].map(({ id, tree }) => [id, inLog(tree)]));
    const there = daysInFile(tables.log, text);
    for (const fields of there) {
      const told = treeOf(Object.fromEntries(fields));
      const isKnown = here.get(told.id) === inLog(told);
      here.delete(told.id);
      wasAtDesk(told.id, true);
      if (isKnown) continue;
      const { is_sound, days } = await engine.ask("log read", "", fields);
      if (is_sound) await this.#take(told.id, treeOf(days[0]));
    }
    const isForgotten = (id) => there.length > 0 && wasAtDesk(id);
    for (const id of here.keys()) {
      if (isForgotten(id)) await this.#take(id, null);
      else keepWaiting(id, store.state.kept[LOG].find((one) => one.id === id)?.tree ?? null);
    }
    await this.#push();
  }

  // As if another tab had changed it; unless it was changed here meanwhile.
  async #take(id, tree) {
    if (id in waiting()) return;
    keepRecord(LOG, id, tree, { isFromDesk: true });
    await this.#page.store.takeOver(LOG, id, tree);
  }
}

/** { place, watch(told), sync() }: from a file there is no desk, and nothing is asked. */
export function openDeskDays(page) {
  if (!location.protocol.startsWith("http"))
    return { place: "this browser", watch() {}, sync() {} };
  const days = new DeskDays(page);
  onWaiting(() => days.sync());
  addEventListener("focus", () => days.sync());
  days.sync();
  return days;
}
