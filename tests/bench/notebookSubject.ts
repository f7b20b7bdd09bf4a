import { declaredValues } from "../../worksheets/build/build";
import { graph, program } from "../../worksheets/model";
import type { Subject } from "./subject";

/** The notebook's own worksheets, at the values that their inputs declare. */
export function subject(): Subject {
  return { graph, program, inputs: declaredValues(graph), speedKey: "ratedSpeed" };
}
