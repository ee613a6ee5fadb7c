// fault_lines.js - what is wrong with what was read, line by line.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";
import { sentenceOf } from "../form/field.js";

/** What is wrong with it, under a heading. */
export const faultLines = (title, faults) => [
  make("h2", {}, title),
  make(
    "ul",
    {},
    faults.map((fault) =>
      make(
        "li",
        {},
        fault.line > 0 && make("code", {}, `${fault.line} `),
        fault.key && make("b", {}, `${fault.key} `),
        sentenceOf(fault),
        fault.read && make("span", {}, "; read: ", make("q", {}, fault.read)),
      ),
    ),
  ),
];
