import { plainName } from "../dom";

/**
 * Name of a file from what it shows.
 *
 * @param words the build's name, the installation's and the title
 * @param ending such as "csv"
 */
export function fileName(words: readonly string[], ending: string): string {
  return `${plainName(words) || "airledger"}.${ending}`;
}
