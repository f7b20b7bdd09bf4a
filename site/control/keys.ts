/** Steps that a key asks for on a slider: arrows one, with Shift ten, with Alt a tenth, pages ten; undefined for other keys. */
export function keySteps(event: Pick<KeyboardEvent, "key" | "shiftKey" | "altKey" | "ctrlKey" | "metaKey">): number | undefined {
  if (event.ctrlKey || event.metaKey) return undefined;
  const steps = stepsOf[event.key];
  if (steps === undefined) return undefined;
  const size = event.shiftKey ? 10 : event.altKey ? 0.1 : 1;
  return Math.abs(steps) === 1 ? steps * size : steps;
}

const stepsOf: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};
