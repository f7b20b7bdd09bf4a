import type { Camera, Piece } from "../../worksheets/board";
import { h, setAttribute } from "../dom";
import { type Place, toDrawing } from "./camera";
import type { Steps } from "./snap";

/** What grips tell the board of. */
export interface Holding {
  /** The piece is pressed or stepped for the first time: whatever follows until `leave` is one entry. */
  take(piece: Piece): void;
  /** A pointer wants it elsewhere. */
  drag(piece: Piece, wanted: Place, held: { readonly coarse: boolean; readonly free: boolean }): void;
  /** Keys move it by so many metres. */
  step(piece: Piece, by: Place): void;
  /** Puts it back to where it was taken. */
  back(piece: Piece): void;
  leave(): void;
  /** It has the focus. */
  reach(piece: Piece): void;
  /** Its numbers are asked for. */
  open(piece: Piece): void;
  steps(): Steps;
}

export interface Grip {
  readonly element: HTMLButtonElement;
  show(piece: Piece, how: Shown): void;
}

interface Shown {
  readonly camera: Camera;
  readonly width: number;
  /** Its name and where it stands. */
  readonly words: string;
  /** It belongs to what is worked on. */
  readonly front: boolean;
}

/** Movement below which a press is a press, in CSS pixels. */
const slop = 3;

/** The least width of what a pointer can take, and of what a finger can, in CSS pixels. */
const least = { small: 32, large: 44 };


const arrows: Readonly<Record<string, Place>> = {
  ArrowRight: { x: 1, y: 0 },
  ArrowLeft: { x: -1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/**
 * An unseen button over a piece. The drawing below it is made anew at each frame; the button stays, so that it keeps the
 * focus and the pointer while its piece moves.
 */
export function createGrip(holding: Holding): Grip {
  const element = h("button", { type: "button", class: "grip", "aria-keyshortcuts": "ArrowUp ArrowDown ArrowLeft ArrowRight Enter Escape" });
  let piece: Piece;
  let camera: Camera;
  let pressed: { readonly pointer: number; readonly at: Place; readonly from: Place; readonly scale: number; moved: boolean } | undefined;
  let stepping = false;

  const release = (): void => {
    if (!pressed) return;
    const { moved } = pressed;
    pressed = undefined;
    element.classList.remove("is-held");
    if (moved) holding.leave();
  };
  const rest = (): void => {
    if (!stepping) return;
    stepping = false;
    holding.leave();
  };

  element.addEventListener("pointerdown", (event) => {
    event.stopPropagation();
    if (event.button !== 0 || piece.fixed || pressed) return;
    rest();
    element.setPointerCapture(event.pointerId);
    element.focus({ preventScroll: true });
    pressed = { pointer: event.pointerId, at: { x: event.clientX, y: event.clientY }, from: { x: piece.x, y: piece.y }, scale: camera.scale, moved: false };
  });
  element.addEventListener("pointermove", (event) => {
    if (!pressed || event.pointerId !== pressed.pointer) return;
    event.stopPropagation();
    const [dx, dy] = [event.clientX - pressed.at.x, event.clientY - pressed.at.y];
    if (!pressed.moved) {
      if (Math.hypot(dx, dy) < slop) return;
      pressed.moved = true;
      element.classList.add("is-held");
      holding.take(piece);
    }
    const wanted = { x: pressed.from.x + dx / pressed.scale, y: pressed.from.y - dy / pressed.scale };
    holding.drag(piece, wanted, { coarse: event.shiftKey, free: event.altKey });
  });
  element.addEventListener("pointerup", release);
  element.addEventListener("pointercancel", release);
  element.addEventListener("lostpointercapture", release);
  element.addEventListener("focus", () => holding.reach(piece));
  element.addEventListener("blur", rest);
  element.addEventListener("keyup", rest);
  element.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey) return;
    if (event.key === "Escape" && (pressed?.moved || stepping)) {
      event.preventDefault();
      event.stopPropagation();
      holding.back(piece);
      release();
      rest();
      return;
    }
    if (event.key === "Enter") {
      event.preventDefault();
      event.stopPropagation();
      holding.open(piece);
      return;
    }
    const way = arrows[event.key];
    if (!way || piece.fixed || pressed) return;
    event.preventDefault();
    event.stopPropagation();
    if (!stepping) holding.take(piece);
    stepping = true;
    const { key, leap } = holding.steps();
    const size = event.shiftKey ? leap : event.altKey ? key / 10 : key;
    holding.step(piece, { x: way.x * size, y: way.y * size });
  });
  element.addEventListener("dblclick", () => holding.open(piece));

  return {
    element,
    show: (next, { camera: seen, width, words, front }) => {
      piece = next;
      camera = seen;
      const { x, y } = toDrawing(camera, width, piece);
      const size = Math.round(Math.max(leastWidth(), 2 * piece.radius * camera.scale));
      const { style } = element;
      style.setProperty("transform", `translate(${Math.round(x - size / 2)}px, ${Math.round(y - size / 2)}px)`);
      style.setProperty("width", `${size}px`);
      style.setProperty("height", `${size}px`);
      // A small piece before a large one, so that both can be met; what can be moved and is worked on before all others.
      style.setProperty("z-index", String((front && !piece.fixed ? 1000 : 1) + Math.max(0, 900 - size)));
      setAttribute(element, "aria-label", words);
      setAttribute(element, "data-row", piece.mark);
      setAttribute(element, "data-piece", piece.row);
      element.classList.toggle("is-fixed", piece.fixed === true);
    },
  };
}

function leastWidth(): number {
  return document.documentElement.dataset["targets"] === "large" ? least.large : least.small;
}
