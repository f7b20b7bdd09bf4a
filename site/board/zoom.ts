import type { Camera } from "../../worksheets/board";
import { h, setText } from "../dom";
import { panned, type Place, toBoard, toDrawing, zoomed } from "./camera";

interface Zooming {
  /** Has the focus while keys are pressed. */
  readonly place: HTMLElement;
  /** The ground, which can be drawn along once it is larger than its window. */
  readonly stage: HTMLElement;
  /** The camera that shows all, and the one in force, once something is drawn. */
  readonly fitted: () => Camera | undefined;
  readonly shown: () => Camera | undefined;
  readonly width: () => number;
  readonly redraw: () => void;
}

const step = 1.25;

/** Keys and buttons that bring a board nearer, and the hand that draws its ground along. */
export function createZoom({ place, stage, fitted, shown, width, redraw }: Zooming) {
  let own: Camera | undefined;
  const status = h("span", { class: "zoom-status", role: "status" });
  const button = (words: string, label: string, act: () => void) =>
    h("button", { type: "button", class: "quiet", "aria-label": label, onclick: act }, words);

  const set = (camera: Camera | undefined): void => {
    own = camera;
    place.classList.toggle("is-zoomed", own !== undefined);
    setText(status, own ? `${Math.round((100 * own.scale) / fitted()!.scale)} %` : "");
    redraw();
  };
  const zoom = (times: number, about?: Place): void => {
    const [all, now] = [fitted(), shown()];
    if (all && now) set(zoomed(now, all, times, about));
  };
  const fit = (): void => set(undefined);

  place.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = { "+": () => zoom(step), "=": () => zoom(step), "-": () => zoom(1 / step), "0": fit }[event.key];
    if (!act) return;
    event.preventDefault();
    event.stopPropagation();
    act();
  });
  place.addEventListener(
    "wheel",
    (event) => {
      // With Ctrl, which is also what two fingers on a pad send; the wheel alone is the page's.
      const now = shown();
      if (!event.ctrlKey || !now) return;
      event.preventDefault();
      const { left, top } = stage.getBoundingClientRect();
      const about = toBoard(now, width(), { x: event.clientX - left, y: event.clientY - top });
      zoom(1.01 ** -Math.max(-40, Math.min(40, event.deltaY)), about);
    },
    { passive: false },
  );

  let from: { readonly pointer: number; readonly x: number; readonly y: number; readonly camera: Camera } | undefined;
  place.addEventListener("pointerdown", (event) => {
    if (event.button !== 0 || !own) return;
    place.setPointerCapture(event.pointerId);
    from = { pointer: event.pointerId, x: event.clientX, y: event.clientY, camera: own };
  });
  place.addEventListener("pointermove", (event) => {
    if (!from || event.pointerId !== from.pointer) return;
    set(panned(from.camera, { x: event.clientX - from.x, y: event.clientY - from.y }));
  });
  for (const end of ["pointerup", "pointercancel"] as const) {
    place.addEventListener(end, () => {
      from = undefined;
    });
  }

  return {
    element: h(
      "p",
      { class: "zoom" },
      button("−", "Further off", () => zoom(1 / step)),
      button("+", "Nearer", () => zoom(step)),
      button("Fit", "Fit: show the whole run", fit),
      status,
    ),
    /** Brings a place into the window, if it lies outside. */
    reach: (at: Place): void => {
      const now = shown();
      if (!own || !now) return;
      const { x, y } = toDrawing(now, width(), at);
      if (x < 0 || y < 0 || x > width() || y > now.height) set({ ...now, x: at.x, y: at.y });
    },
    /** The camera in force, given the one that shows all. */
    camera: (all: Camera): Camera => (own ? { ...own, height: all.height } : all),
  };
}
