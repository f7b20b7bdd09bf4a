import { airDemandPage } from "./air-demand/page";
import { boatDutyPage } from "./boat-duty/page";
import { boostPage } from "./boost/page";
import { briefPage } from "./brief/page";
import { driveSpeedsPage } from "./drive-speeds/page";
import { fuelDeliveryPage } from "./fuel-delivery/page";
import { landCoolingPage } from "./land-cooling/page";
import { marineCoolingPage } from "./marine-cooling/page";
import { matchingPage } from "./matching/page";
import type { Sheet } from "./sheet";

/** Every sheet, in the order in which the trade thinks. */
export const sheets: readonly Sheet[] = [
  briefPage,
  airDemandPage,
  boostPage,
  matchingPage,
  fuelDeliveryPage,
  driveSpeedsPage,
  marineCoolingPage,
  boatDutyPage,
  landCoolingPage,
];
