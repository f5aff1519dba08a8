// Makes what is shown equal to what was drawn anew, node by node, touching only what differs. So a
// focused button keeps its focus and an opened part stays open while the figures in it change.

/** An open <details> is the reader's own doing. */
const readersOwn = new Set(['open']);

/** @param {Element} shown @param {Element} drawn */
function settleAttributes(shown, drawn) {
  const names = drawn.getAttributeNames();
  for (const name of names) {
    const value = drawn.getAttribute(name) ?? '';
    if (shown.getAttribute(name) !== value) shown.setAttribute(name, value);
  }
  const had = shown.getAttributeNames();
  if (had.length === names.length) return;
  for (const name of had) {
    if (!drawn.hasAttribute(name) && !readersOwn.has(name)) shown.removeAttribute(name);
  }
}

/** @param {Node} shown @param {Node} drawn */
function isSameKind(shown, drawn) {
  if (shown.nodeType !== drawn.nodeType || shown.nodeName !== drawn.nodeName) return false;
  const isElement = shown.nodeType === 1;
  // A part of its own name is never turned into another.
  const key = (/** @type {Node} */ node) => /** @type {Element} */ (node).getAttribute('data-key');
  return !isElement || key(shown) === key(drawn);
}

/** @param {Node} parent @param {Node} shown @param {Node} drawn */
function settleNode(parent, shown, drawn) {
  // What is built once stands where it stood.
  if (shown === drawn) return;
  // Most of a plan stays as it is from key to key, and the browser finds that out fastest.
  if (shown.isEqualNode(drawn)) return;
  if (!isSameKind(shown, drawn)) {
    parent.replaceChild(drawn, shown);
    return;
  }
  if (shown.nodeType !== 1) {
    if (shown.nodeValue !== drawn.nodeValue) shown.nodeValue = drawn.nodeValue;
    return;
  }
  const element = /** @type {Element} */ (shown);
  settleAttributes(element, /** @type {Element} */ (drawn));
  settle(element, [...drawn.childNodes]);
}

/** @param {Element} parent @param {Node[]} drawn */
export function settle(parent, drawn) {
  const shown = [...parent.childNodes];
  drawn.forEach((node, i) => {
    if (i < shown.length) settleNode(parent, shown[i], node);
    else parent.append(node);
  });
  for (const node of shown.slice(drawn.length)) parent.removeChild(node);
}
