// track_card.js - a sailed track: read at the desk, told and drawn, kept with a logged day.
// SPDX-License-Identifier: MIT
//
// The readers of tracks are the program's. A page from a file says so.

import { dateHere } from "../base/clock.js";
import { card, make } from "../base/dom.js";
import { LOG } from "../base/kinds.js";
import { latest } from "../base/latest.js";
import { opener } from "../base/opener.js";
import { picture } from "../base/picture.js";
import { unpack } from "../engine/parcel.js";
import { optionField } from "../form/option_field.js";
import { choiceField, labelsOf } from "../form/pin_field.js";
import { fieldsOf, treeOf } from "../keep/days.js";
import { faultLines } from "./fault_lines.js";
import { drawTold } from "./told.js";

const NOTE =
  "At the desk: drop a file in GPX, NMEA 0183 or CSV here, to see what it tells and to keep " +
  "that with its day. Several at once are taken as one track.";
const ALONE =
  "This page reads no tracks by itself: `lullwise desk` opens it with what does. " +
  "`lullwise track FILE` tells and draws one; `lullwise log add --track FILE` keeps it with a " +
  "day, and a file of such days is opened below.";
const DAY = 86_400_000; // [ms]
const OTHERS = /\.(ya?ml|json)$/i;

const BESIDE = "The model beside it, of boat, sailor and day as they stand now, with pin";
const NO_PIN = "none";

// What stands in the body, one behind the other; in the query, of how many bytes each is.
function sent({ speedUnit, set }, texts, pin, windFrom, tracks) {
  const query = new URLSearchParams({ unit: speedUnit });
  const body = [];
  const add = (key, file, name = "") => {
    const blob = new Blob([file]);
    query.append(key, `${blob.size}${name && ` ${name}`}`);
    body.push(blob);
  };
  if (windFrom) query.set("wind-from", windFrom);
  if (pin) {
    const { boat, sailor, day, learned } = texts(set);
    query.set("pin", pin);
    const files = { boat, sailor, day, ...(learned && { learned }) };
    for (const [kind, text] of Object.entries(files)) add(kind, text);
  }
  for (const file of tracks) add("track", file, file.name);
  return { at: `/track?${query}`, body: new Blob(body) };
}

class TrackCard {
  #page;
  #isAlone;
  #tracks = [];
  #pin = "";
  #pins = choiceField(BESIDE, (i) => this.#choose(i));
  #windFrom;
  #more; // what is asked of a track that is there
  #shown = make("div", { class: "tree" });

  constructor(page) {
    this.#page = page;
    const isAlone = !location.protocol.startsWith("http");
    this.#windFrom = optionField(page, "wind-from");
    this.#windFrom.element.addEventListener("change", this.#ask);
    this.#more = make(
      "div",
      { hidden: true },
      make("div", { class: "asked" }, this.#windFrom.element),
      this.#pins.element,
    );
    this.#shown.append(make("p", { class: "note" }, isAlone ? ALONE : NOTE));
    const kinds = ".gpx,.nmea,.csv,.txt,.log";
    const tools = opener("Open a track", "A track", kinds, this.#take, true);
    const open = !isAlone && make("div", { class: "beside" }, tools);
    this.element = card("A track", open, !isAlone && this.#more, this.#shown);
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
      this.#take(files);
    });
  }

  #take = (files) => {
    this.#tracks = files;
    return this.#ask();
  };

  #choose(i) {
    this.#pin = i ? labelsOf(this.#page.store.state)[i - 1] : "";
    return this.#ask();
  }

  #ask = latest(() => this.#askOnce());

  async #askOnce() {
    const { store, texts, say } = this.#page;
    const tracks = this.#tracks;
    if (!tracks.length) return;
    const labels = labelsOf(store.state);
    if (!labels.includes(this.#pin)) this.#pin = "";
    this.#pins.update([NO_PIN, ...labels], 1 + labels.indexOf(this.#pin));
    const { at, body } = sent(store.state, texts, this.#pin, this.#windFrom.text(), tracks);
    const answer = await fetch(at, { method: "POST", body }).catch(() => null);
    const names = tracks.map(({ name }) => name).join(", ");
    if (answer?.status !== 200) return this.#refuse(names, answer);
    const { told, picture: drawn, day } = unpack(new Uint8Array(await answer.arrayBuffer()));
    const keep = make("div", { class: "beside" }, this.#keepers(told.begins, day));
    this.#shown.replaceChildren(keep, picture("", drawn), ...drawTold(told).flat(9));
    this.#more.hidden = false;
    say.status(`${names} ${tracks.length > 1 ? "are" : "is"} read.`);
  }

  async #refuse(names, answer) {
    const isTooLong = answer?.status === 413;
    const words = isTooLong
      ? "too long for the desk; `lullwise track` reads it"
      : await answer?.text();
    const sentence = words || "the desk is closed";
    this.#shown.replaceChildren(...faultLines(`${names}: not read`, [{ sentence }]));
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
