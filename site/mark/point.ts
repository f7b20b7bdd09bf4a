/** Points of a line without length, which round ends of its stroke make a dot. */
export function pointAt(x: number, y: number): string {
  return `${x},${y} ${x},${y}`;
}
