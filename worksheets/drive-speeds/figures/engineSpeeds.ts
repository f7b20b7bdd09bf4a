import type { DriveSpeeds } from "../../../lib/drive";

/** The engine's speeds at which drives are looked at, the slowest first as a rule, and what people call them. */
export const engineSpeeds = [
  { key: "idle", word: "idle", phrase: "idle" },
  { key: "cruise", word: "cruise", phrase: "cruise" },
  { key: "rated", word: "promised", phrase: "the promised speed" },
  { key: "maximum", word: "highest", phrase: "the highest engine speed" },
  { key: "overspeed", word: "overspeed", phrase: "overspeed" },
] as const satisfies readonly { readonly key: keyof DriveSpeeds; readonly word: string; readonly phrase: string }[];

export type EngineSpeed = (typeof engineSpeeds)[number]["key"];
