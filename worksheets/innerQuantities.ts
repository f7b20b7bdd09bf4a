import { airInner } from "./air-demand/inner";
import { boatInner, boatWrittenOut } from "./boat-duty/inner";
import { boostInner, boostWrittenOut } from "./boost/inner";
import { driveInner, driveWrittenOut } from "./drive-speeds/inner";
import { fuelInner, fuelWrittenOut } from "./fuel-delivery/inner";
import type { Inner, WrittenOut } from "./inner";
import { landInner } from "./land-cooling/inner";
import { marineInner, marineWrittenOut } from "./marine-cooling/inner";
import { matchingInner, matchingWrittenOut } from "./matching/inner";

/** What formulas name and no line bears. It is needed with the first trace, and fetched with it. */
export const innerQuantities: readonly Inner[] = [...airInner, ...boostInner, ...matchingInner, ...fuelInner, ...driveInner, ...marineInner, ...boatInner, ...landInner];

/** Formulas that run over rows or parts. */
export const sumsAndProducts: readonly WrittenOut[] = [...boostWrittenOut, ...matchingWrittenOut, ...fuelWrittenOut, ...driveWrittenOut, ...marineWrittenOut, ...boatWrittenOut];
