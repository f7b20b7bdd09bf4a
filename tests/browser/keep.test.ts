import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { packed } from "../../site/keep/packed";
import { readBuild } from "../../worksheets/build/file";
import demoText from "../../worksheets/demo/hollowfell.json?raw";
import { graph } from "../../worksheets/model";
import { openTab, type Served, servedPage, type Tab, tabOf } from "./keepPage";

let served: Served;
let context: BrowserContext;
let complaints: string[];

beforeAll(async () => {
  served = await servedPage();
});
afterAll(() => served?.close());
beforeEach(async () => {
  complaints = [];
  context = await served.browser.newContext({ viewport: { width: 1440, height: 900 }, acceptDownloads: true });
  context.setDefaultTimeout(15_000);
});
afterEach(async () => {
  await context.close();
  // Neither errors nor what the content policy forbids.
  expect(complaints).toEqual([]);
});

const tab = (hash = "", where = context): Promise<Tab> => openTab(where, served.address + hash, complaints);
const offer = (of: Tab) => of.page.locator('[data-slip="offer"]');
const demo = JSON.parse(demoText);
const chosen = (name: string, body: string | object) => ({
  name,
  mimeType: "application/json",
  buffer: Buffer.from(typeof body === "string" ? body : JSON.stringify(body)),
});
const choose = (page: Page, name: string, body: string | object) => page.locator("input[type=file][accept*=json]").setInputFiles(chosen(name, body));
const until = (what: () => Promise<unknown>) => expect.poll(what, { timeout: 5000, interval: 50 });

describe("what is changed is kept", () => {
  test("and offered when the tab was closed, never put back in silence", async () => {
    const first = await tab();
    const before = await first.power();
    const after = await first.step();
    expect(after).not.toBe(before);
    await until(async () => (await first.kept()).length).toBe(1);
    await first.page.close();

    const second = await tab();
    await offer(second).waitFor();
    expect(await offer(second).textContent()).toMatch(/Continue with Hollowfell 10\.2 as of \d\d:\d\d/);
    expect(await second.power()).toBe(before);
    await second.press(/^Continue with/);
    await until(second.power).toBe(after);
    expect(await offer(second).count()).toBe(0);
  });

  test("though the tab is closed in the same moment", async () => {
    const first = await tab();
    const after = await first.step();
    await first.page.close();
    const second = await tab();
    await second.press(/^Continue with/);
    await until(second.power).toBe(after);
  });

  test("though the tab is killed", async () => {
    const first = await tab();
    const after = await first.step();
    await until(async () => (await first.kept()).length).toBe(1);
    const devtools = await context.newCDPSession(first.page);
    void devtools.send("Page.crash").catch(() => undefined);
    await first.page.waitForEvent("crash");
    const second = await tab();
    await second.press(/^Continue with/);
    await until(second.power).toBe(after);
  });

  test("after a reload too; starting fresh leaves it under Builds", async () => {
    const only = await tab();
    const before = await only.power();
    await only.step();
    await until(async () => (await only.kept()).length).toBe(1);
    await only.page.reload();
    await offer(only).waitFor();
    await only.press("Start fresh");
    expect(await offer(only).count()).toBe(0);
    expect(await only.power()).toBe(before);
    await only.press("Builds");
    await only.page.locator("[data-build]").waitFor();
    expect(await only.page.locator("[data-build]").textContent()).toContain("never named");
  });

  test("by each of two tabs in a record of its own, which the list tells apart", async () => {
    const one = await tab();
    const two = await tab();
    const first = await one.step();
    await two.step();
    const second = await two.step();
    await until(async () => (await two.kept()).length).toBe(2);
    expect(new Set((await two.kept()).map(({ text }) => text)).size).toBe(2);
    await two.press("Builds");
    await two.page.locator("[data-build]").nth(1).waitFor();
    // Newest first.
    const rows = await two.page.locator("[data-build] .build-detail").allInnerTexts();
    expect(rows).toEqual([expect.stringMatching(/open here$/), expect.stringMatching(/open in another tab$/)]);
    await two.press(/^Open a copy/);
    await until(two.power).toBe(first);
    await two.step();
    await until(async () => (await two.kept()).length).toBe(3);
    expect(first).not.toBe(second);
  });

  test("no more when it is taken back", async () => {
    const only = await tab();
    await only.step();
    await until(async () => (await only.kept()).length).toBe(1);
    await only.page.keyboard.press("Control+z");
    await until(async () => (await only.kept()).length).toBe(0);
  });
});

