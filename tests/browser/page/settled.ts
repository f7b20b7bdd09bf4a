import type { Locator, Page } from "playwright-core";

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Where something stands once nothing above it moves it any more: figures there may still be drawn, heights be learned.
 *
 * @param rest for which it must not have moved, in milliseconds
 */
export async function settledBox(page: Page, place: Locator, rest = 250): Promise<Box> {
  let last = "";
  for (;;) {
    await place.scrollIntoViewIfNeeded();
    const box = (await place.boundingBox())!;
    const now = [box.x, box.y].map(Math.round).join(" ");
    if (now === last) return box;
    last = now;
    await page.waitForTimeout(rest);
  }
}
