// install.js - at the desk the page can be installed, and opens while the desk is closed.
// SPDX-License-Identifier: MIT

import { make } from "../base/dom.js";

/** From a file there is nothing to ask, and nothing is asked. */
export function offerInstall() {
  if (!location.protocol.startsWith("http") || !navigator.serviceWorker) return;
  document.head.append(make("link", { rel: "manifest", href: "/app.webmanifest" }));
  navigator.serviceWorker.register("/offline.js").catch(() => {}); // the page works without it
}
