import { h, setText } from "../dom";

export interface Notice {
  readonly element: HTMLElement;
  say(words: string): void;
}

/** A line across the page for what must be said once; it stays until it is closed. */
export function noticeLine(): Notice {
  const words = h("p");
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
  return { element, say };
}
