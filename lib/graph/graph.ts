import type { Cell } from "./cell";
import type { Input } from "./input";
import type { Ref } from "./reference";

export type Node = Input | Cell;

/** Inputs and cells, each once, the cells in an order in which every one follows what it depends on. */
export interface Graph {
  readonly inputs: readonly Input[];
  readonly cells: readonly Cell[];
  /** Inputs first, then cells in working order. */
  readonly nodes: readonly Node[];
  /** Position of a key in `nodes`. */
  readonly position: ReadonlyMap<string, number>;
}

/**
 * Builds the graph of the given nodes.
 *
 * @param nodes inputs and cells, in any order
 * @throws Error when a key stands for two nodes, or a cell depends on one that was not given
 */
export function graphOf(nodes: readonly Node[]): Graph {
  const given = new Map<string, Node>();
  for (const node of nodes) {
    const other = given.get(node.key);
    if (other && other !== node) throw new Error(`graph: the key "${node.key}" stands for two nodes`);
    given.set(node.key, node);
  }
  const inputs: Input[] = [];
  const cells: Cell[] = [];
  const placed = new Set<string>();

  const place = (node: Node): void => {
    if (placed.has(node.key)) return;
    placed.add(node.key);
    if (node.type !== "cell") {
      inputs.push(node);
      return;
    }
    for (const reference of Object.values(node.from)) place(owned(reference, node, given));
    for (const limit of node.limits) {
      if (typeof limit.bound !== "number") place(owned(limit.bound, node, given));
    }
    cells.push(node);
  };
  for (const node of given.values()) place(node);

  const all: readonly Node[] = [...inputs, ...cells];
  return { inputs, cells, nodes: all, position: new Map(all.map((node, index) => [node.key, index])) };
}

function owned(reference: Ref, user: Node, given: ReadonlyMap<string, Node>): Node {
  const node = given.get(reference.key);
  if (node !== reference) throw new Error(`graph: "${user.key}" depends on "${reference.key}", which no sheet holds`);
  return node;
}
