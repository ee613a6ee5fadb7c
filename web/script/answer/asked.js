// asked.js - what is asked of a flight or a ride, as the address has it: in the sailor's units.
// SPDX-License-Identifier: MIT

import { DEG } from "../base/drawing.js";
import { KNOT } from "../base/number.js";

/** Winds of a range, LW_RANGE_FIRST_KN and the next 30; headings; both in SI. */
export const WINDS = { low: 4 * KNOT, high: 34 * KNOT };
export const HEADINGS = { low: 30 * DEG, high: 180 * DEG };

const units = { kn: KNOT, "m/s": 1, deg: DEG, m: 1, turns: 1 };
const unitOf = { wind: "kn", heading: "deg", heel: "deg", place: "m", turns: "turns" };

/** "12 kn" in SI; null for what is no number with a unit. */
export function fromWords(text) {
  const [, number, unit] = /^([-\d.]+) ?([a-z/]+)$/.exec(text ?? "") ?? [];
  const si = Number(number) * units[unit];
  return Number.isFinite(si) ? si : null;
}

/** The words of a number asked for; null for what is left open. */
export const toWords = (key, si) =>
  si === null ? null : `${Number((si / units[unitOf[key]]).toFixed(3))} ${unitOf[key]}`;
