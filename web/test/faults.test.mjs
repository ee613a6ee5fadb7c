// faults.test.mjs - bad files dropped on the page: told as the command line tells them.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, settled, until } from "./browser.mjs";
import { lullwise } from "./desk.mjs";

const boat = await readFile(new URL("../../demo/heron.yaml", import.meta.url), "utf8");
const day = await readFile(new URL("../../demo/breeze.yaml", import.meta.url), "utf8");
const changed = (text, from, to) => {
  assert.match(text, from);
  return text.replace(from, to);
};

// Each differs from a sound file by one fault or a few.
const files = {
  "wrong-unit.yaml": changed(boat, /span: .*/, "span: 3 kg"),
  "no-unit.yaml": changed(boat, /span: .*/, "span: 0.9"),
  "out-of-range.yaml": changed(boat, /span: .*/, "span: 90 m"),
  "unknown-key.yaml": changed(boat, /span:/, "spam:"),
  "no-number.yaml": changed(day, /lull: .*/, "lull: a little"),
  "lull-over-puff.yaml": changed(day, /lull: .*/, "lull: 30 kn"),
  "twice.yaml": changed(day, /( *)(lull: .*)/, "$1$2\n$1$2"),
  "three-faults.yaml": changed(
    changed(changed(boat, /span: .*/, "span: 9 kg"), /chord: .*/, "chord: much"),
    /mass: .*/,
    "mass: -1 kg",
  ),
  "no-yaml.yaml": "boat: [1, 2\nday: {",
  "bad-letters.yaml": Buffer.from([0x62, 0x6f, 0x61, 0x74, 0x3a, 0x20, 0xff, 0xfe, 0x0a]),
  "empty.yaml": "",
  "something-else.yaml": "weather: fine\n",
  "too-long.yaml": `# ${"long ".repeat(250_000)}\n${day}`,
};

let browser, folder, page;
before(async () => {
  browser = await openBrowser();
  ({ page } = await openPage(browser, file));
  await settled(page);
  folder = await mkdtemp(join(tmpdir(), "lullwise-test-"));
});
after(async () => {
  await browser?.close();
  await rm(folder, { recursive: true });
});

/** Drops a file as a browser does; resolves to all that the page then tells. */
async function dropped(page, name, bytes) {
  await page.evaluate(
    ({ name, text }) => {
      const dataTransfer = new DataTransfer(),
        bytes = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
      dataTransfer.items.add(new File([bytes], name));
      dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
    },
    { name, text: bytes.toString("latin1") },
  );
  await until(
    () => page.evaluate((name) => document.querySelector(".told").textContent.includes(name), name),
    `words on ${name}`,
  );
  return page.locator(".told").textContent();
}

const plain = (text) => text.toLowerCase().replaceAll(/\s+/g, " ");

for (const [name, text] of Object.entries(files)) {
  test(`${name} is told on the page as on the command line, and changes nothing`, async () => {
    const bytes = Buffer.from(text);
    await writeFile(join(folder, name), bytes);
    const { status, stdout } = lullwise(["check", "--json", name], folder);
    assert.equal(status, 2, stdout);
    const { rows: faults } = JSON.parse(stdout).faults;
    assert.ok(faults.length > 0);

    const address = page.url();
    const told = plain(await dropped(page, name, bytes));
    for (const fault of faults) {
      const place = fault.line ? `${name}:${fault.line}:${fault.column}` : name;
      for (const words of [
        place,
        fault.key,
        fault.sentence,
        fault.read,
        fault.expected,
        fault.hint,
      ]) {
        if (words) assert.ok(told.includes(plain(words)), `"${words}" is missing in: ${told}`);
      }
    }
    assert.equal(page.url(), address);
  });
}
