import type { Input } from "../../lib/graph";
import { installationOf } from "../../worksheets/build/build";
import { h, setAttribute, setText } from "../dom";
import type { Desk } from "./desk";

/** Says whether an input's value is shared by all installations or own to the one shown; pressing it changes that. */
export function ownMark(desk: Desk, input: Input): { readonly element: HTMLElement; refresh(): void } {
  const { session } = desk;
  const isOwn = (): boolean => input.key in installationOf(session.state.build, session.state.installation).own;
  const element = h("button", {
    type: "button",
    class: "own-mark",
    onclick: () => (isOwn() ? session.rejoin(input.key) : session.separate(input.key)),
  });
  return {
    element,
    refresh: () => {
      const { build, installation } = session.state;
      const { label } = installationOf(build, installation);
      const own = isOwn();
      setAttribute(element, "hidden", build.installations.length < 2);
      setText(element, own ? "own" : "shared");
      setAttribute(element, "data-own", own);
      const words = own
        ? `${input.label}: own to ${label}. Press to follow the shared value.`
        : `${input.label}: shared by all installations. Press to give ${label} its own value.`;
      setAttribute(element, "aria-label", words);
      setAttribute(element, "title", words);
    },
  };
}
