import { Unreadable } from "../../worksheets/build/unreadable";

/** Most signs that a link may carry. */
export const mostSigns = 16_000;
/** Most that they may stand for [bytes]; a few signs can stand for very many. */
const mostBytes = 500_000;

/** A text in letters, digits, "-" and "_": deflated after "1.", or as it is after "0." where the browser cannot deflate. */
export async function packed(text: string): Promise<string> {
  const bytes = new TextEncoder().encode(text);
  if (typeof CompressionStream === "undefined") return `0.${signsOf(bytes)}`;
  return `1.${signsOf(await through(bytes, new CompressionStream("deflate-raw")))}`;
}

/** The text that was packed. @throws Unreadable when it is too long, damaged, or packed in a way not known here */
export async function unpacked(code: string): Promise<string> {
  if (code.length > mostSigns) {
    throw new Unreadable("link", `it is ${(code.length / 1000).toFixed(0)} kB long; a link may hold at most ${mostSigns / 1000} kB`);
  }
  const [, version = "", signs = ""] = /^(\w{1,4})\.([\w-]*)$/.exec(code) ?? [];
  if (version === "") throw new Unreadable("link", "it is damaged: a link holds letters, digits, hyphens and underscores");
  if (version !== "0" && version !== "1") {
    throw new Unreadable("link", `it is of version "${version}", which this airledger does not read`);
  }
  try {
    const bytes = bytesOf(signs);
    const plain = version === "0" ? bytes : await through(bytes, new DecompressionStream("deflate-raw"));
    return new TextDecoder("utf-8", { fatal: true }).decode(plain);
  } catch (error) {
    if (error instanceof Unreadable) throw error;
    throw new Unreadable("link", "it is damaged: a part of it is missing or changed");
  }
}

async function through(bytes: Uint8Array<ArrayBuffer>, stream: CompressionStream | DecompressionStream): Promise<Uint8Array> {
  const writer = stream.writable.getWriter();
  // What goes wrong in writing is told by the reading side as well.
  writer.write(bytes).catch(() => undefined);
  writer.close().catch(() => undefined);
  const reader = (stream.readable as ReadableStream<Uint8Array>).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    parts.push(part.value);
    length += part.value.length;
    if (length > mostBytes) {
      reader.cancel().catch(() => undefined);
      throw new Unreadable("link", `it stands for more than ${mostBytes / 1000} kB`);
    }
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

function signsOf(bytes: Uint8Array): string {
  const letters = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return btoa(letters).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
}

function bytesOf(signs: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(signs.replace(/-/g, "+").replace(/_/g, "/")), (letter) => letter.charCodeAt(0));
}
