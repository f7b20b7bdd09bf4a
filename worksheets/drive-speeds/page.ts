import { blowerHighestSpeed } from "../boost/inputs";
import { caution, drawn, heading, lines, prose, type Sheet } from "../sheet";
import { blowerSpeed, blowerTopSpeed } from "./cells";
import { belts, frontPulleys } from "./beltTables";
import { blowerDrivenTeeth, blowerDriverTeeth } from "./inputs";
import { beltBlocks } from "./pageBelts";
import { loadBlocks } from "./pageLoads";

const figures = () => import("./figures");

export const driveSpeedsPage: Sheet = {
  key: "drive-speeds",
  title: "Drive speeds",
  answers: "How fast everything on the front of the engine turns, which way, on which belt, and at what load.",
  blocks: [
    prose`With ${blowerDriverTeeth} teeth on the crank and ${blowerDrivenTeeth} on the blower, the blower turns at ${blowerSpeed} at the promised speed, and at ${blowerTopSpeed} at the highest; ${blowerHighestSpeed} is allowed. Teeth are whole numbers, so the ratio moves in steps.`,
    caution(
      "A running belt pulls in sleeves, hair and fingers before anyone can let go: guard every run, and stop the engine and secure it against starting before touching a belt or a tensioner. A sprung or loaded tensioner holds stored force: let it off with the tool made for it, and keep hands out of the way of its arm. What is driven past its speed can come apart: pulleys, rotors and fans have speeds that only their makers can allow. Local codes and licensed practice come first.",
    ),
    drawn(figures, "frontDrives"),
    ...lines(frontPulleys, belts),
    ...beltBlocks,
    ...loadBlocks,
    heading("Installed"),
    prose`The same engine runs in a test cell, in a vehicle and in a boat, and its front is not the same in each. Belts and pulleys of an installation are its own once they are set apart from the shared ones.`,
    drawn(figures, "installedRuns"),
  ],
};
