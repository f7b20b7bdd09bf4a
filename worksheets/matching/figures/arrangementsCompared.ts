import { ratedPower, ratedSpeed } from "../../brief/cells";
import { type FigureUnits, figure } from "../../sheet";
import { arrangements } from "../runs";
import { type ArrangementRow, arrangementRows, coolerHeat, heatToCarry, specificFuel } from "./arrangementRows";
import { arrangementsPlate } from "./arrangementsPlate";
import { inSentence, listed, sentences } from "./runWords";

export const arrangementsCompared = figure({
  key: "arrangementsCompared",
  title: "The same engine with turbochargers only, with the blower only, and with both",
  from: { arrangements, ratedPower, ratedSpeed },
  atRest: true,
  describe: ({ arrangements, ratedPower, ratedSpeed }, units) => {
    const rows = arrangementRows(arrangements.answer(), ratedPower);
    const most = rows.map(({ name, most: power }) => `${name} ${power === undefined ? "nothing" : units.text("power", power)}`);
    return sentences(
      `At ${units.text("rotationalSpeed", ratedSpeed)} the same engine gives at the most: ${listed(most)}.`,
      ...rows.filter(({ carries }) => !carries).map((row) => stoppedWords(row, ratedPower, units)),
      ...rows.filter(({ carries }) => carries).map((row) => carriedWords(row, ratedPower, units)),
    );
  },
  draw: ({ arrangements, ratedPower }, frame) =>
    arrangementsPlate(arrangementRows(arrangements.answer(), ratedPower), ratedPower, frame),
  table: ({ arrangements, ratedPower }, units) => ({
    columns: [
      "Charged by",
      ["Most power", units.unit("power")],
      "Carries the promise",
      "Met first",
      ["Compared at", units.unit("power")],
      ["Back pressure", units.unit("pressure", "boost")],
      ["Manifold pressure", units.unit("pressure", "boost")],
      ["Fuel for the work", units.unit("specificFuelConsumption")],
      ["Heat to walls", units.unit("power")],
      ["Heat to charge coolers", units.unit("power")],
      ["Heat in the exhaust", units.unit("power")],
    ],
    rows: arrangementRows(arrangements.answer(), ratedPower).map(({ name, most, carries, stopped, at }) => {
      const power = (value: number | undefined) => (value === undefined ? "–" : units.number("power", value));
      const pressure = (value: number | undefined) => (value === undefined ? "–" : units.number("pressure", value, "boost"));
      return [
        name,
        power(most),
        carries ? "yes" : "no",
        stopped(units),
        power(at?.brakePower),
        pressure(at?.backPressure),
        pressure(at?.manifoldPressure),
        at ? units.number("specificFuelConsumption", specificFuel(at)) : "–",
        power(at?.heatToWalls),
        power(at && coolerHeat(at)),
        power(at?.exhaustHeat),
      ];
    }),
  }),
});

function stoppedWords({ name, most, stopped }: ArrangementRow, ratedPower: number, units: FigureUnits): string {
  const who = `${name[0]!.toUpperCase()}${name.slice(1)}`;
  if (most === undefined) return `${who}: nothing, for ${stopped(units)}.`;
  return `${who}: short of the promised ${units.text("power", ratedPower)}, stopped by ${inSentence(stopped(units))}.`;
}

function carriedWords({ name, at }: ArrangementRow, ratedPower: number, units: FigureUnits): string {
  if (!at) return "";
  const who = `${name[0]!.toUpperCase()}${name.slice(1)}`;
  return `${who}, with the promised ${units.text("power", ratedPower)}: ${units.text("pressure", at.backPressure, "boost")} of back pressure, ${units.text("specificFuelConsumption", specificFuel(at))}, and ${units.text("power", heatToCarry(at))} of heat to walls and coolers.`;
}
