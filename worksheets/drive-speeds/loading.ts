import {
  bending,
  beltWidthNeeded,
  centrifugalTension,
  type DriveSpeeds,
  deflectionForce,
  grips,
  type HeldRun,
  type HeldTensions,
  hubLoads,
  isToothed,
  restTensionNeeded,
  runningTensions,
  spanFrequency,
  standardWidth,
  toothLoad,
  type UnitTorques,
} from "../../lib/drive";
import type { Angle, Count, Force, Fraction, Length, MassPerLength, Power, Ratio, Torque } from "../../lib/quantity";
import { moverOf } from "./fitting";
import type { FrontBeltLoad, LoadedPulley, LoadedSpan, WorstGrip } from "./frontBeltLoad";
import type { LaidFrontBelt } from "./frontBelts";
import type { UnitLoad } from "./unitLoads";

/** Angle between the flanks of a ribbed pulley's grooves: ISO 9981 (from memory). */
const ribGroove = ((40 * Math.PI) / 180) as Angle;

/** Part of its length by which a span is pushed in to feel its tension: common practice, no source. */
const pushShare = 1 / 64;

const speedNames = ["idle", "cruise", "rated", "maximum", "overspeed"] as const satisfies readonly (keyof DriveSpeeds)[];

/** Overspeed is a moment: it can make a belt jump or slip, and wears it out no sooner. */
const lasting = speedNames.slice(0, 4);

/** What is laid on top of the units' mean torques. */
interface Factors {
  readonly torsionalShare: Fraction;
  readonly serviceFactor: Ratio;
  readonly slackReserve: Force;
}

/** A belt under the loads of its units. */
export function loadedBelt(laid: LaidFrontBelt, loads: readonly UnitLoad[], factors: Factors): FrontBeltLoad {
  const { mark, name, belt, run, section } = laid;
  const mass = ((belt.baseMass * belt.width) / belt.baseWidth) as MassPerLength;
  const own = loads.filter((load) => load.belt === mark);
  const sprung = belt.hold === "sprung" ? moverOf(laid) : undefined;
  const none = { idle: 0, cruise: 0, rated: 0, maximum: 0, overspeed: 0 } as never;
  const common = { mark, name, setTension: belt.tension, width: belt.width };
  if (run === undefined) {
    const empty = { spans: [], pulleys: [], pull: none, power: none };
    const zero = 0 as Force;
    const rest = { centrifugal: zero, pressing: zero, neededTension: zero, loosest: { span: "", speed: "rated" as const } };
    return { ...common, ...empty, ...rest, fault: laid.fault! };
  }

  const keptBySpring = sprung !== undefined && sprung.by !== "centre distance";
  const centrifugalAt = atEach((speed) => centrifugalTension(mass, laid.beltSpeed[speed]));
  const heldAt = (speed: keyof DriveSpeeds, times: number): HeldRun => {
    const torques = torquesOf(own, speed, times);
    const held = { run, torques, restTension: belt.tension, centrifugalTension: centrifugalAt[speed] };
    return keptBySpring ? { ...held, sprung: sprung.member.unit } : held;
  };
  const mean = atEach((speed) => runningTensions(heldAt(speed, 1)));
  const peakTimes = 1 + factors.torsionalShare;
  const peaks = atEach((speed) => {
    const centrifugal = centrifugalAt[speed];
    return atPeak(mean[speed], { unloaded: belt.tension + (keptBySpring ? centrifugal : 0), centrifugal, times: peakTimes });
  });
  const worst = speedNames.reduce((least, speed) => (peaks[speed].pressing < peaks[least].pressing ? speed : least));
  // A speed at which another has as much pull and as fast a belt never asks for the most width.
  const outdoes = (other: keyof DriveSpeeds, speed: keyof DriveSpeeds, later: boolean): boolean => {
    const [more, faster] = [
      mean[other].effectivePull - mean[speed].effectivePull,
      laid.beltSpeed[other] - laid.beltSpeed[speed],
    ];
    return more >= 0 && faster >= 0 && (more > 0 || faster > 0 || later);
  };

  const meshes = run.pulleys.flatMap(({ teethInMesh }) => (teethInMesh === undefined ? [] : [teethInMesh]));
  const asking = lasting.filter((speed, i) => !lasting.some((other, j) => outdoes(other, speed, j > i)));
  const widths = asking.map((speed) =>
    orFault(() =>
      beltWidthNeeded({
        section,
        pull: (mean[speed].effectivePull * factors.serviceFactor) as Force,
        allowablePull: belt.allowablePull,
        baseWidth: belt.baseWidth,
        baseMassPerLength: belt.baseMass,
        beltSpeed: laid.beltSpeed[speed],
        teethInMesh: Math.min(...meshes, 99) as Count,
      }),
    ),
  );
  const widthFault = widths.find((width) => typeof width === "string");
  const neededWidth = widthFault === undefined ? (Math.max(...(widths as number[])) as Length) : undefined;
  const standard = neededWidth === undefined ? undefined : standardWidth(section, neededWidth);
  const { from, to } = run.spans[peaks[worst].loosest]!;

  return {
    ...common,
    spans: run.spans.map((span, i): LoadedSpan => {
      const pushedIn = (span.length * pushShare) as Length;
      const resting = { tension: belt.tension, spanLength: Math.max(span.length, 1e-6) as Length };
      return {
        from: span.from,
        to: span.to,
        length: span.length,
        tension: mean.rated.spans[i]!,
        peak: peaks.rated.spans[i]!,
        restFrequency: spanFrequency({ ...resting, massPerLength: mass }),
        push: deflectionForce({ ...resting, deflection: pushedIn }),
        pushedIn,
      };
    }),
    pulleys: pulleysOf(laid, { mean: mean.rated, centrifugal: centrifugalAt.rated, held: worstGrips(laid, peaks, centrifugalAt) }),
    pull: atEach((speed) => mean[speed].effectivePull),
    power: atEach((speed) => (mean[speed].effectivePull * laid.beltSpeed[speed]) as Power),
    centrifugal: centrifugalAt.rated,
    pressing: peaks[worst].pressing,
    loosest: { span: `${from} to ${to}`, speed: worst },
    neededTension: restTensionNeeded(heldAt(worst, peakTimes), factors.slackReserve),
    ...(neededWidth !== undefined && { neededWidth }),
    ...(standard !== undefined && { standardWidth: standard }),
    ...(widthFault !== undefined && { widthFault: widthFault as string }),
    bending: bending(run, laid.beltSpeed.rated),
  };
}

