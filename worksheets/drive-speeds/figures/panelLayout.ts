import type { Box } from "../../drawing";
import type { View } from "./beltPath";
import type { Extent } from "./shownBelt";

export interface PanelRoom {
  readonly width: number;
  /** Panels beside each other. */
  readonly abreast: number;
  /** Room to both sides of what is drawn, and above and below it. */
  readonly side: number;
  readonly above: number;
  /** How tall what is drawn may be. */
  readonly tallest: number;
}

export interface PanelRow {
  readonly panels: readonly { readonly at: number; readonly left: number; readonly width: number }[];
  readonly height: number;
}

/** Panels in rows, everything in them to one scale. */
export interface PanelLayout {
  /** CSS pixels for each metre. */
  readonly scale: number;
  readonly rows: readonly PanelRow[];
}

/** Shares a width among panels by what they hold. */
export function panelLayout(extents: readonly Extent[], room: PanelRoom): PanelLayout {
  const { width, abreast, side, above, tallest } = room;
  const rows = Array.from({ length: Math.ceil(extents.length / abreast) }, (_, r) =>
    extents.slice(r * abreast, (r + 1) * abreast).map((extent, i) => ({ at: r * abreast + i, extent })),
  );
  const across = (row: (typeof rows)[number]) => row.reduce((sum, { extent }) => sum + extent.width, 0);
  const scale = Math.min(
    ...rows.map((row) => (width - 2 * side * row.length) / across(row)),
    tallest / Math.max(...extents.map(({ height }) => height)),
  );
  return {
    scale,
    rows: rows.map((row) => {
      const spare = (width - across(row) * scale) / row.length;
      let left = 0;
      const panels = row.map(({ at, extent }) => {
        const panel = { at, left, width: extent.width * scale + spare };
        left += panel.width;
        return panel;
      });
      return { panels, height: Math.max(...row.map(({ extent }) => extent.height)) * scale + 2 * above };
    }),
  };
}

/** A view with something in the middle of a box. */
export function viewInto({ left, high, width, height }: Extent, box: Box, scale: number): View {
  const x0 = box.x + (box.width - width * scale) / 2;
  const y0 = box.y + (box.height - height * scale) / 2;
  return { x: (x) => x0 + (x - left) * scale, y: (y) => y0 + (high - y) * scale, scale };
}
