import { download, h, setText } from "../dom";
import type { Session } from "../state";
import { fileName } from "./file-name";

/** Makes a file's content when it is asked for. */
export type Offer = () => Blob | Promise<Blob>;

/**
 * A line of words, each of which saves what stands above it in some format.
 *
 * @param session names the build and the installation, for the files' names
 * @param title of what is saved
 * @param offers by format, such as "SVG"
 */
export function saveLine(session: Session, title: string, offers: Readonly<Record<string, Offer>>): HTMLElement {
  const status = h("span", { class: "save-status", role: "status" });
  const save = async (format: string, offer: Offer): Promise<void> => {
    setText(status, "");
    try {
      const { build, installation } = session.state;
      const place = build.installations.find(({ key }) => key === installation)?.label ?? "";
      download(fileName([build.name, place, title], format.toLowerCase()), await offer());
    } catch (error) {
      setText(status, ` ${format} was not saved: ${error instanceof Error ? error.message : String(error)}.`);
    }
  };
  const words = Object.entries(offers).flatMap(([format, offer], i) => [
    i > 0 && h("span", { "aria-hidden": "true" }, "·"),
    h("button", { type: "button", class: "quiet", "aria-label": `${format}: save ${title}`, onclick: () => void save(format, offer) }, format),
  ]);
  return h("p", { class: "save-line" }, ...words, status);
}

/** A CSV file's content. The mark before it tells spreadsheets that it is UTF-8. */
export function csvFile(text: string): Blob {
  return new Blob(["\ufeff", text], { type: "text/csv;charset=utf-8" });
}
