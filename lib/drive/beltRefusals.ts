import { requirePositive } from "../quantity";
import type { BeltLayout, BeltSpan, Point, Pulley } from "./beltLayout";
import { type BeltTrace, beltTrace, inMillimetres, tangentSpan } from "./beltTrace";

/** Beyond this arc a belt has, in all likelihood, gone around a pulley that it does not reach. */
const widestWrap = 1.5 * Math.PI;

/** Two spans meeting at a flatter angle than this are one line, seen through rounding. */
const flattest = 1e-9;

/** Passes layouts whose pulleys are well described and stand clear of each other. @throws RangeError by name */
export function requireClearPulleys(layout: BeltLayout): void {
  requireDescribed(layout);
  const overlap = overlaps(layout)[0];
  if (overlap !== undefined) throw new RangeError(`beltRun: ${overlap}`);
}

/** Passes layouts of at least two pulleys, each with a name of its own, a radius and a place. @throws RangeError by name */
export function requireDescribed({ pulleys }: BeltLayout): void {
  if (pulleys.length < 2) {
    throw new RangeError(`beltRun: pulleys are ${pulleys.length}; a belt needs at least two`);
  }
  pulleys.forEach((pulley, i) => {
    requirePositive(`beltRun: pitch radius of ${pulley.name}`, pulley.pitchRadius, "m");
    if (!Number.isFinite(pulley.x) || !Number.isFinite(pulley.y)) {
      throw new RangeError(`beltRun: centre of ${pulley.name} is (${pulley.x}, ${pulley.y}) m; it must be finite`);
    }
    if (pulleys.slice(0, i).some(({ name }) => name === pulley.name)) {
      throw new RangeError(`beltRun: two pulleys are called ${pulley.name}`);
    }
  });
}

/** Pulleys that overlap, in words. */
export function overlaps({ pulleys }: BeltLayout): readonly string[] {
  const found: string[] = [];
  pulleys.forEach((pulley, i) => {
    for (const other of pulleys.slice(0, i)) {
      const overlap = pulley.pitchRadius + other.pitchRadius - Math.hypot(pulley.x - other.x, pulley.y - other.y);
      if (overlap > 0) {
        found.push(
          `${other.name} and ${pulley.name} overlap by ${inMillimetres(overlap)} at their pitch circles; move them apart`,
        );
      }
    }
  });
  return found;
}

/** Passes traces that a belt can follow. @throws RangeError naming the pulleys, and by how far */
export function requireBelt(layout: BeltLayout, trace: BeltTrace): void {
  const wrong = notClosed(layout, trace) ?? cutPulley(layout, trace.spans) ?? crossedSpan(trace.spans);
  if (wrong !== undefined) throw new RangeError(`beltRun: ${wrong}`);
}

/** Why a belt does not go around once, in words; undefined where it does. */
export function notClosed(layout: BeltLayout, trace: BeltTrace): string | undefined {
  if (closes(layout, trace)) return undefined;
  return runsTheOtherWay(layout)
    ? `the pulleys are listed against the ${layout.travel} travel of the belt; reverse the list or the travel`
    : culprit(layout, trace);
}

/** Whether the arcs turn the belt around exactly once, and none of them is a detour. */
function closes({ travel }: BeltLayout, { senses, wraps }: BeltTrace): boolean {
  const turned = wraps.reduce((sum, wrap, i) => sum + senses[i]! * wrap, 0) / (2 * Math.PI);
  return (
    Math.abs(turned - (travel === "counterclockwise" ? 1 : -1)) < 1e-6 && wraps.every((wrap) => wrap <= widestWrap)
  );
}

function runsTheOtherWay(layout: BeltLayout): boolean {
  const reversed: BeltLayout = { ...layout, travel: layout.travel === "clockwise" ? "counterclockwise" : "clockwise" };
  const trace = beltTrace(reversed);
  return closes(reversed, trace) && (cutPulley(reversed, trace.spans) ?? crossedSpan(trace.spans)) === undefined;
}

