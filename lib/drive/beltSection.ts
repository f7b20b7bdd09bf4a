import type { Length } from "../quantity";
import { curvilinear8, curvilinear14, type ToothProfile } from "./toothProfiles";

/** What a ribbed belt looks like in section. */
export interface RibbedProfile {
  /** designation in the standard */
  readonly name: string;
  /** distance from rib to rib [m] */
  readonly ribPitch: Length;
  /** from the effective diameter of a ribbed pulley out to the cord [m] */
  readonly cordOffset: Length;
  /** from the back of the belt in to the cord [m] */
  readonly backDistance: Length;
}

/** A belt in section: toothed or ribbed. */
export type BeltSection = ToothProfile | RibbedProfile;

/**
 * The ribbed section of engine accessories. Rib pitch 3.56 mm and the offset of the cord: ISO 9981 (from memory);
 * the distance from the back is common practice, no source.
 */
export const ribbedPK: RibbedProfile = {
  name: "PK",
  ribPitch: (3.56 / 1000) as Length,
  cordOffset: (1.5 / 1000) as Length,
  backDistance: (1.2 / 1000) as Length,
};

/** Sections to choose from. */
export const beltSections: readonly BeltSection[] = [curvilinear8, curvilinear14, ribbedPK];

/** Tells a toothed section, which has a pitch and does not slip. */
export const isToothed = (section: BeltSection): section is ToothProfile => "pitch" in section;
