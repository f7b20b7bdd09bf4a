export { arrangementsCompared } from "./arrangementsCompared";
export { blowerDrive } from "./blowerDrive";
export { chargeSteps } from "./chargeSteps";
export { compressorField } from "./compressorField";
export { powerOverAltitude } from "./powerOverAltitude";
export { powerOverSpeed } from "./powerOverSpeed";
export { pressureShares } from "./pressureShares";
