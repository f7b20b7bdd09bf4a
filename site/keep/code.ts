/** What a build's code follows in an address's hash. */
export const codeMark = "build=";

/** The code of a build in an address's hash; undefined where the hash is something else. */
export function codeIn(hash: string): string | undefined {
  const body = hash.replace(/^#/, "");
  return body.startsWith(codeMark) ? body.slice(codeMark.length) : undefined;
}
