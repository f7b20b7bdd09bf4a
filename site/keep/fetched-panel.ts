import { h } from "../dom";
import { fetched } from "../runtime";
import type { Panel, PanelDeeds } from "./panel";

/**
 * The list of builds, which is fetched when it is first asked for.
 *
 * @param failed told when it could not be fetched
 */
export function fetchedPanel(deeds: PanelDeeds, failed: () => void): Omit<Panel, "toggle"> & { toggle(opener: HTMLElement): Promise<void> } {
  const element = h("div", { hidden: true });
  const panel = fetched(
    () => import("./panel"),
    ({ createPanel }) => {
      const made = createPanel(deeds);
      element.replaceWith(made.element);
      return made;
    },
    failed,
  );
  return {
    element,
    toggle: async (opener) => (await panel.ask())?.toggle(opener),
    close: () => panel.made?.close(),
    refresh: async () => panel.made?.refresh(),
  };
}
