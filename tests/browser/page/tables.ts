import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { brokenRules, type Opened, type Opening } from "./served";

type Open = (options?: Opening) => Promise<Opened>;

const phone = { viewport: { width: 390, height: 844 } };

async function tableOf(page: Page, key: string): Promise<Locator> {
  const table = page.locator(`.table-input[data-input="${key}"]`);
  await table.scrollIntoViewIfNeeded();
  return table;
}

const rowOf = (table: Locator, index: number) => table.locator("tbody tr").nth(index);
const foldOf = (table: Locator, index: number) => rowOf(table, index).locator(".fold");

/** Fields and choices of all rows that can be seen. */
const seenFields = (table: Locator) =>
  table.evaluate((element) => [...element.querySelectorAll("tbody input, tbody select, tbody textarea")].filter((each) => each.checkVisibility()).length);

export function tables(open: Open): void {
  test("a row of many columns is a line that keys open to its entries and fold again; it tells what they hold", async () => {
    const { page } = await open();
    const table = await tableOf(page, "frontPulleys");
    expect(await seenFields(table)).toBe(0);
    const fold = foldOf(table, 5);
    expect(await fold.textContent()).toMatch(/Alternator[\s\S]*26[\s\S]*–[\s\S]*−95[\s\S]*440/);
    // A diameter is told where it is read: not of toothed pulleys, nor of those whose teeth have a line of their own.
    for (const [row, diameter] of [[0, "–"], [1, "120"], [2, "–"], [8, "180"]] as const) {
      expect((await foldOf(table, row).locator("> span").nth(3).textContent())!.split(" ").at(-1)).toBe(diameter);
    }
    await fold.focus();
    await page.keyboard.press("Enter");
    expect(await fold.getAttribute("aria-expanded")).toBe("true");
    expect(await seenFields(table)).toBe(17);
    await page.getByLabel("Teeth, row 6", { exact: true }).fill("28");
    await page.keyboard.press("Enter");
    await expect.poll(() => fold.textContent()).toMatch(/Alternator[\s\S]*28[\s\S]*−95/);
    await fold.focus();
    await page.keyboard.press("Space");
    expect(await fold.getAttribute("aria-expanded")).toBe("false");
    expect(await seenFields(table)).toBe(0);
  });

  test("an open row stays open when it is moved, when units change and when a row above it goes; a new row is open", async () => {
    const { page } = await open();
    const table = await tableOf(page, "frontPulleys");
    const openRows = () => table.locator("tbody tr[data-open]").evaluateAll((rows) => rows.map((row) => row.querySelector<HTMLInputElement>("input")!.value));
    await foldOf(table, 5).click();
    expect(await openRows()).toEqual(["Alternator"]);
    await rowOf(table, 5).locator(".up").click();
    await expect.poll(openRows).toEqual(["Alternator"]);
    expect(await rowOf(table, 4).getAttribute("data-open")).toBe("");
    await rowOf(table, 1).locator(".take").click();
    await expect.poll(openRows).toEqual(["Alternator"]);
    expect(await table.locator("tbody tr").count()).toBe(11);
    await table.getByRole("button", { name: "Add a row" }).click();
    await expect.poll(openRows).toEqual(["Alternator", "Coolant pump"]);
    expect(await page.evaluate(() => document.activeElement!.getAttribute("aria-label"))).toBe("Belt, row 12");
    await table.getByRole("button", { name: "Open every row" }).click();
    expect(await table.locator("tbody tr[data-open]").count()).toBe(12);
    await table.getByRole("button", { name: "Fold every row" }).click();
    expect(await table.locator("tbody tr[data-open]").count()).toBe(0);
  });

  test("a refusal is on the screen however long the table is, and folding the row leaves it said", async () => {
    const { page } = await open();
    const table = await tableOf(page, "frontPulleys");
    await table.getByRole("button", { name: "Open every row" }).click();
    await page.getByLabel("Burst speed, row 1", { exact: true }).fill("4 bananas");
    await page.keyboard.press("Tab");
    const remark = table.locator(":scope > .remark");
    await expect.poll(() => remark.textContent()).toMatch(/^Burst speed, row 1: .*0\srpm stays in force\.$/);
    const { y, height } = (await remark.boundingBox())!;
    expect(y).toBeGreaterThan(0);
    expect(y + height).toBeLessThanOrEqual(900);
    await foldOf(table, 0).click();
    expect(await remark.isVisible()).toBe(true);
  });

  test("a long text is read in whole, folded and open, at any width", async () => {
    for (const options of [{}, phone]) {
      const { page } = await open(options);
      const table = await tableOf(page, "fuelTable");
      await foldOf(table, 0).click();
      const field = page.getByLabel("Source, row 1", { exact: true });
      await field.fill("As the supplier's certificate of the 14th of May says, batch 7");
      await page.keyboard.press("Enter");
      const cut = (place: Locator) => place.evaluate((each) => each.scrollWidth > each.clientWidth + 1 || each.scrollHeight > each.clientHeight + 1);
      expect(await cut(field)).toBe(false);
      await expect.poll(() => foldOf(table, 0).textContent()).toContain("As the supplier's certificate of the 14th of May says, batch");
      expect(await cut(foldOf(table, 0))).toBe(false);
    }
  });

  test("on a narrow sheet tables of some columns are folded too, nothing stands beyond its edge, and no rule is broken", async () => {
    const wide = await open();
    expect(await (await tableOf(wide.page, "dutyCycle")).getAttribute("data-folded")).toBeNull();
    expect(await seenFields(await tableOf(wide.page, "dutyCycle"))).toBe(20);
    const { page } = await open(phone);
    for (const key of ["compressorPoints", "fuelTable", "fuelCurve", "dutyCycle", "belts", "frontPulleys", "electricalLoads", "rawWaterLine"]) {
      const table = await tableOf(page, key);
      await expect.poll(() => table.getAttribute("data-folded"), { message: key }).toBe("");
      expect(await seenFields(table), key).toBe(0);
      await foldOf(table, 1).click();
      expect(await seenFields(table), key).toBeGreaterThan(2);
      const edge = await table.locator(".wide").evaluate((each) => each.scrollWidth - each.clientWidth);
      expect(edge, key).toBeLessThanOrEqual(0);
      expect(await brokenRules(page, `.table-input[data-input="${key}"]`), key).toEqual([]);
    }
    for (const key of ["chargeOrder", "alternatorCurve"]) expect(await (await tableOf(page, key)).getAttribute("data-folded"), key).toBeNull();
  });

  test("what a table's columns mean can be read", async () => {
    const { page } = await open();
    const table = await tableOf(page, "frontPulleys");
    await table.getByText("About the columns").click();
    await expect.poll(() => table.locator(".column-notes").textContent()).toMatch(/Teeth[\s\S]*0 for a pulley without teeth/);
  });
}
