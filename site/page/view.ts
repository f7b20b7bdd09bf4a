import { preference } from "../state";

export type ViewName = "reading" | "bench";

/** How the page is laid out: for reading at a desk, or for large fingers in daylight beside a running engine. */
export interface View {
  readonly name: ViewName;
  choose(name: ViewName): void;
  subscribe(listener: (name: ViewName) => void): void;
}

/** The view chosen on this device, marked on the document for the styles. */
export function createView(): View {
  const chosen = preference<ViewName>("view", ["reading", "bench"]);
  const listeners: ((name: ViewName) => void)[] = [];
  const wakefulness = staysAwake();
  const coarse = window.matchMedia("(pointer: coarse)");
  const show = (): void => {
    const { dataset } = document.documentElement;
    dataset["view"] = chosen.value;
    // Fingers get large keys in either view.
    dataset["targets"] = chosen.value === "bench" || coarse.matches ? "large" : "small";
    wakefulness.want(chosen.value === "bench");
  };
  coarse.addEventListener("change", show);
  show();
  return {
    get name() {
      return chosen.value;
    },
    choose: (name) => {
      chosen.set(name);
      show();
      for (const listener of listeners) listener(name);
    },
    subscribe: (listener) => void listeners.push(listener),
  };
}

/** Keeps the screen lit while that is wanted and the device allows it. */
function staysAwake(): { want(wanted: boolean): void } {
  let wanted = false;
  let lock: WakeLockSentinel | undefined;
  const ask = async (): Promise<void> => {
    if (!wanted || lock || document.visibilityState !== "visible") return;
    try {
      lock = await navigator.wakeLock.request("screen");
      lock.addEventListener("release", () => {
        lock = undefined;
      });
    } catch {
      // Refused, or not to be had: the screen goes dark when the device says so.
    }
  };
  document.addEventListener("visibilitychange", () => void ask());
  return {
    want: (next) => {
      wanted = next;
      if (next) void ask();
      else void lock?.release();
    },
  };
}
