import type { ValuesOf } from "../../../lib/graph";
import { wetExhaust } from "../../boat-duty/exhaust";
import { exhaustKind } from "../../boat-duty/inputs";
import { narrow } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { marineCircuit } from "../circuit";
import {
  dischargeLimit,
  fuelReturnLimit,
  gearOilTemperature,
  jacketTemperature,
  oilTemperature,
  strainerBlocked,
  wetExhaustLimit,
} from "../inputs";
import { rawWaterState } from "../rawWater";
import { type HotLimits, seaElements } from "./seaElements";
import { drawSeaLine } from "./seaLineDrawing";

const from = {
  marineCircuit,
  rawWaterState,
  strainerBlocked,
  dischargeLimit,
  fuelReturnLimit,
  gearOilTemperature,
  oilTemperature,
  jacketTemperature,
  wetExhaust,
  exhaustKind,
  wetExhaustLimit,
};
type At = ValuesOf<typeof from>;

const limitsOf = (at: At): HotLimits => ({
  fuelCooler: { at: at.fuelReturnLimit, end: "outlet" },
  gearCooler: { at: at.gearOilTemperature, end: "inlet" },
  oilCooler: { at: at.oilTemperature, end: "inlet" },
  jacketExchanger: { at: at.jacketTemperature, end: "inlet" },
});

const elementsOf = (at: At, units: FigureUnits) =>
  seaElements(at.marineCircuit, at.rawWaterState.rows, limitsOf(at), {
    flow: at.rawWaterState.rated.volumeFlow,
    blocked: at.strainerBlocked,
    units,
  });

export const seaWaterLine = figure({
  key: "seaWaterLine",
  title: "Sea water along its line",
  from,
  describe: (at, units) => {
    const { nodes, discharge } = at.marineCircuit;
    const { rows } = at.rawWaterState;
    const text = (temperature: number) => units.text("temperature", temperature);
    const pressure = (value: number) => units.text("gaugePressure", value);
    const lowest = Math.min(...rows.flatMap(({ pressureIn, pressureOut }) => [pressureIn, pressureOut]));
    const highest = Math.max(...rows.flatMap(({ pressureIn, pressureOut }) => [pressureIn, pressureOut]));
    const stations = nodes.flatMap(({ station }) => (station ? [station] : []));
    const closest = stations.reduce<(typeof stations)[number] | undefined>(
      (least, station) => (least && least.pinch <= station.pinch ? least : station),
      undefined,
    );
    return [
      `The sea water comes in at ${text(nodes[0]!.seaInlet)} and leaves the last exchanger at ${text(discharge)}, where ${text(at.dischargeLimit)} is allowed; its pressure goes from ${pressure(lowest)} before the pump to ${pressure(highest)} behind it.`,
      ...(closest
        ? [
            `The streams come closest in the ${closest.name.toLowerCase()}, ${units.text("temperatureDifference", closest.pinch)} apart.`,
          ]
        : []),
      ...(at.exhaustKind === "wet"
        ? [
            `Led into the exhaust it makes a mix of ${text(at.wetExhaust.none.temperature)}; the hose may have ${text(at.wetExhaustLimit)}.`,
          ]
        : []),
    ].join(" ");
  },
  draw: (at, { width, units }) =>
    drawSeaLine({
      elements: elementsOf(at, units),
      dischargeLimit: at.dischargeLimit,
      exhaust:
        at.exhaustKind === "wet"
          ? {
              mixed: at.wetExhaust.none.temperature,
              saturated: at.wetExhaust.saturated.temperature,
              limit: at.wetExhaustLimit,
            }
          : undefined,
      units,
      width,
      stacked: width < narrow,
    }),
  table: (at, units) => {
    const number = (temperature: number) => units.number("temperature", temperature);
    const pressure = (value: number) => units.number("gaugePressure", value);
    const limits = limitsOf(at);
    const none = "–";
    const exhaust = (name: string, temperature: number) => [
      name,
      none,
      number(at.marineCircuit.discharge),
      number(temperature),
      none,
      none,
      number(at.wetExhaustLimit),
      none,
      none,
      none,
      none,
      none,
    ];
    return {
      columns: [
        "Element",
        ["Share of the water", units.unit("fraction")],
        ...["Sea water in", "Sea water out", "Hot side in", "Hot side out", "Limit"].map(
          (name) => [name, units.unit("temperature")] as const,
        ),
        ["Closest", units.unit("temperatureDifference")],
        ...["Pressure before", "Pressure behind"].map((name) => [name, units.unit("gaugePressure")] as const),
        ["Its valve takes", units.unit("pressureDifference")],
        ["Velocity in its tubes", units.unit("velocity")],
      ],
      rows: [
        ...at.marineCircuit.nodes.map(({ key, name, share: part, seaInlet, seaOutlet, station }, i) => {
          const row = at.rawWaterState.rows[i]!;
          const limit = limits[key];
          return [
            name,
            units.number("fraction", part),
            number(seaInlet),
            number(seaOutlet),
            ...(station ? [number(station.hotInlet), number(station.hotOutlet)] : [none, none]),
            limit && station ? number(limit.at) : none,
            station ? units.number("temperatureDifference", station.pinch) : none,
            pressure(row.pressureIn),
            pressure(row.pressureOut),
            units.number("pressureDifference", row.valveLoss),
            row.velocity === undefined ? none : units.number("velocity", row.velocity),
          ];
        }),
        ...(at.exhaustKind === "wet"
          ? [
              exhaust("Wet exhaust, nothing evaporating", at.wetExhaust.none.temperature),
              exhaust("Wet exhaust, saturated", at.wetExhaust.saturated.temperature),
            ]
          : []),
      ],
    };
  },
});
