import { setting } from "../../setting";

export const railPressure = setting("railPressure", {
  label: "Rail pressure",
  symbol: "p_r",
  kind: "pressure",
  hint: "rail",
  unit: "bar",
  value: 1900,
  span: [300, 2700],
  step: 25,
});

export const railVolume = setting("railVolume", {
  label: "Volume of rail and pipes",
  symbol: "V_r",
  kind: "volume",
  hint: "small",
  unit: "cm³",
  value: 85,
  span: [5, 500],
  step: 5,
});

export const railDipLimit = setting("railDipLimit", {
  label: "Rail pressure may dip by",
  symbol: "\\Delta p_{dip,lim}",
  kind: "pressureDifference",
  hint: "rail",
  unit: "bar",
  value: 150,
  span: [10, 600],
  step: 10,
  note: "5 to 10 % of the rail's pressure, so that cylinders get alike: common practice, no source.",
});

export const injectorReturn = setting("injectorReturn", {
  label: "Injector leakage and control flow, over fuel burnt",
  symbol: "\\lambda_i",
  kind: "fraction",
  unit: "%",
  value: 12,
  span: [0, 60],
  step: 1,
});
