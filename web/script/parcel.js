// parcel.js - reads what a call of the engine hands over (web/parcel.h) as plain objects.
// SPDX-License-Identifier: MIT

const utf8 = new TextDecoder();

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

  function value(letter) {
    if (letter === "t") return text();
    if (letter === "b") return bytes[at++] !== 0;
    if (letter === "o") return inside({}, (object, key, member) => (object[key] = member));
    if (letter === "l") return inside([], (list, key, member) => list.push(member));
    at += 8;
    return view.getFloat64(at - 8, true);
  }

  function inside(whole, add) {
    while (at < bytes.length) {
      const letter = String.fromCharCode(bytes[at++]);
      if (letter === "e") break;
      const key = text();
      add(whole, key, value(letter));
    }
    return whole;
  }

  return inside({}, (object, key, member) => (object[key] = member));
}
