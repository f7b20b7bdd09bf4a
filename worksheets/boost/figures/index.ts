export { chargeStaircase } from "./chargeStaircase";
