import type { Measured } from "./measure";

/** Lines of the bench as an aligned table: what, p50, p95, budget, and whether it is kept. */
export function tableOf(lines: readonly Measured[]): string {
  const rows = lines.map(({ what, timing, budget, note }) => [
    what,
    milliseconds(timing.p50),
    milliseconds(timing.p95),
    budget === undefined ? "" : `${budget} ms`,
    budget === undefined ? "" : timing.p95 <= budget ? "kept" : "MISSED",
    `${timing.runs}`,
    note ?? "",
  ]);
  return aligned([["", "p50", "p95", "budget", "", "runs", ""], ...rows]);
}

/** Rows of texts under each other; the first column to the left, the next three to the right. */
export function aligned(rows: readonly (readonly string[])[]): string {
  const columns = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, i) => Math.max(...rows.map((row) => (row[i] ?? "").length)));
  return rows
    .map((row) =>
      row
        .map((text, i) => (i >= 1 && i <= 3 ? text.padStart(widths[i]!) : text.padEnd(widths[i]!)))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}

/** A time with three digits: "0.0123 ms". */
export function milliseconds(time: number): string {
  return `${Number(time.toPrecision(3))} ms`;
}
