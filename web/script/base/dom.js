// dom.js - elements made in one call: make("p", { class: "note" }, "text", child).
// SPDX-License-Identifier: MIT

const SVG = "http://www.w3.org/2000/svg";

function fill(element, properties, children) {
  for (const [name, value] of Object.entries(properties)) {
    if (value === undefined || value === null || value === false) continue;
    if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
    else if (name === "vars")
      for (const [k, v] of Object.entries(value)) element.style.setProperty(k, v);
    else element.setAttribute(name, value === true ? "" : value);
  }
  element.append(
    ...children.flat(9).filter((child) => child !== null && child !== undefined && child !== false),
  );
  return element;
}

/** Properties that begin with "on" are listeners; `vars` are custom properties of style. */
export const make = (tag, properties = {}, ...children) =>
  fill(document.createElement(tag), properties, children);

export const draw = (tag, properties = {}, ...children) =>
  fill(document.createElementNS(SVG, tag), properties, children);

/** A button that steps a number down (sign -1) or up (1). */
export const stepButton = (sign, name, onclick) =>
  make(
    "button",
    {
      type: "button",
      class: "step",
      "aria-label": `${sign < 0 ? "Less" : "More"}: ${name}`,
      onclick,
    },
    sign < 0 ? "−" : "+",
  );

/** An address within the page, followed without the browser's own way. */
export const linkTo = (href, go, properties, text) =>
  make(
    "a",
    {
      ...properties,
      href,
      onclick: (event) => {
        event.preventDefault();
        go();
      },
    },
    text,
  );

/** Where a number comes from, behind a tap; nothing where that is plain. */
export const whereFrom = (name, sources) =>
  sources.length > 0 &&
  make(
    "details",
    { class: "where" },
    make("summary", { "aria-label": `Where from: ${name}` }, "Where from"),
    sources.map((source) => make("p", {}, source)),
  );

/** A card of a kind, with its heading. */
export const cardOf = (kind, title, ...inside) =>
  make("section", { class: kind ? `card ${kind}` : "card" }, make("h2", {}, title), inside);

export const card = (title, ...inside) => cardOf("", title, inside);

let last = 0;
export const freshId = () => `e${++last}`;
