import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { brokenRules, type Opened, type Opening, pictures, type Served, serve } from "./page/served";

let served: Served;
let opened: Opened[] = [];

beforeAll(async () => {
  served = await serve();
  mkdirSync(pictures, { recursive: true });
});
afterAll(() => served?.close());
afterEach(async () => {
  const complaints = opened.flatMap((each) => each.complaints);
  for (const each of opened) await each.close();
  opened = [];
  expect(complaints).toEqual([]);
});

/** The page with the board on the screen. */
async function board(options?: Opening): Promise<{ readonly page: Page; readonly figure: Locator }> {
  const each = await served.open(options);
  opened.push(each);
  const figure = each.page.locator("#figure-frontDrives");
  await figure.scrollIntoViewIfNeeded();
  await figure.locator(".grip").first().waitFor({ state: "attached" });
  await centred(figure);
  return { page: each.page, figure };
}

/** Brings the drawing to the middle of the screen; places on it are true until something else scrolls. */
const centred = (figure: Locator) => figure.locator(".board-stage").evaluate((stage) => stage.scrollIntoView({ block: "center" }));

const gripOf = (figure: Locator, name: string) => figure.locator(`.grip[aria-label^="${name},"]`).first();
const words = (grip: Locator) => grip.getAttribute("aria-label");
const described = async (figure: Locator) => (await figure.locator(".described").textContent())!;