describe("Builds on this device", () => {
  test("begins empty, and says so", async () => {
    const only = await tab();
    await only.press("Builds");
    await only.page.getByText("Nothing is kept yet.").waitFor();
    await only.page.keyboard.press("Escape");
    expect(await only.page.locator(".builds").isVisible()).toBe(false);
    expect(await only.page.evaluate(() => document.activeElement?.textContent)).toBe("Builds");
  });

  test("keeps a copy under a name, opens, renames, deletes and takes back", async () => {
    const only = await tab();
    const { page } = only;
    const rows = page.locator("[data-build]");
    const after = await only.step();
    await only.press("Builds");
    await rows.first().waitFor();
    await only.press("Keep what is open under a name");
    await page.keyboard.type("  ");
    await page.keyboard.press("Enter");
    await page.getByText("A build needs a name.").waitFor();
    await page.keyboard.type("Tall gearing");
    await page.keyboard.press("Enter");
    await rows.nth(1).waitFor();
    await only.press("Open the demo");
    await until(only.power).not.toBe(after);
    await only.press("Builds");
    await only.press("Open: Tall gearing");
    await until(only.power).toBe(after);
    expect(await page.locator("h1").textContent()).toBe("Tall gearing");

    await only.press("Builds");
    await only.press("Rename: Tall gearing");
    await page.keyboard.type("Taller gearing");
    await page.keyboard.press("Enter");
    await until(() => page.locator("h1").textContent()).toBe("Taller gearing");
    await until(async () => (await only.kept()).map(({ name }) => name).toSorted()).toEqual(["Hollowfell 10.2", "Taller gearing"]);
    await only.press("Delete: Taller gearing");
    await until(async () => (await only.kept()).map(({ name }) => name)).toEqual(["Hollowfell 10.2"]);
    await only.press("Take back");
    await until(() => rows.count()).toBe(2);
    expect(await page.locator("h1").textContent()).toBe("Taller gearing");
  });

  test("begins a new build from the declared values", async () => {
    const only = await tab();
    await only.press("Builds");
    await only.press("Begin");
    await until(() => only.page.locator("h1").textContent()).toBe("New build");
    expect(await only.page.locator(".installations").textContent()).toContain("Engine");
  });
});

