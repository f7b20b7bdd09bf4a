import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { Opened, Opening } from "./served";
import { settledBox } from "./settled";

type Open = (options?: Opening) => Promise<Opened>;

const numberOf = (page: Page, key: string) => page.locator(`#line-${key} .number`).first();
const fieldOf = (page: Page, key: string) => page.locator(`#field-${key}`);

async function typed(page: Page, key: string, text: string): Promise<void> {
  await fieldOf(page, key).fill(text);
  await page.keyboard.press("Enter");
}

/** Waits until a line's number is another than it was. */
async function changedFrom(page: Page, key: string, before: string | null): Promise<string> {
  await page.waitForFunction(([id, old]) => document.querySelector(`#line-${id} .number`)?.textContent !== old, [key, before] as const);
  return (await numberOf(page, key).textContent())!;
}

async function savedFile(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save", exact: true }).click()]);
  return readFileSync(await download.path(), "utf8");
}

/** What a hand does on the page, and what it must see. */
export function journeys(open: Open): void {
  test("a slider dragged on one sheet moves a number on another, while it is dragged and by one entry", async () => {
    const { page } = await open();
    const before = await numberOf(page, "manifoldPressure").textContent();
    const slider = page.locator("#line-excessAirRatio .slider");
    // The figure above it comes with the page; until it stands, it moves what is below.
    await page.locator("#figure-altitude").scrollIntoViewIfNeeded();
    await page.locator("#figure-altitude svg").waitFor();
    const box = await settledBox(page, slider);
    await page.mouse.move(box.x + box.width * 0.24, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.5, box.y + box.height / 2, { steps: 8 });
    expect(await changedFrom(page, "manifoldPressure", before)).not.toBe(before);
    expect(await page.locator(".echo-item").count()).toBeGreaterThan(0);
    await page.mouse.up();
    await page.waitForFunction(() => /Excess air ratio/.test(document.querySelector(".echo [role=status]")?.textContent ?? ""));
    await page.keyboard.press("Control+z");
    await page.waitForFunction((old) => document.querySelector("#line-manifoldPressure .number")?.textContent === old, before);
  });

  test("a broken file changes nothing and names the field", async () => {
    const { page } = await open();
    const before = await fieldOf(page, "ratedPower").inputValue();
    const file = JSON.parse(await savedFile(page));
    file.inputs.ratedPower = "30 psj";
    await page.setInputFiles("input[type=file][accept*=json]", { name: "bad.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(file)) });
    await page.waitForFunction(() => document.body.textContent?.includes("inputs.ratedPower"));
    expect(await fieldOf(page, "ratedPower").inputValue()).toBe(before);
    expect(await page.locator("h1").textContent()).toBe("Hollowfell 10.2");
  });

  test("typed entries take any unit, and are refused in words while the old value stays in force", async () => {
    const { page } = await open();
    const remark = page.locator("#remark-ratedPower");
    await fieldOf(page, "ratedPower").fill("900 hp");
    await expect.poll(() => remark.textContent()).toBe("= 671.1\u00a0kW");
    await page.keyboard.press("Enter");
    await expect.poll(() => fieldOf(page, "ratedPower").inputValue()).toBe("671.13");
    for (const [text, words] of [
      ["30 psi", "not a power"],
      ["2 lots", "is not a power"],
      ["1e9 kW", "outside what this line takes"],
      ["many", "not"],
    ] as const) {
      await typed(page, "ratedPower", text);
      await expect.poll(() => remark.textContent()).toContain(words);
      expect(await remark.textContent()).toContain("671.13\u00a0kW stays in force");
      await page.keyboard.press("Escape");
      expect(await fieldOf(page, "ratedPower").inputValue()).toBe("671.13");
    }
    // 8.7 bar over the barometer of the demo build's altitude.
    await typed(page, "peakPressureLimit", "200 bar g");
    expect(Number(await fieldOf(page, "peakPressureLimit").inputValue())).toBeCloseTo(200.85, 1);
  });

  test("undo and redo go back and forth by entries that have names", async () => {
    const { page } = await open();
    await typed(page, "ratedPower", "600 kW");
    await typed(page, "ratedSpeed", "2800");
    await page.locator("h1").click();
    await page.keyboard.press("Control+z");
    await expect.poll(() => fieldOf(page, "ratedSpeed").inputValue()).toBe("3200");
    expect(await page.locator(".head-status").textContent()).toContain("Took back: Promised speed");
    await page.keyboard.press("Control+Shift+z");
    await expect.poll(() => fieldOf(page, "ratedSpeed").inputValue()).toBe("2800");
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+z");
    await expect.poll(() => fieldOf(page, "ratedPower").inputValue()).toBe("708.41");
    await page.keyboard.press("Control+y");
    await expect.poll(() => fieldOf(page, "ratedPower").inputValue()).toBe("600");
  });

  test("movement stands against the reference until it is held anew", async () => {
    const { page } = await open();
    await typed(page, "ratedPower", "600 kW");
    const moved = page.locator("#line-meanEffectivePressure .movement");
    await expect.poll(() => moved.textContent()).toMatch(/^▼\s−/);
    await page.locator("h1").click();
    await page.keyboard.press("h");
    await expect.poll(() => moved.textContent()).toBe("");
    expect(await page.locator(".held-name").textContent()).toMatch(/Held: \d\d:\d\d/);
  });

  test("a trace shows formula, values and result, and is walked up and down by keys", async () => {
    const { page } = await open();
    await page.locator("#line-fuelFlow .how-toggle").focus();
    await page.keyboard.press("t");
    const trace = page.locator("#line-fuelFlow .trace");
    await trace.locator(".filled-in math").waitFor();
    expect(await trace.locator(".formula math").count()).toBe(3);
    const number = await numberOf(page, "fuelFlow").textContent();
    expect(await trace.locator(".result").textContent()).toContain(number!.trim());
    await page.keyboard.press("[");
    expect(await trace.getAttribute("data-key")).toBe("indicatedPower");
    await page.keyboard.press("[");
    expect(await trace.locator(".trail li").allTextContents()).toEqual(["Fuel flow", "Gross indicated power", "Promised power"]);
    await page.keyboard.press("]");
    expect(await trace.getAttribute("data-key")).toBe("indicatedPower");
    // A neighbour in the drawing is a link that Enter follows.
    await trace.locator(".map-link").first().focus();
    await page.keyboard.press("Enter");
    expect(await trace.locator(".trail li").count()).toBe(3);
    await page.keyboard.press("Escape");
    expect(await page.locator(".trace").count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe("Trace of Fuel flow");
  });

  test("the keyboard alone finds the blower's pulley, changes it, sees what it does to the sea, traces why, undoes it and prints", async () => {
    const { page } = await open();
    const before = await numberOf(page, "seaHeat").textContent();
    await page.keyboard.press("/");
    await page.keyboard.type("teeth on the blower pulley");
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("field-blowerDrivenTeeth");
    await page.keyboard.type("31");
    await page.keyboard.press("Enter");
    await changedFrom(page, "seaHeat", before);
    await page.waitForFunction(() => document.querySelectorAll(".echo-item").length > 2);
    await page.keyboard.press("Alt+7");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Marine cooling load");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    const label = await page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
    await page.keyboard.press("t");
    expect(await page.locator(".trace").getAttribute("aria-label")).toBe(label);
    await page.keyboard.press("]");
    expect(await page.locator(".trail li").count()).toBe(2);
    await page.keyboard.press("Escape");
    await page.keyboard.press("Control+z");
    await page.waitForFunction((old) => document.querySelector("#line-seaHeat .number")?.textContent === old, before);
    await page.evaluate(() => {
      window.print = () => {
        window.dispatchEvent(new Event("beforeprint"));
        document.body.dataset["paper"] = document.querySelector(".folio")!.textContent!;
      };
    });
    await page.getByRole("button", { name: "Print" }).focus();
    await page.keyboard.press("Enter");
    const choice = page.locator("dialog.print-choice[open]");
    await choice.waitFor();
    const tickByKey = async (name: RegExp): Promise<void> => {
      for (let i = 0; i < 20 && !(await page.evaluate((words) => new RegExp(words).test(document.activeElement?.closest("label")?.textContent ?? ""), name.source)); i++) await page.keyboard.press("Shift+Tab");
      await page.keyboard.press("Space");
    };
    await tickByKey(/^Workings/);
    await tickByKey(/Marine cooling load/);
    expect(await choice.getByLabel("Marine cooling load").isChecked()).toBe(true);
    await choice.getByRole("button", { name: "Print" }).focus();
    await page.keyboard.press("Enter");
    expect(await choice.count()).toBe(0);
    const paper = await page.evaluate(() => document.body.dataset["paper"]!);
    expect(paper).toContain("Hollowfell 10.2");
    expect(paper).toContain(before!);
    expect(paper).toContain("Where every result comes from");
  });

  test("a jump far down a small page shows its lines in the first frame", async () => {
    const { page } = await open({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    for (const key of ["drive-speeds", "matching"]) {
      const blank = await page.evaluate(async (id) => {
        document.querySelector<HTMLElement>(`.contents a[href="#${id}"]`)!.click();
        // After the browser's own jump, in the frame that shows it.
        await new Promise((resolve) => requestAnimationFrame(resolve));
        const shown = [...document.querySelectorAll(".passage")].filter((passage) => {
          const { top, bottom } = passage.getBoundingClientRect();
          return bottom > 0 && top < window.innerHeight;
        });
        return { shown: shown.length, skipped: shown.filter((passage) => !passage.firstElementChild!.checkVisibility({ contentVisibilityAuto: true })).length };
      }, key);
      expect(blank.shown, key).toBeGreaterThan(0);
      expect(blank.skipped, key).toBe(0);
    }
  });

  test("single signs can be switched off, and the switch is kept", async () => {
    const { page } = await open();
    await page.keyboard.press("?");
    await page.getByLabel(/single sign/).uncheck();
    await page.keyboard.press("Escape");
    await page.keyboard.press("/");
    expect(await page.locator("dialog[open]").count()).toBe(0);
    await page.reload();
    await page.locator("#line-ratedPower .slider").waitFor();
    await page.keyboard.press("/");
    expect(await page.locator("dialog[open]").count()).toBe(0);
    await page.getByRole("button", { name: "Find" }).click();
    expect(await page.locator("dialog[open]").count()).toBe(1);
  });

  test("showing another installation changes what counts, by a press on its name", async () => {
    const { page } = await open();
    expect(await page.locator("#marine-cooling.is-aside").count()).toBe(1);
    const before = await page.locator(".summary").textContent();
    await page.getByText("Pilot boat", { exact: true }).click();
    await page.waitForFunction(() => document.querySelector("#marine-cooling.is-aside") === null);
    expect(await page.locator("#marine-cooling .set-aside").isHidden()).toBe(true);
    expect(await page.locator(".echo-cause").textContent()).toContain("Pilot boat");
    expect(before).not.toBeNull();
  });

  test("units change words, and not a bit of what is kept", async () => {
    const { page } = await open();
    const before = JSON.parse(await savedFile(page)).inputs;
    await page.getByText("US", { exact: true }).click();
    await expect.poll(() => fieldOf(page, "ratedPower").inputValue()).toBe("950");
    const between = JSON.parse(await savedFile(page)).inputs;
    await page.getByText("SI", { exact: true }).click();
    expect(between).toEqual(before);
    expect(JSON.parse(await savedFile(page)).inputs).toEqual(before);
  });

  test("where an answer is lost the line says why, others name what they wait for, and a button leads back", async () => {
    const { page } = await open();
    const slider = page.locator("#line-blowerDrivenTeeth .slider");
    await slider.focus();
    await page.keyboard.press("End");
    await page.waitForFunction(() => document.querySelector('.line[data-state="refused"]') !== null);
    const root = page.locator('.line[data-state="refused"]').first();
    expect(await root.locator(".remark").textContent()).toMatch(/^No answer\. [A-Z]/);
    expect(await page.locator('.line[data-state="waiting"] .remark').first().textContent()).toMatch(/^waits for /);
    // At rest each way back leads no further than its line must: past the teeth there were, to the last that have an answer.
    const ways = page.getByRole("button", { name: /^Back to teeth on the blower pulley/ });
    const teeth = async (): Promise<readonly number[]> => (await ways.allTextContents()).map((words) => Number(/(\d+)$/.exec(words)![1]));
    await expect.poll(async () => Math.min(...(await teeth())), { timeout: 20_000 }).toBeGreaterThan(27);
    const least = Math.min(...(await teeth()));
    await ways.filter({ hasText: ` ${least}` }).first().click();
    await page.waitForFunction(() => document.querySelector('.line[data-state="refused"]') === null);
    expect(await fieldOf(page, "blowerDrivenTeeth").inputValue()).toBe(String(least));
  });

  test("a figure that breaks says so in its place, and the others go on", async () => {
    const { page } = await open({
      before: () => {
        const replace = Element.prototype.replaceChildren;
        Element.prototype.replaceChildren = function (...nodes) {
          if (nodes[0] instanceof SVGSVGElement && this.closest("#air-demand .figure")) throw new Error("this figure breaks");
          return replace.apply(this, nodes);
        };
      },
    });
    await page.locator("#air-demand .figure-place").first().scrollIntoViewIfNeeded();
    await page.locator("#air-demand .crash").waitFor();
    expect(await page.locator("#air-demand .crash-text").inputValue()).toContain("this figure breaks");
    await page.locator("#boost .figure-place").first().scrollIntoViewIfNeeded();
    await page.locator("#boost .drawing svg").first().waitFor();
    await typed(page, "ratedPower", "600 kW");
    await expect.poll(() => numberOf(page, "indicatedPower").textContent()).not.toBe("869.0");
  });

  test("at the bench: large keys repeat, a lock holds, and a measured value stands beside the predicted", async () => {
    const { page } = await open();
    await page.getByText("Bench", { exact: true }).click();
    const plus = page.locator("#line-ratedPower .step-key").last();
    const box = (await plus.boundingBox())!;
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(48);
    const before = Number(await fieldOf(page, "ratedPower").inputValue());
    await page.mouse.move(box.x + 20, box.y + 20);
    await page.mouse.down();
    await page.waitForTimeout(800);
    await page.mouse.up();
    expect(Number(await fieldOf(page, "ratedPower").inputValue())).toBeGreaterThan(before + 3);
    await page.keyboard.press("Control+z");
    await expect.poll(async () => Number(await fieldOf(page, "ratedPower").inputValue())).toBe(before);
    await page.locator("#line-ratedPower .lock-key").click();
    expect(await page.locator("#line-ratedPower .slider").isDisabled()).toBe(true);
    await page.locator("#line-fuelFlow .measured input").fill("370 lb/h");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("#line-fuelFlow .measured-difference").textContent()).toMatch(/^\+3\.\d\s%/);
    expect(JSON.parse(await savedFile(page)).measured.truck?.fuelFlow ?? Object.values(JSON.parse(await savedFile(page)).measured)[0]).toBeTruthy();
  });

  test("an address with broken escapes opens the page as if it named nothing", async () => {
    const { page, complaints } = await open({ at: "#%E0%A4" });
    await typed(page, "ratedPower", "700 kW");
    await expect.poll(() => fieldOf(page, "ratedPower").inputValue()).toBe("700");
    expect(complaints).toEqual([]);
  });
}
