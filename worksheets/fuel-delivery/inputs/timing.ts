import { setting } from "../../setting";

export const injectionStart = setting("injectionStart", {
  label: "Main injection starts before top dead centre",
  symbol: "\\theta_s",
  kind: "crankAngle",
  unit: "deg",
  value: 14,
  span: [-10, 40],
  step: 0.5,
  note: "When fuel begins to flow, some tenths of a millisecond after the injector is switched on.",
});

export const pilotLead = setting("pilotLead", {
  label: "Pilot starts earlier than main by",
  symbol: "\\theta_{pi}",
  kind: "crankAngle",
  unit: "deg",
  value: 16,
  span: [2, 50],
  step: 0.5,
});

export const afterGap = setting("afterGap", {
  label: "Pause between main and after-injection",
  symbol: "\\theta_{af}",
  kind: "crankAngle",
  unit: "deg",
  value: 3,
  span: [0.5, 30],
  step: 0.5,
});

export const latestEnd = setting("latestEnd", {
  label: "Last fuel after top dead centre, at most",
  symbol: "\\theta_{e,lim}",
  kind: "crankAngle",
  unit: "deg",
  value: 28,
  span: [0, 60],
  step: 0.5,
  note: "Later fuel burns into the exhaust; 20 to 30 degrees is common practice, no source.",
});

export const peakAngle = setting("peakAngle", {
  label: "Peak cylinder pressure after top dead centre",
  symbol: "\\theta_{max}",
  kind: "crankAngle",
  unit: "deg",
  value: 11,
  span: [2, 30],
  step: 0.5,
  note: "8 to 14 degrees for good work: common practice, no source.",
});

export const injectionWindow = setting("injectionWindow", {
  label: "Crank angle allowed for injection",
  symbol: "\\theta_{lim}",
  kind: "crankAngle",
  unit: "deg",
  value: 36,
  span: [10, 60],
  step: 0.5,
  note: "Beyond about 35 to 40 degrees the late fuel makes heat and smoke in place of work: common practice, no source.",
});
