import {
  blockedStrainerLoss,
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
import type { ElementKey } from "./inputs";

/** Standard acceleration of free fall [m/s²], by definition. */
const gravity = 9.80665;

/** A row of the raw-water line. */
export interface LineRow {
  readonly element: ElementKey;
  readonly lies: "behind" | "beside";
  readonly share: Fraction;
  readonly loss: PressureDifference;
  readonly passage: number;
}

/** Pump and line, as the inputs state them. */
export interface LineAndPump {
  readonly rawWaterLine: readonly LineRow[];
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

/** Elements of the line that lie beside each other, group by group. */
export function groupsOfRows(rows: readonly LineRow[]): readonly (readonly LineRow[])[] {
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
  for (const group of groupsOfRows(at.rawWaterLine)) {
    const loss = Math.max(...group.map((row) => lossAtReference(row, at.strainerBlocked)));
    const strains = group.some(({ element }) => element === "strainer");
    if (group.some(({ element }) => element === "pump")) behind = true;
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

/** Loss of a row when the reference flow passes the whole line [Pa]. */
function lossAtReference({ element, loss, share }: LineRow, blocked: Fraction): number {
  const clean = (loss * share ** 2) as PressureDifference;
  return element === "strainer" ? blockedStrainerLoss(clean, blocked) : clean;
}

/** Pressures and velocity at a row of the line. */
export interface RowFlow {
  readonly pressureIn: GaugePressure;
  readonly pressureOut: GaugePressure;
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
  return groupsOfRows(at.rawWaterLine).flatMap((group) => {
    const before = pressure;
    const loss = Math.max(...group.map((row) => lossAtReference(row, at.strainerBlocked))) * squared;
    const pumps = group.some(({ element }) => element === "pump");
    pressure = pumps ? before + pressureRise : before - loss;
    return group.map(({ passage, share }) => ({
      pressureIn: before as GaugePressure,
      pressureOut: pressure as GaugePressure,
      velocity:
        passage > 0
          ? pipeVelocity((share * volumeFlow) as VolumeFlow, Math.sqrt((4 * passage) / Math.PI) as Length)
          : undefined,
    }));
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
