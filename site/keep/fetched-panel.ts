import { h } from "../dom";
import type { Panel, PanelDeeds } from "./panel";

/**
 * The list of builds, which is fetched when it is first asked for: it is no part of the first load.
 *
 * @param failed told when it could not be fetched; the next time it is tried again
 */
export function fetchedPanel(deeds: PanelDeeds, failed: () => void): Omit<Panel, "toggle"> & { toggle(opener: HTMLElement): Promise<void> } {
  const element = h("div", { hidden: true });
  let panel: Promise<Panel> | undefined;
  const fetchIt = async (): Promise<Panel> => {
    const { createPanel } = await import("./panel");
    const made = createPanel(deeds);
    element.replaceWith(made.element);
    return made;
  };
  return {
    element,
    toggle: async (opener) => {
      panel ??= fetchIt();
      try {
        (await panel).toggle(opener);
      } catch {
        panel = undefined;
        failed();
      }
    },
    close: () => void panel?.then(({ close }) => close()),
    refresh: async () => {
      await (await panel)?.refresh();
    },
  };
}
