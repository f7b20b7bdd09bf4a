import type { Check } from "../../lib/graph";
import { h, setAttribute, setText } from "../dom";
import { limitRule, marginWords, standingMark } from "../mark";
import { sameCheck } from "./standings";

/** Ruler and words for the tightest of some checks; says how many more there are. Empty without any. */
export function limitPlace() {
  const rule = limitRule();
  const mark = standingMark();
  const more = h("span", { class: "more" });
  const element = h("span", { class: "limit", hidden: true }, h("span", { class: "limit-rule" }, rule.element, more), mark.element);
  return {
    element,
    /** @param checks now, tightest first @param held those of the reference @param named whether the part is named beside the margin */
    show: (checks: readonly Check[], held: readonly Check[], named = true): void => {
      const [tightest] = checks;
      setAttribute(element, "hidden", tightest === undefined);
      if (!tightest) return;
      const { margin, standing, component } = tightest;
      const before = sameCheck(tightest, held);
      rule.show(margin, standing, before?.margin);
      // What it was is the ring's to tell: longer words would take another line as the hand passes a limit, and move the page.
      const words = marginWords(margin);
      mark.show(standing, named ? `${words}, ${component}` : words);
      setText(more, checks.length > 1 ? `+${checks.length - 1} more` : "");
      setAttribute(more, "title", checks.length > 1 ? checks.slice(1).map((check) => `${check.component}: ${marginWords(check.margin)}`).join("; ") : undefined);
    },
  };
}
