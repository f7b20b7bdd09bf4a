import { sheets } from "..";
import { cellsOf, graph, program } from "../model";
import { type CommandResult, evaluateIn } from "./evaluateIn";
import { commandSheet } from "./model";

const model = { graph, program, sheets: sheets.map((sheet) => commandSheet(sheet, cellsOf(sheet.key), graph)) };

/**
 * The evaluate command on this notebook's worksheets.
 *
 * @param args the command's arguments
 * @param readFile gives a file's text, or throws
 */
export function evaluateCommand(args: readonly string[], readFile: (path: string) => string): CommandResult {
  return evaluateIn(model, args, readFile);
}
