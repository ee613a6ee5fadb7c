// parcel.js - reads what a call of the engine hands over (answer/parcel.h) as plain objects.
// SPDX-License-Identifier: MIT

const utf8 = new TextDecoder();

/** Under it an object keeps how its members are told: a Map from key to { head, shown }. */
export const TOLD = Symbol("told");
/** So is marked a row that nobody is shown. */
export const HIDDEN = Symbol("hidden");

/** @param {Uint8Array} bytes one parcel */
export function unpack(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 0;

  function text() {
    const end = bytes.indexOf(0, at);
    const read = utf8.decode(bytes.subarray(at, end));
    at = end + 1;
    return read;
  }

  function number() {
    at += 8;
    const read = view.getFloat64(at - 8, true);
    return Number.isNaN(read) ? null : read;
  }

  function array() {
    const start = at + 8,
      end = start + 8 * number();
    at = end;
    return new Float64Array(bytes.slice(start, end).buffer);
  }

  const values = {
    a: array,
    t: text,
    n: number,
    b: () => bytes[at++] !== 0,
    z: () => null,
    o: () => inside({}, (object, key, member) => (object[key] = member)),
    l: () => inside([], (list, key, member) => list.push(member)),
  };

  function inside(whole, add) {
    while (at < bytes.length) {
      const letter = String.fromCharCode(bytes[at++]);
      if (letter === "e") break;
      const key = text(),
        kind = letter.toLowerCase();
      const isTold = kind !== letter;
      const head = isTold && bytes[at++] ? text() : null;
      const shown = isTold && kind === "n" ? text() : null;
      const member = values[kind]();
      if (isTold && key) (whole[TOLD] ??= new Map()).set(key, { head, shown });
      if (isTold && !key && kind === "o" && head === null) member[HIDDEN] = true;
      add(whole, key, member);
    }
    return whole;
  }

  return values.o();
}
