import {
  blockedStrainerLoss,
  branchSplit,
  type PumpOperatingPoint,
  type PumpSystem,
  pipeVelocity,
  pumpOnSystem,
  type WaterPump,
} from "../../lib/cooling";
import type {
  Density,
  Fraction,
  GaugePressure,
  Length,
  PressureDifference,
  RotationalSpeed,
  Velocity,
  VolumeFlow,
  VolumePerTurn,
} from "../../lib/quantity";
import { elementNames } from "./elementNames";
import type { ElementKey } from "./inputs";

/** Standard acceleration of free fall [m/s²], by definition. */
const gravity = 9.80665;

/** A row of the raw-water line. */
export interface LineRow {
  readonly element: ElementKey;
  readonly lies: "behind" | "beside";
  /** how far its valve is open where flows are found, its share of the flow where they are set */
  readonly share: Fraction;
  readonly loss: PressureDifference;
  readonly passage: number;
}

/** Pump and line, as the inputs state them. */
export interface LineAndPump {
  readonly rawWaterLine: readonly LineRow[];
  readonly branchFlow: BranchFlow;
  readonly rawWaterPumpKind: "impeller" | "centrifugal";
  readonly rawWaterDisplacement: VolumePerTurn;
  readonly rawWaterFilling: Fraction;
  readonly rawWaterShutOff: PressureDifference;
  readonly rawWaterOpenFlow: VolumeFlow;
  readonly rawWaterStatedSpeed: RotationalSpeed;
  readonly exchangerSeaFlow: VolumeFlow;
  readonly suctionLineLoss: PressureDifference;
  readonly strainerBlocked: Fraction;
  readonly injectionHeight: Length;
  readonly seaDensity: Density;
}

/** Loss before and behind the pump at the flow stated, and the pump itself. */
export interface LineHydraulics {
  readonly pump: WaterPump;
  readonly system: PumpSystem;
  /** losses at the reference flow: strainers as blocked as they are, the rest before the pump, and all behind it [Pa] */
  readonly strainerLoss: PressureDifference;
  readonly suctionLoss: PressureDifference;
  readonly deliveryLoss: PressureDifference;
}

/** Whether the flow of branches is found from their losses, or set. */
export type BranchFlow = "found" | "set";

/** Elements that lie beside each other, with what passes each and what they lose together. */
export interface LineGroup {
  readonly rows: readonly LineRow[];
  /** share of the pump's flow through each [–] */
  readonly shares: readonly Fraction[];
  /** loss of each when the reference flow passes the whole line, its valve open [Pa] */
  readonly losses: readonly PressureDifference[];
  /** loss of all together then [Pa] */
  readonly loss: PressureDifference;
}

/**
 * The line's elements in groups that lie beside each other, with their flows: found, so that each branch of a group loses
 * the same, or as they are set, when the valve of each takes what it loses less than the one with the largest loss.
 *
 * @throws RangeError if the pump lies beside another element, or all branches are shut
 */
export function lineGroups(rows: readonly LineRow[], flow: BranchFlow, blocked: Fraction): readonly LineGroup[] {
  return groupsOfRows(rows).map((group): LineGroup => {
    requirePumpAlone(group);
    const full = group.map(({ element, loss }) =>
      element === "strainer" ? (blockedStrainerLoss(loss, blocked) as PressureDifference) : loss,
    );
    const own = (shares: readonly number[]) => full.map((loss, i) => (loss * shares[i]! ** 2) as PressureDifference);
    if (flow === "set") {
      const shares = group.map(({ share }) => share);
      const losses = own(shares);
      return { rows: group, shares, losses, loss: Math.max(...losses) as PressureDifference };
    }
    const branches = group.map(({ element, share }, i) => ({
      name: elementNames[element].toLowerCase(),
      loss: full[i]!,
      open: share,
    }));
    const { shares, loss } = branchSplit(branches);
    return { rows: group, shares, losses: own(shares), loss };
  });
}

function requirePumpAlone(group: readonly LineRow[]): void {
  if (group.length === 1 || !group.some(({ element }) => element === "pump")) return;
  const other = group.find(({ element }) => element !== "pump");
  const name = other ? `the ${elementNames[other.element].toLowerCase()}` : "another pump";
  throw new RangeError(`rawWaterLine: the raw-water pump lies beside ${name}; the whole flow passes the pump: put one behind the other`);
}