async function middleOf(grip: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const { x, y, width, height } = (await grip.boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
}

/** Millimetres to the right and above, as the table of the page shows them. */
async function placeInTable(page: Page, unit: string): Promise<readonly [number, number]> {
  const rows = await page
    .locator('.table-input[data-input="frontPulleys"] .fold')
    .evaluateAll((all) => all.map((each) => [...each.children].map(({ textContent }) => textContent!)));
  const found = rows.find((places) => places.includes(`Unit ${unit}`))!;
  const of = (label: string) => Number(found.find((place) => place.startsWith(`${label}, mm `))!.split(" ").at(-1)!.replace("−", "-"));
  return [of("To the right"), of("Above")];
}

/** Numbers of a unit in the figure's own table, by the column's label. */
async function numbersOf(figure: Locator, unit: string): Promise<Readonly<Record<string, string>>> {
  const open = await figure.locator(".numbers[open]").count();
  if (open === 0) await figure.locator(".numbers summary").click();
  return figure.locator("table.figures").evaluate((table, name) => {
    const [head, ...rows] = [...(table as HTMLTableElement).rows].map((row) => [...row.cells].map((cell) => cell.textContent!.trim()));
    const row = rows.find((each) => each[1] === name)!;
    return Object.fromEntries(head!.map((label, i) => [label, row[i]!]));
  }, unit);
}

describe("a pulley under the pointer", () => {
  test("moves with it: place, length, wrap and span follow while it moves, and come back by one step", async () => {
    const { page, figure } = await board();
    await figure.locator(".leaves label", { hasText: "Accessory belt" }).click();
    const before = { words: await described(figure), numbers: await numbersOf(figure, "Alternator") };
    await centred(figure);
    const grip = gripOf(figure, "Accessory belt, Alternator");
    const from = await middleOf(grip);
    const drawings = await figure.locator(".belt").first().getAttribute("d");
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x - 40, from.y - 20, { steps: 6 });
    // Live: before the hand lets go.
    await expect.poll(() => described(figure)).not.toBe(before.words);
    expect(await figure.locator(".belt").first().getAttribute("d")).not.toBe(drawings);
    await page.mouse.up();
    const after = await numbersOf(figure, "Alternator");
    for (const column of ["Wrap deg", "Span after it mm", "To the right mm", "Above mm"]) expect(after[column], column).not.toBe(before.numbers[column]);
    // Pulleys of a toothed belt keep their speed wherever they stand.
    expect(after["Speed rpm"]).toBe(before.numbers["Speed rpm"]);
    const [x, y] = await placeInTable(page, "Alternator");
    expect(x).toBeLessThan(-95);
    expect(y).toBeGreaterThan(440);
    expect([x % 1, y % 1].map(Math.abs)).toEqual([0, 0]);
    expect(await words(grip)).toBe(`Accessory belt, Alternator, ${-x}\u00a0mm to the left, ${y}\u00a0mm above`);
    await page.keyboard.press("Control+z");
    await expect.poll(() => described(figure)).toBe(before.words);
    expect(await page.locator(".head-status").textContent()).toContain(`Alternator, to the right −95 → −${-x}\u00a0mm, above 440 → ${y}\u00a0mm`);
    await expect.poll(() => placeInTable(page, "Alternator")).toEqual([-95, 440]);
  });

  test("is drawn to another's axis, and to whole five millimetres with Shift", async () => {
    const { page, figure } = await board();
    await figure.locator(".leaves label", { hasText: "Accessory belt" }).click();
    const grip = gripOf(figure, "Accessory belt, Alternator");
    const [from, crank] = [await middleOf(grip), await middleOf(gripOf(figure, "Accessory belt, Crank"))];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(crank.x + 3, from.y - 4, { steps: 5 });
    await expect.poll(async () => (await words(grip))!.includes("straight")).toBe(true);
    expect(await figure.locator(".guide[d]").count()).toBeGreaterThan(0);
    await page.keyboard.down("Shift");
    await page.mouse.move(from.x - 33, from.y - 13, { steps: 3 });
    await page.mouse.up();
    await page.keyboard.up("Shift");
    await expect.poll(() => words(grip)).not.toContain("straight");
    const [x, y] = await placeInTable(page, "Alternator");
    expect([x % 5, y % 5].map(Math.abs)).toEqual([0, 0]);
    expect(await figure.locator(".guide[d]").count()).toBe(0);
  });

  test("that comes to stand in another is refused by name and distance, over the last run that was possible", async () => {
    const { page, figure } = await board();
    await figure.locator(".leaves label", { hasText: "Accessory belt" }).click();
    const grip = gripOf(figure, "Accessory belt, Alternator");
    const idler = await middleOf(gripOf(figure, "Accessory belt, Tension idler"));
    const from = await middleOf(grip);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(idler.x + 2, idler.y - 30, { steps: 12 });
    const remark = figure.locator(".board-remark");
    await expect.poll(() => remark.textContent()).toMatch(/Accessory belt cannot be laid: Alternator and Tension idler overlap by \d+(\.\d+)?\smm/);
    expect(await figure.locator(".belt-before").count()).toBe(1);
    expect(await figure.locator(".fault-lens").count()).toBe(1);
    expect(await figure.locator("svg text", { hasText: "into each other" }).count()).toBe(1);
    // The screen as it is: a picture of the figure alone would scroll, and take the pointer from the hand.
    await page.screenshot({ path: join(pictures, "board-refused.png") });
    // Escape puts it back where the hand took it, and leaves no step behind.
    await page.keyboard.press("Escape");
    await page.mouse.up();
    await expect.poll(() => remark.isVisible()).toBe(false);
    await expect.poll(() => placeInTable(page, "Alternator")).toEqual([-95, 440]);
  });

  test("follows a finger", async () => {
    const { page, figure } = await board({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await figure.locator(".leaves label", { hasText: "Accessory belt" }).tap();
    const grip = gripOf(figure, "Accessory belt, Fuel pump");
    const from = await middleOf(grip);
    const client = await page.context().newCDPSession(page);
    const touch = (type: "touchStart" | "touchMove" | "touchEnd", x: number, y: number) =>
      client.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : [{ x, y }] });
    const place = () => figure.evaluate((element) => Math.round(element.getBoundingClientRect().top));
    const before = await place();
    await touch("touchStart", from.x, from.y);
    for (const step of [1, 2, 3, 4]) await touch("touchMove", from.x + 5 * step, from.y + 4 * step);
    await touch("touchEnd", 0, 0);
    await expect.poll(async () => (await placeInTable(page, "Fuel pump"))[0]).not.toBe(205);
    const [x, y] = await placeInTable(page, "Fuel pump");
    expect(x).toBeGreaterThan(205);
    expect(y).toBeLessThan(262);
    // The page stayed where it was: the finger had the pulley.
    expect(await place()).toBe(before);
  });
});

