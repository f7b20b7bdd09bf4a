import { turbineOutletTemperature } from "../../boost/cells";
import { narrow } from "../../drawing";
import { figure } from "../../sheet";
import { marineCircuit, rawWaterDischarge, wetExhaustSaturated, wetExhaustTemperature } from "../cells";
import {
  dischargeLimit,
  fuelReturnLimit,
  gearOilTemperature,
  jacketTemperature,
  oilTemperature,
  wetExhaustLimit,
} from "../inputs";
import { drawSeaLine } from "./seaLinePlate";

const from = {
  marineCircuit,
  rawWaterDischarge,
  dischargeLimit,
  turbineOutletTemperature,
  wetExhaustTemperature,
  wetExhaustSaturated,
  wetExhaustLimit,
  fuelReturnLimit,
  gearOilTemperature,
  oilTemperature,
  jacketTemperature,
};

/** What the hot side of an exchanger may reach, by the exchanger's name. */
const limitsOf = (
  at: Readonly<Record<"fuelReturnLimit" | "gearOilTemperature" | "oilTemperature" | "jacketTemperature", number>>,
) =>
  new Map([
    ["Fuel cooler", at.fuelReturnLimit],
    ["Gear oil cooler", at.gearOilTemperature],
    ["Oil cooler", at.oilTemperature],
    ["Jacket exchanger", at.jacketTemperature],
  ]);

export const seaWaterLine = figure({
  key: "seaWaterLine",
  title: "Sea water from the sea to the exhaust",
  from,
  describe: (at, units) => {
    const { stations } = at.marineCircuit;
    const closest = stations.reduce((least, station) => (station.pinch < least.pinch ? station : least));
    const text = (temperature: number) => units.text("temperature", temperature);
    return [
      `The sea water comes in at ${text(stations[0]!.seaInlet)} and leaves the exchangers at ${text(at.rawWaterDischarge)}, where ${text(at.dischargeLimit)} is allowed; the streams come closest in the ${closest.name.toLowerCase()}, ${units.text("temperatureDifference", closest.pinch)} apart.`,
      `Led into the exhaust it makes a mix of ${text(at.wetExhaustTemperature)}; the hose may have ${text(at.wetExhaustLimit)}.`,
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const limits = limitsOf(at);
    return drawSeaLine({
      exchangers: at.marineCircuit.stations.map((station) => ({ ...station, limit: limits.get(station.name) })),
      discharge: at.rawWaterDischarge,
      dischargeLimit: at.dischargeLimit,
      exhaust: {
        gas: at.turbineOutletTemperature,
        mixed: at.wetExhaustTemperature,
        saturated: at.wetExhaustSaturated,
        limit: at.wetExhaustLimit,
      },
      units,
      width,
      stacked: width < narrow,
    });
  },
  table: (at, units) => {
    const number = (temperature: number) => units.number("temperature", temperature);
    const limits = limitsOf(at);
    return {
      columns: [
        "Where",
        ...["Sea water in", "Sea water out", "Hot side in", "Hot side out", "Limit"].map(
          (name) => [name, units.unit("temperature")] as const,
        ),
        ["Closest", units.unit("temperatureDifference")],
      ],
      rows: [
        ...at.marineCircuit.stations.map(({ name, seaInlet, seaOutlet, hotInlet, hotOutlet, pinch }) => {
          const limit = limits.get(name);
          return [
            name,
            ...[seaInlet, seaOutlet, hotInlet, hotOutlet].map(number),
            limit === undefined ? "–" : number(limit),
            units.number("temperatureDifference", pinch),
          ];
        }),
        [
          "Discharge",
          number(at.rawWaterDischarge),
          number(at.rawWaterDischarge),
          "–",
          "–",
          number(at.dischargeLimit),
          "–",
        ],
        [
          "Exhaust, nothing evaporating",
          number(at.rawWaterDischarge),
          number(at.wetExhaustTemperature),
          number(at.turbineOutletTemperature),
          number(at.wetExhaustTemperature),
          number(at.wetExhaustLimit),
          "–",
        ],
        [
          "Exhaust, saturated",
          number(at.rawWaterDischarge),
          number(at.wetExhaustSaturated),
          number(at.turbineOutletTemperature),
          number(at.wetExhaustSaturated),
          number(at.wetExhaustLimit),
          "–",
        ],
      ],
    };
  },
});
