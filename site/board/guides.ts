import type { Camera } from "../../worksheets/board";
import { s, setAttribute } from "../dom";
import { toDrawing } from "./camera";
import type { Snapped } from "./snap";

/** Lines across the board along the axes that a moved piece shares with another. */
export function guides(): { readonly element: SVGSVGElement; show(at: Snapped, camera: Camera, width: number): void; hide(): void } {
  const upright = s("path", { class: "guide" });
  const level = s("path", { class: "guide" });
  const element = s("svg", { class: "guides", "aria-hidden": "true" }, upright, level);
  const hide = (): void => {
    for (const line of [upright, level]) setAttribute(line, "d", undefined);
  };
  return {
    element,
    hide,
    show: (at, camera, width) => {
      setAttribute(element, "width", width);
      setAttribute(element, "height", camera.height);
      const { x, y } = toDrawing(camera, width, at);
      setAttribute(upright, "d", at.onX ? `M${x} 0V${camera.height}` : undefined);
      setAttribute(level, "d", at.onY ? `M0 ${y}H${width}` : undefined);
    },
  };
}
