// offline.test.mjs - the page that the desk served, while the desk is closed.
// SPDX-License-Identifier: MIT

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { openBrowser, openPage, settled, until } from "./browser.mjs";
import { openDesk } from "./desk.mjs";

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser?.close());

const ranks = (page) => page.locator(".ranking li").first().waitFor({ timeout: 60_000 });

test("the page answers while the desk is closed, and is fresh when it opens again", async () => {
  const desk = await openDesk();
  const { page, complaints, close } = await openPage(browser, desk.address);
  await ranks(page);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  assert.equal(await desk.close(), 0);
  await assert.rejects(fetch(desk.address));

  await page.reload();
  await ranks(page);
  await page.goto(`${desk.address}?from=elsewhere#flight`);
  await settled(page);
  assert.deepEqual(
    complaints.filter((one) => !one.includes("ERR_CONNECTION_REFUSED")),
    [],
  );

  const again = await openDesk(desk.port);
  const isAnswered = page.waitForResponse((one) => one.url() === desk.address && one.ok());
  await page.goto(desk.address);
  await isAnswered;
  await settled(page);
  await again.close();
  await close();
});

test("the page can be installed from the desk", async () => {
  const desk = await openDesk();
  const { page, close } = await openPage(browser, desk.address);
  await settled(page);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  const asked = await page.context().newCDPSession(page);
  await until(
    async () => (await asked.send("Page.getAppManifest")).url.endsWith("/app.webmanifest"),
    "a manifest",
  );
  assert.deepEqual((await asked.send("Page.getAppManifest")).errors, []);
  const { installabilityErrors } = await asked.send("Page.getInstallabilityErrors");
  assert.deepEqual(
    installabilityErrors.filter((one) => one.errorId !== "in-incognito"),
    [],
  ); // as tests are
  await close();
  await desk.close();
});
