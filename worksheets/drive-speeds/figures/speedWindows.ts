import { reading, share } from "../../drawing";
import { figure } from "../../sheet";
import { beltRuns } from "../beltRuns";
import { roomOf, unitsOfBelts, verdictOf, verdictWords } from "./unitSpeeds";
import { drawWindows } from "./windowPlate";

export const speedWindows = figure({
  key: "speedWindows",
  title: "Every unit's speeds, against what it allows",
  from: { beltRuns },
  describe: ({ beltRuns }, units) => {
    const all = unitsOfBelts(beltRuns);
    const text = (speed: number) => reading(units, "rotationalSpeed", speed, { digits: 4 });
    const wrong = all.flatMap((unit) => {
      const { slow, fast, bursting } = verdictOf(unit);
      return [
        ...(slow ? [`${unit.unit} turns at ${text(unit.at.idle)} at idle and needs ${text(unit.lowest)}.`] : []),
        ...(fast ? [`${unit.unit} reaches ${text(unit.at.maximum)} and may reach ${text(unit.highest)}.`] : []),
        ...(bursting
          ? [`${unit.unit} comes to ${text(unit.at.overspeed)} at overspeed and may burst at ${text(unit.burst)}.`]
          : []),
      ];
    });
    if (wrong.length > 0) return wrong.join(" ");
    const bound = all.filter(({ highest }) => highest > 0);
    const tightest = bound.reduce<(typeof bound)[number] | undefined>(
      (least, unit) => (least === undefined || roomOf(unit)! < roomOf(least)! ? unit : least),
      undefined,
    );
    const most = tightest
      ? ` ${tightest.unit} comes nearest to its highest: ${text(tightest.at.maximum)} of ${text(tightest.highest)}, ${share(units, roomOf(tightest)!)} left.`
      : "";
    return `All ${all.length} units stay inside their windows from idle to overspeed.${most}`;
  },
  draw: ({ beltRuns }, frame) => drawWindows(unitsOfBelts(beltRuns), frame),
  table: ({ beltRuns }, units) => ({
    columns: [
      "Unit",
      "Belt",
      ...["Lowest allowed", "At idle", "At cruise", "Promised", "Highest", "At overspeed", "Highest allowed", "Burst"].map(
        (name) => [name, units.unit("rotationalSpeed")] as const,
      ),
      "Inside",
    ],
    rows: unitsOfBelts(beltRuns).map((each) => {
      const { lowest, highest, burst, at } = each;
      const number = (speed: number) => units.number("rotationalSpeed", speed);
      const bound = (speed: number) => (speed > 0 ? number(speed) : "–");
      return [
        each.unit,
        each.belt,
        bound(lowest),
        ...[at.idle, at.cruise, at.rated, at.maximum, at.overspeed].map(number),
        bound(highest),
        bound(burst),
        verdictWords(verdictOf(each)) || "yes",
      ];
    }),
  }),
});
