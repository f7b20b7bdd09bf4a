import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Opened, Opening } from "./served";
import { settledBox } from "./settled";

type Open = (options?: Opening) => Promise<Opened>;

/** A busy machine takes its time. */
const patient = { timeout: 15_000 };

const figureOf = (page: Page, key: string) => page.locator(`#figure-${key}`);
const saidBy = async (page: Page, key: string) => (await figureOf(page, key).locator(".described").textContent())!;
const speedOf = (page: Page) => page.locator("#field-ratedSpeed").inputValue();

/** The figure drawn on the screen, its handle, and the handle's middle. */
async function fieldOf(page: Page) {
  const figure = figureOf(page, "compressorField");
  await figure.scrollIntoViewIfNeeded();
  await figure.locator("svg").waitFor();
  const handle = figure.locator(".mark-handle").first();
  return { figure, handle, ...(await settledMiddle(page, handle)) };
}

async function settledMiddle(page: Page, place: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const { x, y, width, height } = await settledBox(page, place);
  return { x: x + width / 2, y: y + height / 2 };
}

async function rested(page: Page, key: string): Promise<void> {
  // The work begins a moment after the last change: what is asked of the page then comes behind it.
  await page.waitForTimeout(300);
  await page.waitForFunction((id) => !document.getElementById(id)!.classList.contains("is-working"), `figure-${key}`);
  await page.waitForTimeout(200);
}

/** Marks of figures that set inputs, and figures that are drawn when the hand rests. */
export function settingMarks(open: Open): void {
  test("a mark dragged along the operating line sets the speed; the figure says that it is working, and then follows", async () => {
    const { page } = await open();
    const { figure, x, y } = await fieldOf(page);
    const [before, speed] = [await saidBy(page, "compressorField"), await speedOf(page)];
    const diamond = await figure.locator(".present").getAttribute("points");
    await page.mouse.move(x, y);
    await page.mouse.down();
    const told = await figure.locator(".working").evaluateHandle((word) => {
      const words: string[] = [];
      new MutationObserver(() => words.push(word.textContent ?? "")).observe(word, { childList: true, subtree: true, characterData: true });
      return words;
    });
    for (let i = 1; i <= 12; i += 1) await page.mouse.move(x - 8 * i, y + 8 * i);
    await expect.poll(() => told.jsonValue(), patient).toContain("working");
    // The mark of the match moves with the hand.
    await expect.poll(() => figure.locator(".present").getAttribute("points"), patient).not.toBe(diamond);
    await expect.poll(() => speedOf(page), patient).not.toBe(speed);
    await page.mouse.up();
    await rested(page, "compressorField");
    const set = await speedOf(page);
    expect(Number(set)).toBeLessThan(Number(speed));
    await expect.poll(() => saidBy(page, "compressorField"), patient).not.toBe(before);
    await expect.poll(() => saidBy(page, "compressorField"), patient).toContain(`${set}\u00a0rpm`);
    expect(await figure.locator(".working").textContent()).toBe("");
    await page.keyboard.press("Control+z");
    await expect.poll(() => speedOf(page), patient).toBe(speed);
    await expect.poll(() => saidBy(page, "compressorField"), patient).toBe(before);
  });

  test("the same mark is moved by keys, keeps the focus while the figure is drawn anew, and says where it stands", async () => {
    const { page } = await open();
    const { handle } = await fieldOf(page);
    await handle.focus();
    const speed = Number(await speedOf(page));
    await page.keyboard.press("Shift+ArrowLeft");
    await expect.poll(() => speedOf(page), patient).toBe(String(speed - 100));
    expect(await handle.getAttribute("aria-valuetext")).toBe(`${speed - 100}\u00a0rpm`);
    await rested(page, "compressorField");
    expect(await handle.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => speedOf(page), patient).toBe(String(speed - 90));
    await page.keyboard.press("Backspace");
    await expect.poll(() => speedOf(page), patient).toBe(String(speed));
  });

  test("the mark over the heat's bands leads the flows to the speed below it", async () => {
    const { page } = await open();
    const bands = figureOf(page, "curveFlows");
    await bands.scrollIntoViewIfNeeded();
    await bands.locator("svg").waitFor();
    const handle = bands.locator(".mark-handle");
    await settledMiddle(page, handle);
    await handle.focus();
    for (let i = 0; i < 2; i += 1) await page.keyboard.press("Shift+ArrowLeft");
    await expect.poll(() => page.locator("#field-flowsSpeed").inputValue(), patient).toBe("80");
    await expect.poll(() => saidBy(page, "heatFlows"), patient).toContain("At 2560\u00a0rpm on the propeller's curve");
  });

  test("a locked input's mark is not moved", async () => {
    const { page } = await open();
    await page.getByText("Bench", { exact: true }).click();
    await page.locator("#line-ratedSpeed .lock-key").click();
    const { handle, x, y } = await fieldOf(page);
    const speed = await speedOf(page);
    expect(await handle.getAttribute("aria-disabled")).toBe("true");
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 60, y + 60, { steps: 4 });
    await page.mouse.up();
    await handle.focus();
    await page.keyboard.press("ArrowLeft");
    expect(await speedOf(page)).toBe(speed);
  });

  test("what is printed before the hand has rested is up to date", async () => {
    const { page } = await open({ before: () => localStorage.setItem("airledger print sheet matching", "on") });
    await fieldOf(page);
    const told = await page.evaluate(() => {
      const slider = document.querySelector<HTMLInputElement>("#line-ratedSpeed .slider")!;
      slider.value = "4500";
      slider.dispatchEvent(new Event("input", { bubbles: true }));
      window.dispatchEvent(new Event("beforeprint"));
      const paper = [...document.querySelectorAll(".folio .paper-figure")];
      const of = (title: string) => paper.find((figure) => figure.querySelector("strong")?.textContent?.startsWith(title));
      const field = of("The compressors' fields")!;
      return { words: field.querySelector(".described")!.textContent, diamond: field.querySelector(".present")!.getAttribute("points") };
    });
    await expect.poll(() => speedOf(page), patient).not.toBe("3200");
    expect(told.words).toContain(`${await speedOf(page)}\u00a0rpm`);
    expect(told.diamond).toMatch(/^\d/);
  });
}
