// compare.js - the view Compare: not there yet.
// SPDX-License-Identifier: MIT

import { make } from "../dom.js";

export const compare = {
  name: "compare",
  title: "Compare",
  open(page, main) {
    main.append(make("p", {}, "Not there yet."));
    return { update() {} };
  },
};
