// ways.js - ways from a pin to its flight and its ride.
// SPDX-License-Identifier: MIT

import { linkTo, make } from "../base/dom.js";

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
      const go = () => {
        store.say({ pin });
        store.go(view);
      };
      return linkTo(addressOf(view, pin), go, {}, `${title} with ${pin}`);
    }),
  );
