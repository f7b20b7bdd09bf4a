import type { Cell, Graph } from "../../lib/graph";
import { type KindName, kinds } from "../../lib/quantity";
import type { Build, Measured } from "./build";
import { readQuantity, writeQuantityExactly } from "./inputText";
import { described, isObject, stepped, Unreadable } from "./unreadable";

type Fields = Readonly<Record<string, unknown>>;

/**
 * The measured values of a file [SI], by installation and cell. Cells that the graph does not hold are left out here; the
 * file's other fields keep them.
 *
 * @param raw what the file holds under "measured"
 * @param installations keys of the build's installations
 * @param graph whose cells were measured
 * @throws Unreadable naming the first value that is not one of its cell
 */
export function readMeasured(raw: Fields, installations: readonly string[], graph: Graph): Measured | undefined {
  const read = Object.entries(raw).map(([installation, values]) => {
    const place = stepped("measured", installation);
    if (!installations.includes(installation)) throw new Unreadable(place, "no installation of the file has this key");
    if (!isObject(values)) throw new Unreadable(place, `it is ${described(values)}; it must be an object of cells and values`);
    const known = measurable(graph)
      .filter(({ key }) => Object.hasOwn(values, key))
      .map((cell) => [cell.key, readQuantity(cell, values[cell.key], stepped(place, cell.key))] as const);
    return [installation, Object.fromEntries(known)] as const;
  });
  const filled = read.filter(([, values]) => Object.keys(values).length > 0);
  return filled.length > 0 ? Object.fromEntries(filled) : undefined;
}

/** The measured values as a file holds them, number and unit. */
export function writeMeasured({ measured }: Build, graph: Graph): Fields {
  const cells = measurable(graph);
  return Object.fromEntries(
    Object.entries(measured ?? {}).map(([installation, values]) => [
      installation,
      Object.fromEntries(
        cells.filter(({ key }) => Object.hasOwn(values, key)).map((cell) => [cell.key, writeQuantityExactly(cell, values[cell.key]!)]),
      ),
    ]),
  );
}

/** Cells that hold one number, in the graph's order. */
export function measurable(graph: Graph): readonly (Cell & { readonly kind: KindName })[] {
  return graph.cells.filter((cell): cell is Cell & { kind: KindName } => cell.kind !== undefined && cell.kind in kinds);
}
