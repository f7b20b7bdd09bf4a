import { h, setAttribute, setText } from "../dom";

type Typesetter = (typeof import("temml"))["default"];

let typesetter: Typesetter | undefined;
let loading: Promise<Typesetter> | undefined;

/** Fetches the typesetter once; before that formulas stand as they were written. */
export function loadTypesetter(): Promise<Typesetter> {
  loading ??= import("temml").then(({ default: loaded }) => {
    typesetter = loaded;
    return loaded;
  });
  return loading;
}

export interface MathPlace {
  readonly element: HTMLElement;
  /** @param tex the formula; empty to show nothing @param aloud what it is read as */
  show(tex: string, aloud?: string): void;
}

/** A place for a typeset formula; sets it anew where it differs. */
export function mathPlace(kind: string): MathPlace {
  const element = h("div", { class: `formula ${kind}`, role: "group" });
  let shown = "";
  const draw = (tex: string): void => {
    if (tex !== shown) return;
    typeset(element, tex);
    // A long formula scrolls on a narrow page, and must be reached by keys to do so.
    setAttribute(element, "tabindex", element.scrollWidth > element.clientWidth + 1 ? 0 : undefined);
  };
  return {
    element,
    show: (tex, aloud) => {
      element.hidden = tex === "";
      if (tex === shown) return;
      shown = tex;
      setAttribute(element, "aria-label", aloud);
      if (typesetter) return draw(tex);
      setText(element, tex);
      void loadTypesetter().then(() => draw(tex));
    },
  };
}

/**
 * Sets a formula into a place at once; as it was written where the typesetter is not there yet.
 *
 * @param breaks whether it may be broken into lines
 */
export function typeset(place: HTMLElement, tex: string, breaks = false): void {
  if (!typesetter) {
    setText(place, tex);
    return;
  }
  const set = h("div");
  typesetter.render(tex, set, { displayMode: !breaks, wrap: breaks ? "tex" : "none", throwOnError: false });
  place.replaceChildren(...set.childNodes);
}
