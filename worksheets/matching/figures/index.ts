export * from "./arrangementsCompared";
export * from "./blowerDrive";
export * from "./chargeSteps";
export * from "./compressorField";
export * from "./powerOverAltitude";
export * from "./powerOverSpeed";
export * from "./pressureShares";
