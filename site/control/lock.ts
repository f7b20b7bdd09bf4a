import type { QuantityInput } from "../../lib/graph";
import { h, setAttribute, setText } from "../dom";
import type { Controlled } from "./controlled";

/** Locks a slider against a hand that slips. */
export function lockKey(input: QuantityInput, { locks }: Controlled): { readonly element: HTMLElement; refresh(): void } {
  const element = h("button", { type: "button", class: "lock-key", onclick: () => locks.toggle(input.key) });
  return {
    element,
    refresh: () => {
      const locked = locks.has(input.key);
      setText(element, locked ? "Locked" : "Lock");
      setAttribute(element, "aria-pressed", String(locked));
      setAttribute(element, "aria-label", `${input.label}: ${locked ? "locked; press to free it" : "lock"}`);
    },
  };
}
