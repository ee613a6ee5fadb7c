// bounds.js - how far a number may be stepped: its row's range, and neighbours it must not pass.
// SPDX-License-Identifier: MIT

const valueAt = (values, path) => path.split(".").reduce((at, key) => at?.[key], values);

// Those between which a number must stay: [[value, may be alike]] below it, and above it.
function neighbours({ orders, sections }, values, path) {
  const [key, label] = [path.split(".")[0], path.split(".").slice(1).join(".")];
  if (sections.find(({ table }) => table.key === key).kind === "labelled") {
    const at = values[key].findIndex((one) => one.label === label); // the greatest first
    const alone = (one) => (one ? [[one.value, false]] : []);
    return { below: alone(values[key][at + 1]), above: alone(values[key][at - 1]) };
  }
  const told = orders.filter(
    ({ greater, zero_is_none }) => !zero_is_none || greater === path || valueAt(values, greater),
  );
  const side = (mine, other) =>
    told
      .filter((order) => order[mine] === path)
      .map((order) => [valueAt(values, order[other]), order.may_be_alike]);
  return { below: side("greater", "lesser"), above: side("lesser", "greater") };
}

/** { least, most } of a row at a path, in SI; values: of its record, in SI. */
export function boundsOf(record, values, path, row) {
  const { below, above } = neighbours(record, values, path);
  const apart = row.in_si * 10 ** -row.decimals;
  const gap = (isAlike) => (isAlike ? 0 : apart);
  return {
    least: Math.max(row.min * row.in_si, ...below.map(([si, isAlike]) => si + gap(isAlike))),
    most: Math.min(row.max * row.in_si, ...above.map(([si, isAlike]) => si - gap(isAlike))),
  };
}

/** A number a step further, so many digits behind the point, within bounds in its own unit. */
export function stepped(was, by, [least, most], digits) {
  const unit = 10 ** digits;
  const low = Math.ceil(least * unit - 1e-6) / unit;
  const high = Math.floor(most * unit + 1e-6) / unit;
  const next = Math.round(Math.min(Math.max(was + by, low), high) * unit) / unit;
  return (next - was) * by > 0 ? next : was;
}
