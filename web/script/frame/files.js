// files.js - boat, sailor and day files: opened with the command line's messages, and saved.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";
import { sentenceOf } from "../form/field.js";
import { kinds } from "../base/kinds.js";
import { saveAs } from "../base/save.js";

const MOST = 1e6; // [bytes] LW_FILE_MOST

const place = (name, fault) =>
  [name, fault.line || null, fault.column || null].filter((x) => x !== null).join(":");

function told(name, answer) {
  const lines = answer.faults.map((fault) =>
    make(
      "li",
      {},
      make("code", {}, place(name, fault)),
      " ",
      fault.key && make("b", {}, fault.key),
      " ",
      fault.is_doubt ? "unusual: " : "",
      sentenceOf(fault),
      fault.read && make("span", {}, "; read: ", make("q", {}, fault.read)),
    ),
  );
  const head = answer.is_sound
    ? `${name}: taken as ${answer.record}; look at what is unusual.`
    : `${name}: not taken, nothing was changed.`;
  return make("div", {}, make("h2", {}, head), make("ul", {}, lines));
}

async function takeFile(page, file) {
  const refuse = (why) => make("h2", {}, `${file.name}: ${why}`);
  if (file.size > MOST) return refuse("the file is too long: 1 MB is the most");
  const bytes = new Uint8Array(await file.arrayBuffer()); // the engine tells what is no UTF-8
  const answer = await page.engine.ask("read", 1, null, file.name, bytes);
  if (answer.is_sound) await page.store.add(answer.record, answer.written);
  if (answer.is_sound && !answer.faults.length) return null;
  return told(file.name, answer);
}

export async function takeFiles(page, files, say) {
  const lines = [];
  for (const file of files) lines.push(await takeFile(page, file));
  say.faults(...lines.filter((line) => line));
  say.status(
    `${files.map((file) => file.name).join(", ")}: ${lines.some((l) => l) ? "see above" : "taken"}`,
  );
}

export async function offerFile(page, kind) {
  const { set } = page.store.state;
  const text = await page.engine.ask("write", 0, page.texts(set), kind);
  const name = (set[kind].name ?? kind)
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  saveAs(`${name || kind}.yaml`, text, "text/yaml");
}

/** Boat, sailor and day, a file each. */
export async function saveAll(page) {
  for (const kind of kinds) await offerFile(page, kind);
}
