import type { QuantityInput } from "../../lib/graph";
import { type Controlled, handOn, keySteps, trackOf } from "../control";
import { h, setAttribute } from "../dom";
import { placeOf, readTrack, type TrackPlace, valueNear } from "../figure";
import { writtenInput } from "../state";

/** Handles over the marks of a drawing that set inputs. They stay while the drawing is made anew under the hand. */
export interface SettingMarks {
  readonly element: HTMLElement;
  /** To be called with each new drawing; none where there is none. */
  drawn(picture: SVGSVGElement | undefined): void;
  /** Moves the handles to where the inputs stand. */
  refresh(): void;
}

interface Handle {
  readonly element: HTMLElement;
  show(track: readonly TrackPlace[], size: Size): void;
  refresh(): void;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * @param controlled what a control works with
 * @param inputOf an input by its key
 * @param read reads out a row of the numbers, when its mark's handle is pointed at
 */
export function settingMarks(
  controlled: Controlled,
  inputOf: (key: string) => QuantityInput,
  read: (row: number) => void,
): SettingMarks {
  const element = h("div", { class: "setting-marks" });
  element.addEventListener("pointermove", ({ target }) => {
    const row = target instanceof Element ? target.getAttribute("data-row") : null;
    if (row !== null) read(Number(row));
  });
  const handles: Handle[] = [];
  return {
    element,
    drawn: (picture) => {
      const marks = picture ? [...picture.querySelectorAll("[data-sets]")] : [];
      const size = picture?.viewBox.baseVal ?? { width: 1, height: 1 };
      marks.forEach((mark, i) => {
        if (!handles[i]) {
          handles[i] = handleOn(controlled, inputOf(mark.getAttribute("data-sets")!), element);
          element.append(handles[i].element);
        }
        setAttribute(handles[i].element, "data-row", mark.getAttribute("data-row") ?? undefined);
        handles[i].show(readTrack(mark.getAttribute("data-track")!), size);
      });
      handles.forEach((handle, i) => {
        handle.element.hidden = i >= marks.length;
      });
    },
    refresh: () => {
      for (const handle of handles) handle.refresh();
    },
  };
}

function handleOn({ session, locks }: Controlled, input: QuantityInput, around: HTMLElement): Handle {
  const steps = trackOf(input);
  const hand = handOn(session, input.key);
  const grip = h("span", {
    class: "mark-handle",
    role: "slider",
    tabindex: 0,
    "aria-label": `${input.label}, in the figure`,
    "data-input": input.key,
    title: `${input.label}: drag along the line, or arrow keys`,
  });
  let track: readonly TrackPlace[] = [];
  let size: Size = { width: 1, height: 1 };
  /** From the pointer to the place that it holds, in the drawing's pixels. */
  let grasp: { readonly x: number; readonly y: number } | undefined;
  const value = (): number => session.inputs[input.key] as number;
  const pointed = (event: PointerEvent) => {
    const box = around.getBoundingClientRect();
    return {
      x: ((event.clientX - box.left) / box.width) * size.width,
      y: ((event.clientY - box.top) / box.height) * size.height,
    };
  };
  const leave = (): void => {
    grasp = undefined;
    grip.classList.remove("held");
    hand.leave();
  };

  grip.addEventListener("pointerdown", (event) => {
    if (event.button !== 0 || locks.has(input.key) || track.length < 2) return;
    grip.setPointerCapture(event.pointerId);
    const [at, from] = [placeOf(track, value()), pointed(event)];
    grasp = { x: at.x - from.x, y: at.y - from.y };
    grip.classList.add("held");
    hand.take();
  });
  grip.addEventListener("pointermove", (event) => {
    if (!grasp) return;
    const to = pointed(event);
    session.set(input.key, steps.value(steps.position(valueNear(track, to.x + grasp.x, to.y + grasp.y))));
  });
  grip.addEventListener("pointerup", leave);
  grip.addEventListener("pointercancel", leave);
  grip.addEventListener("blur", leave);
  grip.addEventListener("keyup", () => {
    if (!grasp) hand.leave();
  });
  grip.addEventListener("keydown", (event) => {
    if (locks.has(input.key)) return;
    if (event.key === "Backspace" || event.key === "Delete") return session.reset(input.key);
    const count = keySteps(event);
    if (count === undefined) return;
    event.preventDefault();
    hand.take();
    session.set(input.key, steps.moved(value(), count));
  });

  const refresh = (): void => {
    if (track.length === 0) return;
    const at = placeOf(track, value());
    grip.style.setProperty("--x", (at.x / size.width).toFixed(5));
    grip.style.setProperty("--y", (at.y / size.height).toFixed(5));
    setAttribute(grip, "aria-valuemin", input.span[0]);
    setAttribute(grip, "aria-valuemax", input.span[1]);
    setAttribute(grip, "aria-valuenow", value());
    setAttribute(grip, "aria-valuetext", writtenInput(session.state.units, input, value()).text);
    setAttribute(grip, "aria-disabled", locks.has(input.key) ? "true" : undefined);
  };
  return {
    element: grip,
    show: (nextTrack, nextSize) => {
      track = nextTrack;
      size = nextSize;
      refresh();
    },
    refresh,
  };
}
