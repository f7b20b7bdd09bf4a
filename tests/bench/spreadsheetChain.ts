import { HyperFormula } from "hyperformula";
import { airExponent, airHeat, gasConstant } from "../lib/graph/fixture";
import type { BareInputs } from "./bareChain";

type Scalars = Readonly<Record<string, number>>;

/** The same chain in a general spreadsheet engine: one row a name, values in column B, the accessories to the right. */
export interface SpreadsheetChain {
  /** Sets the rated power [W]. */
  readonly setPower: (power: number) => void;
  /** The value of every formula. */
  readonly read: () => Scalars;
}

const formulas = {
  fuelFlow: "=ratedPower*fuelConsumption",
  airFlow: "=fuelFlow*airFuelRatio",
  exhaustFlow: "=airFlow+fuelFlow",
  sweptFlow: "=displacement*engineSpeed/2",
  chargeDensity: "=airFlow/(filling*sweptFlow)",
  manifoldPressure: `=chargeDensity*${gasConstant}*designTemperature`,
  pressureRatio: "=manifoldPressure/ambientPressure",
  stageRatio: '=IF(stages="two",SQRT(pressureRatio),pressureRatio)',
  stageRise: `=ambientTemperature*(POWER(stageRatio,${airExponent})-1)/efficiency`,
  deliveryTemperature: '=ambientTemperature+IF(stages="two",2*stageRise,stageRise)',
  chargeTemperature: "=deliveryTemperature-effectiveness*(deliveryTemperature-coolantTemperature)",
  compressorPower: `=airFlow*${airHeat}*(deliveryTemperature-ambientTemperature)`,
  coolerDuty: `=airFlow*${airHeat}*(deliveryTemperature-chargeTemperature)`,
  coolerRoom: "=chargeTemperature-coolantTemperature",
  meanPressure: "=ratedPower/sweptFlow",
  torque: "=ratedPower/(2*PI()*engineSpeed)",
  cylinderPower: "=ratedPower/cylinders",
  accessoryShare: "=accessoryPower/ratedPower",
} as const;

/** @param inputs the setting to start from */
export function spreadsheetChain(inputs: BareInputs): SpreadsheetChain {
  const { accessoryRun, ...plain } = inputs;
  const inputNames = Object.keys(plain);
  const outputNames = ["accessoryPower", ...Object.keys(formulas)];
  const names = [...inputNames, ...outputNames];
  const places = new Map(names.map((name, row) => [name, `$B$${row + 1}`]));
  const placed = (formula: string) => formula.replace(/"[^"]*"|[A-Za-z]\w*/g, (word) => places.get(word) ?? word);

  const last = accessoryRun.length;
  const rows = [
    ...Object.entries(plain).map(([name, value]): (string | number)[] => [name, value]),
    ["accessoryPower", `=SUM($E$1:$E$${last})`],
    ...Object.entries(formulas).map(([name, formula]) => [name, placed(formula)]),
  ];
  for (const [row, { teeth, load }] of accessoryRun.entries()) {
    rows[row]!.push(teeth, `=${places.get("engineSpeed")}*60/C${row + 1}`, load);
  }
  const engine = HyperFormula.buildFromArray(rows, { licenseKey: "gpl-v3", smartRounding: false });
  const at = (name: string, col: number) => ({ sheet: 0, row: names.indexOf(name), col });
  const power = at("ratedPower", 1);
  const outputs = outputNames.map((name) => [name, at(name, 1)] as const);
  return {
    setPower: (value) => engine.setCellContents(power, value),
    read: () => Object.fromEntries(outputs.map(([name, place]) => [name, engine.getCellValue(place) as number])),
  };
}
