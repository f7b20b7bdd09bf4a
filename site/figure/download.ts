import { h } from "../dom";

/** How long a file's address is kept, in milliseconds: some browsers read it only after a question to the reader. */
const kept = 60_000;

/** Hands a file to the reader, without the network. */
export function download(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  h("a", { href: address, download: name }).click();
  window.setTimeout(() => URL.revokeObjectURL(address), kept);
}
