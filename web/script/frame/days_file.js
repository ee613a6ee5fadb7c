// days_file.js - logged days as a file: saved as `lullwise log export` writes them, and taken in.
// SPDX-License-Identifier: MIT

import { faultLines } from "../answer/fault_lines.js";
import { drawTold } from "../answer/told.js";
import { dateHere } from "../base/clock.js";
import { LOG } from "../base/kinds.js";
import { saveAs } from "../base/save.js";
import { isAlike } from "../base/tree.js";
import { daysInFile, fileOfDays, treeOf } from "../keep/days.js";

export function offerDays(page) {
  const text = fileOfDays(page.tables.log, page.store.state.kept[LOG]);
  saveAs(`days-${dateHere()}.json`, text, "application/json");
}

// All days of a file as the engine reads them: { is_sound, faults, days }.
async function read({ engine, tables }, text) {
  const today = dateHere();
  if (!text.trimStart().startsWith("{")) return engine.ask("log csv", today, text);
  const all = { is_sound: true, faults: [], days: [] };
  for (const [i, fields] of daysInFile(tables.log, text).entries()) {
    const { is_sound, faults, days } = await engine.ask("log read", today, fields);
    all.is_sound &&= is_sound;
    all.faults.push(...faults.map((fault) => ({ ...fault, line: i + 1 })));
    all.days.push(...days);
  }
  return all;
}

// Adds those whose id is not there; counts the others.
async function add({ store }, come) {
  const kept = new Map(store.state.kept[LOG].map(({ id, tree }) => [id, tree]));
  const fresh = new Map();
  const count = { added: 0, known: 0, different: 0 };
  for (const day of come) {
    const tree = treeOf(day);
    const twin = kept.get(day.id);
    if (!twin) fresh.set(day.id, { id: day.id, tree });
    else {
      count.known++;
      if (!isAlike(twin, tree)) count.different++;
    }
  }
  if (fresh.size) await store.keepDays([...fresh.values()]);
  return { ...count, added: fresh.size };
}

/** Takes a file in, all of it or nothing; place: where days are kept. Elements that tell it. */
export async function takeDays(page, file, place) {
  const { engine, tables } = page;
  const refused = (faults) => faultLines(`${file.name}: nothing was taken`, faults);
  if (file.size > tables.log.most) return refused([{ sentence: "the file is too long" }]);
  try {
    const { is_sound, faults, days } = await read(page, await file.text());
    if (!is_sound) return refused(faults.filter((fault) => !fault.is_doubt));
    return drawTold(await engine.ask("log imported", place, await add(page, days))).flat(9);
  } catch (error) {
    return refused([{ sentence: error.message }]);
  }
}
