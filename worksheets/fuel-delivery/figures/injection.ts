import { crankAngleOf } from "../../../lib/fuel";
import type { Time } from "../../../lib/quantity";
import { ratedSpeed } from "../../brief/cells";
import { axisRoom, leading, narrow, plate, share } from "../../drawing";
import { figure } from "../../sheet";
import { injectedVolume, injectionAngle, nozzleFlow, pumpCapacity, pumpDemand } from "../cells";
import { injectionWindow, needleRamps } from "../inputs";
import { deliveryBand } from "./deliveryBand";
import { degrees, rateBand } from "./rateBand";
import { rateCorners } from "./rateCorners";

export const injection = figure({
  key: "injection",
  title: "Injection in its window, and the pump behind it",
  from: {
    injectionAngle,
    injectionWindow,
    needleRamps,
    ratedSpeed,
    nozzleFlow,
    injectedVolume,
    pumpDemand,
    pumpCapacity,
  },
  describe: (at, units) => {
    const left = at.injectionWindow - at.injectionAngle;
    const spare = at.pumpCapacity - at.pumpDemand;
    return [
      `Injection takes ${degrees(units, at.injectionAngle)} of crank angle; the window allows ${degrees(units, at.injectionWindow)}, so ${degrees(units, Math.abs(left))} ${left >= 0 ? "are left" : "are missing"}.`,
      `The pump can deliver ${units.text("massFlow", at.pumpCapacity, "fuel")} where the rail asks for ${units.text("massFlow", at.pumpDemand, "fuel")}: ${share(units, Math.abs(spare) / at.pumpDemand)} ${spare >= 0 ? "to spare" : "too little"}.`,
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const ramps = crankAngleOf(at.needleRamps as Time, at.ratedSpeed);
    const stacked = width < narrow;
    const rateTop = 50;
    const rateHeight = stacked ? 150 : 180;
    const deliveryTop = rateTop + rateHeight + axisRoom + 50;
    const barPitch = stacked ? 44 : 30;
    const { svg, ground } = plate(width, deliveryTop + 2 * barPitch + axisRoom + leading + 8);
    rateBand(ground, {
      corners: rateCorners(at.injectionAngle, ramps),
      angle: at.injectionAngle,
      window: at.injectionWindow,
      flow: at.nozzleFlow,
      volume: at.injectedVolume,
      units,
      width,
      top: rateTop,
      height: rateHeight,
    });
    deliveryBand(ground, {
      demand: at.pumpDemand,
      capacity: at.pumpCapacity,
      units,
      width,
      top: deliveryTop,
      stacked,
      pitch: barPitch,
      row: 7,
    });
    return svg;
  },
  table: (at, units) => {
    const ramps = crankAngleOf(at.needleRamps as Time, at.ratedSpeed);
    return {
      columns: ["What", "Value", "Unit"],
      rows: [
        ...rateCorners(at.injectionAngle, ramps).map(({ angle, rate }) => [
          `Rate at ${degrees(units, angle)} from the start`,
          units.number("volumeFlow", rate * at.nozzleFlow, "small"),
          units.unit("volumeFlow", "small"),
        ]),
        ["Fuel of one injection", units.number("volumePerStroke", at.injectedVolume), units.unit("volumePerStroke")],
        ["Injection lasts", units.number("crankAngle", at.injectionAngle), units.unit("crankAngle")],
        ["Window", units.number("crankAngle", at.injectionWindow), units.unit("crankAngle")],
        ["The rail asks for", units.number("massFlow", at.pumpDemand, "fuel"), units.unit("massFlow", "fuel")],
        ["The pump can deliver", units.number("massFlow", at.pumpCapacity, "fuel"), units.unit("massFlow", "fuel")],
      ],
    };
  },
});
