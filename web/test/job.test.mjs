// job.test.mjs - the main job on a phone, from a blank page to a choice and its files.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, settled, sizes, until } from "./browser.mjs";
import { lullwise } from "./desk.mjs";

let browser, folder;
before(async () => {
  browser = await openBrowser();
  folder = await mkdtemp(join(tmpdir(), "lullwise-test-"));
});
after(async () => {
  await browser?.close();
  await rm(folder, { recursive: true });
});

async function type(page, label, text) {
  const field = page.getByLabel(label);
  await field.fill(text);
  await field.press("Enter");
}

/** Saves a record by the page's button; where it lies. */
async function saved(page, kind) {
  const button = page.getByRole("button", { name: `Save the ${kind}` });
  if (!(await button.isVisible())) await page.locator(".tools > summary").click();
  const [download] = await Promise.all([page.waitForEvent("download"), button.click()]);
  await download.saveAs(join(folder, `${kind}.yaml`));
}

test("what is typed on a phone is saved, and answered alike by the command line", async () => {
  const { page, complaints, close } = await openPage(browser, file, sizes.phone, {
    acceptDownloads: true,
  });
  await settled(page);
  await page.locator(".fold > summary").click();
  for (const [label, text] of [
    ["Lull in kn", "11"],
    ["Mean in kn", "13,5"],
    ["Puff in kn", "17"],
    ["Mass in kg", "78"],
  ])
    await type(page, label, text);
  await until(async () => /sailor\.person\.mass=78/.test(page.url()), "the mass in the address");
  await settled(page);
  for (const kind of ["boat", "sailor", "day"]) await saved(page, kind);

  const { status, stdout, stderr } = lullwise(
    ["pick", "--json", "--boat", "boat.yaml", "--sailor", "sailor.yaml", "--day", "day.yaml"],
    folder,
  );
  assert.equal(status, 0, stderr);
  const {
    why: { rows },
    wind,
  } = JSON.parse(stdout);
  assert.deepEqual([wind.lull, wind.mean, wind.puff], [11, 13.5, 17]);
  assert.match(await readFile(join(folder, "sailor.yaml"), "utf8"), /mass: *78(\.0)? kg/);
  const told = await page.locator(".ranking li").allTextContents();
  assert.equal(told.length, rows.length);
  rows.forEach(({ pin, sentence }, i) =>
    assert.ok(
      told[i].startsWith(pin) && told[i].includes(sentence.slice(pin.length + 1)),
      `${told[i]}\n${sentence}`,
    ),
  );
  assert.deepEqual(complaints, []);
  await close();
});
