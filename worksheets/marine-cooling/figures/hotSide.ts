import { arrowHead, dimension, type Group, px, write } from "../../drawing";
import type { RowPlace } from "./lineRows";

/** A hot stream against the sea water, as places across, and what is written at its ends. */
interface HotSide {
  readonly inlet: number;
  readonly outlet: number;
  readonly seaInlet: number;
  readonly seaOutlet: number;
  readonly limit: number | undefined;
  readonly words: readonly [inlet: string, outlet: string];
  /** The end that is past the limit. */
  readonly past: "inlet" | "outlet" | undefined;
}

/** A hot side in counterflow: it runs up the page, dashed, with the closest approach of both streams as a dimension. */
export function hotSide(group: Group, side: HotSide, { top, bottom }: RowPlace): void {
  const { inlet, outlet, seaInlet, seaOutlet, limit, words, past } = side;
  if (limit !== undefined) {
    group
      .append("path")
      .attr("class", "limit")
      .attr("d", `M${px(limit)},${px(top)}V${px(bottom - 9)}`);
  }
  group
    .append("path")
    .attr("class", "line-2")
    .attr("d", `M${px(inlet)},${px(bottom)}L${px(outlet)},${px(top)}`);
  group
    .append("path")
    .attr("class", "arrow-2")
    .attr("d", arrowHead(outlet, top, Math.atan2(top - bottom, outlet - inlet), 9));
  const atOutlet = inlet - seaOutlet <= outlet - seaInlet;
  dimension(group, atOutlet ? seaOutlet : seaInlet, atOutlet ? inlet : outlet, atOutlet ? bottom : top);
  const end = (which: "inlet" | "outlet", text: string, x: number, y: number) =>
    write(group, `${past === which ? "■ " : ""}${text}`, { x, y, look: past === which ? "past" : "two" });
  end("inlet", words[0], inlet + 8, bottom + 5);
  end("outlet", words[1], outlet + 8, top - 3);
}
