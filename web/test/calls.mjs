// calls.mjs - the page's calls of the engine, played natively and in the page itself.
// SPDX-License-Identifier: MIT
//
// A call: { call: "read", record, name, text }, { call: "fly", asked: seven numbers },
// { call: "ride", asked: eight numbers } or { call: "choice" }. Each hands over a parcel, of which
// the hash is taken.

import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const native =
  process.env.LW_PAGE_CALLS ??
  fileURLToPath(new URL("../../build/release/page_calls", import.meta.url));

function lineOf(call) {
  if (call.call === "choice") return Buffer.from("choice\n");
  // of a number the shortest text that reads back
  if (call.asked) return Buffer.from(`${call.call} ${call.asked.join(" ")}\n`);
  const body = Buffer.from(`${call.name}\0${call.text}`);
  return Buffer.concat([
    Buffer.from(`read ${call.record} ${body.length}\n`),
    body,
    Buffer.from("\n"),
  ]);
}

/** The hashes of the tables and of each call, by the native program. */
export async function playNatively(calls) {
  const player = spawn(native, [], { stdio: ["pipe", "pipe", "inherit"] });
  player.stdin.end(Buffer.concat(calls.map(lineOf)));
  let said = "";
  for await (const part of player.stdout) said += part;
  return said.trim().split("\n");
}

// Runs in the page: the module that lies in it, by the script that the page's workers run.
const player = `
  import { engineIn } from "./engine/module.js";
  import { moduleFrom } from "./engine/engine.js";
  let engine;
  function hash({ calls }) {
    const start = calls.lw_web_parcel(), length = calls.lw_web_parcel_length();
    const bytes = new Uint8Array(calls.memory.buffer, start, length);
    let high = 0xcbf29ce4, low = 0x84222325; // FNV-1a, 64 bits, in halves: times 2^40 + 0x1b3
    for (const byte of bytes) {
      low = (low ^ byte) >>> 0;
      const product = low * 0x1b3;
      high = (Math.imul(high, 0x1b3) + Math.floor(product / 2 ** 32) + (low << 8)) >>> 0;
      low = product >>> 0;
    }
    return high.toString(16).padStart(8, "0") + low.toString(16).padStart(8, "0");
  }
  function play({ call, record, name, text, asked }) {
    if (call === "read") engine.read(0, ["boat", "sailor", "day"][record], name, text);
    else if (asked) { engine.put(asked); engine.ask(call, 0); }
    else {
      const { is_taken } = engine.question(0, "pick");
      for (let step = 0; is_taken && step < engine.askSteps(0); step++) engine.askStep(0, step);
      if (is_taken) engine.ask("ask_tell", 0);
    }
    return hash(engine);
  }
  globalThis.openPlayer = async () => {
    engine = await engineIn(await moduleFrom(document.getElementById("engine").textContent));
    engine.ask("tables");
    return hash(engine);
  };
  globalThis.playCalls = (calls) => calls.map(play);
`;

/** The same, by the page's own module in the page's browser; some calls at a time. */
export async function playInPage(page, calls) {
  const resolveDir = fileURLToPath(new URL("../script", import.meta.url));
  const { outputFiles } = await build({
    stdin: { contents: player, resolveDir },
    bundle: true,
    write: false,
    format: "iife",
  });
  await page.evaluate(outputFiles[0].text);
  const hashes = [await page.evaluate(() => globalThis.openPlayer())];
  for (let i = 0; i < calls.length; i += 100) {
    hashes.push(
      ...(await page.evaluate((some) => globalThis.playCalls(some), calls.slice(i, i + 100))),
    );
  }
  return hashes;
}
