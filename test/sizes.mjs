// sizes.mjs - fails on a function of more than 60 lines or a line of more than 100 columns.
// SPDX-License-Identifier: MIT
//
// Usage: node test/sizes.mjs <source folder>. Script is parsed; a function of C is what the
// formatter lays out as one: a brace by itself in the first column, the signature above it.

import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { parse } from "../web/node_modules/acorn/dist/acorn.mjs";

process.chdir(process.argv[2]);

const MOST_LINES = 60;
const MOST_COLUMNS = 100;

/** [name, first line, lines] of every function of a script, counted from 1. */
function functionsOfScript(text) {
  const found = [];
  function visit(node, name) {
    if (Array.isArray(node)) return node.forEach((one) => visit(one, name));
    if (typeof node?.type !== "string") return;
    const own = node.id?.name ?? node.key?.name ?? name;
    if (/Function/.test(node.type)) {
      const { start, end } = node.loc;
      found.push([own, start.line, end.line - start.line + 1]);
    }
    for (const inside of Object.values(node)) visit(inside, own);
  }
  visit(parse(text, { ecmaVersion: "latest", sourceType: "module", locations: true }), "");
  return found;
}

function functionsOfC(text) {
  const found = [];
  const lines = text.split("\n");
  for (const [i, line] of lines.entries()) {
    const oneLine = /^[a-zA-Z].*\b(\w+)\(.*\) \{.*\}$/.exec(line);
    if (oneLine) found.push([oneLine[1], i + 1, 1]);
    if (line !== "{") continue;
    let first = i - 1;
    while (/^\s/.test(lines[first])) first--;
    const end = lines.findIndex((one, at) => at > i && one.startsWith("}"));
    found.push([/(\w+)\(/.exec(lines[first])?.[1], first + 1, end - first + 1]);
  }
  return found;
}

const files = (...kinds) =>
  execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard", ...kinds], {
    encoding: "utf8",
  })
    .split("\n")
    .filter((name) => name !== "" && existsSync(name));

let faults = 0;
const fault = (where, what) => {
  console.log(`sizes: ${where}: ${what}`);
  faults++;
};

function look(kind, names, functionsOf) {
  const sizes = [];
  for (const file of names) {
    const text = readFileSync(file, "utf8");
    for (const [i, line] of text.split("\n").entries()) {
      const columns = [...line].length;
      if (columns > MOST_COLUMNS) fault(`${file}:${i + 1}`, `${columns} columns`);
    }
    for (const [name, line, lines] of functionsOf(text)) {
      sizes.push(lines);
      if (lines > MOST_LINES) fault(`${file}:${line}`, `${name} has ${lines} lines`);
    }
  }
  sizes.sort((a, b) => a - b);
  const share = (part) => sizes[Math.floor(part * (sizes.length - 1))];
  console.log(
    `sizes: ${kind}: ${sizes.length} functions, median ${share(0.5)} lines, ` +
      `90 % ${share(0.9)}, most ${sizes.at(-1)}`,
  );
}

look("script", files("*.js", "*.mjs"), functionsOfScript);
look("C", files("*.c", "*.h"), functionsOfC);
process.exit(faults ? 1 : 0);
