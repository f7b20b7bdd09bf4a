import {
  dutyLoadFactor,
  type EngineRoomAir,
  engineRoomAir,
  openingArea,
  roomTemperature,
  shaftLine,
} from "../../lib/cooling";
import { adjustmentExponents, fullLoadTorque, powerAdjustment } from "../../lib/engine";
import { dryAir, saturationVapourPressure } from "../../lib/fluid";
import { cell, structure } from "../../lib/graph";
import type {
  Count,
  Fraction,
  MassFlow,
  Power,
  Pressure,
  Ratio,
  RotationalSpeed,
  Temperature,
} from "../../lib/quantity";
import { fuelFlow, indicatedPower } from "../air-demand/cells";
import {
  ambientPressure,
  ambientTemperature,
  idleSpeed,
  ratedPower,
  ratedSpeed,
  ratedTorque,
  relativeHumidity,
} from "../brief/cells";
import { dutyCycle, fuelPropellerExponent } from "../fuel-delivery/inputs";
import { propellerAt } from "../fuel-delivery/propellerAt";
import { ownEngine, roomHeat } from "../marine-cooling/balance";
import { gearEfficiency, seaTemperature } from "../marine-cooling/inputs";
import { dryExhaust } from "./dryExhaust";
import {
  exhaustKind,
  gearRatio,
  openingFitted,
  openingFreeShare,
  openingVelocity,
  otherRoomHeat,
  outsideAir,
  peakTorqueSpeed,
  propellerShare,
  rating,
  roomAirFlow,
  shaftTorqueLimit,
  torqueRise,
} from "./inputs";
import { ratings } from "./ratings";

/** Heat in the engine room beside the engine's own surface. */
export const engineRoom = structure("engineRoom", {
  label: "Engine room by the ship-ventilation standard",
  from: { ratedPower, ownEngine, otherRoomHeat, dryExhaust, exhaustKind },
  compute: ({
    ratedPower,
    ownEngine,
    otherRoomHeat,
    dryExhaust,
    exhaustKind,
  }): EngineRoomAir & { readonly otherHeat: Power } => {
    const otherHeat = (otherRoomHeat + (exhaustKind === "dry" ? dryExhaust.heat : 0)) as Power;
    return {
      ...engineRoomAir({ power: ratedPower, strokes: 4 as Count, otherHeat, combustionAir: ownEngine.airFlow }),
      otherHeat,
    };
  },
  formula:
    "q = \\max\\left(q_c + \\frac{\\Phi}{\\rho\\,c\\,\\Delta T} - 0.4\\,q_c,\\ 1.5\\,q_c\\right), \\qquad \\Phi_e = 0.141\\,P^{0.76}",
  source: "ISO 8861:1998 (formula and numbers from memory)",
  assumptions: [
    "35 °C outside and 12.5 K of rise are the standard's; it is made for ships, and small craft have rules of their own.",
    "The engine's own air is what the chosen parts pass at the promised power.",
  ],
});

export const ventilationFlow = cell("ventilationFlow", {
  label: "Air that the standard asks for",
  kind: "volumeFlow",
  symbol: "q_{8861}",
  from: { engineRoom },
  compute: ({ engineRoom }) => engineRoom.totalFlow,
  formula: "q_{8861} = \\max(q_c + q_h,\\ 1.5\\,q_c)",
  source: "ISO 8861:1998 (from memory)",
  limits: [{ component: "engine-room air", side: "most", bound: roomAirFlow }],
});

export const openingNeeded = cell("openingNeeded", {
  label: "Openings needed, over all",
  kind: "area",
  symbol: "A_{r,0}",
  from: { volumeFlow: roomAirFlow, velocity: openingVelocity, freeShare: openingFreeShare },
  compute: openingArea,
  formula: "A_{r,0} = \\frac{q_r}{v_r\\,\\phi_r}",
  source: "definition",
  limits: [{ component: "engine-room openings", side: "most", bound: openingFitted }],
});

