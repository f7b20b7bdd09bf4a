type Child = Node | string | undefined | false;

/** Attributes by name; `class` and `on…` listeners as well. False and undefined leave the attribute out. */
export type Attributes = Readonly<Record<string, string | number | boolean | undefined | ((event: never) => void)>>;

/**
 * An element. Strings become text, never markup, whatever they hold.
 *
 * @param tag its name
 * @param attributes attributes, and listeners under "onclick", "oninput" …
 * @param children nodes and strings; false and undefined are left out
 */
export function h<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  return furnished(document.createElement(tag), attributes, children);
}

/** An SVG element, by the same rules. */
export function s<K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[K] {
  return furnished(document.createElementNS("http://www.w3.org/2000/svg", tag), attributes, children);
}

/** The page is made of tens of thousands of elements at once, and so this asks a new one nothing. */
function furnished<E extends Element>(element: E, attributes: Attributes, children: readonly Child[]): E {
  for (const name in attributes) {
    const value = attributes[name];
    if (typeof value === "function") element.addEventListener(name.slice(2), value as (event: Event) => void);
    else if (value !== undefined && value !== false) element.setAttribute(name, value === true ? "" : String(value));
  }
  for (const child of children) {
    if (child !== undefined && child !== false) element.appendChild(typeof child === "string" ? document.createTextNode(child) : child);
  }
  return element;
}

/** Sets, or takes away, an attribute where it differs. */
export function setAttribute(element: Element, name: string, value: string | number | boolean | undefined): void {
  if (value === undefined || value === false) {
    if (element.hasAttribute(name)) element.removeAttribute(name);
    return;
  }
  const text = value === true ? "" : String(value);
  if (element.getAttribute(name) !== text) element.setAttribute(name, text);
}

/** Writes an element's text where it differs. */
export function setText(element: Element, text: string): void {
  const only = element.firstChild;
  if (only instanceof Text && only.nextSibling === null) {
    if (only.data !== text) only.data = text;
    return;
  }
  if (only !== null || text !== "") element.replaceChildren(text);
}

/** Replaces an element's children where their list differs. */
export function setChildren(element: Element, children: readonly Node[]): void {
  const same = element.childNodes.length === children.length && children.every((child, i) => element.childNodes[i] === child);
  if (!same) element.replaceChildren(...children);
}
