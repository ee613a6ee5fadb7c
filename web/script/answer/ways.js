// ways.js - ways from a pin to its flight and its ride.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";

const views = { flight: "Flight", ride: "Ride" };

// All that is shown, with another view and pin.
function addressOf(view, pin) {
  const query = new URLSearchParams(location.hash.split("?")[1]);
  query.set("pin", pin);
  return `#${view}?${query}`;
}

export const waysOf = ({ store }, pin) =>
  make(
    "p",
    { class: "ways" },
    Object.entries(views).map(([view, title]) => {
      const go = (event) => {
        event.preventDefault();
        store.say({ pin });
        store.go(view);
      };
      return make("a", { href: addressOf(view, pin), onclick: go }, `${title} with ${pin}`);
    }),
  );
