/** Where a part of the fuel's power ends. */
export type Goal = "away" | "sea";

export interface Flow {
  readonly key: string;
  readonly name: string;
  readonly power: number;
  readonly goal: Goal;
}

type Parts = readonly { readonly key: string; readonly power: number }[];

/** Parts of the heat balance in the order in which they leave the stream; what is left at its foot is the shaft's. */
export function flowsOf(
  parts: Parts,
  gear: number,
  fuelReturn: number,
): { readonly flows: readonly Flow[]; readonly shaft: number } {
  const power = (key: string) => parts.find((part) => part.key === key)?.power ?? 0;
  const flow = (key: string, name: string, amount: number, goal: Goal): Flow => ({ key, name, power: amount, goal });
  const flows = [
    flow("exhaust", "Exhaust gas", power("exhaust"), "away"),
    flow("radiation", "Radiation", power("radiation"), "away"),
    flow("blowerLoss", "Blower gears", power("blowerLoss"), "away"),
    flow("accessories", "Accessories", power("accessories"), "away"),
    flow("fuelPump", "Fuel pump", power("fuelPump") - fuelReturn, "away"),
    flow("fuelReturn", "Returning fuel", fuelReturn, "sea"),
    flow("chargeCoolers", "Charge coolers", power("chargeCoolers"), "sea"),
    flow("oil", "Engine oil", power("oil") + power("turbochargerLoss"), "sea"),
    flow("jacket", "Jacket water", power("jacket"), "sea"),
    flow("gear", "Gear oil", gear, "sea"),
  ];
  return { flows, shaft: power("brake") - gear };
}
