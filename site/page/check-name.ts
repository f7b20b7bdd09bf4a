import type { Check } from "../../lib/graph";
import { inSentence } from "./desk";

/** Part and quantity, as on a line of its own; the quantity alone where it names its part already. */
export function checkName({ component, label }: Pick<Check, "component" | "label">): string {
  return label.toLowerCase().includes(component.toLowerCase()) ? label : `${component.charAt(0).toUpperCase()}${component.slice(1)}: ${inSentence(label)}`;
}
