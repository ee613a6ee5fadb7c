// main.js - opens the engine, the store and the frame, and shows the view that the address names.
// SPDX-License-Identifier: MIT

import heron from "../../demo/heron.yaml";
import light from "../../demo/light.yaml";
import heavy from "../../demo/heavy.yaml";
import breeze from "../../demo/breeze.yaml";
import workerSource from "worker:source";
import { openEngine } from "./engine/engine.js";
import { kinds } from "./base/kinds.js";
import { openDeskDays } from "./keep/desk_days.js";
import { lastDayPin, lastLearned } from "./keep/memory.js";
import { isFirstTime, openStore } from "./keep/store.js";
import { buildFrame } from "./frame/frame.js";
import { offerInstall } from "./frame/install.js";
import { make } from "./base/dom.js";
import { fileOf, learnSections } from "./base/tree.js";
import { today } from "./view/today.js";
import { boat } from "./view/boat.js";
import { flight } from "./view/flight.js";
import { ride } from "./view/ride.js";
import { signs } from "./view/signs.js";
import { compare } from "./view/compare.js";
import { card } from "./view/card.js";
import { log } from "./view/log.js";

const views = [today, boat, flight, ride, signs, compare, card, log];

async function open() {
  const engine = await openEngine(document.getElementById("engine"), workerSource);
  if (isFirstTime()) engine.prepare(heron);
  const tables = await engine.ask("tables");
  learnSections(tables);
  const tree = async (kind, text) => (await engine.ask("read", 0, kind, kind, text)).written;
  const invented = {
    boat: [await tree("boat", heron)],
    sailor: [await tree("sailor", light), await tree("sailor", heavy)],
    day: [await tree("day", breeze)],
  };
  const store = await openStore(
    engine,
    invented,
    views.map((view) => view.name),
  );

  const page = { engine, tables, store, dayPin: lastDayPin(), learned: lastLearned() };
  /** A set as the texts that the engine reads, with what was learned; and the unit of speeds. */
  page.texts = (set) => ({
    ...Object.fromEntries(kinds.map((kind) => [kind, fileOf(set[kind])])),
    speed: store.state.speedUnit,
    learned: page.learned,
  });
  engine.prepare(fileOf(store.state.set.boat));
  const { main, say } = buildFrame(page, views);
  page.say = say;
  page.deskDays = openDeskDays(page);

  let shown = null;
  function show(state) {
    const view = views.find((one) => one.name === state.view);
    if (shown?.view !== view) {
      shown?.opened.close?.();
      main.replaceChildren(make("h1", { class: "unseen" }, view.title));
      shown = { view, opened: view.open(page, main) };
      document.title = `${view.title} · Lullwise`;
    }
    shown.opened.update(state);
  }
  store.onChange(show);
  store.setSpeedUnit(store.state.speedUnit); // everything once
}

offerInstall();
open().catch((error) => {
  document.body.append(
    make(
      "p",
      { class: "broken", role: "alert" },
      "This browser cannot run the engine of this page: it wants WebAssembly with SIMD and ",
      `DecompressionStream, as browsers since spring 2023 have. (${error.message})`,
    ),
  );
});
