import { caution, drawn, prose, type Sheet } from "../sheet";
import { injectedVolume, injectionAngle } from "./cells";
import { holeDiameter, injectionWindow, nozzleHoles, railPressure } from "./inputs";
import { nozzleBlocks } from "./nozzleBlocks";
import { pumpBlocks } from "./pumpBlocks";
import { supplyBlocks } from "./supplyBlocks";

const figures = () => import("./figures");

export const fuelDeliveryPage: Sheet = {
  key: "fuel-delivery",
  title: "Fuel delivery",
  answers: "Whether the nozzles put the fuel in early enough, and the pumps keep up.",
  blocks: [
    prose`Each cylinder takes ${injectedVolume}, once in two turns. Through ${nozzleHoles} holes of ${holeDiameter} at a rail pressure of ${railPressure} that lasts ${injectionAngle}; ${injectionWindow} is allowed. Flow grows with the square of the hole's diameter but only with the square root of the pressure: holes do more than pressure can.`,
    caution(
      "A jet at these pressures goes through gloves and skin, and the fuel under the skin can cost a hand or a life: it is a medical emergency even if it looks like a pinprick. Never feel for a leak. Let the pressure out of the rail, and check that it is gone, before opening anything. Fuel mist burns: keep it away from hot exhaust and sparks. Follow local codes and licensed practice.",
    ),
    drawn(figures, "injectionTimeline"),
    ...nozzleBlocks,
    ...pumpBlocks,
    ...supplyBlocks,
  ],
};
