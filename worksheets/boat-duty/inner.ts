import { shipVentilation } from "../../lib/cooling";
import { dryAir, seaWater } from "../../lib/fluid";
import { ambientPressure, ratedPower } from "../brief/cells";
import { constant, type Inner, inner, unbound, type WrittenOut, writtenOut } from "../inner";
import { ownEngine } from "../marine-cooling/balance";
import { salinity, seaTemperature } from "../marine-cooling/inputs";
import { dutyRows, engineRoom, fullPowerShare, loadFactor, nearlyFull, propellerMargin, roomReaches, ventilationFlow } from "./cells";
import { clothEmissivity, laggingHeat, laggingSurface, roomRise, stillAirConvection } from "./dryExhaust";
import { exhaustBackPressure, waterEvaporated, wetExhaust, wetExhaustTemperature, wetExhaustVelocity } from "./exhaust";
import { exhaustLossCounted } from "./exhaustLoss";
import { dryBore, lagging, otherRoomHeat, outsideAir } from "./inputs";

export const boatInner: readonly Inner[] = [
  unbound([exhaustLossCounted], "f", "friction factor of the pipe"),
  unbound([exhaustLossCounted], "\\rho_x", "density of what flows there"),
  unbound([exhaustLossCounted], "v_x", "its velocity"),
  inner([exhaustLossCounted, wetExhaustTemperature], "\\rho_w", "density of the sea water", "density", { salinity, seaTemperature }, (at) => seaWater(at.salinity).density(at.seaTemperature)),
  constant([exhaustLossCounted], "g", "standard gravity", "acceleration", 9.80665),
  inner([exhaustBackPressure], "p_7", "pressure behind the turbines", "pressure", { ownEngine }, (at) => at.ownEngine.pipePressure, "boost"),
  inner([wetExhaustTemperature], "c_w", "specific heat of the sea water", "specificHeat", { wetExhaust }, (at) => at.wetExhaust.inputs.waterSpecificHeat),
  unbound([waterEvaporated], "\\dot m_{v,7}", "vapour that the exhaust brings along"),
  inner([wetExhaustVelocity], "q_x", "volume of gas and vapour", "volumeFlow", { wetExhaust }, (at) => at.wetExhaust.saturated.gasVolumeFlow),
  inner([laggingSurface], "T_7", "exhaust in the pipe", "temperature", { ownEngine }, (at) => at.ownEngine.pipeTemperature),
  inner([laggingHeat, laggingSurface], "d_o", "diameter over the lagging", "length", { dryBore, lagging }, (at) => at.dryBore + 2 * at.lagging),
  inner([laggingHeat], "h", "convection to still air", "heatTransferCoefficient", {}, () => stillAirConvection),
  inner([laggingHeat], "\\epsilon", "emissivity of the surface", "ratio", {}, () => clothEmissivity),
  unbound([laggingHeat], "\\sigma", "constant of Stefan and Boltzmann, 5.670 374 419 · 10⁻⁸ W/(m²·K⁴)"),
  inner([laggingHeat], "T_{room}", "room, 12.5 K warmer than outside", "temperature", { outsideAir }, (at) => at.outsideAir + roomRise),
  inner([roomReaches], "Q_l", "heat of the lagged pipe, which counts where the exhaust is dry", "power", { engineRoom, otherRoomHeat }, (at) => at.engineRoom.otherHeat - at.otherRoomHeat, "heat"),
  inner([roomReaches], "\\rho", "density of the air outside", "density", { outsideAir, ambientPressure }, (at) => dryAir.density(at.outsideAir, at.ambientPressure)),
  inner([roomReaches], "c", "specific heat of air", "specificHeat", {}, () => shipVentilation.specificHeat),
  unbound([propellerMargin], "P_e", "power that the engine can give at a speed"),
  unbound([propellerMargin], "P_p", "power that the propeller takes there"),
  inner([ventilationFlow], "q_c", "air that the engine burns", "volumeFlow", { engineRoom }, (at) => at.engineRoom.combustionFlow),
  inner([ventilationFlow], "q_h", "air that carries the heat away", "volumeFlow", { engineRoom }, (at) => at.engineRoom.heatFlow),
];
export const boatWrittenOut: readonly WrittenOut[] = [
  writtenOut(fullPowerShare, { dutyRows, ratedPower }, ({ dutyRows: rows, ratedPower: promised }) =>
    rows.filter(({ power }) => power > nearlyFull * promised).map(({ share }) => [{ kind: "fraction", value: share }]),
  ),
  writtenOut(loadFactor, { dutyRows, ratedPower }, ({ dutyRows: rows, ratedPower: promised }) =>
    rows.map(({ share, power }) => [
      { kind: "fraction", value: share },
      { kind: "fraction", value: power / promised },
    ]),
  ),
];
