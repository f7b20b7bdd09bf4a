import type { Count, Length } from "../quantity";

/** What a synchronous belt of one profile looks like in section. */
export interface ToothProfile {
  /** designation in the standard */
  readonly name: string;
  /** distance from tooth to tooth along the pitch line [m] */
  readonly pitch: Length;
  /** from the tip of a pulley tooth out to the pitch line [m]; half the pitch differential */
  readonly pitchLineDistance: Length;
  /** from tooth tip to back of the belt [m] */
  readonly thickness: Length;
  /** height of a belt tooth [m] */
  readonly toothHeight: Length;
  /** fewest teeth of a pulley that the belt bends around for long [–]; from memory, makers ask for more at high speed */
  readonly leastTeeth: Count;
  /** widths of the standard [m] */
  readonly standardWidths: readonly Length[];
  /** pitch lengths to offer first [m]; a default list, meant to be edited: makers list many more */
  readonly standardLengths: readonly Length[];
}

/**
 * The 8 mm curvilinear profile.
 * Pitch, section and widths: a public page that restates ISO 13050, tables 1 and 2. Lengths: ISO 13050, from memory.
 */
export const curvilinear8: ToothProfile = {
  name: "H8M",
  pitch: millimetres(8),
  pitchLineDistance: millimetres(0.686),
  thickness: millimetres(6),
  toothHeight: millimetres(3.38),
  leastTeeth: 22 as Count,
  standardWidths: [20, 30, 50, 85].map(millimetres),
  standardLengths: [
    480, 560, 600, 640, 720, 800, 880, 960, 1040, 1120, 1200, 1280, 1440, 1600, 1760, 1800, 2000, 2400, 2600, 2800,
  ].map(millimetres),
};

/**
 * The 14 mm curvilinear profile.
 * Pitch, section and widths: a public page that restates ISO 13050, tables 1 and 2. Lengths: ISO 13050, from memory.
 */
export const curvilinear14: ToothProfile = {
  name: "H14M",
  pitch: millimetres(14),
  pitchLineDistance: millimetres(1.397),
  thickness: millimetres(10),
  toothHeight: millimetres(6.02),
  leastTeeth: 28 as Count,
  standardWidths: [40, 55, 85, 115, 170].map(millimetres),
  standardLengths: [
    966, 1190, 1400, 1610, 1778, 1890, 2100, 2310, 2450, 2590, 2800, 3150, 3360, 3500, 3850, 4326, 4578,
  ].map(millimetres),
};

/** Profiles to choose from. Other profiles of the same pitch have another pitch line distance: do not mix them. */
export const toothProfiles: readonly ToothProfile[] = [curvilinear8, curvilinear14];

function millimetres(value: number): Length {
  // Divided, not multiplied by 0.001: 8 / 1000 is the double nearest to 0.008.
  return (value / 1000) as Length;
}
