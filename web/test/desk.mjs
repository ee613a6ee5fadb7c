// desk.mjs - the lullwise program for tests of the page: run to its end, or as a desk.
// SPDX-License-Identifier: MIT

import { spawn, spawnSync } from "node:child_process";
import { createServer } from "node:net";
import { fileURLToPath } from "node:url";

const program =
  process.env.LW_PROGRAM ?? fileURLToPath(new URL("../../build/release/lullwise", import.meta.url));

/** Runs `lullwise WORDS` in a folder: { status, stdout, stderr }. */
export const lullwise = (words, cwd) => spawnSync(program, words, { cwd, encoding: "utf8" });

const demo = (name) => fileURLToPath(new URL(`../../demo/${name}.yaml`, import.meta.url));

/** What the program tells of the demo day with some values changed, as ["wind.mean=15 kn"]. */
export function pickedByProgram(changes = []) {
  const files = ["--boat", demo("heron"), "--sailor", demo("light"), "--day", demo("breeze")];
  const sets = changes.flatMap((change) => ["--set", change]);
  const { status, stdout, stderr } = lullwise(["pick", "--json", ...files, ...sets]);
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout);
}

function freePort() {
  return new Promise((on, fail) => {
    const server = createServer()
      .once("error", fail)
      .listen(0, "127.0.0.1", () => {
        const { port } = server.address();
        server.close(() => on(port));
      });
  });
}

/** A desk on a free port, or on the one given, with a logbook: { address, port, close }. */
export async function openDesk(port, logbook = "/dev/null/no.db") {
  port ??= await freePort();
  const words = ["desk", "--no-browser", "--port", `${port}`, "--logbook", logbook];
  const process = spawn(program, words, { stdio: ["ignore", "pipe", "inherit"] });
  const ended = new Promise((on) => process.once("exit", on));
  const isOpen = await Promise.race([ended.then(() => false), answers(port)]);
  if (!isOpen) throw new Error("the desk did not open");
  return {
    port,
    address: `http://127.0.0.1:${port}/`,
    async close() {
      process.kill("SIGINT");
      return ended;
    },
  };
}

async function answers(port) {
  for (let i = 0; i < 200; i++) {
    try {
      return (await fetch(`http://127.0.0.1:${port}/icon.svg`)).ok;
    } catch {
      await new Promise((on) => setTimeout(on, 50));
    }
  }
  return false;
}
