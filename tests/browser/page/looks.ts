import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { brokenRules, type Opened, type Opening, pictures } from "./served";

type Open = (options?: Opening) => Promise<Opened>;

const widths = [1440, 1024, 768, 390];
const themes = ["light", "dark"] as const;
const views = ["Reading", "Bench"] as const;

async function sideways(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}

/** How the page looks and reads, in every view, theme and width. */
export function looks(open: Open): void {
  describe.each(themes)("in the %s theme", (colorScheme) => {
    test.each(views)("no rule of access is broken, in the view %s", async (view) => {
      const { page } = await open({ colorScheme });
      await page.getByText(view, { exact: true }).click();
      await page.locator("#line-fuelFlow .how-toggle").click();
      await page.locator("#line-fuelFlow .filled-in math").waitFor();
      expect(await brokenRules(page)).toEqual([]);
    });

    test.each(widths)("every sheet stands within %i px", async (width) => {
      mkdirSync(pictures, { recursive: true });
      const { page } = await open({ colorScheme, viewport: { width, height: 1100 } });
      const keys = await page.locator("section.sheet").evaluateAll((sections) => sections.map(({ id }) => id));
      expect(keys.length).toBeGreaterThan(6);
      for (const key of keys) {
        await page.evaluate((id) => document.getElementById(id)!.scrollIntoView(), key);
        await page.waitForTimeout(250);
        expect(await sideways(page), key).toBeLessThanOrEqual(0);
        await page.screenshot({ path: join(pictures, `${key}-${width}-${colorScheme}.png`) });
      }
    });
  });

  test.each([
    { name: "at 320 px", viewport: { width: 320, height: 700 } },
    { name: "at twice the size", viewport: { width: 720, height: 450 }, deviceScaleFactor: 2 },
    { name: "with forced colours", forcedColors: "active" as const },
    { name: "with more contrast", contrast: "more" as const },
    { name: "with less motion", reducedMotion: "reduce" as const },
  ])("nothing hangs over $name", async ({ name, ...options }) => {
    const { page } = await open(options);
    for (const view of views) {
      await page.getByText(view, { exact: true }).click();
      await page.evaluate(() => document.getElementById("air-demand")!.scrollIntoView());
      await page.waitForTimeout(250);
      expect(await sideways(page)).toBeLessThanOrEqual(0);
      await page.screenshot({ path: join(pictures, `${name.replaceAll(" ", "-")}-${view}.png`) });
    }
  });

  test("a build's name that is one long word widens no page", async () => {
    const { page } = await open({ viewport: { width: 390, height: 844 } });
    await page.locator(".build-name").evaluate((name) => {
      name.textContent = "W".repeat(300);
    });
    await page.locator(".installations label span").first().evaluate((name) => {
      name.textContent = "W".repeat(100);
    });
    expect(await sideways(page)).toBeLessThanOrEqual(0);
  });

  test("what is printed unless more is chosen is an estimate of few pages, on either paper", async () => {
    mkdirSync(pictures, { recursive: true });
    const { page } = await open();
    await page.getByText("Pilot boat", { exact: true }).click();
    // What it takes to print comes with the first use.
    await page.waitForFunction(() => document.querySelector(".folio")!.childElementCount === 0);
    for (const format of ["A4", "Letter"]) {
      const file = await page.pdf({ path: join(pictures, `estimate-${format}.pdf`), format });
      const pages = file.toString("latin1").match(/\/Type \/Page\b/g)!.length;
      expect(pages).toBeGreaterThan(3);
      expect(pages).toBeLessThan(9);
    }
    await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
    const paper = page.locator(".folio");
    const counting = await page.locator("section.sheet:not(.is-aside, .ledger)").count();
    expect(await paper.locator(".paper-short").count()).toBe(counting);
    expect(await paper.locator(".paper-short figure svg").count()).toBe(counting);
    expect(await paper.locator(".paper-sheet, .paper-trace").count()).toBe(0);
    expect(await paper.locator(".paper-cautions strong").count()).toBeGreaterThan(5);
    await page.emulateMedia({ media: "print" });
    const hanging = await page.evaluate(() => [...document.querySelectorAll(".paper-input > *")].filter((each) => each.scrollWidth > each.clientWidth + 1).map((each) => each.textContent));
    expect(hanging).toEqual([]);
  });

  test("everything chosen, what is printed is a document without controls, and no line of it is cut", async () => {
    const { page } = await open({
      colorScheme: "dark",
      viewport: { width: 672, height: 900 },
      before: () => {
        window.print = () => undefined;
      },
    });
    await page.getByRole("button", { name: "Print" }).click();
    const choice = page.locator("dialog.print-choice");
    await choice.getByRole("button", { name: "All that count" }).click();
    await choice.getByLabel(/^Every margin/).check();
    await choice.getByLabel(/^Workings/).check();
    expect(await brokenRules(page, "dialog.print-choice")).toEqual([]);
    await choice.getByRole("button", { name: "Print" }).click();
    await page.pdf({ path: join(pictures, "print-a4.pdf"), format: "A4" });
    await page.pdf({ path: join(pictures, "print-letter.pdf"), format: "Letter" });
    await page.emulateMedia({ media: "print" });
    await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
    const seen = await page.evaluate(() => {
      const paper = document.querySelector(".folio")!;
      return {
        hidden: getComputedStyle(document.getElementById("page")!).display,
        controls: paper.querySelectorAll("input, button, select, a").length,
        formulas: paper.querySelectorAll(".paper-trace math").length,
        figures: paper.querySelectorAll(".paper-figure svg").length,
        cut: [...paper.querySelectorAll("*")].filter((element) => element.getBoundingClientRect().right > 673).map((element) => element.closest("[class]")?.className),
        // A formula in several lines is not one of a piece a line.
        ladders: [...paper.querySelectorAll(".in-lines math")].flatMap((math) => {
          const from = [...math.children].map((piece) => piece.getBoundingClientRect().left);
          return from.length > 3 && from.every((left) => left <= from[0]! + 1) ? [math.textContent] : [];
        }),
        lists: paper.querySelectorAll(".paper-figure + .paper-table").length,
        ground: getComputedStyle(document.documentElement).getPropertyValue("--page"),
      };
    });
    expect(seen).toMatchObject({ hidden: "none", controls: 0, cut: [], ladders: [], lists: 1 });
    expect(seen.ground).toMatch(/^#fff(?:fff)?$/);
    expect(seen.formulas).toBeGreaterThan(200);
    expect(seen.figures).toBeGreaterThan(5);
  });
}
