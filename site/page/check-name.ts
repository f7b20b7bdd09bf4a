import type { Check } from "../../lib/graph";

/** Part and quantity; the quantity alone where it names its part already. */
export function checkName({ component, label }: Pick<Check, "component" | "label">): string {
  return label.toLowerCase().includes(component.toLowerCase()) ? label : `${component}: ${label}`;
}
