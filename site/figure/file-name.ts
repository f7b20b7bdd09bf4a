/** Longest name of a file without its ending: shorter than any system's limit, in bytes of any script. */
const longest = 80;

/**
 * Name of a file from what it shows: letters and digits of any script in lower case, hyphens between.
 *
 * @param words the build's name, the installation's and the title
 * @param ending such as "csv"
 */
export function fileName(words: readonly string[], ending: string): string {
  const plain = words
    .join(" ")
    .normalize("NFC")
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, "-");
  const cut = [...plain].slice(0, longest).join("").replace(/^-+|-+$/g, "");
  return `${cut || "airledger"}.${ending}`;
}
