// judged.mjs - how many swims become of it when one judged number is 30 % less or more.
// SPDX-License-Identifier: MIT
//
// Usage: node test/judged.mjs <source folder> <scratch folder>
//
// Prints the table "What hangs on judgement" of doc/motion.md. The engine is built anew from a copy
// for each number; test/judged_grid.c counts.

import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const [source, scratch] = process.argv.slice(2);
const PART = 0.3;

const WISH = "engine/motion/sailor/wish.c",
  GAINS = "engine/motion/sailor/gains.c",
  SET_UP = "engine/motion/sailor/set_up.c",
  CONTROL = "engine/motion/sailor/control.h",
  EVENTS = "engine/motion/events.h",
  CAVITY = "engine/foil/ventilation/cavity.h",
  FACE = "engine/foil/ventilation/ventilated_foil.h",
  PARAMETERS = "engine/motion/parameters.c";

/** What it is called, where it stands, after what; and, where not all of it counts, from where. */
const NUMBERS = [
  ["effort in reserve, beyond 1", WISH, "#define RESERVE ", 1],
  ["cost of what is missing of it", WISH, "#define RESERVE_COST "],
  ["least heel", WISH, "#define LEAST_HEEL "],
  ["course change, most", WISH, "#define COURSE_MOST "],
  ["crossover of heel", GAINS, "#define HEEL_CROSSOVER "],
  ["crossover of course", GAINS, "#define COURSE_CROSSOVER "],
  ["phase margin", GAINS, "#define PHASE_MARGIN "],
  ["heel by the helm, its part", GAINS, "#define HELM_PART "],
  ["gain of heel afloat, most", GAINS, "#define SLOW_HEEL_MOST "],
  ["heel of a take-off", SET_UP, "#define REST_HEEL "],
  ["heel of waiting, most", SET_UP, "#define WAITING_MOST "],
  ["heading of a take-off", SET_UP, "#define REST_REACH"],
  ["turn to a new course", CONTROL, "#define LW_TURN_TO "],
  ["let go from", CONTROL, "#define LW_LET_GO_FROM "],
  ["letting go", CONTROL, "#define LW_LET_GO "],
  ["patience", "engine/motion/ride/plan.c", "#define PATIENCE "],
  ["delay", PARAMETERS, ".delay = "],
  ["arm's lag", PARAMETERS, ".hand_lag = "],
  ["wind felt over", PARAMETERS, ".felt_lag = "],
  ["preview", PARAMETERS, "#define PREVIEW "],
  ["sheet out", PARAMETERS, ".sheet_out = "],
  ["sheet in", PARAMETERS, ".sheet_in = "],
  ["body's lag", PARAMETERS, ".body_lag = "],
  ["body's pace", PARAMETERS, ".body_pace ="],
  ["wand's lag", PARAMETERS, ".wand_lag = "],
  ["forward for a lull", PARAMETERS, ".forward = "],
  ["what a sailor holds", EVENTS, "#define LW_HOLD_MOST "],
  ["how far she slides", EVENTS, "#define LW_SLIDE_MOST "],
  ["share of the face", FACE, "#define LW_FACE_SHARE "],
  ["loss of a cavity's tail", CAVITY, "#define LW_CAVITY_LOSS "],
  ["angle of a strut that waves air", CAVITY, "#define LW_CAVITY_ROUGH "],
];

const run = (program, ...words) => execFileSync(program, words, { encoding: "utf8" });

/** The text with the number behind a mark as many times as large, counted from `least`. */
function scaled(text, mark, factor, least = 0) {
  const [before, ...rest] = text.split(mark);
  if (rest.length === 0) throw new Error(`judged: there is no "${mark}" any more`);
  const after = rest
    .join(mark)
    .replace(/\d+(\.\d+)?/, (number) => String(least + factor * (number - least)));
  return before + mark + after;
}

function counted() {
  run("cmake", "--build", join(scratch, "build"), "--target", "judged_grid");
  return run(join(scratch, "build", "judged_grid")).trim();
}

function countedWith([, file, mark, least], factor) {
  const path = join(scratch, "source", file),
    text = readFileSync(path, "utf8");
  writeFileSync(path, scaled(text, mark, factor, least));
  const told = counted();
  writeFileSync(path, text);
  return told;
}

mkdirSync(scratch, { recursive: true });
const tracked = run("git", "-C", source, "ls-files", "--cached", "--others", "--exclude-standard")
  .trim()
  .split("\n");
for (const file of tracked) cpSync(join(source, file), join(scratch, "source", file));
run(
  "cmake",
  "-G",
  "Ninja",
  "-S",
  join(scratch, "source"),
  "-B",
  join(scratch, "build"),
  "-DLW_TESTS=ON",
);
console.log(`As it is: ${counted()}\n`);
console.log("| | 30 % less | 30 % more |\n| --- | --- | --- |");
for (const number of NUMBERS)
  console.log(
    `| ${number[0]} | ${countedWith(number, 1 - PART)} | ${countedWith(number, 1 + PART)} |`,
  );
