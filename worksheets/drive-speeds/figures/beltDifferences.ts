import type { FigureUnits } from "../../sheet";
import { reading } from "../../drawing";
import type { ShownBelt, ShownMember } from "./shownBelt";

/** Below this two places are the same [m]. */
const same = 5e-5;

/** What sets the belts of one installation apart from another's, belt by belt, in words. */
export function beltDifferences(
  from: readonly ShownBelt[],
  to: readonly ShownBelt[],
  units: FigureUnits,
): readonly { readonly belt: string; readonly words: readonly string[] }[] {
  const gone = from
    .filter(({ name }) => !to.some((belt) => belt.name === name))
    .map(({ name }) => ({ belt: name, words: ["not there"] }));
  const others = to.map((belt) => {
    const before = from.find(({ name }) => name === belt.name);
    return { belt: belt.name, words: before ? changes(before, belt, units) : [`only here, over ${belt.members.length} pulleys`] };
  });
  return [...others, ...gone].filter(({ words }) => words.length > 0);
}

function changes(from: ShownBelt, to: ShownBelt, units: FigureUnits): readonly string[] {
  const missing = from.members.filter(({ unit }) => !to.members.some((member) => member.unit === unit));
  const lengths = [from, to].map(({ run }) => (run ? reading(units, "length", run.length, { digits: 4 }) : "none"));
  return [
    ...(from.section.name === to.section.name ? [] : [`section ${from.section.name} → ${to.section.name}`]),
    ...missing.map(({ unit }) => `no ${unit.toLowerCase()}`),
    ...to.members.flatMap((member) => {
      const before = from.members.find(({ unit }) => unit === member.unit);
      return before ? memberChanges(before, member, units) : [`${member.unit.toLowerCase()} added`];
    }),
    ...(lengths[0] === lengths[1] ? [] : [`length ${lengths.join(" → ")}`]),
  ];
}

function memberChanges(from: ShownMember, to: ShownMember, units: FigureUnits): readonly string[] {
  const name = to.unit.toLowerCase();
  const moved = Math.hypot(to.x - from.x, to.y - from.y);
  const length = (value: number) => reading(units, "length", value, { digits: 3 });
  return [
    ...(from.teeth === to.teeth ? [] : [`${name} ${from.teeth} → ${to.teeth} teeth`]),
    ...(to.teeth > 0 || from.teeth > 0 || Math.abs(from.diameter - to.diameter) < same
      ? []
      : [`${name} ${length(from.diameter)} → ${length(to.diameter)} across`]),
    ...(from.contact === to.contact ? [] : [`${name} on the ${to.contact === "back" ? "back" : "toothed face"}`]),
    ...(moved > same ? [`${name} moved by ${length(moved)}`] : []),
  ];
}
