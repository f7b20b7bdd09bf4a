import { curvilinear8, type RunningDrive, toothProfiles } from "../../../lib/drive";
import { narrow, plate, resized, write } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { accessoryDrive, blowerRun } from "../cells";
import { blowerBeltPitch, crankRotation } from "../inputs";
import { drawPanel, extentOf } from "./drivePanel";
import { scaleBar } from "./scaleBar";

/** Widths from which both belts stand side by side, and how tall a belt may then be, in CSS pixels. */
const sideBySide = 640;
const tallest = 500;
/** Room for labels around a belt. */
const margin = { x: 84, y: 44 };

const drives = (at: { blowerRun: RunningDrive; accessoryDrive: RunningDrive; blowerBeltPitch: string }) => [
  {
    title: "Blower belt",
    drive: at.blowerRun,
    profile: toothProfiles.find(({ name }) => name === at.blowerBeltPitch) ?? curvilinear8,
  },
  { title: "Accessory belt", drive: at.accessoryDrive, profile: curvilinear8 },
];

const backwards = ({ members }: RunningDrive) => members.filter(({ turnsRightly }) => !turnsRightly);

export const frontDrives = figure({
  key: "frontDrives",
  title: "Both belts, seen from the front",
  from: { blowerRun, accessoryDrive, blowerBeltPitch, crankRotation },
  describe: (at, units) => {
    const [blower, accessory] = [at.blowerRun, at.accessoryDrive];
    const wrong = [blower, accessory].flatMap(backwards).map(({ unit }) => unit.toLowerCase());
    const driven = [...blower.members, ...accessory.members].filter(({ role }) => role !== "crank" && role !== "idler");
    return [
      `The crank turns ${at.crankRotation}; the blower belt is ${units.text("length", blower.run.length)} long over ${blower.run.pulleys.length} pulleys, the accessory belt ${units.text("length", accessory.run.length)} over ${accessory.run.pulleys.length}.`,
      wrong.length === 0
        ? `${driven.length === 1 ? "The driven unit turns" : `All ${driven.length} driven units turn`} the way they must.`
        : `Driven backwards: ${wrong.join(", ")}.`,
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const both = drives(at).map((each) => ({ ...each, extent: extentOf(each.drive.run) }));
    const abreast = width >= sideBySide;
    const across = both.map(({ extent }) => extent.width);
    const sum = across[0]! + across[1]!;
    const side = width < narrow ? 64 : margin.x;
    const room = abreast ? (width - 4 * side) / sum : (width - 2 * side) / Math.max(...across);
    const scale = Math.min(room, tallest / Math.max(...both.map(({ extent }) => extent.height)));
    const spare = (width - sum * scale) / 2;
    const widths = across.map((metres) => (abreast ? metres * scale + spare : width));
    const heights = both.map(({ extent }) => extent.height * scale + 2 * margin.y);

    const { svg, ground } = plate(width, 1);
    let foot = 0;
    let row = 0;
    both.forEach(({ title, drive, profile, extent }, i) => {
      const box = {
        x: abreast && i === 1 ? widths[0]! : 0,
        y: abreast || i === 0 ? 30 : foot + 34,
        width: widths[i]!,
        height: abreast ? Math.max(...heights) : heights[i]!,
      };
      foot = Math.max(
        foot,
        drawPanel(ground, { title, drive, profile, extent, crank: at.crankRotation, scale, units, box, row }),
      );
      row += drive.members.length;
    });
    scaleBar(ground, { x: 2, y: foot + 14, scale, units });
    write(ground, `crank turns ${at.crankRotation}`, { x: width - 2, y: foot + 18.5, anchor: "end", look: "mute" });
    return resized(svg, width, foot + 28);
  },
  table: (at, units) => ({
    columns: [
      "Belt",
      "Pulley",
      "Teeth",
      ["Speed", units.unit("rotationalSpeed")],
      ["Wrap", units.unit("angle")],
      "Teeth in mesh",
      "Turns, on its shaft end",
      "As it must",
      ["To the right", units.unit("length")],
      ["Above", units.unit("length")],
    ],
    rows: drives(at).flatMap(({ title, drive }) =>
      drive.members.map((member, i) => row(title, member, drive.run.pulleys[i]!, units)),
    ),
  }),
});

function row(
  title: string,
  member: RunningDrive["members"][number],
  pulley: RunningDrive["run"]["pulleys"][number],
  units: FigureUnits,
) {
  return [
    title,
    member.unit,
    member.teeth > 0 ? member.teeth : "smooth",
    units.number("rotationalSpeed", member.at.rated),
    units.number("angle", pulley.wrap),
    pulley.teethInMesh ?? "–",
    member.turns,
    member.turnsRightly ? "yes" : "no, backwards",
    units.number("length", member.x),
    units.number("length", member.y),
  ];
}
