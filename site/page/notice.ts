import { h, setText } from "../dom";

/** How the page speaks to the reader of itself. */
export interface Notice {
  /** A line across the page for what must be read; it stays until it is closed. */
  readonly element: HTMLElement;
  /** A few words in the head for what was just done; they go by themselves. */
  readonly status: HTMLElement;
  say(words: string): void;
  mention(words: string): void;
}

/** How long a mention stands, in milliseconds. */
const standing = 8000;

export function noticeLine(): Notice {
  const words = h("p");
  const status = h("span", { class: "head-status", role: "status" });
  const element = h(
    "div",
    { class: "notice", role: "alert", hidden: true },
    words,
    h("button", { type: "button", class: "quiet", onclick: () => say("") }, "Close"),
  );
  const say = (text: string): void => {
    setText(words, text);
    element.hidden = text === "";
  };
  let timer: number | undefined;
  const mention = (text: string): void => {
    setText(status, text);
    window.clearTimeout(timer);
    timer = window.setTimeout(() => setText(status, ""), standing);
  };
  return { element, status, say, mention };
}
