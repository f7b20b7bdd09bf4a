import { h, setText } from "../dom";

/** How the page speaks to the reader of itself. */
export interface Notice {
  /** A few words in the head for what was just done; they go by themselves. */
  readonly status: HTMLElement;
  mention(words: string): void;
}

/** How long a mention stands, in milliseconds. */
const standing = 8000;

export function noticeLine(): Notice {
  const status = h("span", { class: "head-status", role: "status" });
  let timer: number | undefined;
  const mention = (text: string): void => {
    setText(status, text);
    window.clearTimeout(timer);
    timer = window.setTimeout(() => setText(status, ""), standing);
  };
  return { status, mention };
}
