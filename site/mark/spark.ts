import { h, s, setAttribute } from "../dom";
import { pointAt } from "./point";

const width = 72;
const height = 20;

export interface Spark {
  readonly element: HTMLElement;
  show(samples: readonly number[]): void;
}

/** Last samples of a value as a small line with a dot at its end; not for readers of the page's text. */
export function spark(): Spark {
  const line = s("polyline", { class: "spark-line" });
  const dot = s("polyline", { class: "spark-dot" });
  const drawing = s("svg", { class: "spark", width, height, viewBox: `0 0 ${width} ${height}`, "aria-hidden": "true" }, line, dot);
  return {
    element: h("span", { class: "spark-place" }, drawing),
    show: (samples) => {
      const [lowest, highest] = [Math.min(...samples), Math.max(...samples)];
      const y = (value: number): number =>
        highest === lowest ? height / 2 : Math.round((height - 4 - ((value - lowest) / (highest - lowest)) * (height - 8)) * 10) / 10;
      const x = (index: number): number => Math.round((3 + (index / Math.max(1, samples.length - 1)) * (width - 6)) * 10) / 10;
      setAttribute(line, "points", samples.map((value, i) => `${x(i)},${y(value)}`).join(" "));
      const last = samples.at(-1);
      const drawn = last !== undefined && samples.length > 1;
      setAttribute(drawing, "visibility", drawn ? undefined : "hidden");
      if (!drawn) return;
      setAttribute(dot, "points", pointAt(x(samples.length - 1), y(last)));
    },
  };
}
