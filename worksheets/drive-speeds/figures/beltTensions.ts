import { narrow, reading } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { beltLoads } from "../beltLoads";
import type { FrontBeltLoad } from "../frontBeltLoad";
import { beltRuns } from "../beltRuns";
import { drawTensions } from "./tensionPlate";

/** Looseness that is worth a word: a span with less than this above the centrifugal tension [N]. */
const loose = 0;

export const beltTensions = figure({
  key: "beltTensions",
  title: "Tension round every belt, and what it does to the shafts",
  from: { beltRuns, beltLoads },
  describe: ({ beltLoads }, units) => {
    const force = (value: number) => reading(units, "force", value);
    const laid = beltLoads.filter(({ fault, spans }) => fault === undefined && spans.length > 0);
    if (laid.length === 0) return `None of the ${beltLoads.length} belts can be laid.`;
    const belts = laid.map(({ name, spans }) => {
      const tight = spans.reduce((a, b) => (b.tension > a.tension ? b : a));
      const slack = spans.reduce((a, b) => (b.tension < a.tension ? b : a));
      return `${name}: ${force(tight.tension)} from ${tight.from.toLowerCase()} to ${tight.to.toLowerCase()}, ${force(slack.tension)} where it is slackest.`;
    });
    const hanging = laid.filter(({ pressing }) => pressing < loose);
    const hubs = laid.flatMap(({ name, pulleys }) => pulleys.flatMap((each) => (each.hub ? [{ name, ...each, hub: each.hub }] : [])));
    const most = hubs.length > 0 ? hubs.reduce((a, b) => (b.hub.magnitude > a.hub.magnitude ? b : a)) : undefined;
    return [
      ...belts,
      ...hanging.map(({ name, loosest, pressing }) => `${name} would hang loose from ${loosest.span}: it lacks ${force(-pressing)}.`),
      most ? `The hardest pull on a shaft is ${force(most.hub.magnitude)}, on the ${most.unit.toLowerCase()} of the ${most.name.toLowerCase()}.` : "",
    ]
      .filter((sentence) => sentence !== "")
      .join(" ");
  },
  draw: ({ beltRuns, beltLoads }, frame) => drawTensions(beltRuns, beltLoads, { ...frame, slim: frame.width < narrow }),
  table: ({ beltLoads }, units) => ({
    columns: [
      "Belt",
      "Part",
      ["Promised speed", units.unit("force")],
      ["At the peak", units.unit("force")],
      ["At rest", units.unit("force")],
      ["Free length", units.unit("length")],
      ["Sounds at rest", units.unit("frequency")],
      ["Pushed by", units.unit("force")],
      ["Gives", units.unit("length")],
    ],
    rows: beltLoads.flatMap((load) => [...spanRows(load, units), ...shaftRows(load, units)]),
  }),
});

function spanRows({ name, spans, setTension }: FrontBeltLoad, units: FigureUnits): readonly (readonly (string | number)[])[] {
  const force = (value: number) => units.number("force", value);
  return spans.map(({ from, to, tension, peak, length, restFrequency, push, pushedIn }) => [
    name,
    `span from ${from} to ${to}`,
    force(tension),
    force(peak),
    force(setTension),
    units.number("length", length),
    units.number("frequency", restFrequency),
    force(push),
    units.number("length", pushedIn),
  ]);
}

function shaftRows({ name, pulleys }: FrontBeltLoad, units: FigureUnits): readonly (readonly (string | number)[])[] {
  const force = (value: number) => units.number("force", value);
  return pulleys.map(({ unit, hub, hubAtRest }) => [
    name,
    `shaft of ${unit}`,
    hub ? force(hub.magnitude) : "–",
    "–",
    force(hubAtRest),
    "–",
    "–",
    "–",
    "–",
  ]);
}
