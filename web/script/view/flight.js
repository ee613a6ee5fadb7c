// flight.js - the view Flight: not there yet.
// SPDX-License-Identifier: MIT

import { make } from "../dom.js";

export const flight = {
  name: "flight",
  title: "Flight",
  open(page, main) {
    main.append(make("p", {}, "Not there yet."));
    return { update() {} };
  },
};
