import { expect, test } from "vitest";
import type { Page } from "playwright-core";
import type { Opened, Opening } from "./served";
import { settledBox } from "./settled";

type Open = (options?: Opening) => Promise<Opened>;

const numberOf = (page: Page, key: string) => page.locator(`#line-${key} .number`).first();
const movementOf = (page: Page, key: string) => page.locator(`#line-${key} > .movement`).first();

/** Drags a number in a sentence by some pixels. */
async function drag(page: Page, key: string, by: number): Promise<void> {
  const handle = page.locator(`.prose .handle[data-input="${key}"]`).first();
  const box = await settledBox(page, handle);
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + by, box.y + box.height / 2, { steps: 6 });
  await page.mouse.up();
}

/** Somebody who never saw the page, with nothing told beforehand. */
export function newcomer(open: Open): void {
  test("the mouse alone finds the raw-water pump's drive ratio, changes it, sees what the pump does, traces why, undoes it and prints", async () => {
    const { page } = await open({
      before: () => {
        window.print = () => {
          window.dispatchEvent(new Event("beforeprint"));
          document.body.dataset["paper"] = document.querySelector(".folio")!.textContent!;
        };
      },
    });
    const inTruck = await numberOf(page, "rawWaterFlow").textContent();
    await page.getByText("Pilot boat", { exact: true }).click();
    await expect.poll(() => numberOf(page, "rawWaterFlow").textContent()).not.toBe(inTruck);
    const [flow, ratio] = [await numberOf(page, "rawWaterFlow").textContent(), await numberOf(page, "rawWaterDriveRatio").textContent()];

    // The ratio is found; its trace tells what sets it, and leads there.
    await page.getByRole("button", { name: "Find" }).click();
    await page.locator("dialog[open] input").pressSequentially("drive ratio");
    await page.locator(".found", { hasText: "Raw-water pump drive ratio" }).click();
    const line = page.locator("#line-rawWaterDriveRatio");
    await expect.poll(() => line.evaluate((element) => element.contains(document.activeElement))).toBe(true);
    await line.locator(".how-toggle").click();
    await line.locator(".facts a", { hasText: "Teeth on the raw-water pump pulley" }).click();
    const teeth = page.locator("#line-rawWaterDrivenTeeth .slider");
    const box = await settledBox(page, teeth);
    await page.mouse.move(box.x + box.width * 0.4, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.3, box.y + box.height / 2, { steps: 5 });
    await page.mouse.up();
    await expect.poll(() => numberOf(page, "rawWaterDriveRatio").textContent()).not.toBe(ratio);

    // What it did is told under the hand, and stands on the pump's line.
    const told = page.locator(".first-move");
    await told.waitFor();
    expect(await told.textContent()).toMatch(/^You moved teeth on the raw-water pump pulley: \d+ → \d+\. \d+ lines? in \d other sheets? moved with it/);
    await page.locator('.contents a[href="#marine-cooling"]').click();
    await expect.poll(() => numberOf(page, "rawWaterFlow").textContent()).not.toBe(flow);
    expect(await movementOf(page, "rawWaterFlow").textContent()).toMatch(/^[▲▼]\s[+−]\d/);

    // Why: step by step up to the ratio.
    await page.locator("#line-rawWaterFlow > .how-toggle").click();
    const trace = page.locator("#line-rawWaterFlow .trace");
    await trace.locator(".map-link", { hasText: "Raw-water pump on its line" }).first().click();
    await trace.locator(".map-link", { hasText: /Raw-water pump drive ratio/ }).first().click();
    expect(await trace.getAttribute("data-key")).toBe("rawWaterDriveRatio");
    expect(await trace.locator(".filled-in").textContent()).toContain("=");

    await page.getByRole("button", { name: /^Undo/ }).click();
    await expect.poll(() => numberOf(page, "rawWaterFlow").textContent()).toBe(flow);
    await page.getByRole("button", { name: "Print" }).click();
    const choice = page.locator("dialog.print-choice");
    await choice.getByLabel("Marine cooling load").check();
    await choice.getByLabel(/^Workings/).check();
    await choice.getByRole("button", { name: "Print" }).click();
    await expect.poll(() => page.evaluate(() => document.body.dataset["paper"] ?? ""), { timeout: 15_000 }).toContain("Where every result comes from");
    expect(await page.evaluate(() => document.body.dataset["paper"])).toContain(flow!);
  });

  test("what the first number did is told once, and never again", async () => {
    const { page } = await open();
    await drag(page, "ratedPower", 30);
    const told = page.locator(".first-move");
    await told.waitFor();
    const words = (await told.textContent())!;
    expect(words).toContain(`→ ${await page.locator("#field-ratedPower").inputValue()}\u00a0kW`);
    // The line named first moved as the echo has it.
    const [, first = ""] = /most of all (.+?) [\d.]+/.exec(words)!;
    expect(await page.locator(".echo-item").first().textContent()).toContain(first);
    await told.getByRole("button", { name: "Put away" }).click();
    expect(await told.count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.className)).toContain("handle");
    await drag(page, "ratedPower", 20);
    await page.waitForTimeout(800);
    expect(await told.count()).toBe(0);
    await page.reload();
    await page.locator("#line-ratedPower .slider").waitFor();
    await drag(page, "ratedPower", 20);
    await page.waitForTimeout(800);
    expect(await told.count()).toBe(0);
  });

  test("what moved less opens by the keyboard into a line each, and leads there", async () => {
    const { page } = await open();
    await drag(page, "ratedPower", 30);
    await page.waitForTimeout(600);
    const rest = page.locator(".echo-rest");
    expect(await rest.locator("li").count()).toBe(0);
    await rest.locator("summary").focus();
    await page.keyboard.press("Enter");
    const count = Number(/^(\d+) more moved less$/.exec((await rest.locator("summary").textContent())!)![1]);
    expect(count).toBeGreaterThan(20);
    expect(await rest.locator("li").count()).toBe(count);
    const last = rest.locator("li").last();
    expect(await last.textContent()).toMatch(/\d.*(?:[▲▼]\s[+−]\d|=)/);
    const key = (await last.locator("a").getAttribute("data-key"))!;
    await last.locator("a").press("Enter");
    await expect.poll(() => page.locator(`#line-${key}`).evaluate((line) => line.getBoundingClientRect().top > 0 && line.getBoundingClientRect().bottom < window.innerHeight)).toBe(true);
    // A further move brings its lines up to date.
    const before = await page.locator(".echo-others").textContent();
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.locator(".echo-others").textContent()).not.toBe(before);
  });

  test("a move that nothing counts of leads to the sheet that it moved all the same", async () => {
    const { page } = await open();
    await page.locator("#field-rawWaterDrivenTeeth").fill("40");
    await page.keyboard.press("Enter");
    const nothing = page.locator(".echo-nothing");
    await expect.poll(() => nothing.textContent()).toMatch(/^Nothing outside this sheet has moved\. Marine cooling load.* in this installation\.$/);
    await nothing.locator("a").first().click();
    await expect.poll(() => page.locator("#marine-cooling h2").evaluate((title) => Math.abs(title.getBoundingClientRect().top) < 300)).toBe(true);
  });

  test("another installation stands against itself as it was held, and is told beside the one shown before", async () => {
    const { page } = await open();
    await page.getByText("Pilot boat", { exact: true }).click();
    const cause = page.locator(".echo-cause");
    await expect.poll(() => cause.textContent()).toBe("Pilot boat beside Mountain truck");
    expect(await movementOf(page, "manifoldPressure").textContent()).toBe("");
    expect(await page.locator(".echo-item").first().textContent()).toMatch(/[▲▼]\s[+−]\d/);
    await drag(page, "ratedPower", 30);
    await expect.poll(() => movementOf(page, "manifoldPressure").textContent()).toMatch(/^▲\s\+\d/);
  });

  test("a slider that is pointed at shows where lines would have no answer, and there they have none", async () => {
    const { page } = await open();
    const slider = page.locator("#line-blowerDrivenTeeth .slider");
    await slider.scrollIntoViewIfNeeded();
    await page.waitForTimeout(500);
    await slider.hover();
    const zone = page.locator("#line-blowerDrivenTeeth .zone").last();
    await zone.waitFor({ state: "attached", timeout: 15_000 });
    expect(await slider.getAttribute("aria-description")).toMatch(/has no answer/);
    expect(await page.locator('.line[data-state="refused"]').count()).toBe(0);
    const [from, to] = await zone.evaluate((element: HTMLElement) => ["--from", "--to"].map((name) => Number(element.style.getPropertyValue(name))));
    const box = await settledBox(page, slider);
    await page.mouse.click(box.x + box.width * ((from! + to!) / 2), box.y + box.height / 2);
    await page.waitForFunction(() => document.querySelector('.line[data-state="refused"]') !== null);
    // Another input moves: what was found for this one holds no more.
    await page.keyboard.press("Control+z");
    await page.locator("#field-ratedPower").fill("650 kW");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("#line-blowerDrivenTeeth .zone").count()).toBe(0);
  });

  test("a refusal tells value and bound in the units on the page", async () => {
    const { page } = await open();
    await page.locator("#field-supplyPressure").fill("12 bar");
    await page.keyboard.press("Enter");
    const remark = page.locator('.line[data-state="refused"] .remark', { hasText: "must be" }).first();
    await expect.poll(() => remark.textContent()).toContain("Pressure without flow is 6\u00a0bar; it must be at least the pressure at the rated flow, 12\u00a0bar.");
    await page.getByText("US", { exact: true }).click();
    await expect.poll(() => remark.textContent()).toContain("Pressure without flow is 87.02\u00a0psi; it must be at least the pressure at the rated flow, 174\u00a0psi.");
  });

  test("a trace says which symbols stay, and why", async () => {
    const { page } = await open();
    await page.locator("#line-blowerInletTemperature > .how-toggle").click();
    const trace = page.locator("#line-blowerInletTemperature .trace");
    await expect.poll(() => trace.locator(".kept").textContent()).toBe("Cw stays a symbol: there is no single value to put there.");
    expect(await trace.locator(".where").last().textContent()).toMatch(/^withinCw–heat that the stream takes up for each kelvin/);
    // What lies within the path has no line, and yet its value and its name.
    await page.locator("#line-manifoldPressure > .how-toggle").click();
    const within = page.locator("#line-manifoldPressure .trace .where").last();
    await expect.poll(() => within.textContent()).toMatch(/p4[\d.]+\sbar\sapressure behind the blower/);
    expect(await page.locator("#line-manifoldPressure .trace .kept").isVisible()).toBe(false);
  });
}
