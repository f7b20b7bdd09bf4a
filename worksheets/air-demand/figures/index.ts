export { powerStaircase } from "./powerStaircase";
