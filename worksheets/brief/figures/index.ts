export { altitude } from "./altitude";
