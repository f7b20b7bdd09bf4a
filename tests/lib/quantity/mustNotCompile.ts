/**
 * Programs that must not compile. Nothing runs them: the type check of the project fails as soon as one of the lines
 * below a "@ts-expect-error" compiles after all.
 */
import {
  displayUnit,
  type GaugePressure,
  inUnit,
  type MassFlow,
  parseQuantity,
  type Power,
  type Pressure,
  type PressureDifference,
  type Quantity,
  quantity,
  type RotationalSpeed,
  type Temperature,
  type TemperatureDifference,
  type VolumeFlow,
  writeQuantity,
} from "../../../lib/quantity";

declare function density(pressure: Pressure, temperature: Temperature): number;
declare function heat(flow: MassFlow, step: TemperatureDifference): number;
declare const pressure: Pressure;
declare const boost: GaugePressure;
declare const loss: PressureDifference;
declare const temperature: Temperature;
declare const rise: TemperatureDifference;
declare const airFlow: MassFlow;
declare const volumeFlow: VolumeFlow;
declare const power: Power;

density(pressure, temperature);
heat(airFlow, rise);

// @ts-expect-error a gauge pressure is not an absolute one
density(boost, temperature);
// @ts-expect-error nor is a pressure difference
density(loss, temperature);
// @ts-expect-error a temperature difference is not a temperature
density(pressure, rise);
// @ts-expect-error a temperature is not a temperature difference
heat(airFlow, temperature);
// @ts-expect-error a volume flow is not a mass flow
heat(volumeFlow, rise);
// @ts-expect-error arguments the wrong way round
density(temperature, pressure);
// @ts-expect-error a bare number has no kind
density(101325, temperature);
// @ts-expect-error arithmetic drops the kind, to be given again in one place
density(pressure + 1, temperature);

quantity("power", 950, "hp") satisfies Power;
quantity("gaugePressure", 35, "psi g") satisfies GaugePressure;
quantity("count", 6);
// @ts-expect-error psi is no unit of power
quantity("power", 950, "psi");
// @ts-expect-error no such unit
quantity("power", 950, "horses");
// @ts-expect-error gauge is not written where absolute is meant
quantity("pressure", 35, "psi g");
// @ts-expect-error the unit may be left out for pure numbers only
quantity("power", 950);
// @ts-expect-error no such kind
quantity("boost", 35, "psi");
// @ts-expect-error the kind of the result is that of the name
quantity("massFlow", 85, "lb/min") satisfies VolumeFlow;

inUnit("power", power, "kW");
// @ts-expect-error a power is not read in N·m
inUnit("power", power, "N·m");
// @ts-expect-error a pressure is no power
inUnit("power", pressure, "kW");

writeQuantity("temperature", temperature, { unit: "°C" });
// @ts-expect-error a temperature difference is not written as a temperature
writeQuantity("temperature", rise, { unit: "°C" });
// @ts-expect-error a mass flow is not written in cfm
writeQuantity("massFlow", airFlow, { unit: "cfm" });

// @ts-expect-error there is no third system
displayUnit("power", "imperial");
// @ts-expect-error no such hint
displayUnit("power", "SI", "colour");

// @ts-expect-error ambient is an absolute pressure
parseQuantity("pressure", "2.4 bar g", { unit: "bar", ambient: boost });
const parsed = parseQuantity("rotationalSpeed", "2400 rpm", { unit: "rpm" });
// @ts-expect-error the value is there only once ok has been looked at
parsed.value satisfies RotationalSpeed;
if (parsed.ok) parsed.value satisfies Quantity<"rotationalSpeed">;
// @ts-expect-error and it is a speed, not a frequency
if (parsed.ok) parsed.value satisfies Quantity<"frequency">;
