import type { DrivenMember } from "../../../lib/drive";
import type { RotationalSpeed } from "../../../lib/quantity";
import { heatCarrier, idleSpeed, maximumSpeed, ratedSpeed } from "../../brief/cells";
import { rawWaterHighestSpeed } from "../../marine-cooling/inputs";
import { figure } from "../../sheet";
import { accessoryDrive, blowerRun } from "../cells";
import { rawWaterDriveRatio } from "../ratios";
import { drawWindows, type UnitSpeeds } from "./windowPlate";

const turned = ({ members }: { members: readonly DrivenMember[] }) =>
  members
    .filter(({ role }) => role !== "crank")
    .map(
      ({ unit, lowestSpeed, highestSpeed, at }): UnitSpeeds => ({
        unit,
        lowest: lowestSpeed,
        highest: highestSpeed,
        at,
      }),
    );

const from = {
  blowerRun,
  accessoryDrive,
  heatCarrier,
  rawWaterDriveRatio,
  rawWaterHighestSpeed,
  idleSpeed,
  ratedSpeed,
  maximumSpeed,
};

type Values = {
  readonly blowerRun: { readonly members: readonly DrivenMember[] };
  readonly accessoryDrive: { readonly members: readonly DrivenMember[] };
  readonly heatCarrier: string;
} & Readonly<
  Record<"rawWaterDriveRatio" | "rawWaterHighestSpeed" | "idleSpeed" | "ratedSpeed" | "maximumSpeed", number>
>;

/** Every driven unit of both belts, but for the blower belt's idler, and in a boat the raw-water pump. */
export function unitsOfDrives(at: Values): readonly UnitSpeeds[] {
  const speed = (engine: number) => (engine * at.rawWaterDriveRatio) as RotationalSpeed;
  const pump: UnitSpeeds = {
    unit: "Raw-water pump",
    lowest: 0,
    highest: at.rawWaterHighestSpeed,
    at: { idle: speed(at.idleSpeed), rated: speed(at.ratedSpeed), maximum: speed(at.maximumSpeed) },
  };
  const blower = turned({ members: at.blowerRun.members.filter(({ role }) => role !== "idler") });
  return [...blower, ...turned(at.accessoryDrive), ...(at.heatCarrier === "seaWater" ? [pump] : [])];
}

const slow = ({ lowest, at }: UnitSpeeds) => at.idle < lowest;
const fast = ({ highest, at }: UnitSpeeds) => at.maximum > highest;

export const speedWindows = figure({
  key: "speedWindows",
  title: "Every unit's speeds, against what it allows",
  from,
  describe: (at, units) => {
    const all = unitsOfDrives(at);
    const wrong = all.filter((unit) => slow(unit) || fast(unit));
    const text = (speed: number) => units.text("rotationalSpeed", speed);
    if (wrong.length > 0) {
      return wrong
        .map((unit) =>
          slow(unit)
            ? `${unit.unit} turns at ${text(unit.at.idle)} at idle and needs ${text(unit.lowest)}.`
            : `${unit.unit} reaches ${text(unit.at.maximum)} and may reach ${text(unit.highest)}.`,
        )
        .join(" ");
    }
    const tightest = all.reduce((least, unit) =>
      unit.highest / unit.at.maximum < least.highest / least.at.maximum ? unit : least,
    );
    return `All ${all.length} units stay inside their windows from idle to the highest engine speed. ${tightest.unit} comes nearest to its highest: ${text(tightest.at.maximum)} of ${text(tightest.highest)}.`;
  },
  draw: (at, { width, units }) => drawWindows(unitsOfDrives(at), { width, units }),
  table: (at, units) => ({
    columns: [
      "Unit",
      ...["Lowest allowed", "At idle", "Promised", "Highest", "Highest allowed"].map(
        (name) => [name, units.unit("rotationalSpeed")] as const,
      ),
      "Inside",
    ],
    rows: unitsOfDrives(at).map((each) => [
      each.unit,
      ...[each.lowest, each.at.idle, each.at.rated, each.at.maximum, each.highest].map((speed) =>
        units.number("rotationalSpeed", speed),
      ),
      slow(each) ? "too slow at idle" : fast(each) ? "too fast at the highest" : "yes",
    ]),
  }),
});
