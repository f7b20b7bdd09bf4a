import type { Bending, DriveSpeeds, Grip, HubLoad } from "../../lib/drive";
import type { Count, Force, Frequency, Length, Power } from "../../lib/quantity";

/** A straight piece of a loaded belt, at the promised speed unless said otherwise. */
export interface LoadedSpan {
  readonly from: string;
  readonly to: string;
  readonly length: Length;
  /** whole tension, centrifugal part included */
  readonly tension: Force;
  /** the same at the peak of the torque */
  readonly peak: Force;
  /** what a plucked span of the belt at rest sounds at */
  readonly restFrequency: Frequency;
  /** force that pushes the middle of the resting span in by a sixty-fourth of its length */
  readonly push: Force;
  readonly pushedIn: Length;
}

/** How a ribbed belt holds on a pulley at the engine's speed at which it is nearest to slipping. */
export interface WorstGrip extends Grip {
  readonly speed: keyof DriveSpeeds;
}

/** A pulley of a loaded belt. */
export interface LoadedPulley {
  readonly unit: string;
  /** pull that it takes from the belt or gives to it */
  readonly pull: Force;
  readonly teethInMesh?: Count;
  readonly toothLoad?: Force;
  /** pull of the belt on its shaft, running and at rest */
  readonly hub?: HubLoad;
  readonly hubAtRest: Force;
  /** ribbed belts: pull at the peak against the pull at which it slips, at the worst speed */
  readonly grip?: WorstGrip;
}

/** A belt of the front under load. */
export interface FrontBeltLoad {
  readonly mark: string;
  readonly name: string;
  readonly fault?: string;
  readonly spans: readonly LoadedSpan[];
  readonly pulleys: readonly LoadedPulley[];
  /** pull and power that the crank gives, at each of the engine's speeds */
  readonly pull: { readonly [At in keyof DriveSpeeds]: Force };
  readonly power: { readonly [At in keyof DriveSpeeds]: Power };
  readonly centrifugal: Force;
  /** least that any span has above the centrifugal tension, at peak torque, and at which speed */
  readonly pressing: Force;
  readonly loosest: { readonly span: string; readonly speed: keyof DriveSpeeds };
  readonly setTension: Force;
  readonly neededTension: Force;
  readonly width: Length;
  /** absent where no width carries the pull, with the reason in `widthFault` */
  readonly neededWidth?: Length;
  readonly widthFault?: string;
  /** narrowest standard width that is enough, if there is one */
  readonly standardWidth?: Length;
  readonly bending?: Bending;
}
