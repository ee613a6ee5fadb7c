// seen.js - run in the page itself: what is wrong with what it shows, in words.
// SPDX-License-Identifier: MIT

const isShown = (one) => one.checkVisibility({ checkOpacity: true, checkVisibilityCSS: true });
const upFrom = (one, holds) => {
  while (one && !holds(getComputedStyle(one))) one = one.parentElement;
  return one;
};
const floatOf = (one) => upFrom(one, ({ position }) => /fixed|sticky/.test(position));
const scrollerOf = (one) =>
  upFrom(one.closest("svg")?.parentElement ?? one, ({ overflowX }) => overflowX !== "visible");
const said = (one) => (one.getAttribute?.("aria-label") ?? one.textContent).trim().slice(0, 30);
// What can be scrolled into sight is not off the side; what is scrolled out of it is not seen.
const isScrolled = (one) =>
  one && (one.scrollWidth > one.clientWidth || one.scrollHeight > one.clientHeight);

function clip({ left, right, top, bottom }, scroller) {
  if (!isScrolled(scroller)) return { left, right, top, bottom };
  const seen = scroller.getBoundingClientRect();
  return {
    left: Math.max(left, seen.left),
    right: Math.min(right, seen.right),
    top: Math.max(top, seen.top),
    bottom: Math.min(bottom, seen.bottom),
  };
}

function lettersOf(node) {
  const parent = node.parentElement;
  const range = document.createRange();
  range.selectNodeContents(node);
  // Letters of a drawing that are set closer are measured as they are by their element alone.
  const boxes = parent.matches("text") ? [parent.getBoundingClientRect()] : range.getClientRects();
  return Array.from(boxes, (box) => ({
    node,
    float: floatOf(parent),
    ...clip(box, scrollerOf(parent)),
  })).filter(({ left, right, top, bottom }) => right - left > 2 && bottom - top > 2);
}

function allLetters() {
  const nodes = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const letters = [];
  while (nodes.nextNode()) {
    const parent = nodes.currentNode.parentElement;
    const isRead = !parent.closest("script, style, option, .unseen, .skip");
    if (isRead && nodes.currentNode.textContent.trim() && isShown(parent))
      letters.push(...lettersOf(nodes.currentNode));
  }
  return letters;
}

const overlap = (one, other) =>
  one.node !== other.node &&
  one.float === other.float &&
  Math.min(one.right, other.right) - Math.max(one.left, other.left) > 2 &&
  Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 4;

/** What is pressed and is smaller than that. */
function pressed(target) {
  return Array.from(document.querySelectorAll("a, button, input, select, summary, textarea"))
    .filter((one) => isShown(one) && !one.closest(".skip, .unseen"))
    .map((one) => (/checkbox|radio/.test(one.type) ? one.labels[0] : one))
    .filter((one) => {
      const { width, height } = one.getBoundingClientRect();
      return Math.min(width, height) < target;
    });
}

/** target: [px] that what is pressed is high and wide at the least. */
globalThis.wrongWith = (target) => {
  const letters = allLetters();
  const wide = document.documentElement.scrollWidth;
  return [
    ...(wide > innerWidth ? [`${wide} px wide on ${innerWidth}`] : []),
    ...letters
      .filter(({ right }) => right > innerWidth + 1)
      .map(({ node }) => `off the side: ${said(node)}`),
    ...letters.flatMap((one, i) =>
      letters
        .slice(i + 1)
        .filter((other) => overlap(one, other))
        .map((other) => `one on the other: ${said(one.node)} / ${said(other.node)}`),
    ),
    ...pressed(target).map((one) => `small to press: ${said(one)}`),
  ];
};