describe("a pulley under the keys", () => {
  test("moves by a millimetre, by ten with Shift, and each press is a step that can be taken back", async () => {
    const { page, figure } = await board();
    const grip = gripOf(figure, "Accessory belt, Hydraulic pump");
    await grip.focus();
    // Its belt comes to the front with it.
    expect(await figure.locator(".leaves input:checked").inputValue()).toBe("B");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("Shift+ArrowUp");
    await expect.poll(() => placeInTable(page, "Hydraulic pump")).toEqual([-201, 245]);
    await expect.poll(() => words(grip)).toBe("Accessory belt, Hydraulic pump, 201\u00a0mm to the left, 245\u00a0mm above");
    await expect.poll(() => figure.locator(".mark-line").textContent()).toContain("above 245\u00a0mm");
    expect(await grip.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.keyboard.press("Control+z");
    await expect.poll(() => placeInTable(page, "Hydraulic pump")).toEqual([-201, 235]);
    await page.keyboard.press("Control+z");
    await expect.poll(() => placeInTable(page, "Hydraulic pump")).toEqual([-200, 235]);
  });

  test("stays at the crank's place if it is the crank's, and opens its row with Enter", async () => {
    const { page, figure } = await board();
    const crank = gripOf(figure, "Accessory belt, Crank");
    await crank.focus();
    await page.keyboard.press("ArrowRight");
    expect(await words(crank)).toBe("Accessory belt, Crank, stays at the crank's place");
    await gripOf(figure, "Accessory belt, Alternator").focus();
    await page.keyboard.press("Enter");
    const row = await page.evaluate(() => [...document.activeElement!.closest("tr")!.querySelectorAll("input")].map(({ value }) => value));
    expect(row).toContain("Alternator");
  });

  test("a pivot moves on its own", async () => {
    const { page, figure } = await board();
    const pivot = figure.locator('.grip[aria-label*="pivot of its arm"]').first();
    const before = (await words(pivot))!;
    await pivot.focus();
    await page.keyboard.press("ArrowUp");
    await expect.poll(() => words(pivot)).not.toBe(before);
    expect(await page.locator(".head-status").textContent()).not.toContain("undefined");
  });
});

test("teeth set in the table beside the board change the speed on it, and what the fuel sheet makes of that", async () => {
  const { page, figure } = await board();
  const speed = page.locator("#line-fuelPumpSpeed .number").first();
  const before = { sheet: await speed.textContent(), board: (await numbersOf(figure, "Fuel pump"))["Speed rpm"]! };
  await gripOf(figure, "Accessory belt, Fuel pump").focus();
  await page.keyboard.press("Enter");
  const row = await page.evaluate(() => {
    const rows = [...document.querySelectorAll('.table-input[data-input="frontPulleys"] tbody tr')];
    return rows.indexOf(document.activeElement!.closest("tr")!) + 1;
  });
  await page.getByLabel(`Teeth, row ${row}`, { exact: true }).fill("54");
  await page.keyboard.press("Enter");
  await expect.poll(() => speed.textContent()).not.toBe(before.sheet);
  // A figure off the screen waits until it comes near.
  await centred(figure);
  // 60 teeth before, 54 now, on the same crank; the table shows six digits.
  const ratio = async () => Number((await numbersOf(figure, "Fuel pump"))["Speed rpm"]) / Number(before.board);
  await expect.poll(async () => Math.abs((await ratio()) - 60 / 54) < 1e-4).toBe(true);
});

test("the board is zoomed by keys and buttons, its ground drawn along, and fitted again", async () => {
  const { page, figure } = await board();
  const grip = gripOf(figure, "Accessory belt, Crank");
  await grip.scrollIntoViewIfNeeded();
  const size = async () => (await grip.boundingBox())!.width;
  const whole = await size();
  await figure.locator(".drawing").focus();
  await page.keyboard.press("+");
  await expect.poll(size).toBeGreaterThan(1.2 * whole);
  await figure.getByRole("button", { name: "Nearer" }).click();
  await expect.poll(size).toBeGreaterThan(1.5 * whole);
  expect(await figure.locator(".zoom-status").textContent()).toBe("156 %");
  const at = await middleOf(grip);
  const stage = (await figure.locator(".board-stage").boundingBox())!;
  await page.mouse.move(stage.x + 8, stage.y + 8);
  await page.mouse.down();
  await page.mouse.move(stage.x + 48, stage.y + 8, { steps: 4 });
  await page.mouse.up();
  await expect.poll(async () => Math.round((await grip.boundingBox())!.x + (await size()) / 2 - at.x)).toBe(40);
  await figure.getByRole("button", { name: /^Fit/ }).click();
  await expect.poll(size).toBe(whole);
});

test.each(["light", "dark"] as const)("the board breaks no rule of access, in the %s theme", async (colorScheme) => {
  const { page, figure } = await board({ colorScheme });
  await gripOf(figure, "Accessory belt, Alternator").focus();
  expect(await brokenRules(page, "#figure-frontDrives")).toEqual([]);
});

test.each([1440, 768, 390])("the board fits %i px and is pictured", async (width) => {
  for (const colorScheme of ["light", "dark"] as const) {
    const { page, figure } = await board({ viewport: { width, height: 1000 }, colorScheme });
    for (const [i, label] of (await figure.locator(".leaves label").all()).entries()) {
      await label.click();
      await page.waitForTimeout(100);
      await figure.screenshot({ path: join(pictures, `board-${i}-${width}-${colorScheme}.png`) });
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
  }
});
