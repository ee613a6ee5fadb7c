// boat.js - the view Boat: not there yet.
// SPDX-License-Identifier: MIT

import { make } from "../dom.js";

export const boat = {
  name: "boat",
  title: "Boat",
  open(page, main) {
    main.append(make("p", {}, "Not there yet."));
    return { update() {} };
  },
};