/** Elements of the line that lie beside each other, group by group. */
function groupsOfRows(rows: readonly LineRow[]): readonly (readonly LineRow[])[] {
  const groups: LineRow[][] = [];
  for (const row of rows) {
    if (row.lies === "beside" && groups.length > 0) groups.at(-1)!.push(row);
    else groups.push([row]);
  }
  return groups;
}

/** Pump and line ready to be asked for their operating point. @throws RangeError unless the pump stands once in the line */
export function hydraulicsOf(at: LineAndPump): LineHydraulics {
  const pumps = at.rawWaterLine.filter(({ element }) => element === "pump").length;
  if (pumps !== 1) {
    throw new RangeError(
      `rawWaterLine: the raw-water pump stands ${pumps} times in the line; it must stand there once`,
    );
  }
  let [strainerLoss, suctionLoss, deliveryLoss] = [0, at.suctionLineLoss as number, 0];
  let behind = false;
  for (const { rows, loss } of lineGroups(at.rawWaterLine, at.branchFlow, at.strainerBlocked)) {
    const strains = rows.some(({ element }) => element === "strainer");
    if (rows.some(({ element }) => element === "pump")) behind = true;
    else if (behind) deliveryLoss += loss;
    else if (strains) strainerLoss += loss;
    else suctionLoss += loss;
  }
  const total = strainerLoss + suctionLoss + deliveryLoss;
  return {
    pump: pumpOf(at),
    system: {
      staticPressure: (at.seaDensity * gravity * at.injectionHeight) as PressureDifference,
      // a line without any loss would still have its outlet; a pascal keeps the curve one of second order
      lossAtReference: Math.max(total, 1) as PressureDifference,
      referenceFlow: at.exchangerSeaFlow,
    },
    strainerLoss: strainerLoss as PressureDifference,
    suctionLoss: suctionLoss as PressureDifference,
    deliveryLoss: deliveryLoss as PressureDifference,
  };
}

function pumpOf(at: LineAndPump): WaterPump {
  const { rawWaterShutOff: shutOffPressure, rawWaterStatedSpeed: ratedSpeed } = at;
  if (at.rawWaterPumpKind === "centrifugal") {
    return { kind: "centrifugal", shutOffPressure, openFlow: at.rawWaterOpenFlow, ratedSpeed };
  }
  const { rawWaterDisplacement: displacement, rawWaterFilling: filling } = at;
  return { kind: "impeller", displacement, filling, shutOffPressure, ratedSpeed };
}

/** Pressures and velocity at a row of the line. */
export interface RowFlow {
  readonly pressureIn: GaugePressure;
  readonly pressureOut: GaugePressure;
  /** through it */
  readonly volumeFlow: VolumeFlow;
  /** pressure that its valve takes */
  readonly valveLoss: PressureDifference;
  /** in its tubes, where their area is stated */
  readonly velocity: Velocity | undefined;
}

/** Gauge pressures before and behind every row at an operating point, all of the line at the pump's height. */
export function pressuresAlong(
  at: LineAndPump,
  { volumeFlow, pressureRise }: PumpOperatingPoint,
  pumpHeight: Length,
): readonly RowFlow[] {
  const squared = (volumeFlow / at.exchangerSeaFlow) ** 2;
  let pressure = -at.seaDensity * gravity * pumpHeight - at.suctionLineLoss * squared;
  return lineGroups(at.rawWaterLine, at.branchFlow, at.strainerBlocked).flatMap(({ rows, shares, losses, loss }) => {
    const before = pressure;
    const pumps = rows.some(({ element }) => element === "pump");
    pressure = pumps ? before + pressureRise : before - loss * squared;
    return rows.map(({ passage }, i) => {
      const through = (shares[i]! * volumeFlow) as VolumeFlow;
      return {
        pressureIn: before as GaugePressure,
        pressureOut: pressure as GaugePressure,
        volumeFlow: through,
        valveLoss: ((through > 0 ? Math.max(0, loss - losses[i]!) : loss) * squared) as PressureDifference,
        velocity: passage > 0 ? pipeVelocity(through, Math.sqrt((4 * passage) / Math.PI) as Length) : undefined,
      };
    });
  });
}

/** The operating point at a pump speed, or why there is none. */
export function operatingPointAt(
  { pump, system }: LineHydraulics,
  speed: RotationalSpeed,
): PumpOperatingPoint | { readonly refused: string } {
  try {
    return pumpOnSystem(pump, speed, system);
  } catch (error) {
    if (error instanceof RangeError) return { refused: error.message };
    throw error;
  }
}