/** The pulley that stands furthest from the belt which its two neighbours would hold without it. */
function culprit({ pulleys }: BeltLayout, { senses, wraps }: BeltTrace): string {
  const count = pulleys.length;
  const gaps = pulleys.map((pulley, i) => {
    if (count < 3) return 0;
    const before = (i + count - 1) % count;
    const after = (i + 1) % count;
    const bypass = tangentSpan(pulleys[before]!, senses[before]!, pulleys[after]!, senses[after]!);
    return senses[i]! * leftOf(pulley, bypass) - pulley.pitchRadius;
  });
  const furthest = gaps.indexOf(Math.max(...gaps));
  if (gaps[furthest]! > 0) {
    const name = (i: number) => pulleys[(i + count) % count]!.name;
    return `${name(furthest)} does not reach the belt; it stands ${inMillimetres(gaps[furthest]!)} short of the straight run from ${name(furthest - 1)} to ${name(furthest + 1)}`;
  }
  const widest = wraps.indexOf(Math.max(...wraps) as (typeof wraps)[number]);
  const degrees = Number(((180 / Math.PI) * wraps[widest]!).toPrecision(4));
  return degrees > 270
    ? `the belt would wrap ${degrees}° around ${pulleys[widest]!.name}; it must be at most 270°`
    : `the belt does not go around once; look at the contact of each pulley and at the order of the list`;
}

/** Pulleys that a span runs into, in words; the first where one is enough. */
export function cutPulleys({ pulleys }: BeltLayout, spans: readonly BeltSpan[], enough = spans.length): readonly string[] {
  const found: string[] = [];
  for (const span of spans) {
    for (const pulley of pulleys) {
      if (pulley.name === span.from || pulley.name === span.to) continue;
      const cut = pulley.pitchRadius - distanceTo(pulley, span);
      if (cut <= 1e-12) continue;
      found.push(
        `the span from ${span.from} to ${span.to} cuts ${inMillimetres(cut)} deep into ${pulley.name}; move it, or list it between the two`,
      );
      if (found.length >= enough) return found;
    }
  }
  return found;
}

const cutPulley = (layout: BeltLayout, spans: readonly BeltSpan[]) => cutPulleys(layout, spans, 1)[0];

/** Spans that cross, in words, with how far along the first they meet. */
export function crossedSpans(spans: readonly BeltSpan[], enough = spans.length): readonly string[] {
  const found: string[] = [];
  for (const [i, span] of spans.entries()) {
    for (const other of spans.slice(i + 1)) {
      const along = crossing(span, other);
      if (along === undefined) continue;
      found.push(
        `the span from ${span.from} to ${span.to} crosses the span from ${other.from} to ${other.to}, ${inMillimetres(along)} beyond ${span.from}; look at the contact of each pulley and at the order of the list`,
      );
      if (found.length >= enough) return found;
    }
  }
  return found;
}

const crossedSpan = (spans: readonly BeltSpan[]) => crossedSpans(spans, 1)[0];

/** How far a point lies to the left of a span's line, seen along the travel [m]. */
function leftOf(point: Point, { start, direction }: BeltSpan): number {
  return Math.cos(direction) * (point.y - start.y) - Math.sin(direction) * (point.x - start.x);
}

/** Shortest distance from a pulley's centre to a span [m]. */
export function distanceTo(centre: Pulley, span: BeltSpan): number {
  const [cos, sin] = [Math.cos(span.direction), Math.sin(span.direction)];
  const along = cos * (centre.x - span.start.x) + sin * (centre.y - span.start.y);
  const nearest = Math.min(Math.max(along, 0), span.length);
  return Math.hypot(centre.x - span.start.x - nearest * cos, centre.y - span.start.y - nearest * sin);
}

/** How far along span a it meets span b [m]; undefined where they do not cross. */
function crossing(a: BeltSpan, b: BeltSpan): number | undefined {
  const sine = Math.sin(b.direction - a.direction);
  if (Math.abs(sine) < flattest) return undefined;
  // Each span's start lies so far to the left of the other's line; the quotient is how far along the lines meet.
  const alongB = -leftOf(b.start, a) / sine;
  const alongA = leftOf(a.start, b) / sine;
  return within(alongA, a.length) && within(alongB, b.length) ? alongA : undefined;
}

function within(along: number, length: number): boolean {
  return along > 1e-9 * length && along < (1 - 1e-9) * length;
}
