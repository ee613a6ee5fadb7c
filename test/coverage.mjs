// coverage.mjs - which lines the tests reached, as one table; the least reached files below it.
// SPDX-License-Identifier: MIT
//
// Usage: node test/coverage.mjs <source folder> <coverage build>
//
// A line of a header that is compiled into several files is reached when it is in one of them.

import { execFileSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { gunzipSync } from "node:zlib";

const [source, build] = process.argv.slice(2).map((folder) => resolve(folder));
const FLOORS = /^(engine|records|answer|picture|sweep|desk|command|ranks|web)\//;
const LEAST_SHOWN = 15;
const WANTED = 95; // per cent, of engine and readers

const counted = readdirSync(build, { recursive: true }).filter(
  (name) => name.endsWith(".gcda") && /\/(lullwise|page_calls)/.test("/" + name),
);

/** file -> line -> whether it was reached */
const files = new Map();

function take(file, lines) {
  const name = relative(source, resolve(build, file));
  if (!FLOORS.test(name)) return;
  const known = files.get(name) ?? files.set(name, new Map()).get(name);
  for (const line of lines) {
    known.set(line.line_number, (known.get(line.line_number) ?? false) || line.count > 0);
  }
}

for (const name of counted) {
  const options = { cwd: build, maxBuffer: 1 << 30 };
  const told = execFileSync("gcov", ["--json-format", "--stdout", join(build, name)], options);
  const text = told[0] === 0x1f ? gunzipSync(told).toString() : told.toString();
  for (const one of text.split("\n").filter(Boolean)) {
    for (const { file, lines } of JSON.parse(one).files) take(file, lines);
  }
}

const rows = new Map();
const add = (name, reached, all) => {
  const row = rows.get(name) ?? rows.set(name, [0, 0]).get(name);
  row[0] += reached;
  row[1] += all;
};
const part = ([reached, all]) => (100 * reached) / Math.max(all, 1);
const show = (name, row) =>
  console.log(
    `${name.padEnd(48)}${String(row[0]).padStart(8)}${String(row[1]).padStart(8)}` +
      `${part(row).toFixed(1).padStart(8)} %`,
  );

for (const [name, lines] of files) {
  const reached = [...lines.values()].filter(Boolean).length;
  const [floor, folder, file] = name.split("/");
  add(file === undefined ? floor : `${floor}/${folder}`, reached, lines.size);
  add(`${floor} in all`, reached, lines.size);
}
console.log(`${"lines of".padEnd(48)} reached     all    part`);
for (const name of [...rows.keys()].sort()) show(name, rows.get(name));
console.log("\nThe least reached");
const single = [...files].map(([name, lines]) => [
  name,
  [[...lines.values()].filter(Boolean).length, lines.size],
]);
single.sort((a, b) => part(a[1]) - part(b[1]));
for (const [name, row] of single.slice(0, LEAST_SHOWN)) show(name, row);
for (const floor of ["engine", "records"]) {
  const row = rows.get(`${floor} in all`) ?? [0, 0];
  console.log(`${floor}: ${part(row).toFixed(1)} %, wanted ${WANTED} %`);
}