describe("files", () => {
  test("that are broken change nothing, and the field is named", async () => {
    const only = await tab();
    const before = await only.power();
    await choose(only.page, "broken.json", { ...demo, inputs: { ...demo.inputs, ratedPower: "950 psi" } });
    await only.page.getByText("broken.json was not opened").waitFor();
    expect(await only.strip.textContent()).toContain("inputs.ratedPower");
    expect(await only.power()).toBe(before);
    await choose(only.page, "picture.json", "GIF89a");
    await only.page.getByText("picture.json was not opened").waitFor();
    expect(await only.strip.textContent()).toContain("it is not JSON");
    await choose(only.page, "huge.json", " ".repeat(1_500_000));
    await only.page.getByText("it holds 1.50 MB").waitFor();
  });

  test("of other versions open, and what they hold besides or left out is listed", async () => {
    const only = await tab();
    const { ratedPower: _left, ...inputs } = demo.inputs;
    await choose(only.page, "old.json", { ...demo, name: "Old one", theirs: 1, inputs: { ...inputs, zork: "1" } });
    await until(() => only.page.locator("h1").textContent()).toBe("Old one");
    const words = await only.strip.textContent();
    for (const part of ["theirs: not known", "inputs.zork: not known", "inputs.ratedPower: not in the file"]) expect(words).toContain(part);
    await only.press("Close");
    expect(await only.strip.isVisible()).toBe(false);
  });

  test("are opened by dropping them anywhere; the page says so while they are above it", async () => {
    const only = await tab();
    const hint = only.page.getByText("Drop the build file anywhere");
    const drag = (type: string, text: string) =>
      only.page.locator("main").evaluate(
        (target, [kind, body]) => {
          const dataTransfer = new DataTransfer();
          dataTransfer.items.add(new File([body!], "dropped.json"));
          target.dispatchEvent(new DragEvent(kind!, { dataTransfer, bubbles: true, cancelable: true }));
        },
        [type, text],
      );
    await drag("dragover", "");
    expect(await hint.isVisible()).toBe(true);
    await drag("dragleave", "");
    expect(await hint.isVisible()).toBe(false);
    await drag("dragover", "");
    await drag("drop", JSON.stringify({ ...demo, name: "Dropped" }));
    expect(await hint.isVisible()).toBe(false);
    await until(() => only.page.locator("h1").textContent()).toBe("Dropped");
  });

  test("are saved under the build's name, and read back as the same build", async () => {
    const only = await tab();
    const [download] = await Promise.all([only.page.waitForEvent("download"), only.press("Save")]);
    expect(download.suggestedFilename()).toBe("hollowfell-10-2.json");
    expect(readBuild(readFileSync(await download.path(), "utf8"), graph)).toEqual(readBuild(demoText, graph));
  });
});

