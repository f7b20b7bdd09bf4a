/** A value of an input, and where it lies on a drawing. */
export interface TrackPlace {
  readonly value: number;
  readonly x: number;
  readonly y: number;
}

/** Places along which a mark can be moved, from the words of its "data-track". */
export function readTrack(words: string): readonly TrackPlace[] {
  return words
    .split(" ")
    .map((word) => word.split(",").map(Number))
    .filter((numbers) => numbers.length === 3 && numbers.every(Number.isFinite))
    .map(([value, x, y]) => ({ value: value!, x: x!, y: y! }));
}

/** Where a value lies on a track of rising values; beyond its ends, at them. */
export function placeOf(track: readonly TrackPlace[], value: number): { readonly x: number; readonly y: number } {
  const after = track.findIndex((place) => place.value >= value);
  if (after <= 0) return after === 0 ? track[0]! : track.at(-1)!;
  const [from, to] = [track[after - 1]!, track[after]!];
  const share = (value - from.value) / (to.value - from.value);
  return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
}

/** The value at the place of a track that is nearest to a point. */
export function valueNear(track: readonly TrackPlace[], x: number, y: number): number {
  let [value, least] = [track[0]!.value, Number.POSITIVE_INFINITY];
  for (let i = 1; i < track.length; i += 1) {
    const [from, to] = [track[i - 1]!, track[i]!];
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const length = dx * dx + dy * dy;
    const along = length === 0 ? 0 : ((x - from.x) * dx + (y - from.y) * dy) / length;
    const share = Math.min(1, Math.max(0, along));
    const distance = Math.hypot(from.x + share * dx - x, from.y + share * dy - y);
    if (distance >= least) continue;
    least = distance;
    value = from.value + share * (to.value - from.value);
  }
  return value;
}
