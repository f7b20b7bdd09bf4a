import type { AttainablePoint } from "../../../lib/charge";
import type { MassFlow, RotationalSpeed } from "../../../lib/quantity";
import { attained, isLeap, type RunValues, runOf } from "../../matching/figures/run";
import type { DeliveryPoint } from "../deliverySweep";
import { sweptAt } from "../sweptAt";

/** Fuel burnt with the most that the match's parts give at a speed, beside what the full-load map has burnt there. */
export interface BurntAt {
  readonly speed: RotationalSpeed;
  readonly burnt: MassFlow;
  readonly mapped: MassFlow;
  /** what stops the parts there */
  readonly binding: AttainablePoint["binding"];
  /** no line joins it to the one before */
  readonly apart: boolean;
}

/** The most that the parts burn, by rising speed; speeds at which they give nothing are left out. */
export function burntByParts(values: RunValues, sweep: readonly DeliveryPoint[]): readonly BurntAt[] {
  const { points } = runOf(values);
  return points.flatMap((each, i): readonly BurntAt[] => {
    const here = attained(each);
    if (!here) return [];
    const before = points[i - 1];
    const speed = each.engineSpeed;
    return [
      {
        speed,
        burnt: here.point.fuelFlow,
        mapped: sweptAt(sweep, speed, ({ burnt }) => burnt) as MassFlow,
        binding: here.binding,
        apart: before === undefined || !attained(before) || isLeap(before, each),
      },
    ];
  });
}

/** Pieces of the line between leaps and gaps. */
export function piecesOf(all: readonly BurntAt[]): readonly (readonly BurntAt[])[] {
  const starts = all.flatMap(({ apart }, i) => (apart ? [i] : []));
  return starts.map((start, i) => all.slice(start, starts[i + 1]));
}

/** The most that the parts burn at a speed, straight between neighbours; undefined where they give nothing. */
export function burntBetween(all: readonly BurntAt[], speed: number): MassFlow | undefined {
  const here = all.find((each) => each.speed === speed);
  if (here) return here.burnt;
  const piece = piecesOf(all).find((each) => each[0]!.speed < speed && each.at(-1)!.speed > speed);
  if (!piece) return undefined;
  const after = piece.findIndex((each) => each.speed > speed);
  const [from, to] = [piece[after - 1]!, piece[after]!];
  return (from.burnt + ((to.burnt - from.burnt) * (speed - from.speed)) / (to.speed - from.speed)) as MassFlow;
}
