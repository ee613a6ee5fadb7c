// clock.js - date and time, by the clock here.
// SPDX-License-Identifier: MIT

const two = (number) => String(number).padStart(2, "0");

/** "2026-11-29". */
export const dateHere = (date = new Date()) =>
  [date.getFullYear(), two(date.getMonth() + 1), two(date.getDate())].join("-");

/** "2026-11-29 09:30". */
export const dateAndTime = (date = new Date()) =>
  `${dateHere(date)} ${two(date.getHours())}:${two(date.getMinutes())}`;
