// history.js - a ride as the engine hands it over: its columns, its swims, any moment of it.
// SPDX-License-Identifier: MIT

/** Seconds, columns, moments of `history`, beside what is told and drawn; rows: of the trace. */
export function opened(answer, rows) {
  const { history, width, every } = answer.drawn,
    events = answer.events.rows,
    count = history.length / width;
  const column = (key) => {
    const at = rows.findIndex((row) => row.key === key);
    return Float64Array.from({ length: count }, (_, i) => history[i * width + at]);
  };
  const swims = [];
  for (const { what, is_swim, time } of events) {
    if (is_swim) swims.push([time, (count - 1) * every]);
    else if (what === "again" && swims.length) swims.at(-1)[1] = time;
  }
  // Between two rows straight on; not across a fall, where one jumps into the water.
  function moment(time) {
    const part = Math.min(time / every, count - 1),
      from = Math.min(Math.floor(part + 1e-9), count - 2);
    const jumps = events.some(
      ({ is_swim, time: at }) => is_swim && at > from * every && at <= (from + 1) * every + 1e-9,
    );
    const share = jumps ? 0 : part - from;
    const value = (j) =>
      history[from * width + j] * (1 - share) + history[(from + 1) * width + j] * share;
    const now = Object.fromEntries(rows.map((row, j) => [row.key, value(j)]));
    return {
      ...now,
      water: Array.from({ length: width - rows.length }, (_, j) => value(rows.length + j)),
    };
  }
  return {
    told: answer,
    ...answer.drawn,
    events,
    seconds: (count - 1) * every,
    swims,
    column,
    moment,
  };
}
