import { compile } from "../../lib/graph";
import { airDemand, declared } from "../lib/graph/fixture";
import type { Subject } from "./subject";

/** The small graph of the tests. */
export function subject(): Subject {
  return { graph: airDemand, program: compile(airDemand), inputs: declared, speedKey: "engineSpeed" };
}
