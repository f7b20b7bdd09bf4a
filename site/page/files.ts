import type { Build } from "../../worksheets/build/build";
import { h } from "../dom";
import type { Desk } from "./desk";
import type { Notice } from "./notice";

/** How builds are read from and written to files. */
export interface BuildFiles {
  read(text: string): { readonly ok: true; readonly build: Build; readonly notices: readonly string[] } | { readonly ok: false; readonly message: string };
  write(build: Build): string;
}

/** Opening and saving of builds; a file that cannot be read changes nothing and says why. */
export function fileActions(desk: Desk, files: BuildFiles, notice: Notice) {
  const { session } = desk;
  const chooser = h("input", { type: "file", accept: ".json,application/json", class: "aside", tabindex: -1, "aria-hidden": "true" });

  const read = async (file: File): Promise<void> => {
    const result = files.read(await file.text());
    if (!result.ok) {
      notice.say(`${file.name} was not opened: ${result.message}`);
      return;
    }
    session.open(result.build, "as opened");
    if (result.notices.length > 0) notice.say(result.notices.join(" "));
  };
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    chooser.value = "";
    if (file) void read(file);
  });
  document.addEventListener("dragover", (event) => {
    if (event.dataTransfer?.types.includes("Files")) event.preventDefault();
  });
  document.addEventListener("drop", (event) => {
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    void read(file);
  });

  return {
    chooser,
    open: () => chooser.click(),
    save: () => {
      const { build } = session.state;
      const address = URL.createObjectURL(new Blob([files.write(build)], { type: "application/json" }));
      h("a", { href: address, download: `${fileName(build.name)}.json` }).click();
      URL.revokeObjectURL(address);
    },
  };
}

function fileName(name: string): string {
  const plain = name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "");
  return plain || "build";
}
