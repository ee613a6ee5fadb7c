// address.js - behind the # of the address: view, unit, a view's own words, what differs.
// SPDX-License-Identifier: MIT

import { kinds } from "../base/kinds.js";
import { differences } from "../base/tree.js";

/** { view, changed, more, speedUnit, hasQuery }; changed: [path, text] by kind. */
export function readAddress() {
  const [view, query = ""] = location.hash.slice(1).split("?");
  const changed = {};
  const more = {};
  let speedUnit = null;
  for (const [key, text] of new URLSearchParams(query)) {
    const [first] = key.split(".");
    if (kinds.includes(first) && key.includes("."))
      (changed[first] ??= []).push([key.slice(first.length + 1), text]);
    else if (key === "speed") speedUnit = text;
    else more[key] = text;
  }
  return { view, changed, more, speedUnit, hasQuery: query !== "" };
}

/** start: the trees that a link's differences are told from. */
export function addressOf(state, start) {
  const query = new URLSearchParams();
  if (state.speedUnit !== "kn") query.set("speed", state.speedUnit);
  for (const [key, text] of Object.entries(state.more)) if (text !== null) query.set(key, text);
  for (const kind of kinds) {
    for (const [path, text] of differences(state.set[kind], start[kind]))
      query.append(`${kind}.${path}`, text);
  }
  const words = query.toString();
  return `#${state.view}${words ? `?${words}` : ""}`;
}
