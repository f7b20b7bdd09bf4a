import { type Box, figures, type Group, overlap, textWidth, write } from "../../drawing";
import type { FieldGround } from "./fieldGround";
import type { FieldView } from "./fieldView";
import type { Corner } from "./shapes";

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "middle" | "end";
}

/** Writes a text at the first place where it covers nothing written before; says whether there was one. */
type TryWrite = (text: string, spots: readonly Spot[], look: string) => boolean;

const bold: ReadonlySet<string> = new Set(["strong", "past"]);

/** Words and numbers in a field, the important ones first: each stands where it covers none before it, or not at all. */
export function fieldLabels(group: Group, view: FieldView, ground: FieldGround, corners: readonly Corner[]): void {
  const { box, width } = view;
  const taken: Box[] = corners.map(([x, y]) => ({ x: x - 4, y: y - 4, width: 8, height: 8 }));
  const tryWrite: TryWrite = (text, spots, look) => {
    const size = look === "band" ? textWidth(text, { size: 15 }) : textWidth(text, { bold: bold.has(look) });
    for (const spot of spots) {
      const x = spot.anchor === "start" ? spot.x : spot.anchor === "end" ? spot.x - size : spot.x - size / 2;
      const own = { x, y: spot.y - 11, width: size, height: 14 };
      if (x < box.x + 2 || x + size > width || own.y < box.y - 6 || own.y + 12 > box.y + box.height) continue;
      if (taken.some((other) => overlap(own, other, 3))) continue;
      taken.push(own);
      write(group, text, { ...spot, look });
      return true;
    }
    return false;
  };
  wheelSpeeds(view, tryWrite);
  promisedWord(view, corners, tryWrite);
  engineSpeeds(view, corners, tryWrite);
  edgeWords(view, ground, tryWrite);
  const free = ([x, y]: Corner) =>
    Math.min(
      1e9,
      ...corners.map(([a, b]) => Math.hypot(a - x, b - y)),
      ...taken.map((other) => Math.hypot(other.x + other.width / 2 - x, other.y + 7 - y)),
    );
  isleNumbers(view, ground, free, tryWrite);
}

/** Places around a point, near ones first. */
function beside([x, y]: Corner): readonly Spot[] {
  return [10, 18, 28, 40].flatMap((away): readonly Spot[] => [
    { x: x - away, y: y + 4.5, anchor: "end" },
    { x: x - away * 0.7, y: y - away * 0.7, anchor: "end" },
    { x: x + away, y: y + 4.5 + away * 0.5, anchor: "start" },
    { x: x + away * 0.7, y: y + away * 0.7 + 9, anchor: "start" },
  ]);
}

function promisedWord({ run, units }: FieldView, corners: readonly Corner[], tryWrite: TryWrite): void {
  const i = run.findIndex(({ promised }) => promised);
  if (i < 0) return;
  tryWrite(`promised ${units.text("rotationalSpeed", run[i]!.engineSpeed)}`, beside(corners[i]!).slice(3), "strong");
}

/** At the right ends of their lines, from the fastest. */
function wheelSpeeds({ lines, at, allowed, box, units }: FieldView, tryWrite: TryWrite): void {
  for (const { speed, text } of lines.toReversed()) {
    const [x, y] = at({ across: 1, speed });
    if (y < box.y + box.height - 14) tryWrite(text, [{ x: x + 6, y: y + 4.5, anchor: "start" }], "mute");
  }
  if (allowed === undefined) return;
  const [x, y] = at({ across: 0, speed: allowed });
  const spots = [6, 18, 30].map((up): Spot => ({ x: x - 8, y: y + 10 - up, anchor: "end" }));
  tryWrite(`allowed ${figures(units.number("rotationalSpeed", allowed), 5)}`, spots, "");
}

/** Beside their marks, as many as have room; the ends of the line come first. */
function engineSpeeds({ run, units, width }: FieldView, corners: readonly Corner[], tryWrite: TryWrite): void {
  const apart = width < 480 ? 56 : 44;
  const written: Corner[] = corners.filter((_, i) => run[i]!.promised);
  const order = run.map((_, i) => i);
  for (const i of [order.at(-1), order[0], ...order.slice(1, -1)]) {
    if (i === undefined || run[i]!.promised) continue;
    const [x, y] = corners[i]!;
    if (written.some(([a, b]) => Math.hypot(a - x, b - y) < apart)) continue;
    const text = figures(units.number("rotationalSpeed", run[i]!.engineSpeed), 5);
    if (tryWrite(text, beside(corners[i]!), "run-word")) written.push(corners[i]!);
  }
}

/** Names of the field's edges along them. */
function edgeWords({ at, lines, box }: FieldView, { surge }: FieldGround, tryWrite: TryWrite): void {
  const along = [0.5, 0.62, 0.4, 0.75, 0.85].map((share) => surge[Math.round(share * (surge.length - 1))]!);
  tryWrite(
    "surge",
    along.map(([x, y]) => ({ x: x - 10, y: y - 4, anchor: "end" })),
    "band",
  );
  const between = lines.slice(1).map(({ speed }, i) => at({ across: 1, speed: (speed + lines[i]!.speed) / 2 }));
  tryWrite(
    "choke",
    between.flatMap(([x, y]): readonly Spot[] =>
      y > box.y + box.height - 12 ? [] : [{ x: x + 10, y: y + 6, anchor: "start" }],
    ),
    "band",
  );
}

/** Each isle's efficiency on its shore, where there is most room. */
function isleNumbers(
  { units }: FieldView,
  { shores }: FieldGround,
  free: (place: Corner) => number,
  tryWrite: TryWrite,
): void {
  for (const [i, { efficiency, places }] of shores.toReversed().entries()) {
    const number = figures(units.number("fraction", efficiency), 3);
    const roomy = places.map((place) => ({ place, room: free(place) })).sort((a, b) => b.room - a.room);
    tryWrite(
      i === 0 ? `${number} ${units.unit("fraction")}` : number,
      roomy.slice(0, 12).map(({ place: [x, y] }) => ({ x, y: y + 4.5, anchor: "middle" })),
      "shore-word",
    );
  }
}
