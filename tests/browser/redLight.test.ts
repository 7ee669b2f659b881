import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { chromiumFlags, needHeadlessChromium } from "../../scripts/need.mjs";
import { browser, type OpenInput, open, pixels, screens } from "./helpers.ts";

// Red light: no point of the screen may have green or blue. Why it matters: blue- and green-sensitive paper
// [iso-7589, iso-6728: spectra seen; none: safelight use, common practice]. A plain sRGB red lights green and blue on a
// wide-gamut screen [srgb: primaries; seen in Chromium].

const pages = ["", "#/camera/now", "#/shelf", "#/trays", "#/logbook"];
const wideGamut = [
  ...chromiumFlags.filter((flag) => flag !== "--disable-gpu"),
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--force-color-profile=display-p3-d65",
];
const plain = [...chromiumFlags, "--force-color-profile=srgb"];

describe.each([
  ["an sRGB screen", plain, [255, 0, 0]],
  ["a wide-gamut screen", wideGamut, [234, 51, 35]],
] as const)("red light on %s", (_name, args, bareRed) => {
  let own: Browser;
  beforeAll(async () => {
    own = await chromium.launch({ executablePath: needHeadlessChromium(), args: [...args] });
  });
  afterAll(() => own.close());
  const inRed = (more: OpenInput = {}) => open({ ...more, light: "red", on: own });

  test(`the measure can fail: a bare #f00 square reads ${bareRed.join(", ")}`, async () => {
    const { page, context } = await inRed();
    await page.setContent(
      '<html style="background:#000"><div style="width:90px;height:90px;background:#f00"></div></html>',
    );
    const png = await page.screenshot({ clip: { x: 30, y: 30, width: 20, height: 20 } });
    expect((await pixels({ page, png })).first).toEqual(bareRed);
    await context.close();
  });

  test("the measure sees daylight: by day nearly every point has green or blue", async () => {
    const { page, context } = await open({ light: "day", on: own });
    const { greenOrBlue, points } = await pixels({ page, png: await page.screenshot() });
    expect(greenOrBlue / points).toBeGreaterThan(0.8);
    await context.close();
  });

  test.each(["phone", "desk"] as const)("no point of any page has green or blue, %s", async (screen) => {
    const { page, context } = await inRed({ screen });
    for (const at of pages) {
      await page.goto(inject("address") + at);
      await page.locator("main h1").waitFor();
      await expectOnlyRed(page);
    }
    await context.close();
  });

  test("nor while the keyboard walks, a press is held, or text is marked", async () => {
    const { page, context } = await inRed({ at: "#/camera/now" });
    for (let step = 0; step < 4; step++) {
      await page.keyboard.press("Tab");
      await expectOnlyRed(page);
    }
    await page.evaluate(() => getSelection()?.selectAllChildren(document.body));
    await expectOnlyRed(page);
    await page.goto(`${inject("address")}#/`);
    await page.getByRole("button", { name: /I have a reading/ }).hover();
    await page.mouse.down();
    await expectOnlyRed(page);
    await context.close();
  });

  test("nor over a foreign overlay, a coloured picture or the browser's own controls", async () => {
    const { page, context } = await inRed();
    await page.evaluate(() => {
      const strange = document.createElement("div");
      strange.style.cssText = "position:fixed;inset:0;z-index:2147483647;background:linear-gradient(#0f0,#00f,#fff)";
      strange.innerHTML =
        '<input type="checkbox" checked><input type="range"><progress value=".5"></progress><select><option>x</select>';
      document.body.append(strange);
    });
    await expectOnlyRed(page);
    await page.evaluate(() => {
      const late = document.createElement("div");
      late.popover = "manual";
      late.style.cssText = "background:#0ff;width:200px;height:200px";
      document.body.append(late);
      late.showPopover();
    });
    await page.waitForTimeout(100); // the sheet goes on top again
    await expectOnlyRed(page);
    await context.close();
  });
});

