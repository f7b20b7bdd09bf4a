import { h } from "../dom";
import type { Strip } from "../keep/strip";

/** A few words in the head while there is no network. */
export function offlineWord(): HTMLElement {
  const word = h("span", { class: "offline-word", role: "status" });
  const show = (): void => {
    word.textContent = navigator.onLine ? "" : "offline copy";
  };
  window.addEventListener("online", show);
  window.addEventListener("offline", show);
  show();
  return word;
}

/** Has the page's files kept for the time without a network, and offers a newer version once it is there. */
export async function keepOffline(strip: Strip): Promise<void> {
  if (!("serviceWorker" in navigator)) return;
  const { serviceWorker } = navigator;
  const hadOne = serviceWorker.controller !== null;
  let asked = false;
  const offer = (act: () => void): void =>
    strip.put({
      key: "version",
      words: "A newer version of the page is ready. What is open is kept.",
      deeds: [{ words: "Load it", act }],
      close: { words: "Later", act: () => {} },
    });
  serviceWorker.addEventListener("controllerchange", () => {
    if (asked) location.reload();
    // Another tab has asked for it; this one goes on until its reader does too.
    else if (hadOne) offer(() => location.reload());
  });
  try {
    const registration = await serviceWorker.register(new URL("offline.js", document.baseURI), { updateViaCache: "none" });
    const watch = (fresh: ServiceWorker | null): void => {
      const ready = (): void => {
        if (fresh?.state !== "installed" || serviceWorker.controller === null) return;
        offer(() => {
          asked = true;
          fresh.postMessage("take over");
        });
      };
      fresh?.addEventListener("statechange", ready);
      ready();
    };
    watch(registration.waiting);
    registration.addEventListener("updatefound", () => watch(registration.installing));
  } catch {
    // A browser that keeps nothing, or a place that is not secure: the page works while there is a network.
  }
}
