import type { Camera } from "../../worksheets/board";

/** How far a board may be zoomed from what shows all of it. */
export const zooms = { least: 0.5, most: 12 } as const;

/** A place on the board, metres to the right and above. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Where a place lies in the drawing, in CSS pixels. */
export function toDrawing({ x, y, scale, height }: Camera, width: number, place: Place): Place {
  return { x: width / 2 + (place.x - x) * scale, y: height / 2 - (place.y - y) * scale };
}

/** The place that lies under a point of the drawing. */
export function toBoard({ x, y, scale, height }: Camera, width: number, point: Place): Place {
  return { x: x + (point.x - width / 2) / scale, y: y - (point.y - height / 2) / scale };
}

/** A camera some times nearer, with one place kept where it is; never beyond the zooms allowed from the fitted one. */
export function zoomed(camera: Camera, fit: Camera, times: number, about: Place = camera): Camera {
  const scale = Math.min(Math.max(camera.scale * times, fit.scale * zooms.least), fit.scale * zooms.most);
  const share = camera.scale / scale;
  return { ...camera, scale, x: about.x + (camera.x - about.x) * share, y: about.y + (camera.y - about.y) * share };
}

/** A camera after the ground was drawn along by some pixels. */
export function panned(camera: Camera, { x, y }: Place): Camera {
  return { ...camera, x: camera.x - x / camera.scale, y: camera.y + y / camera.scale };
}

/** Changes of the fitted camera below these leave the picture where it is: in scale, and in pixels. */
const still = { scale: 0.05, shift: 16 } as const;

/** The camera that shows all, unless the one before does so nearly as well: a picture that hardly gains does not jump. */
export function steady(before: Camera | undefined, fit: Camera): Camera {
  if (before === undefined) return fit;
  const moved = Math.hypot(fit.x - before.x, fit.y - before.y) * fit.scale;
  const same = Math.abs(before.scale / fit.scale - 1) < still.scale && Math.abs(before.height - fit.height) < still.shift && moved < still.shift;
  return same ? before : fit;
}
