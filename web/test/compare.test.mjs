// compare.test.mjs - the view Compare in Chromium: what differs, answers, links, files, stopping.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { file, openBrowser, openPage, sizes, until } from "./browser.mjs";
import { lullwise } from "./desk.mjs";

const address = new URL("../../build/page/lullwise.html", import.meta.url).href;
const demo = new URL("../../demo/", import.meta.url);
let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

const best = (page) => page.locator(".best").innerText();
const isCurrent = (page) =>
  page.locator(".answers[aria-busy=false] .sides").first().waitFor({ timeout: 120_000 });

const isAlike = (page) => page.locator(".answers").getByText("Nothing differs").waitFor();

async function openCompare(words, size) {
  const opened = await openPage(browser, `${address}#compare${words}`, size);
  await (words ? isCurrent : isAlike)(opened.page);
  return opened;
}

for (const [name, size] of Object.entries({ ...sizes, narrow: { width: 320, height: 640 } })) {
  test(`on a ${name} screen a heavier sailor stands beside the present one`, async () => {
    const { page, complaints, close } = await openCompare("?with.sailor.person.mass=84+kg", size);
    assert.match(await best(page), /Takes off at [\d.]+ kn, [\d.]+ kn later/);
    assert.equal(await page.locator(".changes .change").count(), 1);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
    assert.deepEqual(complaints, []);
    await close();
  });
}

test("the sentences are those of the command line", async () => {
  const { page, close } = await openCompare("?with.sailor.person.mass=84+kg");
  const files = { boat: "heron", sailor: "light", day: "breeze" };
  const words = Object.entries(files).flatMap(([kind, name]) => [
    `--${kind}`,
    new URL(`${name}.yaml`, demo).pathname,
  ]);
  const { stdout } = lullwise(["pick", ...words, "--against", "person.mass=84 kg"]);
  const printed = stdout.split("What the change does")[1].replace(/\s+/g, " ");
  for (const line of await page.locator(".best li").allInnerTexts())
    assert.ok(printed.includes(line), `${line}\n${printed}`);
  await close();
});

test("a line changed in a field is in the address, and taken back nothing differs", async () => {
  const { page, close } = await openCompare("");
  assert.equal(await page.locator("progress").isVisible(), false);
  await page.getByRole("button", { name: "Longer wand" }).click();
  await until(
    () => /with\.boat\.linkage\.wand_length=1\.2\+m/.test(page.url()),
    "the wand in the address",
  );
  await isCurrent(page);
  const told = await best(page);
  const { page: other, close: closeOther } = await openCompare(page.url().split("#compare")[1]);
  assert.equal(await best(other), told);
  await closeOther();
  await page.getByRole("button", { name: /^Take back/ }).click();
  await until(() => !/with\./.test(page.url()), "an address without changes");
  await isAlike(page);
  await close();
});

test("what differs is reached by undo and redo, as any edit", async () => {
  const { page, close } = await openCompare("");
  await page.getByRole("button", { name: "Heavier sailor" }).click();
  await until(
    () => /with\.sailor\.person\.mass=74\+kg/.test(page.url()),
    "the mass in the address",
  );
  await page.getByRole("button", { name: "Longer wand" }).click();
  await until(() => /with\.boat/.test(page.url()), "the wand in the address");
  await page.getByRole("button", { name: "Undo" }).click();
  await until(
    () => !/with\.boat/.test(page.url()) && /with\.sailor/.test(page.url()),
    "the wand undone alone",
  );
  await page.getByRole("button", { name: "Undo" }).click();
  await until(() => !/with\./.test(page.url()), "all undone");
  await page.getByRole("button", { name: "Redo" }).click();
  await until(() => /with\.sailor/.test(page.url()), "the mass again");
  await close();
});

test("two pins of one boat stand side by side", async () => {
  const { page, close } = await openCompare("?pin-now=A&pin-then=D");
  assert.match(await best(page), /Pin A as it is beside pin D changed/);
  await page.getByLabel("Pin, changed").selectOption("C");
  await until(async () => /beside pin C changed/.test(await best(page)), "the other pin");
  await close();
});

test("another boat's file is compared with, a faulty one is told and changes nothing", async () => {
  const { page, close } = await openCompare("");
  const heron = await readFile(new URL("heron.yaml", demo), "utf8");
  const file = (buffer) => ({
    name: "other.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from(buffer),
  });
  await page
    .getByLabel("A file to compare with")
    .setInputFiles(file(heron.replace("span: 96 cm", "span: 96 kg")));
  await page.getByText(/other\.yaml:\d+ main_foil\.span/).waitFor();
  assert.ok(!/with\./.test(page.url()));
  await page
    .getByLabel("A file to compare with")
    .setInputFiles(
      file(
        heron
          .replace("span: 96 cm", "span: 110 cm")
          .replace("name: Grey Heron", "name: White Heron"),
      ),
    );
  await until(
    () => /with\.boat\.main_foil\.span=110\+cm/.test(page.url()),
    "the foil in the address",
  );
  await isCurrent(page);
  assert.equal(
    await page
      .getByLabel("Another boat")
      .evaluate((select) => select.selectedOptions[0].textContent),
    "White Heron (invented)",
  );
  await close();
});

test("long work can be stopped, and begun again", async () => {
  const { page, close } = await openCompare("");
  await page.getByRole("button", { name: "Heavier sailor" }).click();
  await page.getByRole("button", { name: "Stop" }).click();
  await page.getByRole("button", { name: "Work it out" }).click();
  await isCurrent(page);
  assert.match(await best(page), /later/);
  await close();
});

test("on a phone the answer stays in sight while one edits, and says when it is old", async () => {
  const { page, complaints, close } = await openPage(browser, `${file}#compare`, sizes.phone);
  const line = page.locator(".answer-line p");
  await until(async () => /Nothing differs/.test(await line.textContent()), "nothing differs");
  await page.getByRole("button", { name: "Heavier sailor" }).click();
  await until(async () => /Working/.test(await line.textContent()), "working");
  const first = page.locator(".best li").first();
  const isCurrent = async () => (await line.textContent()) === (await first.textContent());
  await until(async () => (await first.count()) > 0 && (await isCurrent()), "the answer");
  const field = page.locator(".change input").first();
  await field.fill("77");
  assert.match(await line.textContent(), /Working/);
  const at = await line.evaluate((one) => one.getBoundingClientRect().toJSON());
  assert.ok(at.top >= 0 && at.bottom < sizes.phone.height, "in sight");
  await field.press("Enter");
  await until(isCurrent, "the next answer");
  assert.match(await page.locator(".best").textContent(), /sooner|later/);
  assert.deepEqual(complaints, []);
  await close();
});

// At once when the buttons are there, while the view still reads what it begins with.
test("two lines changed one right after the other both stay", async () => {
  for (let i = 0; i < 5; i++) {
    const { page, close } = await openPage(browser, `${file}#compare`);
    await page.getByRole("button", { name: "Longer wand" }).waitFor();
    await page.evaluate(() => {
      for (const name of ["Longer wand", "More gearing"])
        [...document.querySelectorAll(".often button")]
          .find((one) => one.textContent === name)
          .click();
    });
    await until(
      () => /with\.boat\.linkage\.wand_length/.test(page.url()) && /gearing/.test(page.url()),
      "both in the address",
      20_000,
    );
    await close();
  }
});
