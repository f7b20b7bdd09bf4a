import { columnWater, volumeFlowForHeat } from "../../../lib/cooling";
import { water } from "../../../lib/fluid";
import { cell } from "../../../lib/graph";
import type { Power, VolumeFlow } from "../../../lib/quantity";
import { ambientDensity } from "../../brief/cells";
import { ownEngine, roomHeat } from "../../marine-cooling/balance";
import { jacketTemperature } from "../../marine-cooling/inputs";
import { cellAirRise, cellPipeShare, supplyFlow } from "../inputs";
import { airHeat } from "../radiatorAt";
import { landHeat } from "./landHeat";
import { tower } from "./tower";

export const columnFlow = cell("columnFlow", {
  label: "Tower water that the engine's column lets in",
  kind: "volumeFlow",
  hint: "coolant",
  symbol: "q_c",
  from: { landHeat, jacketTemperature, tower, supplyFlow },
  compute: ({ landHeat, jacketTemperature, tower }) => {
    const flow = columnWater({
      heat: landHeat,
      engineOutlet: jacketTemperature,
      supply: tower.coldWater,
      specificHeat: water.specificHeat(tower.coldWater),
    });
    return (flow / water.density(tower.coldWater)) as VolumeFlow;
  },
  formula: "q_c = \\frac{Q_{land}}{\\rho\\,c\\,(T_{j,lim} - T_{t,c})}",
  source: "energy balance of a mixing column",
  limits: [{ component: "mixing column", side: "most", bound: supplyFlow }],
});

export const cellAir = cell("cellAir", {
  label: "Air that carries the cell's heat away",
  kind: "volumeFlow",
  symbol: "q_{cell}",
  from: { roomHeat, ownEngine, cellPipeShare, cellAirRise, ambientDensity },
  compute: (at) =>
    volumeFlowForHeat({
      heat: (at.roomHeat + at.cellPipeShare * at.ownEngine.exhaustHeat) as Power,
      temperatureRise: at.cellAirRise,
      specificHeat: airHeat,
      density: at.ambientDensity,
    }),
  formula: "q_{cell} = \\frac{Q_r + s_{cp}\\,Q_{ex}}{\\rho_0\\,c\\,\\Delta T_c}",
  source: "energy balance",
  assumptions: ["The engine's own air comes on top, unless it is drawn from outside."],
});
