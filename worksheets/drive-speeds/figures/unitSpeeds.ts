import type { DriveSpeeds } from "../../../lib/drive";
import type { ShownBelt } from "./shownBelt";

/** A driven unit: the speeds that it allows, 0 where nothing is stated, and those that it runs at. */
export interface UnitSpeeds {
  readonly unit: string;
  readonly belt: string;
  readonly lowest: number;
  readonly highest: number;
  readonly burst: number;
  readonly at: DriveSpeeds;
}

/** Every unit that states some bound; one whose name stands on two belts is told apart by its belt. */
export function unitsOfBelts(beltRuns: readonly ShownBelt[]): readonly UnitSpeeds[] {
  const all = beltRuns.flatMap(({ name, members }) => members.map((member) => ({ belt: name, member })));
  const driven = all.filter(({ member }) => member.role !== "crank");
  return driven
    .filter(({ member }) => member.lowestSpeed > 0 || member.highestSpeed > 0 || member.burstSpeed > 0)
    .map(({ belt, member }) => ({
      unit: driven.filter((other) => other.member.unit === member.unit).length > 1 ? `${member.unit}, ${belt}` : member.unit,
      belt,
      lowest: member.lowestSpeed,
      highest: member.highestSpeed,
      burst: member.burstSpeed,
      at: member.at,
    }));
}

/** What a unit's speeds break: nothing, or each in a word. */
export interface Verdict {
  readonly slow: boolean;
  readonly fast: boolean;
  readonly bursting: boolean;
}

export function verdictOf({ lowest, highest, burst, at }: UnitSpeeds): Verdict {
  return {
    slow: at.idle < lowest,
    fast: highest > 0 && at.maximum > highest,
    bursting: burst > 0 && at.overspeed > burst,
  };
}

/** Room to the highest speed, as a share of it; nothing where none is stated. */
export function roomOf({ highest, at }: UnitSpeeds): number | undefined {
  return highest > 0 ? 1 - at.maximum / highest : undefined;
}

export function verdictWords({ slow, fast, bursting }: Verdict): string {
  const words = [slow && "too slow at idle", fast && "too fast", bursting && "may burst"].filter((word) => word !== false);
  return words.join(", ");
}