interface Peak {
  /** tension of every span if nothing were driven */
  readonly unloaded: number;
  readonly centrifugal: Force;
  readonly times: number;
}

/** Tensions with every torque so many times as great: what a load adds to a belt that was set goes with the load. */
function atPeak(mean: HeldTensions, { unloaded, centrifugal, times }: Peak): HeldTensions {
  const spans = mean.spans.map((tension) => (unloaded + times * (tension - unloaded)) as Force);
  const least = Math.min(...spans);
  return {
    spans,
    effectivePull: (times * mean.effectivePull) as Force,
    pressing: (least - centrifugal) as Force,
    loosest: spans.indexOf(least as Force),
  };
}

type AtEach<T> = { readonly [At in keyof DriveSpeeds]: T };

/** Grip on every pulley of a ribbed belt at the speed at which it uses most of it; nothing for a toothed one. */
function worstGrips(laid: LaidFrontBelt, peaks: AtEach<HeldTensions>, centrifugal: AtEach<Force>): readonly WorstGrip[] | undefined {
  const { section, belt } = laid;
  if (isToothed(section)) return undefined;
  const all = speedNames.map((speed) => {
    const { spans } = peaks[speed];
    const each = grips({ run: laid.run!, spans, centrifugalTension: centrifugal[speed], friction: belt.friction, groove: ribGroove });
    return each.map((grip): WorstGrip => ({ ...grip, speed }));
  });
  // Cross-multiplied, so that a loose belt, which slips at nothing, comes out worst.
  return all.reduce((worst, each) =>
    worst.map((grip, i) => (each[i]!.pull * grip.slipsAt > grip.pull * each[i]!.slipsAt ? each[i]! : grip)),
  );
}

interface OnPulleys {
  readonly mean: HeldTensions;
  readonly centrifugal: Force;
  readonly held: readonly WorstGrip[] | undefined;
}

function pulleysOf(laid: LaidFrontBelt, { mean, centrifugal, held }: OnPulleys): readonly LoadedPulley[] {
  const run = laid.run!;
  const loose = Math.min(...mean.spans) <= 0;
  const running = loose ? undefined : hubLoads({ run, spans: mean.spans, centrifugalTension: centrifugal });
  const resting = hubLoads({ run, spans: run.spans.map(() => laid.belt.tension) });
  return run.pulleys.map(({ name, teethInMesh }, i): LoadedPulley => {
    const pull = (mean.spans[i]! - mean.spans.at(i - 1)!) as Force;
    return {
      unit: name,
      pull: Math.abs(pull) as Force,
      ...(teethInMesh !== undefined && { teethInMesh }),
      ...(teethInMesh !== undefined && teethInMesh >= 1 && { toothLoad: toothLoad({ pull, teethInMesh }) }),
      ...(running && { hub: running[i]! }),
      hubAtRest: resting[i]!.magnitude,
      ...(held && { grip: held[i]! }),
    };
  });
}

function torquesOf(own: readonly UnitLoad[], speed: keyof DriveSpeeds, times: number): UnitTorques {
  const torques: Record<string, Torque> = {};
  for (const { unit, torqueAt } of own) torques[unit] = (torqueAt[speed] * times) as Torque;
  return torques;
}

function atEach<T>(f: (speed: keyof DriveSpeeds) => T): AtEach<T> {
  return { idle: f("idle"), cruise: f("cruise"), rated: f("rated"), maximum: f("maximum"), overspeed: f("overspeed") };
}

function orFault<T>(f: () => T): T | string {
  try {
    return f();
  } catch (error) {
    if (error instanceof RangeError) return error.message.replace(/^\w+: /, "");
    throw error;
  }
}
