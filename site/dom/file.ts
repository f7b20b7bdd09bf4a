import { h } from "./h";

/** How long a file's address is kept, in milliseconds: some browsers read it only after a question to the reader. */
const kept = 60_000;

/** Longest name of a file without its ending: shorter than any system's limit, in bytes of any script. */
const longest = 80;

/** Hands a file to the reader, without the network. */
export function download(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  h("a", { href: address, download: name }).click();
  window.setTimeout(() => URL.revokeObjectURL(address), kept);
}

/** Words as part of a file's name: letters and digits of any script in lower case, hyphens between; empty where none is left. */
export function plainName(words: readonly string[]): string {
  const plain = words
    .join(" ")
    .normalize("NFC")
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, "-");
  return [...plain].slice(0, longest).join("").replace(/^-+|-+$/g, "");
}
