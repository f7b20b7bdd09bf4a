import { h } from "../dom";

/** Something that the page says across its head until it is answered. */
export interface Slip {
  /** A slip takes the place of the one with the same key. */
  readonly key: string;
  readonly words: string;
  /** Details, below each other. */
  readonly list?: readonly string[];
  /** A text to copy by hand. */
  readonly copy?: string;
  readonly deeds?: readonly Deed[];
  /** Read out at once; otherwise when there is a pause. */
  readonly urgent?: boolean;
  /** It goes when its cause goes, not before. */
  readonly stays?: boolean;
  /** Word of the button that closes it, and what else that does. */
  readonly close?: Deed;
}

export interface Deed {
  readonly words: string;
  act(): void;
}

export interface Strip {
  readonly element: HTMLElement;
  put(slip: Slip): void;
  take(key: string): void;
}

/** Most details that are shown before the reader asks for the others. */
const mostDetails = 3;

/** A ruled strip for slips, below the head of the page. */
export function createStrip(): Strip {
  const element = h("div", { class: "strip", role: "region", "aria-label": "Notices", hidden: true });
  const slips = new Map<string, HTMLElement>();
  const show = (): void => {
    element.hidden = slips.size === 0;
  };
  const take = (key: string): void => {
    slips.get(key)?.remove();
    slips.delete(key);
    show();
  };
  return {
    element,
    take,
    put: (slip) => {
      const body = slipElement(slip, () => take(slip.key));
      const before = slips.get(slip.key);
      slips.set(slip.key, body);
      show();
      if (before) before.replaceWith(body);
      else element.append(body);
      body.querySelector<HTMLInputElement>(".slip-copy")?.select();
    },
  };
}

function slipElement({ key, words, list = [], copy, deeds = [], urgent, stays, close }: Slip, gone: () => void): HTMLElement {
  const buttons = deeds.map(({ words, act }) =>
    button(words, () => {
      if (!stays) gone();
      act();
    }),
  );
  const closing = close ?? { words: "Close", act: () => {} };
  const leave = button(closing.words, () => {
    gone();
    closing.act();
  });
  return h(
    "div",
    { class: "slip", role: urgent ? "alert" : "status", "data-slip": key },
    h(
      "div",
      { class: "slip-words" },
      h("p", {}, words),
      list.length > 0 && details(list),
      copy !== undefined && h("input", { class: "slip-copy", readonly: true, value: copy, "aria-label": "Link" }),
    ),
    h("div", { class: "slip-deeds" }, ...buttons, !stays && leave),
  );
}

function details(list: readonly string[]): HTMLElement {
  const items = list.map((each, i) => h("li", { hidden: i >= mostDetails && list.length > mostDetails + 1 }, each));
  const hidden = items.filter((item) => item.hidden);
  const more = button(`${hidden.length} more`, () => {
    for (const item of hidden) item.hidden = false;
    more.remove();
  });
  return h("div", { class: "slip-list" }, h("ul", {}, ...items), hidden.length > 0 && more);
}

function button(words: string, onclick: () => void): HTMLButtonElement {
  return h("button", { type: "button", class: "plain", onclick }, words);
}
