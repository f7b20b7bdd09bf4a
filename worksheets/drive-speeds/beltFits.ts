import type { Point } from "../../lib/drive";
import { structure } from "../../lib/graph";
import type { Count, Length } from "../../lib/quantity";
import { beltRuns } from "./beltRuns";
import { fitsOf } from "./fitting";
import { fittingSlack, stretchShare } from "./inputs";

/** A belt, and where the pulley that takes up must stand for it. */
export interface Offer {
  readonly length: Length;
  /** absent for a ribbed belt */
  readonly teeth?: Count;
  readonly standard: boolean;
  /** how far from where it is drawn [m], along its slide or its arm's circle */
  readonly travel: Length;
  readonly place: Point;
  /** from the crank's axis [m] */
  readonly fromCrank: Length;
}

/** How a belt of the front can be fitted. */
export interface FrontFit {
  readonly mark: string;
  readonly name: string;
  /** the pulley that takes up; where none is mounted to move, the one whose centre distance would */
  readonly pulley: string;
  readonly by: "slide" | "arm" | "centre distance";
  /** how far it may move, each way */
  readonly reach: Length;
  /** belts to choose from that close the run, shortest first */
  readonly offers: readonly Offer[];
  /** the belt in hand, or the nearest */
  readonly chosen?: Offer;
  /** travel that slipping the belt on asks for, and what stretch will ask for */
  readonly forFitting?: Length;
  readonly forStretch?: Length;
  /** farthest that the pulley stands from where it is drawn, of fitting, running and stretched */
  readonly farthest?: Length;
  /** why no belt can be told, in words */
  readonly fault?: string;
}

export const beltFits = structure("beltFits", {
  label: "Belts that fit, and where the tensioner stands for each",
  from: { beltRuns, fittingSlack, stretchShare },
  compute: ({ beltRuns, ...wanted }): readonly FrontFit[] => beltRuns.map((laid) => fitsOf(laid, wanted)),
  formula: "L(s) = z\\,p, \\qquad \\Delta s = \\frac{\\Delta L}{\\mathrm{d}L/\\mathrm{d}s}",
  source: "Newton's method on the exact length; lengths of ISO 13050 (from memory)",
  assumptions: [
    "s is how far the pulley moves along its slide, or along the circle of its arm; z and p are the belt's teeth and pitch.",
    "Where no pulley of a belt is mounted to move, the unit farthest from the crank is moved straight away from it: the centre distance that each belt asks for.",
    "Travel for fitting and for stretch follows from the take-up where the belt in hand stands.",
  ],
  checks: (fits) =>
    fits.flatMap(({ name, pulley, reach, farthest, by }) =>
      farthest === undefined || by === "centre distance"
        ? []
        : [
            {
              component: name.toLowerCase(),
              label: `Travel that the ${pulley.toLowerCase()} needs`,
              kind: "length" as const,
              side: "most" as const,
              value: farthest,
              bound: reach,
            },
          ],
    ),
});

