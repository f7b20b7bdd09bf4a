import { setting } from "../../setting";

export const seaTemperature = setting("seaTemperature", {
  label: "Sea temperature, worst case",
  symbol: "T_{sea}",
  kind: "temperature",
  unit: "°C",
  value: 30,
  span: [-1, 38],
  step: 0.5,
  note: "Size for the warmest water the boat will meet; 32 °C is the usual figure for unrestricted service: common practice, no source.",
});

export const coldSeaTemperature = setting("coldSeaTemperature", {
  label: "Coldest sea",
  symbol: "T_{sea,c}",
  kind: "temperature",
  unit: "°C",
  value: 5,
  span: [-1, 25],
  step: 0.5,
  note: "A winter harbour: the charge is overcooled and water falls out of it.",
});

export const salinity = setting("salinity", {
  label: "Salinity of the sea water",
  symbol: "S_w",
  kind: "fraction",
  unit: "%",
  value: 3.5,
  span: [0, 4.2],
  step: 0.1,
});

export const dischargeLimit = setting("dischargeLimit", {
  label: "Sea water leaving the last exchanger, at most",
  symbol: "T_{w,lim}",
  kind: "temperature",
  unit: "°C",
  value: 55,
  span: [35, 70],
  step: 1,
  note: "Scale settles from sea water above about 50 to 55 °C: common practice, no source.",
});
