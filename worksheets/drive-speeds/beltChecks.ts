import type { StatedCheck } from "../../lib/graph";
import type { Count } from "../../lib/quantity";
import type { LaidFrontBelt } from "./frontBelts";

/** The limits that a belt's layout and its units' speeds are held against. */
export function beltChecks(laid: LaidFrontBelt, meshLeast: Count): readonly StatedCheck[] {
  const { name, belt, run, members, beltSpeed } = laid;
  return [
    ...(run === undefined ? [yesOrNo(name.toLowerCase(), `${name} lies on its pulleys`, false)] : []),
    ...members.filter(({ role }) => role !== "crank").flatMap(speedChecks),
    ...(run?.pulleys ?? []).flatMap(({ name: unit, teethInMesh }): StatedCheck[] =>
      teethInMesh === undefined
        ? []
        : [
            {
              component: name.toLowerCase(),
              label: `Teeth in mesh on the ${unit.toLowerCase()}`,
              kind: "count",
              side: "least",
              value: teethInMesh,
              bound: meshLeast,
              source: "ISO 5295 (from memory): below six teeth the rating is cut",
            },
          ],
    ),
    {
      component: name.toLowerCase(),
      label: `${name} speed at the highest engine speed`,
      kind: "velocity",
      side: "most",
      value: beltSpeed.maximum,
      bound: belt.speedLimit,
    },
  ];
}

function speedChecks({
  unit,
  at,
  lowestSpeed,
  highestSpeed,
  burstSpeed,
  turnsRightly,
}: LaidFrontBelt["members"][number]): readonly StatedCheck[] {
  const component = unit.toLowerCase();
  const speed = (label: string, side: "least" | "most", value: number, bound: number): readonly StatedCheck[] =>
    bound > 0 ? [{ component, label: `${unit} speed at ${label}`, kind: "rotationalSpeed", side, value, bound }] : [];
  return [
    ...speed("idle", "least", at.idle, lowestSpeed),
    ...speed("the highest engine speed", "most", at.maximum, highestSpeed),
    ...speed("overspeed", "most", at.overspeed, burstSpeed),
    ...(turnsRightly ? [] : [yesOrNo(component, `${unit} turns the way it must`, false)]),
  ];
}

function yesOrNo(component: string, label: string, yes: boolean): StatedCheck {
  return { component, label: `${label} (1 for yes, 0 for no)`, kind: "count", side: "least", value: yes ? 1 : 0, bound: 1 };
}
