import {
  type BeltRun,
  type BeltSection,
  beltSections,
  crankOf,
  type DrawnBelt,
  type DriveMember,
  type LaidBelt,
  memberRatio,
  type Point,
} from "../../lib/drive";
import type { Count, Power, Ratio, RotationalSpeed } from "../../lib/quantity";
import type { BeltRow, PulleyRow } from "./beltTables";

/** A pulley with what other lines and sheets say of it filled in. */
export interface FrontMember extends DriveMember {
  /** its row in the table of pulleys, from 0 */
  readonly row: number;
  readonly role: PulleyRow["role"];
  readonly mount: PulleyRow["mount"];
  /** the pivot of its arm, or a point toward which it slides */
  readonly guide: Point;
  /** power stated in the table, at the promised speed [W] */
  readonly power: Power;
  /** turns in one turn of the crank [–] */
  readonly ratio: Ratio;
}

/** A belt and its pulleys, clockwise from the crank. */
export interface FrontBelt extends Omit<BeltRow, "section"> {
  readonly section: BeltSection;
  readonly members: readonly FrontMember[];
}

/** What a laid belt keeps of its rows. */
interface OfTables {
  /** letter by which the tables know it */
  readonly mark: BeltRow["mark"];
  /** the belt's row: letter, width, set tension and the maker's numbers */
  readonly belt: Omit<FrontBelt, "section" | "members">;
}

/** A belt of the table as it lies. */
export type DrawnFrontBelt = DrawnBelt<FrontMember> & OfTables;

/** A belt of the table as it lies and runs. */
export type LaidFrontBelt = LaidBelt<FrontMember> & OfTables;

/** What belts and pulleys take from lines and sheets of their own. */
export interface OwnedElsewhere {
  readonly belts: readonly BeltRow[];
  readonly frontPulleys: readonly PulleyRow[];
  readonly blowerDriverTeeth: Count;
  readonly blowerDrivenTeeth: Count;
  readonly rawWaterDriverTeeth: Count;
  readonly rawWaterDrivenTeeth: Count;
  readonly blowerHighestSpeed: RotationalSpeed;
  readonly rawWaterHighestSpeed: RotationalSpeed;
}

/**
 * The two tables put together, belt by belt. A belt without pulleys is left out.
 * @throws RangeError naming a pulley whose belt is not there, a belt not listed from its crank on, or an entry that has
 *   its own line elsewhere
 */
export function frontBeltsOf(at: OwnedElsewhere): readonly FrontBelt[] {
  const marks = at.belts.map(({ mark }) => mark);
  const twice = marks.find((mark, i) => marks.indexOf(mark) !== i);
  if (twice !== undefined) throw new RangeError(`belts: two of them are ${twice}; give each a letter of its own`);
  for (const { unit, belt } of at.frontPulleys) {
    if (!marks.includes(belt)) throw new RangeError(`${unit}: it is on belt ${belt}, which the belts do not have`);
  }
  return at.belts.flatMap((row) => {
    const rows = at.frontPulleys.flatMap((pulley, i) => (pulley.belt === row.mark ? [{ pulley, i }] : []));
    if (rows.length === 0) return [];
    const section = beltSections.find(({ name }) => name === row.section)!;
    const drives = (role: string) => rows.some(({ pulley }) => pulley.role === role);
    if (drives("blower") && drives("rawWaterPump")) {
      throw new RangeError(`${row.name}: it drives blower and raw-water pump; their crank pulleys have lines of their own, so give each a belt`);
    }
    const crankTeeth = drives("blower") ? at.blowerDriverTeeth : drives("rawWaterPump") ? at.rawWaterDriverTeeth : undefined;
    const sizes = rows.map(({ pulley, i }) => {
      const owned =
        pulley.role === "blower"
          ? at.blowerDrivenTeeth
          : pulley.role === "rawWaterPump"
            ? at.rawWaterDrivenTeeth
            : pulley.role === "crank"
              ? crankTeeth
              : undefined;
      if (owned !== undefined && pulley.teeth > 0) {
        throw new RangeError(`${row.name}, ${pulley.unit}: its teeth have a line of their own; enter 0 in the table`);
      }
      const ownLimit =
        pulley.role === "blower"
          ? at.blowerHighestSpeed
          : pulley.role === "rawWaterPump"
            ? at.rawWaterHighestSpeed
            : undefined;
      if (ownLimit !== undefined && pulley.highestSpeed > 0) {
        throw new RangeError(`${row.name}, ${pulley.unit}: its highest speed has a line of its own; enter 0 in the table`);
      }
      return memberOf(pulley, i, { teeth: owned ?? pulley.teeth, highestSpeed: ownLimit ?? pulley.highestSpeed });
    });
    const crank = crankOf(row.name, sizes);
    const members = sizes.map((member) => ({ ...member, ratio: memberRatio(section, crank, member) }));
    return [{ ...row, section, members }];
  });
}

/** Members of a role on all belts, in the order of the tables. */
export function membersOfRole(all: readonly FrontBelt[], role: PulleyRow["role"]): readonly FrontMember[] {
  return all.flatMap(({ members }) => members.filter((member) => member.role === role));
}

/** The belt that drives the blower. @throws RangeError where none does */
export function blowerBelt(laid: readonly LaidFrontBelt[]): LaidFrontBelt {
  const found = laid.find(({ members }) => members.some(({ role }) => role === "blower"));
  if (found) return found;
  throw new RangeError("blower: no pulley of the table is the blower's; one must be");
}

/** A belt's run. @throws RangeError with the fault of its layout where it has none */
export function runOf({ name, run, fault }: LaidFrontBelt): BeltRun {
  if (run) return run;
  throw new RangeError(`${name}: ${fault}`);
}

/** The table runs clockwise round a belt; the belt itself runs as the crank turns. */
export function alongTheBelt<Member>(
  clockwise: readonly Member[],
  rotation: "clockwise" | "counterclockwise",
): readonly Member[] {
  const [crank, ...others] = clockwise;
  return crank !== undefined && rotation === "counterclockwise" ? [crank, ...others.reverse()] : clockwise;
}

/** Written out: spreading rows of so many columns took most of the time of putting the tables together. */
function memberOf(
  pulley: PulleyRow,
  row: number,
  own: { readonly teeth: Count; readonly highestSpeed: RotationalSpeed },
): Omit<FrontMember, "ratio"> {
  return {
    unit: pulley.unit,
    role: pulley.role,
    contact: pulley.contact,
    teeth: own.teeth,
    diameter: pulley.diameter,
    x: pulley.x,
    y: pulley.y,
    shaftEnd: pulley.shaftEnd,
    mustTurn: pulley.mustTurn,
    lowestSpeed: pulley.lowestSpeed,
    highestSpeed: own.highestSpeed,
    burstSpeed: pulley.burstSpeed,
    row,
    mount: pulley.mount,
    guide: { x: pulley.guideX, y: pulley.guideY },
    power: pulley.power,
  };
}
