/**
 * The demo build reckoned once more as one would with a pocket calculator: straight lines, SI, constant specific heats
 * and round textbook constants, out of the build's own inputs and, where a line says so, of values from the line above
 * it on the sheets. Nothing of the library takes part. Each tolerance says which simplification it pays for.
 */
import { describe, expect, test } from "vitest";
import type { Ref } from "../../lib/graph";
import * as air from "../../worksheets/air-demand/cells";
import * as airIn from "../../worksheets/air-demand/inputs";
import * as duty from "../../worksheets/boat-duty/cells";
import * as exhaust from "../../worksheets/boat-duty/exhaust";
import * as dutyIn from "../../worksheets/boat-duty/inputs";
import * as boost from "../../worksheets/boost/cells";
import { chargeSinkTemperature } from "../../worksheets/boost/statedBuild";
import * as boostIn from "../../worksheets/boost/inputs";
import * as brief from "../../worksheets/brief/cells";
import { accessoryPower, electricalLoad } from "../../worksheets/drive-speeds/accessories";
import * as budgets from "../../worksheets/drive-speeds/budgets";
import * as beltTables from "../../worksheets/drive-speeds/beltTables";
import * as budgetTables from "../../worksheets/drive-speeds/budgetTables";
import * as drive from "../../worksheets/drive-speeds/cells";
import * as driveIn from "../../worksheets/drive-speeds/inputs";
import * as fuel from "../../worksheets/fuel-delivery/cells";
import * as fuelUse from "../../worksheets/fuel-delivery/consumption";
import * as fuelIn from "../../worksheets/fuel-delivery/inputs";
import { tankTemperatureAtEnd } from "../../worksheets/fuel-delivery/tank";
import * as land from "../../worksheets/land-cooling/cells";
import * as landIn from "../../worksheets/land-cooling/inputs";
import * as circuit from "../../worksheets/marine-cooling/circuit";
import * as heats from "../../worksheets/marine-cooling/heats";
import * as marineIn from "../../worksheets/marine-cooling/inputs";
import { rawWaterFlow } from "../../worksheets/marine-cooling/rawWater";
import { matched } from "../../worksheets/matching/solved";
import { demoIn } from "./demo";

const { PI, exp, log, sqrt } = Math;

// Textbook constants.
const gasConstant = 287; // air [J/(kg·K)]
const cpAir = 1005; // [J/(kg·K)]; 1010 to 1015 at 100 to 150 °C, and 0.9 % more for each per cent of vapour
const kAir = 0.4 / 1.4; // (γ − 1)/γ
const cpExhaust = 1100; // lean exhaust, mean between 25 and 600 °C [J/(kg·K)]
const kExhaust = 0.33 / 1.33; // hot, in the turbine
const cpHotExhaust = 1150; // hot, in the turbine [J/(kg·K)]
const heatingValue = 42.75e6; // diesel fuels [J/kg]
const stoichiometric = 14.5; // diesel fuels [kg/kg]
const latentHeat = 2.4e6; // water at 40 to 70 °C [J/kg]
const cSea = 3995; // sea water at 30 °C [J/(kg·K)]
const densitySea = 1022; // [kg/m³]

/** Pressure of saturated vapour over water [Pa], Magnus form; Alduchov and Eskridge (1996), from memory. */
const saturated = (kelvin: number) => 610.94 * exp((17.625 * (kelvin - 273.15)) / (kelvin - 273.15 + 243.04));

/** What the fuels' data sheets say: density at 15 °C [kg/m³], viscosity at 40 °C [m²/s]; typical, from memory. */
const dataSheets = {
  roadDiesel: { density: 835, viscosity: 2.7e-6 },
  marineDistillate: { density: 860, viscosity: 3.6e-6 },
} as const;

interface Line {
  readonly byHand: number;
  readonly sheet: number;
  /** relative */
  readonly within: number;
}

