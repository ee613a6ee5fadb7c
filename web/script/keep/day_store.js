// day_store.js - one logged day as a store for form fields: what they change goes to the page's.
// SPDX-License-Identifier: MIT

import { dateHere } from "../base/clock.js";
import { LOG } from "../base/kinds.js";
import { daysOf, treeOf } from "./days.js";
import { faultsAt } from "./settle.js";

// How `lullwise log edit` is told of a column; "": it is not told any more.
function optionsFor(path, text) {
  const told = text.trim() || "none";
  if (path === "notes") return { notes: text };
  if (path === "signs") return { sign: told.split(" ") };
  return ["date", "pin"].includes(path) ? { [path]: told } : { set: `${path}=${told}` };
}

/** { page, show(values) }: `page` is for fields of the kind LOG. */
export function openDayStore(page, id) {
  const now = { values: { [LOG]: {} }, doubts: { [LOG]: [] } };
  const refused = new Map(); // by path { text, faults }

  const changed = (path, text) => {
    const days = daysOf(page.store.state);
    return page.engine.ask("log change", days, dateHere(), id, optionsFor(path, text));
  };

  async function take(path, text) {
    const { is_sound, faults, days } = await changed(path, text);
    now.doubts[LOG] = is_sound ? faults : [];
    if (!is_sound) {
      const own = faultsAt({ faults }, path);
      refused.set(path, { text, faults: own });
      return own;
    }
    refused.delete(path);
    await page.store.keepDays([{ id, tree: treeOf(days[0]) }]);
    return faults;
  }

  let turn = Promise.resolve();
  const store = {
    get state() {
      return { ...page.store.state, ...now };
    },
    refusedAt: (kind, path) => refused.get(path),
    trial: async (kind, path, text) => (await changed(path, text)).faults,
    put: (kind, path, text) => (turn = turn.then(() => take(path, text))),
  };
  return {
    page: { ...page, store },
    show(values) {
      now.values = { [LOG]: values };
    },
  };
}
