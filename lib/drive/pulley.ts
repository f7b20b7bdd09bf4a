import { type Count, type Length, requirePositive, requireWithin } from "../quantity";
import type { ToothProfile } from "./toothProfiles";

/** Teeth that a synchronous pulley may have: below six no belt bends around it. */
const teethSpan = [6, 400] as const;

/**
 * Diameter of the circle on which the belt's tension cord runs [m]: d = p z / π.
 * Wear and the stretch of the belt are left out.
 *
 * @param pitch distance from tooth to tooth [m], above 0
 * @param teeth number of teeth of the pulley [–], 6 to 400, whole
 * @throws RangeError if the pitch is not above 0, or the teeth are not a whole number from 6 to 400
 * @source ISO 5294; ISO 13050 (both from memory)
 * @example pitchDiameter(0.008, 38) // 0.0967662
 */
export function pitchDiameter(pitch: Length, teeth: Count): Length {
  requirePositive("pitchDiameter: pitch", pitch, "m");
  requireTeeth("pitchDiameter: teeth", teeth);
  return ((pitch * teeth) / Math.PI) as Length;
}

/**
 * Diameter over the teeth of a synchronous pulley [m]: d − 2 a. It is smaller than the pitch diameter.
 *
 * @param profile the belt's profile, with pitch p [m] and pitch line distance a [m]
 * @param teeth number of teeth of the pulley [–], 6 to 400, whole
 * @throws RangeError if the teeth are not a whole number from 6 to 400
 * @source ISO 13050, as restated by a public page
 * @example outsideDiameter(curvilinear8, 38) // 0.0953942
 */
export function outsideDiameter(profile: ToothProfile, teeth: Count): Length {
  requireTeeth("outsideDiameter: teeth", teeth);
  return (pitchDiameter(profile.pitch, teeth) - 2 * profile.pitchLineDistance) as Length;
}

/**
 * Radius at which the pitch line passes a smooth idler on the back of the belt [m]: r + (thickness − tooth height − a).
 *
 * @param profile the belt's profile, with thickness, tooth height and pitch line distance a [m]
 * @param radius radius of the idler's face [m], above 0
 * @throws RangeError if the radius is not above 0
 * @source geometry of the section in ISO 13050, as restated by a public page
 * @example backIdlerPitchRadius(curvilinear8, 0.03) // 0.031934
 */
export function backIdlerPitchRadius(profile: ToothProfile, radius: Length): Length {
  requirePositive("backIdlerPitchRadius: radius", radius, "m");
  return (radius + profile.thickness - profile.toothHeight - profile.pitchLineDistance) as Length;
}

/**
 * Radius at which the pitch line passes a smooth idler on the toothed side [m]: r + tooth height + a.
 * Between its teeth the belt hangs across a small chord, which is left out: the true run is a little shorter.
 *
 * @param profile the belt's profile, with tooth height and pitch line distance a [m]
 * @param radius radius of the idler's face [m], above 0
 * @throws RangeError if the radius is not above 0
 * @source geometry of the section in ISO 13050, as restated by a public page
 * @example flatIdlerPitchRadius(curvilinear8, 0.03) // 0.034066
 */
export function flatIdlerPitchRadius(profile: ToothProfile, radius: Length): Length {
  requirePositive("flatIdlerPitchRadius: radius", radius, "m");
  return (radius + profile.toothHeight + profile.pitchLineDistance) as Length;
}

/** Passes whole numbers of teeth within the span. @throws RangeError that names argument and value */
export function requireTeeth(name: string, teeth: number): void {
  requireWithin(name, teeth, teethSpan);
  if (!Number.isInteger(teeth)) throw new RangeError(`${name} is ${teeth}; it must be a whole number`);
}
