import { reading } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { beltRuns } from "../beltRuns";
import { drawPanels } from "./beltPanels";
import { type BoardValues, drawBoard, frontBoard } from "./frontBoard";
import type { ShownBelt } from "./shownBelt";

export const frontDrives = figure({
  key: "frontDrives",
  title: "The belts, seen from the front of the engine",
  from: { beltRuns },
  board: frontBoard as never,
  describe: (at, units) => describeBelts(at.beltRuns, units),
  draw: ({ beltRuns }, frame) => {
    const { board } = frame;
    return board === undefined ? drawPanels(beltRuns, frame) : drawBoard(beltRuns, frame, board as never);
  },
  table: ({ beltRuns }, units) => ({
    columns: [
      "Belt",
      "Pulley",
      "Teeth",
      ["Speed", units.unit("rotationalSpeed")],
      ["Wrap", units.unit("angle")],
      "Teeth in mesh",
      ["Span after it", units.unit("length")],
      "On its shaft end",
      "Must turn",
      ["To the right", units.unit("length")],
      ["Above", units.unit("length")],
    ],
    rows: beltRuns.flatMap((belt) => belt.members.map((_, i) => rowOf(belt, i, units))),
  }),
});

/** What a glance at the belts says: lengths, what cannot be laid, what turns backwards, and the least arc. */
function describeBelts(beltRuns: BoardValues["beltRuns"], units: FigureUnits): string {
  const laid = beltRuns.flatMap((belt) => (belt.run ? [{ ...belt, run: belt.run }] : []));
  const driven = beltRuns.flatMap(({ members }) => members.filter(({ role }) => role !== "crank" && role !== "idler"));
  const wrong = driven.filter(({ turnsRightly }) => !turnsRightly).map(({ unit }) => unit.toLowerCase());
  const lengths = laid.map(({ name, run }) => `the ${name.toLowerCase()} ${reading(units, "length", run.length, { digits: 4 })}`);
  const arcs = laid.flatMap(({ run }) => run.pulleys.filter(({ teeth }) => teeth !== undefined));
  const least = arcs.length > 0 ? arcs.reduce((a, b) => (b.wrap < a.wrap ? b : a)) : undefined;
  return [
    `The crank turns ${beltRuns[0]?.travel ?? "clockwise"}${lengths.length > 0 ? `; as laid out, ${listOf(lengths)} long` : ` under ${beltRuns.length} belts`}.`,
    ...beltRuns.flatMap(({ name, fault }) => (fault === undefined ? [] : [`${name} cannot be laid: ${units.refusal(fault)}.`])),
    least ? `The belt holds the ${least.name.toLowerCase()} least, over ${Math.round(units.number("angle", least.wrap))}°.` : "",
    wrong.length > 0
      ? `Driven backwards: ${wrong.join(", ")}.`
      : `${driven.length === 1 ? "The driven unit turns" : `All ${driven.length} driven units turn`} the way they must.`,
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function listOf(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}

function rowOf({ name, members, layout, run }: ShownBelt, at: number, units: FigureUnits): readonly (string | number)[] {
  const member = members[at]!;
  const { x, y, contact } = layout.pulleys[at]!;
  const wrapped = run?.pulleys[at];
  return [
    name,
    `${member.unit}${contact === "back" ? ", on the back" : ""}`,
    member.teeth > 0 ? member.teeth : "none",
    units.number("rotationalSpeed", member.at.rated),
    wrapped ? units.number("angle", wrapped.wrap) : "–",
    wrapped?.teethInMesh ?? "–",
    run ? units.number("length", run.spans[at]!.length) : "–",
    member.turns,
    member.mustTurn === "either" ? "either way" : `${member.mustTurn}${member.turnsRightly ? "" : ": driven backwards"}`,
    units.number("length", x),
    units.number("length", y),
  ];
}
