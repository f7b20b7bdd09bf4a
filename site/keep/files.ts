import type { Build } from "../../worksheets/build/build";
import type { ReadBuild } from "../../worksheets/build/file";
import { download, h, plainName } from "../dom";
import type { Strip } from "./strip";

/** How builds are read from and written to files. */
export interface BuildFiles {
  read(text: string): ReadBuild;
  write(build: Build): string;
}

interface FileDesk {
  readonly files: BuildFiles;
  readonly strip: Strip;
  /** Puts a build on the page. */
  open(build: Build): void;
}

/** Most that a file may hold [bytes]; above it is not even read. */
const mostBytes = 1_000_000;

/** Opening of files by a button or by dropping them anywhere; one that cannot be read changes nothing and says why. */
export function fileOpening({ files, strip, open }: FileDesk): { readonly elements: readonly HTMLElement[]; choose(): void } {
  const chooser = h("input", { type: "file", accept: ".json,application/json", class: "aside", tabindex: -1, "aria-hidden": "true" });
  const refuse = (name: string, why: string): void =>
    strip.put({ key: "file", words: `${name} was not opened. What is on the page stays as it is.`, list: [why], urgent: true });

  const read = async (file: File): Promise<void> => {
    if (file.size > mostBytes) {
      refuse(file.name, `file: it holds ${(file.size / 1e6).toFixed(2)} MB; a build file may hold at most 1 MB`);
      return;
    }
    let text: string;
    try {
      text = await file.text();
    } catch {
      refuse(file.name, "file: the browser could not read it");
      return;
    }
    const result = files.read(text);
    if (!result.ok) {
      refuse(file.name, result.message);
      return;
    }
    strip.take("file");
    open(result.build);
    tellNotices(strip, `${file.name} is open.`, result.notices);
  };

  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    chooser.value = "";
    if (file) void read(file);
  });
  const hint = dropHint((dropped) => {
    if (dropped.length > 1) refuse(`${dropped.length} files`, "Drop one file at a time.");
    else if (dropped[0]) void read(dropped[0]);
  });
  return { elements: [chooser, hint], choose: () => chooser.click() };
}

/** Says what a file or link left out or held besides. */
export function tellNotices(strip: Strip, words: string, notices: readonly string[]): void {
  if (notices.length === 0) strip.take("notices");
  else strip.put({ key: "notices", words: `${words} What it left out, or holds besides:`, list: notices });
}

/** Gives a build to the reader as a file. */
export function saveFile(build: Build, files: BuildFiles): void {
  download(`${fileName(build.name)}.json`, new Blob([files.write(build)], { type: "application/json" }));
}

/** A build's name as a file's, without what a file's name may not hold. */
export function fileName(name: string): string {
  return plainName([name]) || "build";
}

/** Covers the page while a file is dragged over it. */
function dropHint(dropped: (files: readonly File[]) => void): HTMLElement {
  const hint = h(
    "div",
    { class: "drop-hint", hidden: true },
    h("p", {}, "Drop the build file anywhere to open it."),
    h("p", { class: "drop-note" }, "What is open now stays under Builds if you changed it."),
  );
  const carriesFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes("Files") ?? false;
  document.addEventListener("dragover", (event) => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    hint.hidden = false;
  });
  document.addEventListener("dragleave", (event) => {
    // Left for nothing: the pointer is outside the page.
    if (event.relatedTarget === null) hint.hidden = true;
  });
  document.addEventListener("drop", (event) => {
    hint.hidden = true;
    if (!carriesFiles(event)) return;
    event.preventDefault();
    dropped([...(event.dataTransfer?.files ?? [])]);
  });
  return hint;
}
