/** Something that opens over the page. */
interface Opened {
  readonly element: HTMLElement;
  open(): void;
}

/**
 * What is rarely asked for is no part of the first load: it is fetched when it is first opened.
 *
 * @param root where it is put
 * @param fetchIt fetches and makes it
 * @param failed told when it could not be fetched; the next time it is tried again
 */
export function fetched(root: Element, fetchIt: () => Promise<Opened>, failed: () => void): { open(): void } {
  let made: Promise<Opened> | undefined;
  const make = async (): Promise<Opened> => {
    const opened = await fetchIt();
    root.append(opened.element);
    return opened;
  };
  const open = async (): Promise<void> => {
    made ??= make();
    try {
      (await made).open();
    } catch {
      made = undefined;
      failed();
    }
  };
  return { open: () => void open() };
}
