import { structure } from "../../lib/graph";
import { drawnBelts } from "./beltRuns";
import { type FrontFit, fitsOf } from "./fitting";
import { fittingSlack, stretchShare } from "./inputs";

export const beltFits = structure("beltFits", {
  label: "Belts that fit, and where the tensioner stands for each",
  from: { drawnBelts, fittingSlack, stretchShare },
  compute: ({ drawnBelts, ...wanted }): readonly FrontFit[] => drawnBelts.map((laid) => fitsOf(laid, wanted)),
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

