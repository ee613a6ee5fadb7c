// desk_days.js - logged days at the desk: the browser's are made those of the desk's logbook.
// SPDX-License-Identifier: MIT
//
// What is kept or forgotten here goes to the desk at once, or waits until the desk is open again;
// what the desk has then takes the place of what is here. So nothing is lost while it is closed. A
// day that was changed on both sides meanwhile is kept as two. One that the desk has not is
// forgotten here only if it was taken out there: a logbook that is gone is written anew.

import { LOG } from "../base/kinds.js";
import { dayOf, daysInFile, fileOfDayTexts, freshDayId, treeOf } from "./days.js";
import {
  keepAtDesk,
  keepRecord,
  keepWaiting,
  lastAtDesk,
  onWaiting,
  waiting,
  waitsNoMore,
} from "./memory.js";

const AT = "/days";
const CLOSED = new Error("the desk is closed");
const MEANWHILE = 409; // the logbook has the day otherwise than was thought here
const TRIES = 3; // for a logbook that goes on being changed

class DeskDays {
  #page;
  #turn = Promise.resolve();
  #isThere = false;
  #told = ""; // what the desk refused last
  #fresh = new Set(); // ids of days that the desk got, or not any more, since it was read
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
      for (let i = 0; i < TRIES && !(await this.#syncOnce()); i++);
      this.#isThere = true;
    } catch (error) {
      this.#isThere = false;
      if (error !== CLOSED && error.message !== this.#told) this.#page.say.faults(error.message);
      this.#told = error.message;
    }
  }

  // False: something still waits.
  async #syncOnce() {
    this.#fresh.clear();
    const days = daysInFile(this.#page.tables.log, await this.#asked(AT));
    const there = new Map(days.map((fields) => this.#asThere(fields)));
    const removed = new Set(JSON.parse(await this.#asked(`${AT}/removed`)));
    for (const [id, tree] of Object.entries(waiting()))
      await this.#bring(id, tree, there.get(id) ?? null);
    for (const [id, one] of there) await this.#fetch(id, one);
    for (const { id, tree } of this.#page.store.state.kept[LOG]) {
      if (there.has(id) || id in waiting() || this.#fresh.has(id)) continue;
      if (removed.has(id)) await this.#take(id, null);
      else keepWaiting(id, tree);
    }
    return !Object.keys(waiting()).length;
  }

  // [id, a day there: the fields that it is told in, and the same as text]
  #asThere(fields) {
    const tree = treeOf(Object.fromEntries(fields));
    return [tree.id, { fields, text: this.#textOf(tree) }];
  }

  #textOf(tree) {
    return JSON.stringify(dayOf(this.#page.tables.log, tree));
  }

  async #asked(path, more) {
    const answer = await fetch(path, { ...more, cache: "no-store" }).catch(() => null);
    if (!answer || answer.status === 204) throw CLOSED; // as desk/parts/offline.js tells it
    const text = await answer.text();
    if (answer.status === MEANWHILE) return null;
    if (!answer.ok) throw new Error(`The desk does not take a day: ${text}`);
    return text;
  }

  // A change that waits; tree: null, forgotten here. What is changed again meanwhile waits on.
  async #bring(id, tree, there) {
    const was = lastAtDesk(id);
    const now = there?.text ?? null;
    const mine = tree && this.#textOf(tree);
    if (now !== null && now !== was && now !== mine) return this.#part(id, tree, now);
    if (now !== mine && !(await this.#put(id, mine, now))) return;
    if (was !== null && now === null && mine)
      this.#page.say.status(
        "A day that was taken out of the logbook was changed here: it is kept.",
      );
    this.#fresh.add(id);
    keepAtDesk(id, mine);
    waitsNoMore(id, tree);
  }

  // False: the logbook was changed since it was read.
  async #put(id, mine, now) {
    if (!mine) return (await this.#asked(`${AT}/${id}`, { method: "DELETE" })) !== null;
    const texts = now === null ? [mine] : [now, mine];
    const body = fileOfDayTexts(this.#page.tables.log, texts);
    return (await this.#asked(AT, { method: "POST", body })) !== null;
  }

  // Changed here and there: the logbook's stays, and what is here becomes a day of its own.
  async #part(id, tree, now) {
    const { store, say } = this.#page;
    const copy = freshDayId();
    waitsNoMore(id, tree);
    if (tree) await store.keepDays([{ id: copy, tree: { ...tree, id: copy } }]);
    const both = "was changed here and in the logbook meanwhile: both are kept, compare them";
    say.status(
      tree
        ? `The day ${tree.date}, pin ${tree.pin} ${both}.`
        : "A day that was removed here was changed in the logbook meanwhile: it is kept.",
    );
    keepAtDesk(id, now);
  }

  // A day there, unless it is so here or was changed here.
  async #fetch(id, { fields, text }) {
    const { engine, store } = this.#page;
    const here = store.state.kept[LOG].find((one) => one.id === id)?.tree;
    if (id in waiting() || this.#fresh.has(id)) return;
    keepAtDesk(id, text);
    if (here && this.#textOf(here) === text) return;
    const { is_sound, days } = await engine.ask("log read", "", fields);
    if (is_sound) await this.#take(id, treeOf(days[0]));
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
