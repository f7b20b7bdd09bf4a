import type { PathStation } from "../../../lib/charge";
import { figures } from "../../drawing";

/** What the element before a station does to the pressure: "× 2.73"; a dash for the open air. */
export function elementWords({ number, pressureRatio }: PathStation): string {
  return number === 0 ? "–" : `× ${figures(pressureRatio, pressureRatio < 1 ? 3 : 4)}`;
}

/** The element's own name, from its station's. */
export function elementName({ name }: PathStation): string {
  const bare = name.replace(/^After /, "");
  return bare[0]!.toUpperCase() + bare.slice(1);
}