export const roomReaches = cell("roomReaches", {
  label: "Engine room would settle at",
  kind: "temperature",
  symbol: "T_{room}",
  from: { outsideAir, roomHeat, engineRoom, roomAirFlow, ambientPressure },
  compute: ({ outsideAir, roomHeat, engineRoom, roomAirFlow, ambientPressure }) =>
    roomTemperature({
      outsideTemperature: outsideAir,
      heat: (roomHeat + engineRoom.otherHeat) as Power,
      volumeFlow: roomAirFlow,
      density: dryAir.density(outsideAir, ambientPressure),
    }),
  formula: "T_{room} = T_{out} + \\frac{Q_r + Q_{r,o} + Q_l}{\\rho\\,c\\,q_r}",
  source: "energy balance",
  assumptions: [
    "All the air is warmed alike; the promise was made for the air of the brief, so that this is its limit.",
    "The heat is this engine's own balance; the standard's 0.141 P^0.76 stands in the flow above.",
  ],
  limits: [{ component: "engine-room air", side: "most", bound: ambientTemperature }],
});

const siteOf = (
  at: { readonly ambientPressure: Pressure; readonly relativeHumidity: Fraction; readonly seaTemperature: Temperature },
  temperature: Temperature,
) =>
  powerAdjustment({
    pressure: at.ambientPressure,
    temperature,
    relativeHumidity: at.relativeHumidity,
    saturationPressure: saturationVapourPressure(temperature),
    chargeCoolant: at.seaTemperature,
    exponents: adjustmentExponents.turbochargedCooled,
    mechanicalEfficiency: 0.8 as Fraction,
  }).power;

export const roomPowerShare = cell("roomPowerShare", {
  label: "Power with this room's air, over that with the air outside",
  kind: "fraction",
  symbol: "\\alpha_r",
  from: { roomReaches, outsideAir, ambientPressure, relativeHumidity, seaTemperature },
  compute: ({ roomReaches, outsideAir, ...at }) => (siteOf(at, roomReaches) / siteOf(at, outsideAir)) as Fraction,
  formula: "\\alpha_r = \\frac{\\alpha(T_{room})}{\\alpha(T_{out})}",
  source: "ISO 3046-1:2002, line of exponents for turbocharged engines with charge cooler (from memory)",
  assumptions: [
    "A turbocharger with a driven blower is not among the standard's engines; the solved engine stands beside it further down.",
  ],
});

export const shaft = structure("shaft", {
  label: "Propeller shaft at the promised power",
  from: { ratedSpeed, ratedPower, gearRatio, gearEfficiency },
  compute: ({ ratedSpeed, ratedPower, gearRatio, gearEfficiency }) =>
    shaftLine({ engineSpeed: ratedSpeed, enginePower: ratedPower, gearRatio, gearEfficiency }),
  formula: "n_s = \\frac{N}{i_g}, \\qquad P_s = \\eta_g P_b",
  source: "definition",
});

export const shaftSpeed = cell("shaftSpeed", {
  label: "Propeller shaft's speed",
  kind: "rotationalSpeed",
  symbol: "n_s",
  from: { shaft },
  compute: ({ shaft }) => shaft.shaftSpeed,
  formula: "n_s = \\frac{N}{i_g}",
  source: "definition",
});

export const shaftTorque = cell("shaftTorque", {
  label: "Propeller shaft's torque",
  kind: "torque",
  symbol: "M_s",
  from: { shaft },
  compute: ({ shaft }) => shaft.shaftTorque,
  formula: "M_s = \\frac{\\eta_g P_b}{2\\pi\\,n_s}",
  source: "definition",
  limits: [{ component: "gear and shaft", side: "most", bound: shaftTorqueLimit }],
});

/** What the propeller asks and the engine could give, at one speed. */
export interface DutyCurvePoint {
  readonly speed: RotationalSpeed;
  readonly engineLimit: Power;
  readonly propeller: Power;
  readonly fuelFlow: MassFlow;
}

const curvePoints = 33;

export const dutyCurve = structure("dutyCurve", {
  label: "Propeller and engine over the speed",
  from: {
    fuelFlow,
    indicatedPower,
    idleSpeed,
    ratedSpeed,
    ratedPower,
    ratedTorque,
    torqueRise,
    peakTorqueSpeed,
    propellerShare,
    fuelPropellerExponent,
  },
  compute: (at): readonly DutyCurvePoint[] =>
    Array.from({ length: curvePoints }, (_, i) => {
      const speed = (at.idleSpeed + ((at.ratedSpeed - at.idleSpeed) * i) / (curvePoints - 1)) as RotationalSpeed;
      const line = {
        ratedTorque: at.ratedTorque,
        ratedSpeed: at.ratedSpeed,
        torqueRise: at.torqueRise,
        peakSpeedRatio: at.peakTorqueSpeed as number as Ratio,
      };
      const { power: propeller, fuelFlow } = propellerAt(at, speed);
      return {
        speed,
        engineLimit: (2 * Math.PI * speed * fullLoadTorque(line, speed)) as Power,
        propeller,
        fuelFlow,
      };
    }),
  formula: "P_p = s_{pr} P_b\\left(\\frac{n}{N}\\right)^{x}, \\qquad P_e = 2\\pi n\\,M(n)",
  source:
    "propeller law from similar flow; full-load line as a parabola, common practice, no source; Willans' line for the fuel",
  assumptions: [
    "Fuel by Willans' line from the promised point: losses go with the square of the speed. That is what the promise asks for; the chosen parts stand in the heat balance along the curve.",
  ],
});

