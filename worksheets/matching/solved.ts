import { type AttainablePoint, attainable, type OperatingPoint, operatingPoint } from "../../lib/charge";
import { type StatedCheck, structure } from "../../lib/graph";
import { ratedPower, ratedSpeed } from "../brief/cells";
import { matchBuild } from "./match";

const source =
  "conservation of mass; first law on every element; N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (balance of the shaft, from memory)";

/** The most that the parts give at the promised speed, the limit that stops them, and the next one behind it. */
export const attained = structure("attained", {
  label: "The most that the parts give at the promised speed",
  from: { matchBuild, ratedSpeed },
  compute: ({ matchBuild, ratedSpeed }): AttainablePoint => attainable(matchBuild, ratedSpeed),
  formula: "P_{at} = \\min P_{lim}",
  source,
  assumptions: [
    "Fuel is added from light load until the first limit is met; a limit counts from the load at which it was first kept.",
    "The next limit lies where the tangent beyond the first one meets it.",
  ],
});

/** Every part with the promised power on it. */
export const matched = structure("matched", {
  label: "The match: every part with the promised power on it, or with the most they give",
  from: { matchBuild, attained, ratedSpeed, ratedPower },
  compute: ({ matchBuild, attained: { point: near, binding }, ratedSpeed, ratedPower }): OperatingPoint => {
    try {
      return operatingPoint(matchBuild, {
        engineSpeed: ratedSpeed,
        load: { kind: "brakePower", brakePower: ratedPower },
        near,
      });
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      if (near.brakePower > 0) return near;
      throw new RangeError(
        `matched: with these parts the engine gives no power at this speed; what stops it is ${binding.name.toLowerCase()}`,
      );
    }
  },
  checks: ({ margins }, { matchBuild }): readonly StatedCheck[] => {
    const bankA = matchBuild.path
      .filter(({ kind }) => kind === "compressorBank")
      .findIndex(({ name }) => name === "first bank");
    return margins
      .filter(({ id }) => !onOwnLines(id, bankA + 1))
      .map(({ id, name, kind, sense, value, limit }) => ({
        component: componentOf(id),
        label: `${name}, at the match`,
        kind,
        ...(id === "peakPressure" && { hint: "boost" }),
        ...(id === "fuelPump" && { hint: "fuel" }),
        side: sense === "at most" ? "most" : "least",
        value,
        bound: limit,
      }));
  },
  formula:
    "\\dot m = \\dot m_{engine} = \\dot m_{blower}, \\quad \\eta_m\\,P_t = P_c, \\quad \\eta_i\\,\\dot m_f\\,H_u = P_b + P_f + P_x + P_{bl} + P_{pump} + P_{fp}",
  source,
  assumptions: [
    "With the promised power, past limits too, so that each of them says by how much; where there is no balance at that power, with the most that the parts give.",
    "Steady mean values; the pulses of single cylinders are left out.",
    "Gross indicated and volumetric efficiency are those of the air sheet at every load.",
  ],
});

/** Limits that lines of their own hold. */
const ownLines = new Set(["excessAir", "exhaustTemperature", "backPressure"]);

function onOwnLines(id: string, bankA: number): boolean {
  if (ownLines.has(id)) return true;
  const [kind, place] = id.split(":");
  return Number(place) === bankA && (kind === "wheelSpeed" || kind === "tipSpeed" || kind === "surge" || kind === "choke");
}

const components: Readonly<Record<string, string>> = {
  wheelSpeed: "turbochargers",
  tipSpeed: "compressors",
  surge: "compressors",
  choke: "compressors",
  peakPressure: "cylinder head and gasket",
  blowerSpeed: "blower",
  blowerTipSpeed: "blower",
  blowerTemperature: "blower",
  fuelPump: "high-pressure pump",
  injectionWindow: "injectors",
};

function componentOf(id: string): string {
  return components[id.split(":")[0]!] ?? "the match";
}
