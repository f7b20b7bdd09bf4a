/** The lines walked over, by key, from the one where the walk began to the one shown. */
export type Trail = readonly [string, ...string[]];

/** The trail after a step to a line; a step to one that was passed goes back to it. */
export function stepped(trail: Trail, key: string): Trail {
  const passed = trail.indexOf(key);
  return passed >= 0 ? (trail.slice(0, passed + 1) as unknown as Trail) : [...trail, key];
}

/** The trail without its last step. */
export function back(trail: Trail): Trail {
  return trail.length > 1 ? (trail.slice(0, -1) as unknown as Trail) : trail;
}

/** Where a step towards some neighbours goes: to the one from which the walk came, else to the first. */
export function nextStep(trail: Trail, neighbours: readonly string[]): string | undefined {
  const before = trail.at(-2);
  return before !== undefined && neighbours.includes(before) ? before : neighbours[0];
}
