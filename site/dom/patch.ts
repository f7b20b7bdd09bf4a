/**
 * Makes a drawing look like another, changing only what differs, so that the browser styles, lays out and paints no more
 * than that. Elements keep their identity where their names agree in order.
 *
 * @param present an element on the page
 * @param next one of the same name that is on no page; its parts may be moved into the present one
 */
export function patch(present: Element, next: Element): void {
  patchAttributes(present, next);
  let child = present.firstChild;
  let wanted = next.firstChild;
  while (wanted) {
    const following = wanted.nextSibling;
    if (child && alike(child, wanted)) {
      if (child instanceof Element) patch(child, wanted as Element);
      else if (child.nodeValue !== wanted.nodeValue) child.nodeValue = wanted.nodeValue;
      child = child.nextSibling;
    } else {
      present.insertBefore(wanted, child);
    }
    wanted = following;
  }
  while (child) {
    const following = child.nextSibling;
    child.remove();
    child = following;
  }
}

function alike(a: Node, b: Node): boolean {
  return a.nodeType === b.nodeType && a.nodeName === b.nodeName;
}

function patchAttributes(present: Element, next: Element): void {
  // Names rather than attributes: for each of those the browser would make an object.
  const [had, wanted] = [present.getAttributeNames(), next.getAttributeNames()];
  for (const name of wanted) {
    const value = next.getAttribute(name)!;
    if (present.getAttribute(name) !== value) present.setAttribute(name, value);
  }
  if (had.length === wanted.length && had.every((name, i) => name === wanted[i])) return;
  for (const name of had) if (!next.hasAttribute(name)) present.removeAttribute(name);
}
