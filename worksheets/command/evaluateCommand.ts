import { cellsOf, graph, nodesBySheet, program } from "../model";
import { type CommandResult, evaluateIn } from "./evaluateIn";

/** Sheets in reading order; the cells of each in working order, so that a value stands below what it follows from. */
const sheets = Object.keys(nodesBySheet).map((key) => ({
  title: titleOf(key),
  cells: [...cellsOf(key)].sort((a, b) => graph.position.get(a.key)! - graph.position.get(b.key)!),
  tabulations: [],
}));

/**
 * The evaluate command on this notebook's worksheets.
 *
 * @param args the command's arguments
 * @param readFile gives a file's text, or throws
 */
export function evaluateCommand(args: readonly string[], readFile: (path: string) => string): CommandResult {
  return evaluateIn({ graph, program, sheets }, args, readFile);
}

/** "air-demand" is "Air demand". */
function titleOf(key: string): string {
  const words = key.replaceAll("-", " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}
