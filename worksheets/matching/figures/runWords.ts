import type { SweepPoint } from "../../../lib/charge";
import type { FigureUnits } from "../../sheet";
import { attained, isLeap, type Run } from "./run";

/** Why there is nothing, without the names of the functions that say so. */
export function withoutNames(refusal: string): string {
  return refusal.replace(/^(?:[a-zA-Z]+: )+/, "");
}

/** Why the parts give nothing at a speed; empty where they give something. */
export function reasonOf(point: SweepPoint, units: FigureUnits): string {
  if (!point.ok) return units.refusal(withoutNames(point.refusal));
  const { violated, point: at } = point;
  if (violated.length > 0) {
    const names = listed(violated.map(({ name }) => inSentence(name)));
    return `no load is allowed, since at every load ${names} ${violated.length > 1 ? "are" : "is"} passed`;
  }
  return at.brakePower > 0 ? "" : `${inSentence(point.binding.name)} is met before there is power at the flywheel`;
}

/** A sentence on the speeds at which the parts give nothing; empty if there are none. */
export function gapWords({ points }: Run, units: FigureUnits): string {
  const refused = points.filter((point) => !attained(point));
  const [first] = refused;
  if (!first) return "";
  const speed = units.text("rotationalSpeed", first.engineSpeed);
  if (refused.length === points.length) {
    const last = units.text("rotationalSpeed", points.at(-1)!.engineSpeed);
    return `The parts give nothing at any speed from ${speed} to ${last}. At ${speed}: ${reasonOf(first, units)}.`;
  }
  const more = refused.length > 1 ? ` and at ${refused.length - 1} more of ${points.length} speeds` : "";
  return `The parts give nothing at ${speed}${more}: ${reasonOf(first, units)}.`;
}

/** A sentence on the greatest leap of power; empty if there is none. */
export function leapWords({ points }: Run, units: FigureUnits): string {
  let most = 0;
  let told = "";
  points.slice(1).forEach((to, i) => {
    const from = points[i]!;
    if (!from.ok || !to.ok || !isLeap(from, to)) return;
    const height = Math.abs(to.point.brakePower - from.point.brakePower);
    if (height <= most) return;
    most = height;
    const [slow, fast] = [from, to].map(({ engineSpeed }) => units.text("rotationalSpeed", engineSpeed));
    const [low, high] = [from, to].map(({ point }) => units.text("power", point.brakePower));
    told = `Between ${slow} and ${fast} it leaps from ${low} to ${high}: below, ${inSentence(from.binding.name)} is met on the way up.`;
    if (from.point.brakePower > to.point.brakePower)
      told = `Between ${slow} and ${fast} it falls from ${low} to ${high}: above, ${inSentence(to.binding.name)} is met on the way up.`;
  });
  return told;
}

/** Limits that are met first, each with the speeds from and to which it is, where it lasts longest. */
export function bindingWords({ points }: Run, units: FigureUnits): string {
  const stretches: { readonly name: string; from: number; to: number }[] = [];
  for (const point of points) {
    const name = attained(point)?.binding.name;
    if (name === undefined) continue;
    const last = stretches.at(-1);
    if (last?.name === name) last.to = point.engineSpeed;
    else stretches.push({ name, from: point.engineSpeed, to: point.engineSpeed });
  }
  const bare = (speed: number) => units.text("rotationalSpeed", speed);
  const told = stretches.map(({ name, from, to }) =>
    from === to ? `${inSentence(name)} at ${bare(from)}` : `${inSentence(name)} from ${bare(from)} to ${bare(to)}`,
  );
  if (told.length === 0) return "";
  return `Met first: ${told.join(", ")}.`;
}

/** Sentences one after the other; empty ones left out. */
export function sentences(...all: readonly string[]): string {
  return all.filter((each) => each !== "").join(" ");
}

/** A name in the middle of a sentence. */
export function inSentence(name: string): string {
  return /^\p{Lu}\p{Ll}/u.test(name) ? name[0]!.toLowerCase() + name.slice(1) : name;
}

/** Words for a list: "a, b and c". */
export function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)!}`;
}