export const propellerMargin = cell("propellerMargin", {
  label: "Engine's full load over what the propeller asks, where they come closest",
  kind: "ratio",
  symbol: "m_p",
  from: { dutyCurve },
  compute: ({ dutyCurve }) =>
    Math.min(...dutyCurve.map(({ engineLimit, propeller }) => engineLimit / propeller)) as Ratio,
  formula: "m_p = \\min\\frac{P_e(n)}{P_p(n)}",
  source: "definition",
  limits: [
    { component: "propeller", side: "least", bound: 1 as Ratio, source: "below 1 the engine does not reach its speed" },
  ],
});

/** A phase of the duty cycle against the rating. */
export interface DutyRow {
  readonly phase: string;
  readonly share: Fraction;
  readonly speed: RotationalSpeed;
  readonly power: Power;
}

export const dutyRows = structure("dutyRows", {
  label: "Duty cycle in power and speed",
  from: { dutyCycle, ratedSpeed, ratedPower },
  compute: ({ dutyCycle, ratedSpeed, ratedPower }): readonly DutyRow[] => {
    const whole = dutyCycle.reduce((sum, { time }) => sum + time, 0);
    if (!(whole > 0))
      throw new RangeError("dutyRows: no phase of the duty cycle has a share of the time; give one a share");
    return dutyCycle.map(({ phase, time, speed, power }) => ({
      phase,
      share: (time / whole) as Fraction,
      speed: (speed * ratedSpeed) as RotationalSpeed,
      power: (power * ratedPower) as Power,
    }));
  },
  formula: "P_i = \\pi_i\\,P_b, \\qquad n_i = \\nu_i\\,N",
  source: "definition",
  assumptions: ["The duty cycle stands on the sheet of the fuel, with its fuel and its range."],
});

export const ratingLoadFactor = cell("ratingLoadFactor", {
  label: "Load factor that the rating allows",
  kind: "fraction",
  symbol: "f_{L,lim}",
  from: { rating },
  compute: ({ rating }) => ratings[rating].loadFactor,
  formula: "f_{L,lim} = f_{L,lim}(\\text{rating})",
  source: "common practice, no source; the maker's rating sheet goes before it",
});

export const loadFactor = cell("loadFactor", {
  label: "Load factor of the duty cycle",
  kind: "fraction",
  symbol: "f_L",
  from: { dutyRows, ratedPower },
  compute: ({ dutyRows, ratedPower }) => dutyLoadFactor(dutyRows, ratedPower),
  formula: "f_L = \\frac{\\sum \\tau_i P_i}{P_b}",
  source: "definition",
  limits: [{ component: "engine rating", side: "most", bound: ratingLoadFactor }],
});

export const ratingFullPower = cell("ratingFullPower", {
  label: "Part of the hours that the rating allows at full power",
  kind: "fraction",
  symbol: "f_{F,lim}",
  from: { rating },
  compute: ({ rating }) => ratings[rating].fullPower,
  formula: "f_{F,lim} = f_{F,lim}(\\text{rating})",
  source: "common practice, no source; the maker's rating sheet goes before it",
});

/** Powers above this part of the promised count as full. */
export const nearlyFull = 0.9;

export const fullPowerShare = cell("fullPowerShare", {
  label: "Part of the hours above nine tenths of the promised power",
  kind: "fraction",
  symbol: "f_F",
  from: { dutyRows, ratedPower },
  compute: ({ dutyRows, ratedPower }) =>
    dutyRows
      .filter(({ power }) => power > nearlyFull * ratedPower)
      .reduce<number>((sum, { share }) => sum + share, 0) as Fraction,
  formula: "f_F = \\sum_{P_i > 0.9 P_b} \\tau_i",
  source: "definition",
  limits: [{ component: "engine rating", side: "most", bound: ratingFullPower }],
});
