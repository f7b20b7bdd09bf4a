import {
  beltsNear,
  isToothed,
  type OfferedBelt,
  type Point,
  takeUpOf,
  type TensionerMotion,
  type TensionerPosition,
  tensionerFit,
} from "../../lib/drive";
import type { Angle, Count, Fraction, Length } from "../../lib/quantity";
import type { DrawnFrontBelt } from "./frontBelts";

/** A belt, and where the pulley that takes up must stand for it. */
export interface Offer {
  readonly length: Length;
  /** absent for a ribbed belt */
  readonly teeth?: Count;
  readonly standard: boolean;
  /** how far from where it is drawn [m], along its slide or its arm's circle */
  readonly travel: Length;
  readonly place: Point;
  /** from the crank's axis [m] */
  readonly fromCrank: Length;
}

/** How a belt of the front can be fitted. */
export interface FrontFit {
  readonly mark: string;
  readonly name: string;
  /** the pulley that takes up; where none is mounted to move, the one whose centre distance would */
  readonly pulley: string;
  readonly by: "slide" | "arm" | "centre distance";
  /** how far it may move, each way */
  readonly reach: Length;
  /** belts to choose from that close the run, shortest first */
  readonly offers: readonly Offer[];
  /** the belt in hand, or the nearest */
  readonly chosen?: Offer;
  /** travel that slipping the belt on asks for, and what stretch will ask for */
  readonly forFitting?: Length;
  readonly forStretch?: Length;
  /** farthest that the pulley stands from where it is drawn, of fitting, running and stretched */
  readonly farthest?: Length;
  /** why no belt can be told, in words */
  readonly fault?: string;
}

/** Takes up less than this share of its way, and it does not tension a belt [–]. */
const leastTakeUp = 0.05;

/** A belt farther off than this is not looked for [m]. */
const farthestLook = 0.12;

/** What is asked of the pulley that takes up beside closing the run. */
interface Wanted {
  readonly fittingSlack: Length;
  readonly stretchShare: Fraction;
}

type Member = DrawnFrontBelt["members"][number];

/** The belts that fit a run, and where its tensioner stands for each. */
export function fitsOf(laid: DrawnFrontBelt, wanted: Wanted): FrontFit {
  const { mark, name, section, run, layout, belt, members } = laid;
  const { member, by, motion } = moverOf(laid);
  const common = { mark, name, pulley: member.unit, by, reach: belt.slide };
  if (run === undefined) return { ...common, offers: [], fault: laid.fault! };

  const reach = Math.min(farthestLook, by === "arm" ? 1.5 * armOf(member) : farthestLook) as Length;
  const positionFor = (length: Length): TensionerPosition | undefined => {
    try {
      return tensionerFit({ layout, run, pulley: member.unit, motion, reach, beltLength: length });
    } catch (error) {
      if (error instanceof RangeError) return undefined;
      throw error;
    }
  };
  const at = members.indexOf(member);
  const offerOf = ({ length, standard }: OfferedBelt, position: TensionerPosition): Offer => {
    const { x, y } = position.run.pulleys[at]!;
    return {
      length,
      ...(isToothed(section) && { teeth: Math.round(length / section.pitch) as Count }),
      standard,
      travel: position.travel,
      place: { x, y },
      fromCrank: Math.hypot(x, y) as Length,
    };
  };

  const inHand = beltInHand(laid, run.length);
  if (typeof inHand === "string") return { ...common, offers: [], fault: inHand };
  // Belts that would ask for more than the look, by the take-up as drawn, are not tried: most standard ones are far off.
  const furthest = Math.abs(takeUpOf(run, member.unit, motion)) * reach;
  const near = beltsNear(section, run.length).filter(
    ({ length }) => Math.abs(length - inHand.length) > 1e-9 && Math.abs(length - run.length) < furthest,
  );
  const others = near.flatMap((offered) => {
    const position = positionFor(offered.length);
    return position ? [offerOf(offered, position)] : [];
  });
  const position = positionFor(inHand.length);
  if (position === undefined) {
    const short = inHand.length - run.length;
    const fault = `a belt of ${millimetres(inHand.length)} is ${millimetres(Math.abs(short))} ${short < 0 ? "shorter" : "longer"} than the run as drawn; no place of ${member.unit} closes it`;
    return { ...common, offers: others, fault };
  }
  const chosen = offerOf(inHand, position);
  const offers = [...others, chosen].sort((a, b) => a.length - b.length);
  const takeUp = Math.abs(position.takeUp);
  if (takeUp < leastTakeUp) {
    return { ...common, offers, chosen, fault: `${member.unit} moves along the belt, and takes up next to nothing` };
  }
  const forFitting = wanted.fittingSlack / takeUp;
  const forStretch = (wanted.stretchShare * inHand.length) / takeUp;
  const tightens = Math.sign(position.takeUp);
  const ends = [position.travel - tightens * forFitting, position.travel, position.travel + tightens * forStretch];
  return {
    ...common,
    offers,
    chosen,
    forFitting: forFitting as Length,
    forStretch: forStretch as Length,
    farthest: Math.max(...ends.map(Math.abs)) as Length,
  };
}

/** The belt whose length is entered, or the nearest; or in words why that is none. */
function beltInHand({ section, belt, name }: DrawnFrontBelt, needed: Length): OfferedBelt | string {
  if (!isToothed(section)) return { length: belt.length > 0 ? belt.length : needed, standard: false };
  const teeth = Math.max(1, Math.round((belt.length > 0 ? belt.length : needed) / section.pitch));
  const length = (teeth * section.pitch) as Length;
  if (belt.length > 0 && Math.abs(belt.length - length) > section.pitch / 50) {
    return `${name}: ${millimetres(belt.length)} is no whole number of its ${millimetres(section.pitch)} teeth; ${teeth} of them are ${millimetres(length)}`;
  }
  return { length, standard: section.standardLengths.some((each) => Math.abs(each - length) < 1e-9) };
}

interface Mover {
  readonly member: Member;
  readonly by: FrontFit["by"];
  readonly motion: TensionerMotion;
}

/** The pulley that takes up: the first that is mounted to move, or else the unit farthest from the crank. */
export function moverOf({ members }: DrawnFrontBelt): Mover {
  const moving = members.find(({ mount, role }) => mount !== "fixed" && role !== "crank");
  if (moving?.mount === "pivoting") return { member: moving, by: "arm", motion: { pivot: moving.guide } };
  if (moving) {
    const { x, y, guide } = moving;
    return { member: moving, by: "slide", motion: { direction: Math.atan2(guide.y - y, guide.x - x) as Angle } };
  }
  const from = ({ x, y }: Member) => Math.hypot(x, y);
  const member = members
    .slice(1)
    .filter(({ contact }) => contact === "toothed")
    .reduce((far, each) => (from(each) > from(far) ? each : far), members[1] ?? members[0]!);
  return { member, by: "centre distance", motion: { direction: Math.atan2(member.y, member.x) as Angle } };
}

const armOf = ({ x, y, guide }: Member) => Math.hypot(x - guide.x, y - guide.y);
const millimetres = (length: number) => `${Number((1000 * length).toPrecision(4))} mm`;
