import * as d3 from "d3";
import { caution, drawn, figure, heading, lines, prose, type Sheet, tabulated } from "../../worksheets/sheet";
import * as f from "./fixture";

const ratioFigure = figure({
  key: "pressure-against-ratio",
  title: "Pressure ratio against drive ratio",
  from: { driveRatio: f.driveRatio, pressureRatio: f.pressureRatio, leak: f.leak },
  describe: ({ driveRatio, pressureRatio }) =>
    `At a drive ratio of ${driveRatio.toFixed(2)} the blower gives a pressure ratio of ${pressureRatio.toFixed(2)}.`,
  draw: ({ driveRatio, pressureRatio, leak }, { width }) => {
    const height = 220;
    const x = d3.scaleLinear([0.5, 3.2], [40, width - 16]);
    const y = d3.scaleLinear([0.8, 2.4], [height - 28, 16]);
    const svg = d3.create("svg").attr("viewBox", `0 0 ${width} ${height}`).attr("width", width).attr("height", height);
    svg.append("g").attr("transform", `translate(0,${height - 28})`).call(d3.axisBottom(x).ticks(6));
    svg.append("g").attr("transform", "translate(40,0)").call(d3.axisLeft(y).ticks(4));
    const points = d3.range(0.5, 3.21, 0.1).map((ratio) => [x(ratio), y(0.7 + ratio * 0.5 * (1 - leak))] as [number, number]);
    svg.append("path").attr("d", d3.line()(points)).attr("fill", "none").attr("stroke", "currentColor").attr("stroke-width", 1.5);
    svg.append("circle").attr("cx", x(driveRatio)).attr("cy", y(pressureRatio)).attr("r", 5).attr("fill", "currentColor");
    return svg.node()!;
  },
  table: ({ leak }) => ({
    columns: ["drive ratio", "pressure ratio"],
    rows: d3.range(0.5, 3.21, 0.3).map((ratio) => [ratio, 0.7 + ratio * 0.5 * (1 - leak)]),
  }),
});

/** A few sheets over the fixture's graph, with every kind of block. */
export const sheets: readonly Sheet[] = [
  {
    key: "brief",
    title: "Brief",
    answers: "What was promised, and in what air it must be kept?",
    blocks: [
      prose`The engine is to give ${f.power} at ${f.engineSpeed}, breathing air of ${f.ambient}. With an air–fuel ratio of ${f.airFuelRatio} that asks for ${f.airFlow} of air, and the blower puts it into the manifold at ${f.chargeTemperature}.`,
      ...lines(f.power, f.engineSpeed, f.ambient, f.ambientPressure, f.cylinders, f.bore, f.coolant),
      ...lines(f.boreArea),
    ],
  },
  {
    key: "air",
    title: "Air and fuel",
    answers: "How much air does the promised power ask for?",
    blocks: [...lines(f.airFuelRatio, f.fuelFlow, f.airFlow)],
  },
  {
    key: "blower",
    title: "Blower and charge cooling",
    answers: "What does the blower do to the air, and what does that cost?",
    blocks: [
      caution("A blower that runs above its speed can throw its rotors. Stand clear of its plane of rotation, and guard the drive before the first run."),
      prose`At a drive ratio of ${f.driveRatio} the blower turns at ${f.blowerSpeed} and raises the pressure ${f.pressureRatio} times.`,
      ...lines(f.driveRatio, f.leak, f.speedLimit, f.blowerSpeed, f.pressureRatio, f.outletPressure, f.outletTemperature),
      heading("After the cooler"),
      ...lines(f.chargeTemperature, f.blowerPower),
      drawn(async () => ({ ratioFigure }), "ratioFigure"),
    ],
  },
  {
    key: "belt",
    title: "Front belt",
    answers: "What hangs on the front of the engine, and does the belt bear it?",
    blocks: [...lines(f.driven, f.beltLoads), tabulated({ key: "belt-loads", title: "Speeds and torques", of: f.beltLoads, columns: [{ label: "Unit" }, { label: "Speed", kind: "rotationalSpeed" }, { label: "Torque", kind: "torque" }], rows: (units) => units.map(({ name, speed, torque }) => [name, speed, torque]) }), ...lines(f.beltPower)],
  },
  {
    key: "sea",
    title: "Sea water",
    answers: "How much sea water does the engine need?",
    applies: { choice: f.coolant, is: "sea", otherwise: "The charge is not cooled by raw sea water; this sheet does not count." },
    blocks: [prose`Nothing but the cooler is wetted here.`, ...lines(f.chargeTemperature)],
  },
];
