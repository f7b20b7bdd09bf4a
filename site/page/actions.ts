import type { Desk } from "./desk";
import type { Notice } from "./notice";

/** Makes the present values the reference, named by the time of day. */
export function holdNow(desk: Desk): void {
  desk.session.hold(new Date().toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", hour12: false }));
}

export function undoOnce(desk: Desk, notice: Notice): void {
  const name = desk.session.undo();
  notice.mention(name === undefined ? "" : `Took back: ${name}`);
}

export function redoOnce(desk: Desk, notice: Notice): void {
  const name = desk.session.redo();
  notice.mention(name === undefined ? "" : `Done again: ${name}`);
}
