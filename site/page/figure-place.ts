import type { Drawing } from "../../worksheets/sheet";
import { h } from "../dom";
import { guarded } from "./crash";
import type { Desk } from "./desk";
import { figurePart, watchesOf } from "./figure";
import type { Watch } from "./nearness";
import type { Gathering } from "./parts";

/** Figures are fetched this far off the screen. */
const ahead = "900px 0px";

/** Where a figure stands: it is fetched when its place comes near the screen. The place itself stays, so that nothing jumps. */
export function figurePlace(desk: Desk, gathering: Gathering, watch: Watch, drawing: Drawing): HTMLElement {
  const place = h("div", { class: "figure-place", id: `figure-${drawing.key}` });
  const fetchIt = async (): Promise<void> => {
    stop();
    try {
      const figure = await drawing.fetch();
      // Few figures are boards.
      const boardOf = figure.board && (await import("../board")).createBoard;
      place.replaceChildren(gathering.add(guarded(`The figure "${figure.title}"`, watchesOf(figure), () => figurePart(desk, watch, figure, boardOf))).element);
    } catch {
      const again = h("button", { type: "button", class: "quiet", onclick: () => void fetchIt() }, "Try again");
      place.replaceChildren(h("p", { class: "remark", role: "status" }, "The figure could not be fetched. ", again));
    }
  };
  const stop = watch(place, ahead, (near) => {
    if (near) void fetchIt();
  });
  return place;
}