describe("links", () => {
  const share = async (of: Tab) => {
    await of.press("Copy link");
    await of.page.getByText(/^Link copied/).waitFor();
    return of.page.evaluate(() => navigator.clipboard.readText());
  };
  beforeEach(() => context.grantPermissions(["clipboard-read", "clipboard-write"], { origin: served.address }));

  test("open what was shown, elsewhere; the address is clean while nothing differs and after a change", async () => {
    const sender = await tab();
    expect(await share(sender)).toBe(served.address);
    await sender.page.getByRole("radio", { name: "Pilot boat" }).check({ force: true });
    await sender.page.getByRole("radio", { name: "US" }).check({ force: true });
    const after = await sender.step();
    await sender.page.getByRole("radio", { name: "Bench" }).check({ force: true });
    await sender.page.locator("#line-fuelFlow .measured input").fill("190 lb/h");
    await sender.page.keyboard.press("Enter");
    const difference = await sender.page.locator("#line-fuelFlow .measured-difference").textContent();
    expect(sender.page.url()).toBe(served.address);
    const link = await share(sender);
    expect(link.length).toBeLessThan(served.address.length + 260);
    expect(sender.page.url()).toBe(link);

    const elsewhere = await served.browser.newContext();
    const reader = await tab(link.slice(served.address.length), elsewhere);
    await until(reader.power).toBe(after);
    expect(difference).toMatch(/%/);
    await until(() => reader.page.locator("#line-fuelFlow .measured input").inputValue()).toBe("190");
    await until(() => reader.page.locator("#line-fuelFlow .measured-difference").textContent()).toBe(difference);
    expect(await reader.page.getByRole("radio", { name: "Pilot boat" }).isChecked()).toBe(true);
    expect(await reader.page.getByRole("radio", { name: "US" }).isChecked()).toBe(true);
    expect(reader.page.url()).toBe(link);
    await reader.page.locator('.contents a[href="#boost"]').click();
    expect(new URL(reader.page.url()).hash).toBe("#boost");
    expect(await reader.power()).toBe(after);
    await reader.page.goBack();
    await reader.step();
    await until(async () => reader.page.url()).toBe(served.address);
    await elsewhere.close();
  });

  test("are not written while a hand is on a slider", async () => {
    const only = await tab();
    const box = (await only.slider.boundingBox())!;
    await only.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await only.page.mouse.down();
    for (let i = 1; i < 12; i++) await only.page.mouse.move(box.x + box.width / 2 + 3 * i, box.y + box.height / 2);
    expect(only.page.url()).toBe(served.address);
    await only.page.mouse.up();
    await only.page.waitForTimeout(600);
    expect(only.page.url()).toBe(served.address);
  });

  test("stand in a field to copy by hand where the clipboard is refused", async () => {
    await context.addInitScript(() => {
      Object.defineProperty(navigator, "clipboard", { value: { writeText: () => Promise.reject(new DOMException("no", "NotAllowedError")) } });
    });
    const only = await tab();
    await only.step();
    await only.press("Copy link");
    const field = only.page.getByRole("textbox", { name: "Link" });
    expect(await field.inputValue()).toBe(only.page.url());
    expect(await field.inputValue()).toContain("#build=1.");
    expect(await field.evaluate((element: HTMLInputElement) => element.selectionEnd! - element.selectionStart!)).toBe((await field.inputValue()).length);
  });

  const hostile: Readonly<Record<string, () => Promise<string> | string>> = {
    "a megabyte": () => `1.${"A".repeat(1_000_000)}`,
    markup: () => "1.<img src=x onerror=alert(1)>",
    "a script address": () => "javascript:alert(1)",
    "what blows up": () => packed("0".repeat(3_000_000)),
    "a value out of its span": () => packed(JSON.stringify({ from: "demo", of: "", inputs: { ratedPower: "1e9 W" } })),
    "names of the language's own": () => packed('{"from":"__proto__","of":"","__proto__":{"a":1}}'),
    nothing: () => "",
  };
  test("that are broken or hostile are refused in words, and the page goes on with the demo", async () => {
    const only = await tab(`#build=${await hostile.markup!()}`);
    const before = await only.power();
    for (const [name, code] of Object.entries(hostile)) {
      await only.page.getByText("The link was not opened").waitFor();
      expect(only.page.url(), name).toBe(served.address);
      expect(await only.page.locator("h1").textContent()).toBe("Hollowfell 10.2");
      expect(await only.power()).toBe(before);
      await only.press("Close");
      const hash = `#build=${await code()}`;
      await only.page.evaluate((next) => {
        location.hash = next;
      }, hash);
    }
    await only.page.getByText("The link was not opened").waitFor();
    await only.step();
  });

  test("made by hand open as well: what they name is read as in a file", async () => {
    const code = await packed(JSON.stringify({ from: "demo", of: "", name: "By hand", inputs: { ratedPower: "900 hp" } }));
    const only = await tab(`#build=${code}`);
    await until(() => only.page.locator("h1").textContent()).toBe("By hand");
    await until(() => only.strip.textContent()).toContain("the demo differed from here");
  });
});

test("markup in names, labels, notes and units' names of files and links is shown as text", async () => {
  const bad = `<img src=x onerror="document.title='owned'"><script>alert(1)</script>`;
  const file = {
    ...demo,
    name: bad,
    note: bad,
    [bad]: bad,
    installations: demo.installations.map((each: object) => ({ ...each, label: bad, note: bad })),
    inputs: { ...demo.inputs, [bad]: 1, frontPulleys: demo.inputs.frontPulleys.map((row: object) => ({ ...row, unit: "<b>x</b>" })) },
  };
  const only = await tab();
  await choose(only.page, "<b>bad</b>.json", file);
  await until(() => only.page.locator("h1").textContent()).toBe(bad);
  await only.step();
  await until(async () => (await only.kept()).length).toBe(1);
  await only.press("Builds");
  await only.page.locator("[data-build]").waitFor();
  await only.press("Copy link");
  await until(async () => only.page.url()).toContain("#build=");
  await only.page.reload();
  await until(() => only.page.locator("h1").textContent()).toBe(bad);
  await offer(only).waitFor();
  expect(await only.page.locator("#page img, #page script, #page b").count()).toBe(0);
  expect(await only.page.title()).toContain("<img");
});

