import { blowerHighestSpeed } from "../boost/inputs";
import { idleSpeed, maximumSpeed } from "../brief/cells";
import { type Block, drawn, heading, lines, prose, tabulated } from "../sheet";
import { beltFits } from "./beltFits";
import { beltRuns, drawnBelts, frontBelts } from "./beltRuns";
import { blowerBeltLength, blowerBeltSpeed, blowerSpeed, blowerTopSpeed, rawWaterPumpSpeed } from "./cells";
import { driveFindings } from "./findings";
import {
  blowerDrivenTeeth,
  blowerDriverTeeth,
  clearanceLeast,
  crankRotation,
  cruiseSpeed,
  fittingSlack,
  meshLeast,
  overspeedShare,
  rawWaterDrivenTeeth,
  rawWaterDriverTeeth,
  stretchShare,
} from "./inputs";
import { pickCrankFewest, pickCrankMost, pickRatio, pickRole, pickTolerance } from "./pickInputs";
import { ratioRanges } from "./ratioRanges";
import { blowerDriveRatio, fuelPumpDriveRatio, rawWaterDriveRatio } from "./ratios";

const figures = () => import("./figures");

/** Layout, fitting and speeds of the belts. */
export const beltBlocks: readonly Block[] = [
  heading("Belts and pulleys"),
  prose`A tensioner belongs on the slack span, the one that leaves the crank: on the left if the crank turns clockwise. A pulley on the back of the belt turns against the crank; a unit hung with its shaft to the rear turns, as seen on its own shaft end, the other way.`,
  ...lines(
    crankRotation,
    blowerDriverTeeth,
    blowerDrivenTeeth,
    blowerDriveRatio,
    rawWaterDriverTeeth,
    rawWaterDrivenTeeth,
    rawWaterDriveRatio,
    frontBelts,
    drawnBelts,
    meshLeast,
    beltRuns,
  ),
  tabulated({
    key: "belt-runs",
    title: "Every belt, pulley by pulley",
    of: beltRuns,
    columns: [
      { label: "Pulley" },
      { label: "Belt" },
      { label: "Ratio", kind: "ratio" },
      { label: "Turns, seen on its shaft end" },
      { label: "Arc", kind: "angle" },
      { label: "In mesh" },
      { label: "Span to the next", kind: "length" },
    ],
    rows: (laid) =>
      laid.flatMap(({ name, members, run }) =>
        members.map(({ unit, ratio, turns, turnsRightly }, i) => [
          unit,
          name,
          ratio,
          turnsRightly ? turns : `${turns}: driven backwards`,
          run ? run.pulleys[i]!.wrap : "no belt can lie",
          run?.pulleys[i]?.teethInMesh ?? "no\u00a0teeth",
          run ? run.spans[i]!.length : "–",
        ]),
      ),
  }),
  ...lines(blowerBeltLength, blowerBeltSpeed, clearanceLeast, driveFindings),
  tabulated({
    key: "drive-findings",
    title: "What is found, and how to cure it",
    of: driveFindings,
    columns: [{ label: "Belt" }, { label: "Found" }, { label: "Cure" }],
    rows: (found) =>
      found.length === 0
        ? [["all", "nothing in the way: every belt lies, and every unit turns as it must", "–"]]
        : found.map(({ belt, what, cure }) => [belt, what, cure]),
  }),
  heading("Belts to be had"),
  prose`A toothed belt has whole teeth, so the pulley that takes it up must come to where a belt closes the run, with way left to slip the belt on and to follow its stretch.`,
  ...lines(fittingSlack, stretchShare, beltFits),
  tabulated({
    key: "belt-fits",
    title: "Belts that fit, and where the pulley that takes up then stands",
    of: beltFits,
    columns: [
      { label: "Belt" },
      { label: "Teeth" },
      { label: "Pitch length", kind: "length" },
      { label: "Which" },
      { label: "Pulley" },
      { label: "Moved by", kind: "length" },
      { label: "To the right", kind: "length" },
      { label: "Above", kind: "length" },
      { label: "From the crank", kind: "length" },
    ],
    rows: (fits) =>
      fits.flatMap(({ name, pulley, offers, chosen, fault }) => [
        ...offers.map((offer) => [
          name,
          offer.teeth ?? "ribbed",
          offer.length,
          `${offer.teeth === undefined ? "as stated, or as drawn" : offer.standard ? "standard length" : "whole teeth"}${offer === chosen ? ", taken" : ""}`,
          pulley,
          offer.travel,
          offer.place.x,
          offer.place.y,
          offer.fromCrank,
        ]),
        ...(fault === undefined ? [] : [[name, "–", "–", fault, pulley, "–", "–", "–", "–"]]),
      ]),
  }),
  tabulated({
    key: "belt-travel",
    title: "Way that each tensioner needs",
    of: beltFits,
    columns: [
      { label: "Belt" },
      { label: "Pulley" },
      { label: "Moves" },
      { label: "Back, to slip the belt on", kind: "length" },
      { label: "On, for stretch", kind: "length" },
      { label: "Farthest", kind: "length" },
      { label: "May move", kind: "length" },
    ],
    rows: (fits) =>
      fits.map(({ name, pulley, by, forFitting, forStretch, farthest, reach }) => [
        name,
        pulley,
        by === "slide" ? "on its slide" : by === "arm" ? "on its arm" : "not mounted to move",
        forFitting ?? "–",
        forStretch ?? "–",
        farthest ?? "–",
        reach,
      ]),
  }),
  heading("Speeds"),
  prose`Every unit has its window: it must be fast enough when the engine idles at ${idleSpeed}, not too fast at ${maximumSpeed}, and must hold together at overspeed. The wider the engine's own range, the fewer ratios fit. The blower turns at ${blowerSpeed} at the promised speed; ${blowerHighestSpeed} is allowed.`,
  ...lines(cruiseSpeed, overspeedShare, blowerSpeed, blowerTopSpeed, fuelPumpDriveRatio, rawWaterPumpSpeed),
  drawn(figures, "speedWindows"),
  tabulated({
    key: "unit-speeds",
    title: "Speed of every unit",
    of: beltRuns,
    columns: [
      { label: "Unit" },
      { label: "At idle", kind: "rotationalSpeed" },
      { label: "Cruise", kind: "rotationalSpeed" },
      { label: "Promised", kind: "rotationalSpeed" },
      { label: "Highest", kind: "rotationalSpeed" },
      { label: "Overspeed", kind: "rotationalSpeed" },
    ],
    rows: (laid) =>
      laid.flatMap(({ members }) =>
        members
          .filter(({ role }) => role !== "crank")
          .map(({ unit, at }) => [unit, at.idle, at.cruise, at.rated, at.maximum, at.overspeed]),
      ),
  }),
  ...lines(ratioRanges),
  tabulated({
    key: "ratio-ranges",
    title: "Ratios that suit each unit, and the teeth that give them",
    of: ratioRanges,
    columns: [
      { label: "Unit" },
      { label: "Lowest", kind: "ratio" },
      { label: "As it is", kind: "ratio" },
      { label: "Highest", kind: "ratio" },
      { label: "Set by" },
      { label: "Teeth on the crank pulley there is" },
    ],
    rows: (ranges) =>
      ranges.map(({ unit, lowest, ratio, highest, set, empty, suits, teeth }) => [
        unit,
        lowest > 0 ? lowest : "no limit",
        ratio,
        Number.isFinite(highest) ? highest : "no limit",
        empty ? "no ratio does both" : suits ? set : `${set}; the ratio there is does not suit`,
        teeth ? (lowest > 0 ? `${teeth[0]} to ${teeth[1]}` : `${teeth[0]} or more`) : "–",
      ]),
  }),
  heading("Picks"),
  prose`Pulleys have whole teeth and belts are sold in lengths, so a ratio of ${pickRatio} is to be had in some ways only. Every pair of pulleys that comes within ${pickTolerance} is tried with every listed belt, and what breaks a limit is left out.`,
  ...lines(pickRole, pickRatio, pickTolerance, pickCrankFewest, pickCrankMost),
  drawn(figures, "picks"),
];
