/** Reads out of a browser's trace how long each animation frame kept the page's main thread. */

/** An event of a Chromium trace; times in µs. */
export interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  readonly args?: { readonly name?: string; readonly data?: { readonly type?: string } };
}

/** What one frame kept the main thread with [ms]. */
export interface FrameWork {
  /** Everything in the frame's task. */
  readonly all: number;
  readonly script: number;
  readonly style: number;
  readonly layout: number;
  readonly paint: number;
  /** Whether the hand gave an input another value in it; the others finish what such a frame has left. */
  readonly moved: boolean;
}

/** Tasks of the main thread are told under one of these names. */
const taskNames = new Set(["RunTask", "ThreadControllerImpl::RunTask"]);

/** The kinds of work in a task, by the names of their spans. Style and layout that a script forces count with them. */
const parts = {
  style: new Set(["UpdateLayoutTree", "ParseAuthorStyleSheet"]),
  layout: new Set(["Layout"]),
  paint: new Set(["PrePaint", "Paint", "Layerize"]),
  script: new Set(["FunctionCall", "RunMicrotasks", "FireAnimationFrame", "EventDispatch", "v8.callFunction"]),
} as const;

/**
 * The frames in which a script ran, in order: tasks of the page's main thread that call back for an animation frame.
 *
 * @param events the trace's events
 */
export function frameWork(events: readonly TraceEvent[]): readonly FrameWork[] {
  const fired = events.filter(({ name }) => name === "FireAnimationFrame");
  const page = fired[0];
  const spans = events
    .filter(({ pid, tid, ph, dur }) => ph === "X" && dur !== undefined && pid === page?.pid && tid === page.tid)
    .sort((a, b) => a.ts - b.ts || b.dur! - a.dur!);
  const tasks = spans.filter(({ name }) => taskNames.has(name));
  const given = spans.filter(({ name, args }) => name === "EventDispatch" && args?.data?.type === "input");
  const worked = spans.filter(({ name }) => Object.values(parts).some((names) => names.has(name)));
  return outermost(tasks)
    .filter((task) => fired.some((event) => holds(task, event)))
    .map((task) => {
      const within = worked.filter((span) => holds(task, span));
      const style = milliseconds(outermost(within.filter(({ name }) => parts.style.has(name))));
      const layout = milliseconds(outermost(within.filter(({ name }) => parts.layout.has(name))));
      const paint = milliseconds(outermost(within.filter(({ name }) => parts.paint.has(name))));
      const scripts = outermost(within.filter(({ name }) => parts.script.has(name)));
      const forced = within.filter(
        (span) =>
          (parts.style.has(span.name) || parts.layout.has(span.name)) && scripts.some((script) => holds(script, span)),
      );
      return {
        all: task.dur! / 1000,
        script: milliseconds(scripts) - milliseconds(outermost(forced)),
        style,
        layout,
        paint,
        moved: given.some((event) => holds(task, event)),
      };
    });
}

/**
 * How long each piece of work took that the page had put off until the browser had time between frames [ms].
 *
 * @param events the trace's events
 */
export function idleWork(events: readonly TraceEvent[]): readonly number[] {
  return events.flatMap(({ name, dur }) => (name === "FireIdleCallback" && dur !== undefined ? [dur / 1000] : []));
}

/** Spans of one thread that lie in none of the others; the given ones are in order of their start. */
function outermost(spans: readonly TraceEvent[]): readonly TraceEvent[] {
  const outer: TraceEvent[] = [];
  for (const span of spans) {
    const last = outer.at(-1);
    if (!last || !holds(last, span)) outer.push(span);
  }
  return outer;
}

function milliseconds(spans: readonly TraceEvent[]): number {
  return spans.reduce((sum, { dur }) => sum + dur!, 0) / 1000;
}

function holds(outer: TraceEvent, inner: TraceEvent): boolean {
  if (outer === inner || outer.pid !== inner.pid || outer.tid !== inner.tid) return false;
  return outer.ts <= inner.ts && inner.ts + (inner.dur ?? 0) <= outer.ts + outer.dur!;
}