describe("the first frame", () => {
  test("in red light no frame of a start, a reload or a start after a kill has green or blue", async () => {
    const { page, context } = await open({ light: "red", at: "#/camera/now", keepsItself: true });
    const reloaded = await framesOf(page, () => page.reload());
    await page.close({ runBeforeUnload: false });
    const again = await context.newPage();
    await again.goto("data:text/html,<html style='background:%23000'>");
    const started = await framesOf(again, () => again.goto(`${inject("address")}#/camera/now`));
    const { page: eye, context: apart } = await open({ light: "day" });
    for (const frames of [reloaded, started]) {
      expect(frames.length).toBeGreaterThan(0);
      let last = 0;
      for (const png of frames) {
        const { greenOrBlue, lit } = await pixels({ page: eye, png });
        expect(greenOrBlue).toBe(0);
        last = lit;
      }
      expect(last).toBeGreaterThan(500); // the app was drawn, not only the dark
    }
    await context.close();
    await apart.close();
  });

  test("nor over a slow line; a page that began by day would be seen", async () => {
    const { page, context } = await open({ light: "red" });
    await context.route("**/assets/**", async (route) => {
      await new Promise((later) => setTimeout(later, 600));
      await route.continue();
    });
    const slow = await framesOf(page, () => page.reload());
    const fault = 'document.documentElement.dataset.light = "day"';
    await context.route("**/first-light.js", (route) => route.fulfill({ contentType: "text/javascript", body: fault }));
    const faulty = await framesOf(page, () => page.reload());
    const worst = async (frames: readonly string[]) => {
      const seen = await Promise.all(frames.map((png) => pixels({ page, png })));
      return Math.max(...seen.map(({ greenOrBlue }) => greenOrBlue));
    };
    expect(await worst(slow)).toBe(0);
    expect(await worst(faulty)).toBeGreaterThan(10_000);
    await context.close();
  });

  test("the page is black before anything is fetched, and so is the installed app's start-up screen", async () => {
    const html = await (await fetch(inject("address"))).text();
    expect(html.indexOf("background:#000")).toBeGreaterThan(0);
    expect(html.indexOf("background:#000")).toBeLessThan(html.indexOf("<script"));
    const manifest = (await (await fetch(`${inject("address")}manifest.webmanifest`)).json()) as Record<string, string>;
    expect([manifest.background_color, manifest.theme_color]).toEqual(["#000000", "#000000"]);
  });
});

describe("between the lights", () => {
  test("into red light at once, with the list of what the page cannot do; out of it only after a question", async () => {
    const { page, context } = await open({ light: "day" });
    await page.getByRole("button", { name: "Red light" }).click();
    await page.getByRole("heading", { name: "Before the lights go out" }).waitFor();
    await expectOnlyRed(page);
    await page.getByRole("button", { name: "Lights are out" }).click();
    await page.getByRole("heading", { name: /An empty notebook/ }).waitFor();
    expect(await light(page)).toBe("red");

    await page.getByRole("button", { name: "Daylight" }).click();
    await page.getByRole("heading", { name: /Boxes and holders shut/ }).waitFor();
    await expectOnlyRed(page);
    await page.getByRole("button", { name: "Stay in red light" }).click();
    expect(await light(page)).toBe("red");
    await page.getByRole("button", { name: "Daylight" }).click();
    await page.getByRole("button", { name: "All shut: daylight" }).click();
    expect(await light(page)).toBe("day");
    await context.close();
  });

  test("the light of the last time is taken up again, and the browser's own bar goes with it", async () => {
    const { page, context } = await open({ light: "red" });
    await page.reload();
    await page.locator("main h1").waitFor();
    expect(await light(page)).toBe("red");
    expect(await page.locator('meta[name="theme-color"]').getAttribute("content")).toBe("#000000");
    await context.close();
  });

  test("no field raises the system's keyboard in red light, on any screen", async () => {
    for (const screen of Object.keys(screens) as (keyof typeof screens)[]) {
      const { page, context } = await open({ light: "red", at: "#/camera/now", screen });
      const modes = await page
        .locator("input[data-field]")
        .evaluateAll((fields) => fields.map((field) => field.getAttribute("inputmode")));
      expect(modes.length).toBeGreaterThan(5);
      expect(new Set(modes)).toEqual(new Set(["none"]));
      expect(await page.locator("select, [title]:not([title='']), dialog, input[type=file]").count()).toBe(0);
      await context.close();
    }
  });
});

async function expectOnlyRed(page: Page): Promise<void> {
  const png = await page.screenshot();
  const { greenOrBlue, lit } = await pixels({ page, png });
  expect(greenOrBlue).toBe(0);
  expect(lit).toBeGreaterThan(200); // something is to be seen
}

function light(page: Page): Promise<string> {
  return page.evaluate(() => document.documentElement.dataset.light ?? "red");
}

/** Every frame the browser shows while something happens, until the app stands. */
async function framesOf(page: Page, happen: () => Promise<unknown>): Promise<string[]> {
  await browser();
  const session = await page.context().newCDPSession(page);
  const frames: string[] = [];
  session.on("Page.screencastFrame", ({ data, sessionId }) => {
    frames.push(data);
    session.send("Page.screencastFrameAck", { sessionId }).catch(() => undefined);
  });
  await session.send("Page.startScreencast", { format: "png", everyNthFrame: 1 });
  await happen();
  await page.locator("main h1").waitFor();
  await page.waitForTimeout(400);
  await session.send("Page.stopScreencast");
  await session.detach();
  return frames;
}
