export * from "./offline";
