import { Unreadable } from "../../worksheets/build/unreadable";
import type { Strip } from "./strip";

interface Sharing {
  readonly strip: Strip;
  /** The hash of what is shown; empty where nothing differs. @throws Unreadable where it would be too long */
  hash(): Promise<string>;
  mention(words: string): void;
  save(): void;
}

/** Writes the link of what is shown into the address and the clipboard; where that is refused, shows it. */
export async function copyLink({ strip, hash, mention, save }: Sharing): Promise<void> {
  strip.take("link");
  let link: URL;
  try {
    link = new URL(await hash(), plainAddress());
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    strip.put({
      key: "link",
      words: `There is no link for this build: ${error.message.replace(/^link: /, "")}. A file holds it.`,
      deeds: [{ words: "Save the build as a file", act: save }],
    });
    return;
  }
  history.replaceState(history.state, "", link);
  try {
    await navigator.clipboard.writeText(link.href);
    mention(link.hash === "" ? "Link copied: nothing differs from the demo" : "Link copied");
  } catch {
    strip.put({ key: "link", words: "The browser does not let the page copy. The link, to copy by hand:", copy: link.href });
  }
}

/** The page's address without its hash. */
export function plainAddress(): string {
  const { origin, pathname, search, protocol, href } = location;
  return protocol === "file:" ? href.replace(/#.*/s, "") : `${origin}${pathname}${search}`;
}

/** What reads and writes the codes of builds; most visits neither come by a link nor make one. */
export const fetchLinks = () => import("./link");
