// range_chart.js - from what wind each pin flies, up to what wind she is held, with the day's band.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";
import { onWidth, picture } from "../base/picture.js";

const limits = ["launches_at", "stays_up_at", "held_up_to"];

/** rows: [{ label, limits }]; limits and gusts as told. Drawn once it is on the page. */
export function rangeChart({ engine, store }, rows, gusts) {
  const element = make("div", { class: "range" });
  const asked = {
    winds: [gusts.lull, gusts.mean, gusts.puff],
    bars: rows.map((row) => limits.map((key) => row.limits[key] ?? 0)),
    labels: rows.map(({ label }) => label),
  };
  onWidth(element, async (width) => {
    const speed = { speed: store.state.speedUnit };
    const { picture: drawn } = await engine.ask("chart", 0, speed, { ...asked, width });
    element.replaceChildren(picture("", drawn));
  });
  return element;
}
