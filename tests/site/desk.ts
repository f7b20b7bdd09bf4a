import { compile, type Evaluation } from "../../lib/graph";
import { type Desk, placesOf, usersOf } from "../../site/page/desk";
import { trackMoves } from "../../site/page/moves";
import { createStandings } from "../../site/page/standings";
import { createLocks, createSession } from "../../site/state";
import { build } from "./build";
import { graph } from "./fixture";
import { sheets } from "./sheets";

/** A desk over the fixture without a page: `settle` takes a frame's place. */
export function deskOfFixture() {
  const program = compile(graph);
  const session = createSession({ graph, program, build, name: "at the start" });
  let evaluation: Evaluation = program.run(session.inputs);
  const desk: Desk = {
    session,
    locks: createLocks(),
    ambient: () => undefined,
    zones: { watch: () => {}, ask: () => {} },
    graph,
    sheets,
    values: { get: (reference) => evaluation.get(reference) },
    places: placesOf(sheets),
    users: usersOf(graph),
  };
  const standings = createStandings(desk);
  standings.update(new Set(graph.nodes.map(({ key }) => key)));
  const moves = trackMoves(desk, standings);
  const settle = (): void => {
    const next = program.rerun(evaluation, session.inputs);
    evaluation = next.evaluation;
    standings.update(new Set(next.changed.map((position) => graph.nodes[position]!.key)));
    moves.sample();
  };
  return { desk, session, standings, moves, settle };
}