describe("where the device keeps nothing", () => {
  test("the page says so until it does, and offers a file", async () => {
    await context.addInitScript(() => {
      const full = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
      const put = IDBObjectStore.prototype.put;
      Object.assign(window, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { put }) });
      IDBObjectStore.prototype.put = full;
      Storage.prototype.setItem = full;
    });
    const only = await tab();
    await only.step();
    const slip = only.page.locator('[data-slip="refused"]');
    await slip.waitFor();
    expect(await slip.textContent()).toContain("Not saved on this device. Save the build as a file.");
    await only.step();
    const [download] = await Promise.all([only.page.waitForEvent("download"), only.press("Save as a file")]);
    expect(download.suggestedFilename()).toBe("hollowfell-10-2.json");
    expect(await slip.isVisible()).toBe(true);
    await only.page.evaluate("makeRoom()");
    await only.step();
    await until(() => slip.count()).toBe(0);
  });

  test.each(["at its first use", "at its name"])("for want of any storage, refused %s, the page works and says so", async (where) => {
    await context.addInitScript((named) => {
      const refuse = () => {
        throw new DOMException("no", "SecurityError");
      };
      if (named) Object.defineProperty(window, "indexedDB", { get: refuse });
      else IDBFactory.prototype.open = refuse;
      Object.defineProperty(window, "localStorage", {
        get: () => {
          throw new DOMException("no", "SecurityError");
        },
      });
    }, where === "at its name");
    const only = await tab();
    await only.step();
    await only.page.locator('[data-slip="refused"]').waitFor();
    await only.press("Builds");
    await only.press("Open the demo");
  });

  test("in its database, its plain storage does", async () => {
    await context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException("no", "SecurityError");
      };
    });
    const only = await tab();
    const after = await only.step();
    await only.page.waitForTimeout(800);
    await only.page.reload();
    await only.press(/^Continue with/);
    await until(only.power).toBe(after);
  });
});

describe("without a network", () => {
  let reader: BrowserContext;
  beforeEach(async () => {
    reader = await served.browser.newContext({ viewport: { width: 1440, height: 900 } });
  });
  afterEach(() => reader.close());
  const settled = (of: Tab) => of.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));

  test("the page opens after one visit, and a slider can be dragged", async () => {
    const only = await tab("", reader);
    await settled(only);
    expect(await only.page.locator(".offline-word").textContent()).toBe("");
    await reader.setOffline(true);
    expect(await only.page.locator(".offline-word").textContent()).toBe("offline copy");
    await only.page.reload();
    const again = await tabOf(only.page);
    expect(await only.page.locator(".offline-word").textContent()).toBe("offline copy");
    const before = await again.power();
    const box = (await again.slider.boundingBox())!;
    await again.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await again.page.mouse.down();
    await again.page.mouse.move(box.x + box.width * 0.7, box.y + box.height / 2, { steps: 8 });
    await again.page.mouse.up();
    expect(await again.power()).not.toBe(before);
    // Parts that load when they are first asked for are there as well.
    await again.page.locator(".how-toggle").nth(30).click();
    await again.page.locator("math").first().waitFor({ state: "attached" });
    await again.page.goto(`${served.address}?from=mail#boost`);
    await tabOf(again.page);
  });

  test("a newer version waits until it is asked for, then takes the place of the old", async () => {
    const only = await tab("", reader);
    await settled(only);
    const names = () => only.page.evaluate(() => caches.keys());
    const [old] = await names();
    const worker = join(served.folder, "offline.js");
    const code = readFileSync(worker, "utf8");
    try {
      writeFileSync(worker, code.replace(/"version":"\w+"/, '"version":"later"'));
      await only.page.reload();
      await only.page.getByText("A newer version of the page is ready.").waitFor();
      expect((await names()).toSorted()).toEqual([old, "airledger files later"].toSorted());
      await Promise.all([only.page.waitForEvent("load"), only.press("Load it")]);
      await tabOf(only.page);
      await until(names).toEqual(["airledger files later"]);
      expect(await only.page.getByText("A newer version").count()).toBe(0);
    } finally {
      writeFileSync(worker, code);
    }
  });
});