describe.each(["vehicle", "boat"] as const)("by hand, the demo build in the installation %s", (installation) => {
  const lines = reckoned(installation);
  test.each(Object.entries(lines))("%s", (_, { byHand, sheet, within }) => {
    expect(Number.isFinite(sheet)).toBe(true);
    expect(Math.abs(byHand / sheet - 1), `by hand ${byHand}, on the sheet ${sheet}`).toBeLessThanOrEqual(within);
  });
});

function reckoned(installation: "vehicle" | "boat"): Readonly<Record<string, Line>> {
  const evaluation = demoIn(installation);
  const at = <T>(node: Ref<T>): T => evaluation.require(node);
  const exact = 1e-9;
  const line = (node: Ref<number>, byHand: number, within: number): Line => ({ byHand, sheet: at(node), within });

  // The engine
  const speed = at(brief.ratedSpeed);
  const cylinders = at(brief.cylinders);
  const displacement = cylinders * (PI / 4) * at(brief.bore) ** 2 * at(brief.stroke);
  const cyclesTimesVolume = (displacement * speed) / 2; // swept in a second by working strokes
  const power = at(brief.ratedPower);

  // The air outside
  const outside = at(brief.ambientTemperature);
  const barometer = 101325 * (1 - (0.0065 * at(brief.altitude)) / 288.15) ** 5.2559;
  const vapour = at(brief.relativeHumidity) * saturated(outside);
  const humidity = (0.622 * vapour) / (barometer - vapour);
  const density = (barometer - 0.378 * vapour) / (gasConstant * outside);
  const moistGasConstant = gasConstant * (1 + 0.608 * humidity);

  // Blower, between the sheet's pressures and from the sheet's inlet temperature
  const path = at(boost.chargePath);
  const [, filtered, compressed, blowerIn, blowerOut] = path.stations.map(({ pressure }) => pressure as number);
  const driveRatio = at(driveIn.blowerDriverTeeth) / at(driveIn.blowerDrivenTeeth);
  const blowerSpeed = speed * driveRatio;
  const gasPower = (blowerOut! - blowerIn!) * at(boostIn.blowerDisplacement) * blowerSpeed; // built-in ratio 1
  const blowerPower = gasPower / at(boostIn.blowerMechanicalEfficiency);

  // Friction, at the peak pressure that the sheet's manifold pressure leads to
  const compressionPressure =
    at(boost.manifoldPressure) * at(boostIn.effectiveCompressionRatio) ** at(boostIn.compressionExponent);
  const peak = at(boostIn.firingRise) * compressionPressure;
  const frictionPressure = at(airIn.frictionShare) * (0.137e5 + peak / 200 + 0.162e5 * 2 * at(brief.stroke) * speed);
  const friction = frictionPressure * cyclesTimesVolume;
  const pumping =
    (at(boost.turbineInletPressure) - at(boost.manifoldPressure) + at(airIn.valveLoss)) * cyclesTimesVolume;

  // Accessories
  const run = at(beltTables.frontPulleys);
  const teethOf = (role: string) => run.find((row) => row.role === role && row.teeth > 0)!.teeth;
  const hydraulic =
    (at(driveIn.hydraulicDisplacement) *
      ((speed * teethOf("crank")) / teethOf("hydraulicPump")) *
      at(driveIn.hydraulicPressure)) /
    at(driveIn.hydraulicEfficiency);
  const current = at(budgetTables.electricalLoads).reduce((sum, row) => sum + row.current * row.workShare, 0);
  const alternator = (at(driveIn.busVoltage) * current) / at(driveIn.alternatorEfficiency);
  const stated = run.reduce((sum, { role, power }) => sum + (role === "coolantPump" ? 0 : power), 0);
  const accessories = (hydraulic + alternator + stated) / at(driveIn.beltEfficiency) + at(driveIn.otherAccessoryPower);

  /** The alternator's output [A] at its own speed [rpm], straight between the points of its curve near idle. */
  const alternatorAt = (rpm: number) => (rpm < 1500 ? (62 * (rpm - 1100)) / 400 : 62 + (33 * (rpm - 1500)) / 500);

  // Fuel: density falls by 0.7 kg/m³, viscosity by 2 %, with each kelvin
  const sheet = dataSheets[at(fuelIn.fuelChoice) as keyof typeof dataSheets];
  const warm = at(fuelIn.fuelTemperature) - 273.15;
  const fuelDensity = sheet.density - 0.7 * (warm - 15);
  const viscosity = sheet.viscosity * exp(-0.02 * (warm - 40));
  const rail = at(fuelIn.railPressure);
  const returned = at(fuelIn.injectorReturn);
  const pumpWork = ((rail / fuelDensity) * (1 + returned)) / at(fuelIn.pumpMechanicalEfficiency);
  // indicated = all the rest + pump work × indicated / (efficiency × heating value)
  const rest = power + friction + accessories + blowerPower + pumping;
  const perFuel = at(airIn.indicatedEfficiency) * heatingValue;
  const indicated = rest / (1 - pumpWork / perFuel);
  const fuelFlow = indicated / perFuel;
  const airFlow = at(airIn.excessAirRatio) * stoichiometric * fuelFlow * (1 + humidity);

  // Manifold: from the sheet's air flow and temperature
  const manifoldDensity = at(air.airFlow) / (at(airIn.volumetricEfficiency) * cyclesTimesVolume);
  const manifoldPressure = manifoldDensity * moistGasConstant * at(boost.manifoldTemperature);

  // Compressors: rise of temperature out of the sheet's pressure ratio
  const compressorRise = (outside * (at(boost.compressorPressureRatio) ** kAir - 1)) / at(boostIn.compressorEfficiency);
  const sheetCompressorRise = at(boost.compressorOutletTemperature) - outside;
  const blowerRise = gasPower / (at(air.airFlow) * cpAir);
  const sheetBlowerRise = at(boost.blowerOutletTemperature) - at(boost.blowerInletTemperature);

  // Coolers, and the pressure losses that stand between the product of the ratios and the manifold
  const coolerLoss = (rated: number, pressure: number, hot: number, cold: number) =>
    rated *
    (at(air.airFlow) / at(boostIn.coolerRatedFlow)) ** 2 *
    (at(boostIn.coolerRatedDensity) / (pressure / (gasConstant * 0.5 * (hot + cold))));
  const afterIntake = 1 - at(air.intakeLoss) / barometer;
  const afterFirst =
    1 -
    coolerLoss(
      at(boostIn.intercoolerLoss),
      compressed!,
      at(boost.compressorOutletTemperature),
      at(boost.blowerInletTemperature),
    ) /
      compressed!;
  const afterSecond =
    1 -
    coolerLoss(
      at(boostIn.aftercoolerLoss),
      blowerOut!,
      at(boost.blowerOutletTemperature),
      at(boost.manifoldTemperature),
    ) /
      blowerOut!;
  const product =
    at(boost.compressorPressureRatio) * at(boost.blowerPressureRatio) * afterIntake * afterFirst * afterSecond;
  const manifoldTemperature =
    at(boost.blowerOutletTemperature) -
    at(boostIn.aftercoolerEffectiveness) * (at(boost.blowerOutletTemperature) - at(chargeSinkTemperature));

  // Exhaust: first law on the gas in the cylinders, enthalpies counted from 25 °C
  const netGasPower = power + friction + accessories + blowerPower + pumpWork * at(air.fuelFlow);
  const exhaustFlow = at(air.airFlow) + at(air.fuelFlow);
  const exhaustRise =
    (at(air.fuelFlow) * heatingValue * (1 - at(boostIn.wallHeatShare)) +
      at(air.airFlow) * cpAir * (at(boost.manifoldTemperature) - 298) -
      netGasPower) /
    (exhaustFlow * cpExhaust);
  const compressorPower = at(air.airFlow) * cpAir * sheetCompressorRise;
  const expansion =
    (1 -
      compressorPower /
        (at(boostIn.turbochargerMechanicalEfficiency) *
          at(boostIn.turbineEfficiency) *
          exhaustFlow *
          cpHotExhaust *
          at(boost.turbineInletTemperature))) **
    (-1 / kExhaust);

  // Injection
  const perStroke = at(air.fuelFlow) / ((speed / 2) * cylinders) / fuelDensity;
  const jet = sqrt((2 * (rail - (compressionPressure + peak) / 2)) / fuelDensity);
  const nozzle = at(fuelIn.nozzleDischarge) * at(fuelIn.nozzleHoles) * (PI / 4) * at(fuelIn.holeDiameter) ** 2 * jet;
  const injection = 2 * PI * speed * (perStroke / nozzle + (at(fuelIn.needleOpening) + at(fuelIn.needleClosing)) / 2);

  // High-pressure pump: bulk modulus 1.4 GPa and 10 GPa more for each GPa, taken at half the rail's pressure
  const squeeze = exp(rail / (1.4e9 + 10 * (rail / 2)));
  // Leakage through the gaps for half of the time, viscosity doubled at 100 MPa: as the mean of its reciprocal
  const thin = (1 - exp(-7e-9 * rail)) / (7e-9 * rail);
  const leakage =
    ((at(fuelIn.pumpPlungers) / 2) * PI * at(fuelIn.plungerDiameter) * at(fuelIn.plungerGap) ** 3 * rail * thin) /
    (12 * at(fuelIn.plungerSeal) * viscosity);
  const filling = 1 - at(fuelIn.deadVolumeShare) * (squeeze - 1);
  const pumpTurn =
    at(fuelIn.pumpPlungers) *
    at(fuelIn.pumpLobes) *
    (PI / 4) *
    at(fuelIn.plungerDiameter) ** 2 *
    at(fuelIn.plungerStroke);
  const delivery = pumpTurn * ((speed * teethOf("crank")) / teethOf("fuelPump")) * fuelDensity * filling - leakage;
  // Two plungers press one after the other: π/2 of the mean
  const peakTorque = ((pumpTurn * rail) / (2 * PI * at(fuelIn.pumpMechanicalEfficiency))) * (PI / 2);
  // What the fullest cylinder takes of the rail, squeezed, at 1.4 GPa and 10 GPa more for each GPa
  const dip =
    ((1.4e9 + 10 * rail) * (perStroke / squeeze) * (1 + at(fuelIn.cylinderImbalance))) / at(fuelIn.railVolume);
  const refill = (perStroke * fuelDensity) / (delivery - returned * at(air.fuelFlow));

  // Suction: standing fuel and the line's loss, Blasius's friction
  const suctionSpeed =
    (at(air.fuelFlow) * (1 + returned + at(fuelIn.coolingFlow))) /
    fuelDensity /
    ((PI / 4) * at(fuelIn.supplyBore) ** 2);
  const blasius = 0.3164 / ((suctionSpeed * at(fuelIn.supplyBore)) / viscosity) ** 0.25;
  const suction =
    fuelDensity * 9.81 * at(fuelIn.suctionHeight) +
    ((blasius * at(fuelIn.suctionLength)) / at(fuelIn.supplyBore) + at(fuelIn.suctionFittings)) *
      fuelDensity *
      0.5 *
      suctionSpeed ** 2;

  // Consumption: all that stands between pistons and flywheel goes with the square of speed
  const losses = at(air.indicatedPower) - power;
  const burnt = (n: number, load: number) => (at(air.fuelFlow) * (power * load + losses * n * n)) / (power + losses);
  const phases = at(fuelIn.dutyCycle);
  const whole = phases.reduce((sum, phase) => sum + phase.time, 0);
  const meanBurnt = phases.reduce((sum, phase) => sum + (phase.time / whole) * burnt(phase.speed, phase.power), 0);
  const tankDensity = sheet.density - 0.7 * (at(fuelIn.tankStart) - 288.15);
  const full = at(fuelIn.tankVolume) * tankDensity;
  const usable = full * (1 - at(fuelIn.tankReserve));
  const cruising = at(fuelIn.cruiseShare);
  const cruiseBurnt = burnt(cruising, at(dutyIn.propellerShare) * cruising ** at(fuelIn.fuelPropellerExponent));
  const cruiseSpeed = at(fuelIn.boatSpeed) * cruising ** at(fuelIn.hullExponent);
  // Tank: steps of a thousandth of the run
  const tankHeat = at(fuel.fuelReturnHeat) * (1 - at(fuelIn.returnCooler)) * (meanBurnt / at(air.fuelFlow));
  let tank: number = at(fuelIn.tankStart);
  for (let i = 0; i < 1000; i++) {
    const mass = full - usable * ((i + 0.5) / 1000);
    tank += ((tankHeat - at(fuelIn.tankWalls) * (tank - outside)) / (mass * 2000)) * (usable / meanBurnt / 1000);
  }
  const supply = (at(air.fuelFlow) * (1 + returned + at(fuelIn.coolingFlow))) / fuelDensity;
  const supplyVelocity = supply / ((PI / 4) * at(fuelIn.supplyBore) ** 2);

  // Blower belt, 14 mm pitch, without its idler
  const large = (at(driveIn.blowerDriverTeeth) * 0.014) / PI;
  const small = (at(driveIn.blowerDrivenTeeth) * 0.014) / PI;
  const blower = run.find((row) => row.role === "blower")!;
  const centres = Math.hypot(blower.x, blower.y);
  const twoPulleys = 2 * centres + (PI * (large + small)) / 2 + (large - small) ** 2 / (4 * centres);

  // Heat to the sea, from the flows and temperatures of the chosen parts
  const parts = at(matched);
  const after = (name: string) => parts.stations.find((station) => station.name === `After ${name}`)!.temperature;
  const walls = at(boostIn.wallHeatShare) * parts.fuelFlow * heatingValue;
  const bank = parts.airFlow * cpAir * (after("first bank") - outside);
  const bearings = bank * (1 / at(boostIn.turbochargerMechanicalEfficiency) - 1);
  const rubbing =
    at(airIn.frictionShare) * (0.137e5 + parts.peakPressure / 200 + 0.162e5 * 2 * at(brief.stroke) * speed) * cyclesTimesVolume;
  const jacketAndOil = walls * (1 - at(marineIn.wallHeatRadiated)) + rubbing + bearings;
  const gear = (1 - at(marineIn.gearEfficiency)) * power;
  const coolers =
    parts.airFlow * cpAir * (after("first bank") - after("intercooler") + after("blower") - after("aftercooler"));
  const dryAir = at(air.airFlow) / (1 + humidity);
  const manifoldVapour = saturated(at(boost.manifoldTemperature));
  const held = (0.622 * manifoldVapour) / (at(boost.manifoldPressure) - manifoldVapour);
  const condensed = dryAir * Math.max(0, humidity - held); // all of it at the end of the path
  const partsVapour = saturated(parts.manifoldTemperature);
  const partsHeld = (0.622 * partsVapour) / (parts.manifoldPressure - partsVapour);
  const condensedByParts = (parts.airFlow / (1 + humidity)) * Math.max(0, humidity - partsHeld);
  // throttled fuel: expansion 0.00085 per kelvin
  const fromFuel =
    (returned * at(air.fuelFlow) + leakage) * (rail / fuelDensity) * (1 - 0.00085 * at(fuelIn.fuelTemperature));
  const seaHeat = jacketAndOil + gear + coolers + condensedByParts * latentHeat + fromFuel;
  // Pump on its line: Δp0 (n/nr)(1 − q/q0) = ρ g z + K q², with K from the rows of the line
  const pumpSpeed = (speed * at(driveIn.rawWaterDriverTeeth)) / at(driveIn.rawWaterDrivenTeeth);
  const carried = at(marineIn.rawWaterFilling) * at(marineIn.rawWaterDisplacement) * pumpSpeed;
  const beside = 1 / (1 / Math.sqrt(72e3) + 1 / Math.sqrt(8e3)) ** 2; // fuel and gear coolers lose the same
  const lossAtReference = 5e3 + 4e3 / 0.8 ** 2 + 9e3 + 9e3 + beside + 10e3 + 12e3 + 10e3;
  const perSquare = lossAtReference / (300 / 60000) ** 2;
  const shutOff = (at(marineIn.rawWaterShutOff) * pumpSpeed) / (1800 / 60);
  const free = shutOff - densitySea * 9.81 * 0.9;
  const slope = shutOff / carried;
  const pumped = (Math.sqrt(slope ** 2 + 4 * perSquare * free) - slope) / (2 * perSquare);
  const seaFlow = pumped * densitySea;
  const seaRise = at(circuit.seaHeat) / (seaFlow * cSea);

  // Wet exhaust: two streams that mix, the gas at 1085 J/(kg·K) between 60 and 450 °C
  const mixRise =
    (parts.exhaustFlow * 1085 * (parts.pipeTemperature - at(circuit.rawWaterDischarge))) /
    (parts.exhaustFlow * 1085 + seaFlow * cSea);

  // Boat: the duty's mean, the shaft, and the warmth of the room
  const meanPower =
    (power * at(fuelIn.dutyCycle).reduce((sum, row) => sum + row.time * row.power, 0)) /
    at(fuelIn.dutyCycle).reduce((sum, row) => sum + row.time, 0);
  const shaftTorque = (at(marineIn.gearEfficiency) * power * at(dutyIn.gearRatio)) / (2 * PI * speed);
  const surfaceHeat =
    walls * at(marineIn.wallHeatRadiated) +
    parts.blowers[0]!.shaftPower * (1 - at(boostIn.blowerMechanicalEfficiency)) +
    at(dutyIn.otherRoomHeat);
  const weather = at(dutyIn.outsideAir);
  const roomRise = surfaceHeat / ((barometer / 287 / weather) * 1010 * at(dutyIn.roomAirFlow));

  // Road: fan, wind and core as three parabolas, and a tower in proportion to its heat
  const coreAir = (at(brief.ambientTemperature) + at(landIn.coreAirRise)) * 287;
  const thinner = barometer / coreAir / 1.2;
  const pushed =
    thinner * at(landIn.fanShutOff) * ((speed * at(landIn.fanRatio)) / at(landIn.fanStatedSpeed)) ** 2 +
    (at(landIn.ramRecovery) * 1.2 * thinner * at(landIn.vehicleSpeed) ** 2) / 2;
  const slowed =
    thinner *
    (at(landIn.fanShutOff) / at(landIn.fanOpenFlow) ** 2 + at(landIn.coreLoss) / at(landIn.radiatorAirStated) ** 2);
  const towerHeat = jacketAndOil + at(landIn.brakeHeatShare) * power;

  return {
    displacement: line(brief.displacement, displacement, exact),
    "mean piston speed at the highest speed": line(
      brief.meanPistonSpeed,
      2 * at(brief.stroke) * at(brief.maximumSpeed),
      exact,
    ),
    "brake mean effective pressure": line(brief.meanEffectivePressure, power / cyclesTimesVolume, exact),
    // rounded exponent, and height not made geopotential
    barometer: line(brief.ambientPressure, barometer, 1e-4),
    // Magnus form, 0.622
    "humidity ratio": line(brief.ambientHumidityRatio, humidity, 5e-3),
    // R rounded to 287
    "density of the air outside": line(brief.ambientDensity, density, 4e-4),
    "peak cylinder pressure": line(boost.peakPressure, peak, exact),
    friction: line(air.frictionPower, friction, exact),
    pumping: line(air.pumpingPower, pumping, 1e-8),
    accessories: line(accessoryPower, accessories, exact),
    "fuel pump": line(air.fuelPumpPower, pumpWork * at(air.fuelFlow), 3e-3), // density of the warm fuel
    "indicated power from its parts": line(air.indicatedPower, indicated, 2e-4), // fuel pump, 1.5 % of it
    "fuel flow": line(air.fuelFlow, fuelFlow, 5e-3), // one heating value for all diesel fuels
    "brake specific fuel consumption": line(air.specificFuelConsumption, fuelFlow / power, 5e-3),
    "air flow": line(air.airFlow, airFlow, 1.2e-2), // heating value, and 14.5 for every fuel
    "manifold pressure": line(boost.manifoldPressure, manifoldPressure, 5e-4), // R rounded to 287
    "product of the pressure ratios, less losses": line(
      boost.manifoldPressure,
      product * barometer,
      5e-4, // the coolers' densities without vapour
    ),
    "pressure behind the filter": { byHand: barometer * afterIntake, sheet: filtered!, within: 1e-4 },
    // γ = 1.4 throughout; it falls to 1.39, which takes 1 to 1.5 % off the rise
    "rise of temperature in the compressors": { byHand: compressorRise, sheet: sheetCompressorRise, within: 2e-2 },
    "power of the blower": line(boost.blowerShaftPower, blowerPower, exact),
    // 1005 for 1010 to 1030 J/(kg·K) of warm and moist air
    "rise of temperature in the blower": { byHand: blowerRise, sheet: sheetBlowerRise, within: 2.5e-2 },
    "power of the compressors": line(boost.compressorPower, compressorPower, 2.5e-2),
    "charge temperature in the manifold": line(boost.manifoldTemperature, manifoldTemperature, exact),
    // one cp for exhaust of either excess air; it is 1090 to 1110 J/(kg·K)
    "rise of the exhaust above 25 °C": {
      byHand: exhaustRise,
      sheet: at(boost.turbineInletTemperature) - 298,
      within: 2e-2,
    },
    // constant γ and cp, to a power of four
    "expansion ratio": line(boost.expansionRatio, expansion, 3e-2),
    "fuel for one stroke": line(fuel.injectedVolume, perStroke, 3e-3), // density
    "injection in crank angle": line(fuel.injectionAngle, injection, 3e-3), // density
    "delivery of the high-pressure pump": line(fuel.pumpCapacity, delivery, 1e-2), // bulk modulus and density
    // viscosity by 2 % a kelvin
    "leakage past the plungers": line(fuel.pumpLeakFlow, leakage, 5e-2),
    "peak torque of the high-pressure pump": line(fuel.pumpPeakTorque, peakTorque, exact),
    "dip of the rail's pressure": line(fuel.railDip, dip, 4e-2), // bulk modulus
    "time to fill the rail again": line(fuel.railRecovery, refill, 2e-2), // bulk modulus, viscosity
    "suction of the lift pump": {
      byHand: barometer - suction,
      sheet: at(fuel.suctionPressure),
      within: 1e-2, // Blasius where the flow is between laminar and turbulent
    },
    "mean fuel flow of the duty cycle": line(fuelUse.meanFuelFlow, meanBurnt, exact),
    "running time": line(fuelUse.runTime, usable / meanBurnt, 2e-3), // density
    "range at cruise": line(fuelUse.cruiseRange, (cruiseSpeed * usable) / cruiseBurnt, 2e-3), // density
    // specific heat of 2000 J/(kg·K)
    "warming of the tank": {
      byHand: 100 + tank - at(fuelIn.tankStart),
      sheet: 100 + at(tankTemperatureAtEnd) - at(fuelIn.tankStart),
      within: 5e-3,
    },
    "velocity in the supply line": line(fuel.supplyVelocity, supplyVelocity, 3e-3), // density
    // viscosity by 2 % a kelvin
    "Reynolds number in the supply line": line(
      fuel.supplyReynolds,
      (supplyVelocity * at(fuelIn.supplyBore)) / viscosity,
      5e-2,
    ),
    "electrical load": line(electricalLoad, current, exact),
    "heat into the hydraulic oil": line(
      budgets.hydraulicHeatRate,
      hydraulic -
        at(budgetTables.hydraulicLoads).reduce((sum, row) => sum + row.flow * row.pressure * row.workShare, 0),
      exact,
    ),
    "balance of the battery at idle": line(
      budgets.idleBatteryBalance,
      alternatorAt(60 * at(brief.idleSpeed) * (teethOf("crank") / teethOf("alternator"))) -
        at(budgetTables.electricalLoads).reduce((sum, row) => sum + row.current * row.idleShare, 0),
      1e-6,
    ),
    "speed of the blower": line(drive.blowerSpeed, blowerSpeed, exact),
    "torque of the blower": line(drive.blowerTorque, blowerPower / (2 * PI * blowerSpeed), exact),
    "pull in its belt": line(drive.blowerBeltPull, blowerPower / (PI * small * blowerSpeed), exact),
    "speed of its belt": line(
      drive.blowerBeltSpeed,
      at(driveIn.blowerDriverTeeth) * 0.014 * at(brief.maximumSpeed),
      exact,
    ),
    // the idler bends the belt in by some millimetres
    "length of its belt, roughly": line(drive.blowerBeltLength, twoPulleys, 2e-2),
    "heat of jacket and oil": {
      byHand: jacketAndOil,
      sheet: at(heats.jacketHeat) + at(heats.oilHeat),
      within: 5e-3, // heating value
    },
    // cp of cool dry air for warm moist air in a third of it
    "heat to the sea": line(circuit.seaHeat, seaHeat, 1.2e-2),
    "rise of the sea water": {
      byHand: seaRise,
      sheet: at(circuit.rawWaterDischarge) - at(marineIn.seaTemperature),
      within: 3e-3, // rounded density and specific heat
    },
    // rounded density and gravity
    "raw water of the pump on its line": line(rawWaterFlow, pumped, 2e-3),
    "load factor": line(duty.loadFactor, meanPower / power, exact),
    "torque of the propeller shaft": line(duty.shaftTorque, shaftTorque, exact),
    // heating value; dry air with R rounded
    "rise of the engine room": { byHand: roomRise, sheet: at(duty.roomReaches) - weather, within: 1e-2 },
    // dry air with R rounded
    "air through the radiator": line(land.coreAirFlow, Math.sqrt(pushed / slowed), 1e-2),
    "approach of the tower": {
      byHand: (at(landIn.towerApproach) * towerHeat) / at(landIn.towerHeat),
      sheet: at(land.towerCold) - at(land.wetBulb),
      within: 5e-3, // heating value
    },
    // one cp for exhaust between 60 °C and the turbine's outlet
    "rise of the water in the exhaust": {
      byHand: mixRise,
      sheet: at(exhaust.wetExhaustTemperature) - at(circuit.rawWaterDischarge),
      within: 2e-2,
    },
    // the efficiency of the whole engine, from both ends: work over heat, and 1 over consumption and heating value
    "brake efficiency": {
      byHand: power / (fuelFlow * heatingValue),
      sheet: 1 / (at(air.specificFuelConsumption) * heatingValue),
      within: 5e-3,
    },
    // dew: the coolers' condensate by the state in the manifold alone; nothing where nothing condenses
    "water condensed in the coolers": {
      byHand: 1 + condensed * 1000,
      sheet: 1 + at(boost.condensate) * 1000,
      within: 2e-2,
    },
    // the whole pressure ratio as the sum of its logarithms
    "shares of the pressure rise": {
      byHand: log(at(boost.compressorPressureRatio)) / log(at(boost.manifoldPressure) / barometer),
      sheet: at(boost.turbochargerShare),
      within: 1e-4,
    },
  };
}
