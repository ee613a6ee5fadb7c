// sizes.mjs - fails on a function of more than 60 lines or with more than five parameters, and on a
// line of more than 100 columns.
// SPDX-License-Identifier: MIT
//
// Usage: node test/sizes.mjs <source folder>. Script is parsed; a function of C is what the
// formatter lays out as one: a brace by itself in the first column, the signature above it.

import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { parse } from "../web/node_modules/acorn/dist/acorn.mjs";

process.chdir(process.argv[2]);

const MOST_LINES = 60;
const MOST_PARAMETERS = 5;
const MOST_COLUMNS = 100;

/** [name, first line from 1, lines, parameters] of every function of a script. */
function functionsOfScript(text) {
  const found = [];
  function visit(node, name) {
    if (Array.isArray(node)) return node.forEach((one) => visit(one, name));
    if (typeof node?.type !== "string") return;
    const own = node.id?.name ?? node.key?.name ?? name;
    if (/Function/.test(node.type)) {
      const { start, end } = node.loc;
      found.push([own, start.line, end.line - start.line + 1, node.params.length]);
    }
    for (const inside of Object.values(node)) visit(inside, own);
  }
  visit(parse(text, { ecmaVersion: "latest", sourceType: "module", locations: true }), "");
  return found;
}

function functionsOfC(text) {
  const found = [];
  const lines = text.split("\n");
  // the last brackets of a signature hold its parameters; those inside hold a parameter's own
  const add = (first, signature, end) => {
    const [, name, inside] = /(\w+)\(((?:[^()]|\([^()]*\))*)\)$/.exec(signature);
    const parameters = inside.replace(/\([^()]*\)/g, "").split(",").length;
    found.push([name, first + 1, end - first + 1, parameters]);
  };
  for (const [i, line] of lines.entries()) {
    const oneLine = /^([a-zA-Z].*\)) \{.*\}$/.exec(line);
    if (oneLine) add(i, oneLine[1], i);
    if (line !== "{") continue;
    let first = i - 1;
    while (/^\s/.test(lines[first])) first--;
    const end = lines.findIndex((one, at) => at > i && one.startsWith("}"));
    const signature = lines.slice(first, i).map((one) => one.replace(/ *\/\/.*/, ""));
    add(first, signature.join(" "), end);
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
  let wide = 0;
  for (const file of names) {
    const text = readFileSync(file, "utf8");
    for (const [i, line] of text.split("\n").entries()) {
      const columns = [...line].length;
      if (columns > MOST_COLUMNS) fault(`${file}:${i + 1}`, `${columns} columns`);
    }
    for (const [name, line, lines, parameters] of functionsOf(text)) {
      sizes.push(lines);
      if (lines > MOST_LINES) fault(`${file}:${line}`, `${name} has ${lines} lines`);
      if (parameters <= MOST_PARAMETERS) continue;
      fault(`${file}:${line}`, `${name} has ${parameters} parameters`);
      wide++;
    }
  }
  sizes.sort((a, b) => a - b);
  const share = (part) => sizes[Math.floor(part * (sizes.length - 1))];
  console.log(
    `sizes: ${kind}: ${sizes.length} functions, median ${share(0.5)} lines, ` +
      `90 % ${share(0.9)}, most ${sizes.at(-1)}; ` +
      `${wide} with more than ${MOST_PARAMETERS} parameters`,
  );
}

look("script", files("*.js", "*.mjs"), functionsOfScript);
look("C", files("*.c", "*.h"), functionsOfC);
process.exit(faults ? 1 : 0);
