// track_card.js - a sailed track: read at the desk, told and drawn, kept with a logged day.
// SPDX-License-Identifier: MIT
//
// The readers of tracks are the program's. A page from a file says so.

import { dateHere } from "../base/clock.js";
import { card, make } from "../base/dom.js";
import { LOG } from "../base/kinds.js";
import { opener } from "../base/opener.js";
import { picture } from "../base/picture.js";
import { unpack } from "../engine/parcel.js";
import { fieldsOf, treeOf } from "../keep/days.js";
import { faultLines } from "./fault_lines.js";
import { drawTold } from "./told.js";

const NOTE =
  "At the desk: drop a file in GPX, NMEA 0183 or CSV here, to see what it tells and to keep " +
  "that with its day.";
const ALONE =
  "This page reads no tracks by itself: `lullwise desk` opens it with what does. " +
  "`lullwise track FILE` tells and draws one; `lullwise log add --track FILE` keeps it with a " +
  "day, and a file of such days is opened below.";
const DAY = 86_400_000; // [ms]
const OTHERS = /\.(ya?ml|json)$/i;

class TrackCard {
  #page;
  #isAlone;
  #shown = make("div", { class: "tree" });

  constructor(page) {
    this.#page = page;
    const isAlone = !location.protocol.startsWith("http");
    this.#shown.append(make("p", { class: "note" }, isAlone ? ALONE : NOTE));
    const tools = opener("Open a track", "A track", ".gpx,.nmea,.csv,.txt,.log", this.#take);
    const open = !isAlone && make("div", { class: "beside" }, tools);
    this.element = card("A track", open, this.#shown);
    this.#isAlone = isAlone;
  }

  /** Takes what is dropped on an element, but files of boats and days. */
  watch(element) {
    if (this.#isAlone) return;
    element.addEventListener("drop", (event) => {
      const files = [...event.dataTransfer.files].filter(({ name }) => !OTHERS.test(name));
      if (!files.length) return;
      event.preventDefault();
      event.stopPropagation();
      files.forEach(this.#take);
    });
  }

  #take = async (file) => {
    const { speedUnit } = this.#page.store.state;
    const at = `/track/${encodeURIComponent(file.name)}?${encodeURIComponent(speedUnit)}`;
    const answer = await fetch(at, { method: "POST", body: file }).catch(() => null);
    if (answer?.status !== 200) return this.#refuse(file, answer);
    const { told, picture: drawn, day } = unpack(new Uint8Array(await answer.arrayBuffer()));
    const keep = make("div", { class: "beside" }, this.#keepers(told.begins, day));
    this.#shown.replaceChildren(keep, picture("", drawn), ...drawTold(told).flat(9));
    this.#page.say.status(`${file.name} is read.`);
  };

  async #refuse(file, answer) {
    const isTooLong = answer?.status === 413;
    const words = isTooLong
      ? "too long for the desk; `lullwise track` reads it"
      : await answer?.text();
    const sentence = words || "the desk is closed";
    this.#shown.replaceChildren(...faultLines(`${file.name}: not read`, [{ sentence }]));
  }

  // A button for each day of the track's date; hers may be the day before or after by UTC.
  #keepers(begins, day) {
    const near = this.#page.store.state.kept[LOG].filter(
      ({ tree }) => Math.abs(Date.parse(tree.date) - Date.parse(begins.slice(0, 10))) <= DAY,
    );
    const words =
      "No day of its date is kept: tap the pin that was sailed, set the date, open it again.";
    if (!near.length) return make("p", { class: "note" }, words);
    return near.map(({ id, tree }) => {
      const onclick = () => this.#keep(id, day);
      return make("button", { type: "button", onclick }, `Keep with ${tree.date}, pin ${tree.pin}`);
    });
  }

  // In the place of a track that was there.
  async #keep(id, day) {
    const { engine, store, say } = this.#page;
    const was = store.state.kept[LOG].find((one) => one.id === id)?.tree;
    if (!was) return;
    const fields = fieldsOf({ ...was, sailed: {}, ...treeOf(day) });
    const { is_sound, faults, days } = await engine.ask("log read", dateHere(), fields);
    if (!is_sound) return say.faults(...faultLines("Not kept", faults));
    await store.keepDays([{ id, tree: treeOf(days[0]) }]);
    say.status("What the track tells is kept with the day. Undo takes it back.");
  }
}

/** { element, watch(view) } */
export const trackCard = (page) => new TrackCard(page);
