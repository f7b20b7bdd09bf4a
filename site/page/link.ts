import type { Ref } from "../../lib/graph";
import { h } from "../dom";
import type { Desk } from "./desk";

/** A node's name as a link to its line; plain text where it has none. */
export function lineLink(desk: Desk, node: Ref, text: string = node.label): HTMLElement {
  const place = desk.places.get(node.key);
  if (!place) return h("span", {}, text);
  return h("a", { href: `#${place.id}` }, text);
}
