export { beltTensions } from "./beltTensions";
export { driveBudgets } from "./driveBudgets";
export { frontDrives } from "./frontDrives";
export { installedRuns } from "./installedRuns";
export { picks } from "./picks";
export { speedWindows } from "./speedWindows";
export { unitTorque } from "./unitTorque";
