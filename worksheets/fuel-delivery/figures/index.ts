export { boatReach } from "./boatReach";
export { injectionTimeline } from "./injectionTimeline";
export { nozzleTrade } from "./nozzleTrade";
export { pumpOverSpeed } from "./pumpOverSpeed";
export { pumpsCompared } from "./pumpsCompared";
export { supplyProfile } from "./supplyProfile";
export { tankWarming } from "./tankWarming";
