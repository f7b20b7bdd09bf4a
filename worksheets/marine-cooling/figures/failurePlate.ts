import { isRefusal, type ValuesOf } from "../../../lib/graph";
import { figure } from "../../sheet";
import { failures } from "../failures";
import { drawFailures, type FailingPart, type Failure, timeText } from "./failureDrawing";
import { notDrawn } from "./notDrawn";

const from = { failures };
type At = ValuesOf<typeof from>;

/** A change below this is not felt [K]. */
const felt = 0.5;

/**
 * The parts of a failure that are drawn: those that it takes past their limits, the first in front, and of the others
 * the one that comes nearest to its own.
 */
export function partsDrawn(parts: readonly FailingPart[]): readonly FailingPart[] {
  const moved = parts.filter(({ usual, reached }) => Math.abs(reached - usual) >= felt);
  const met = moved.filter(({ time }) => time !== undefined).sort((a, b) => a.time! - b.time!);
  const room = ({ limit, reached }: FailingPart) => limit - reached;
  const rest = (moved.length > 0 ? moved : parts).filter((part) => !met.includes(part));
  return [...met, ...[...rest].sort((a, b) => room(a) - room(b)).slice(0, 1)];
}

/** Whether a failure takes something past its limit that was not past it before. */
const harms = ({ parts }: Failure) => parts.some(({ time, usual, limit }) => time !== undefined && usual <= limit);

/** The failures with their parts, or in words why there is no answer. */
function failuresOf({ failures }: At): readonly Failure[] | string {
  const answer = failures.get();
  if (isRefusal(answer)) return answer.words;
  return answer.map(({ name, note, parts }) => ({
    name,
    note,
    parts: partsDrawn(
      parts.map(({ part, usual, reached, limit, secondsToLimit }) => ({
        name: part,
        usual,
        reached,
        limit,
        time: secondsToLimit,
      })),
    ),
  }));
}

export const failurePlate = figure({
  key: "failurePlate",
  title: "What fails, how hot it gets, and how soon",
  atRest: true,
  from,
  describe: (at, units) => {
    const all = failuresOf(at);
    if (typeof all === "string") return `Not drawn: ${units.refusal(all)}`;
    const met = all.flatMap(({ name, parts }) =>
      parts.flatMap((part) =>
        part.time === undefined || part.usual > part.limit ? [] : [{ ...part, failure: name, time: part.time }],
      ),
    );
    const harmful = all.filter(harms).length;
    const first = [...met].sort((a, b) => a.time - b.time)[0];
    const text = (temperature: number) => units.text("temperature", temperature);
    const told = ({ name, limit }: FailingPart, reached: number) =>
      `${name.toLowerCase()} ${text(reached)} of ${text(limit)}`;
    const parts = all.flatMap((failure) => failure.parts);
    const before = new Map(parts.filter(({ usual, limit }) => usual > limit).map((part) => [part.name, part]));
    const nearest = parts
      .filter(({ reached, limit }) => reached <= limit)
      .sort((a, b) => a.limit - a.reached - (b.limit - b.reached))[0];
    return [
      harmful === 0
        ? `None of the ${all.length} failures takes a part past its limit.`
        : `Of ${all.length} failures ${harmful} ${harmful === 1 ? "takes" : "take"} a part past its limit.`,
      ...(first
        ? [
            `Soonest, ${first.failure.toLowerCase()}: ${first.name.toLowerCase()} passes ${text(first.limit)} ${first.time < 1 ? "at once" : `after ${timeText(first.time)}`}.`,
          ]
        : nearest
          ? [`Nearest to its limit comes ${told(nearest, nearest.reached)}.`]
          : []),
      ...(before.size > 0
        ? [
            `Past their limits before anything fails: ${[...before.values()].map((part) => told(part, part.usual)).join(", ")}.`,
          ]
        : []),
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const all = failuresOf(at);
    return typeof all === "string" ? notDrawn(units.refusal(all), width) : drawFailures({ failures: all, width, units });
  },
  table: (at, units) => {
    const all = failuresOf(at);
    const number = (temperature: number) =>
      Number.isFinite(temperature) ? units.number("temperature", temperature) : "no end";
    const row = (failure: string, { name, usual, reached, limit, time }: FailingPart) => [
      failure,
      name,
      number(usual),
      number(reached),
      number(limit),
      time === undefined ? "–" : time / 60,
    ];
    return {
      columns: [
        "Failure",
        "Part",
        ...["As usual", "Comes to", "Limit"].map((name) => [name, units.unit("temperature")] as const),
        ["Time to the limit", "min"],
      ],
      rows: typeof all === "string" ? [] : all.flatMap(({ name, parts }) => parts.map((part) => row(name, part))),
    };
  },
});
