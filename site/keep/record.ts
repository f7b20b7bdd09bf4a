import type { UnitChoice } from "../state";

/** A build as the device keeps it. */
export interface KeptBuild {
  readonly id: string;
  /** The build's name, for lists. */
  readonly name: string;
  /** How many installations it has, for lists. */
  readonly installations: number;
  /** When it was kept, in milliseconds since 1970. */
  readonly time: number;
  /** The tab that kept it last. */
  readonly writer: string;
  /** Whether the reader gave it a name; builds never named give way to newer ones. */
  readonly named: boolean;
  /** The build as a file. */
  readonly text: string;
  /** The build it started from, as a file: where "changed" is measured from. */
  readonly openedText: string;
  /** Key of the installation shown. */
  readonly installation: string;
  readonly units: UnitChoice;
}

/** Whether what the device gave back has the form of a record; its texts are read as files are, later. */
export function isKeptBuild(value: unknown): value is KeptBuild {
  if (typeof value !== "object" || value === null) return false;
  const record = value as Readonly<Record<string, unknown>>;
  const texts = ["id", "name", "writer", "text", "openedText", "installation"].every((name) => typeof record[name] === "string");
  const numbers = ["installations", "time"].every((name) => Number.isFinite(record[name]));
  return texts && numbers && typeof record.named === "boolean" && typeof record.units === "object";
}

/** Sixteen signs that no other record or tab has. */
export function newId(): string {
  return [...crypto.getRandomValues(new Uint8Array(8))].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** Newest first. */
export function byTime(records: readonly KeptBuild[]): readonly KeptBuild[] {
  return records.toSorted((a, b) => b.time - a.time);
}
