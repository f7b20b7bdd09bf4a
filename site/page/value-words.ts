import { type Node, Refusal } from "../../lib/graph";
import { type Measured, written, writtenInput } from "../state";
import type { Desk } from "./desk";

/** A node's value in words, for lists. */
export function valueWords(desk: Desk, node: Node): string {
  const value = desk.values.get(node);
  if (value instanceof Refusal) return "no value";
  if (node.type === "choice") return node.options[value as string] ?? "";
  if (node.type === "table") return `${(value as readonly unknown[]).length} rows`;
  if (typeof value !== "number" || node.kind === undefined) return "";
  const shown = node.type === "quantity" ? writtenInput : written;
  return shown(desk.session.state.units, { ...node, kind: node.kind }, value).text;
}

/** A value within a sentence: a cell's with all its digits, so that it does not jump when the last is a zero. */
export function steadyWords(desk: Desk, node: Node): string {
  const value = desk.values.get(node);
  if (node.type !== "cell" || node.kind === undefined || typeof value !== "number") return valueWords(desk, node);
  return written(desk.session.state.units, node as Measured, value, { steady: true }).text;
}
