import type { Graph, InputValues } from "../../lib/graph";

/**
 * Eight letters and digits that differ where inputs differ, to tell two prints apart: FNV-1a with 32 bits over every
 * input's key and value. Not a seal: who wants to can find two alike.
 *
 * @source G. Fowler, L. C. Noll, K.-P. Vo, "The FNV Non-Cryptographic Hash Algorithm", IETF draft (offset and prime, from memory)
 */
export function inputsMark({ inputs }: Graph, values: InputValues): string {
  const text = JSON.stringify(inputs.map(({ key }) => [key, values[key]]));
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, "0");
}
