import type { Board, BoardView, Camera, Piece } from "../../board";
import { type Box, type Group, narrow, plate, px, resized, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { frontPulleys } from "../beltTables";
import { drawBelt, drawGhost } from "./beltDrawing";
import { factsOf, placeOf } from "./beltFacts";
import { labelBelt } from "./beltLabels";
import type { View } from "./beltPath";
import { drawFaults } from "./faultMarks";
import { scaleBar } from "./scaleBar";
import { extentOf, type ShownBelt } from "./shownBelt";

/** How tall the board may be, and the room for labels around the runs, in CSS pixels. */
const tallest = 620;
const margin = { wide: 128, slim: 20, y: 34 };

export interface BoardValues {
  readonly beltRuns: readonly ShownBelt[];
}

/** Belts of the front as a board: pulleys can be moved, one belt at a time is worked on, the others are lines behind it. */
export const frontBoard: Board<BoardValues> = {
  table: frontPulleys,
  leaves: ({ beltRuns }) => beltRuns.map(({ mark, name }) => ({ key: mark, label: name })),
  pieces: ({ beltRuns }) => {
    let mark = -1;
    return beltRuns.flatMap((belt) =>
      belt.layout.pulleys.flatMap(({ name, x, y, pitchRadius }, i): readonly Piece[] => {
        mark += 1;
        const { row, mount, guide, role } = belt.members[i]!;
        const own = { leaf: belt.mark, row, mark };
        const pulley: Piece = {
          ...own,
          columns: ["x", "y"],
          name: `${belt.name}, ${name}`,
          x,
          y,
          radius: pitchRadius,
          fixed: role === "crank",
        };
        if (mount === "fixed") return [pulley];
        const what = mount === "pivoting" ? "pivot of its arm" : "point toward which it slides";
        return [pulley, { ...own, columns: ["guideX", "guideY"], name: `${pulley.name}, ${what}`, x: guide.x, y: guide.y, radius: 0 }];
      }),
    );
  },
  fit: ({ beltRuns }, width) => {
    const { left, high, width: across, height } = extentOf(beltRuns);
    const side = width < narrow ? margin.slim : margin.wide;
    const scale = Math.min((width - 2 * side) / across, (tallest - 2 * margin.y) / height);
    return { x: left + across / 2, y: high - height / 2, scale, height: Math.round(height * scale + 2 * margin.y) };
  },
  refusal: ({ beltRuns }, leaf) => beltRuns.find(({ mark }) => mark === leaf)?.fault,
};

export function viewOf({ x, y, scale, height }: Camera, width: number): View {
  return { x: (metres) => width / 2 + (metres - x) * scale, y: (metres) => height / 2 - (metres - y) * scale, scale };
}

/** The belts over each other as they stand at the front of the engine, the one worked on in full. */
export function drawBoard(
  beltRuns: readonly ShownBelt[],
  { width, units }: FigureFrame,
  { leaf, camera, sound, held }: BoardView<BoardValues>,
): SVGSVGElement {
  const { svg, ground } = plate(width, camera.height);
  const view = viewOf(camera, width);
  const bounds: Box = { x: 0, y: 0, width, height: camera.height };
  const window = clipped(ground, bounds);
  const marks = firstMarks(beltRuns);
  const ghosts = beltRuns.filter(({ mark }) => mark !== leaf);
  for (const belt of ghosts) drawGhost(window, belt, { view, mark: marks.get(belt.mark)! });

  let foot = camera.height;
  const front = beltRuns.find(({ mark }) => mark === leaf);
  if (front) {
    const before = sound.get(leaf)?.beltRuns.find(({ mark }) => mark === leaf)?.run;
    drawBelt(window, front, { view, mark: marks.get(leaf)!, before });
    const taken = drawFaults(window, front, { view, units, bounds });
    const lines = window.append("g");
    foot = labelBelt(lines, {
      belt: front,
      view,
      units,
      bounds,
      facts: (i) => (front.members[i]!.row === held ? placeOf(front.members[i]!, units) : factsOf(front, i, units)),
      listed: width < narrow,
      lengths: width >= narrow,
      taken,
    });
    // What is listed below the window is not clipped with it.
    if (foot > camera.height) for (const label of lines.selectAll<SVGTextElement, unknown>("text").nodes()) {
      if (Number(label.getAttribute("y")) > camera.height) ground.node()!.append(label);
    }
  }
  scaleBar(ground, { x: 2, y: foot + 16, scale: view.scale, units });
  const turns = front?.travel ?? "clockwise";
  write(ground, `crank turns ${turns}`, { x: width - 2, y: foot + 20.5, anchor: "end", look: "mute" });
  return resized(svg, width, foot + 30);
}

/** A part of the drawing that shows nothing beyond its bounds. */
function clipped(ground: Group, { x, y, width, height }: Box): Group {
  const window = ground.append("svg").attr("class", "window").attr("overflow", "hidden");
  window.attr("x", px(x)).attr("y", px(y)).attr("width", px(width)).attr("height", px(height));
  return window.append("g");
}

/** Row of the figure's numbers of each belt's first pulley, by the belt's letter. */
export function firstMarks(beltRuns: readonly ShownBelt[]): ReadonlyMap<string, number> {
  let next = 0;
  return new Map(
    beltRuns.map(({ mark, members }) => {
      const first = next;
      next += members.length;
      return [mark, first];
    }),
  );
}
