import type { Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { axe, open, pixels, type Screen, smallBoxes } from "./helpers.ts";

/** The skiff before the shed in the invented notebook: snow, jug, hull, rope and shed door, 7 stops from end to end. */
async function skiff(screen: Screen, subject = /Upturned skiff/) {
  const opened = await open({ screen, light: "day" });
  const { page } = opened;
  await page.getByRole("button", { name: "Open the demo notebook" }).click();
  await page.getByText("Demo notebook, invented.").waitFor();
  await page.goto(`${inject("address")}#/camera/scenes`);
  await page.getByRole("link", { name: subject }).first().click();
  await drawn(page).waitFor();
  return opened;
}

const drawn = (page: Page) => page.getByRole("img", { name: /^Curve of/ });
const capTime = (page: Page) => page.getByRole("slider", { name: "Cap time" });
const bar = (page: Page) => page.getByLabel("Exposure", { exact: true });
const past = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** Where the squares stand on the drawing, read from its own figures: stops and density by the area's name. */
function squares(page: Page): Promise<Readonly<Record<string, { readonly stops: number; readonly density: number }>>> {
  return drawn(page).evaluate((svg) => {
    const number = (element: Element, name: string) => Number(element.getAttribute(name));
    const figure = (name: string) => svg.querySelector(`[data-name="${name}"]`) as Element;
    const [left, right] = [figure("figure stops -2"), figure("figure stops 2")];
    const [nought, two] = [figure("figure D 0"), figure("figure D 2")];
    const perStop = (number(right, "x") - number(left, "x")) / 4;
    const perDensity = (number(two, "y") - number(nought, "y")) / 2;
    // The base line of a figure stands a third of its letters under its line.
    const drop = number(nought, "font-size") / 3;
    return Object.fromEntries(
      [...svg.querySelectorAll('rect[data-name^="area "]')].map((square) => {
        const x = number(square, "x") + number(square, "width") / 2;
        const y = number(square, "y") + number(square, "height") / 2;
        const at = {
          stops: (x - number(left, "x")) / perStop - 2,
          density: (y + drop - number(nought, "y")) / perDensity,
        };
        return [square.getAttribute("data-name")?.slice(5) ?? "", at];
      }),
    );
  });
}

async function lightness(page: Page, area: string): Promise<number> {
  return (await squares(page))[area]?.density ?? Number.NaN;
}

describe("the expected print", () => {
  test("phone: slides the cap time and the print follows; no flash without a strip; kept, taken back, by the cap", async () => {
    const { page, context, complaints } = await skiff("phone");
    await page.getByText("Assumed: no print of box C with recipe 4").waitFor();

    // 13 s, as the bar says; two presses of a third move every area by two thirds to the right, and none gets darker.
    const before = await squares(page);
    expect(Object.keys(before)).toEqual(["Snow", "Jug", "Hull", "Rope", "Shed door"]);
    expect(await capTime(page).getAttribute("aria-valuetext")).toMatch(/^13 seconds, [\d.]+ to [\d.]+$/);
    await capTime(page).focus();
    for (let third = 0; third < 2; third++) await page.keyboard.press("PageUp");
    const after = await squares(page);
    for (const [name, { stops, density }] of Object.entries(before)) {
      expect((after[name]?.stops ?? 0) - stops).toBeCloseTo(2 / 3, 1);
      expect(after[name]?.density).toBeLessThanOrEqual(density);
    }
    // 2^3.66 s is 12.6 s; 2^(2/3) of that is 20 s.
    await expect.poll(async () => (await bar(page).locator("p").first().textContent()) ?? "").toMatch(/^20/);
    await page.getByText("The ledger’s time is 13 s.").waitFor();
    await page.getByText("Ring: at the ledger’s time.").waitFor();
    await page.getByText("Cap time chosen").waitFor();
    expect(await past(page)).toBeLessThanOrEqual(0);
    // Lines of the ledger are rows of a list: with a fine pointer 34.
    expect(await smallBoxes({ page, least: 34 })).toEqual([]);
    const touched = await page.locator(".Camera-Scene-print").locator("input, button, a").all();
    for (const box of touched) expect((await box.boundingBox())?.height).toBeGreaterThanOrEqual(55.5);
    expect(await axe({ page })).toEqual([]);

    // A finger on the scale: the thumb stands where it was put, and the drawing with it.
    const thumb = await page.locator(".Kit-Scale-thumb").first().boundingBox();
    if (thumb === null) throw new Error("no thumb");
    const [x, y] = [thumb.x + thumb.width / 2, thumb.y + thumb.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 60, y, { steps: 6 });
    expect(await lightness(page, "Rope")).toBeGreaterThan(after.Rope?.density ?? 9);
    await page.mouse.up();
    await page.keyboard.press("Home");
    await expect.poll(() => capTime(page).getAttribute("aria-valuetext")).toMatch(/^13 seconds/);

    // Taken back step by step, as every change.
    const strip = page.locator(".Kit-TakeBackStrip");
    await strip.getByRole("button", { name: /Take back/ }).click();
    await expect.poll(() => capTime(page).getAttribute("aria-valuetext")).not.toMatch(/^13 seconds/);
    const chosen = (await capTime(page).getAttribute("aria-valuetext"))?.split(" ")[0] ?? "";
    await page.getByRole("button", { name: "To the cap" }).click();
    await page.waitForURL(/#\/camera\/(cap|which)/);
    await page.goBack();
    await drawn(page).waitFor();
    expect((await bar(page).locator("p").first().textContent()) ?? "").toContain(chosen);

    // From positive to negative: density runs upward, longer is darker, and a contact print lies under it.
    await page.getByRole("button", { name: "How it is made, and what is wanted" }).click();
    await page.locator("label").filter({ hasText: "paper negative" }).click();
    await page.getByRole("heading", { name: "Expected negative" }).waitFor();
    await page.getByText("slide: longer is darker").waitFor();
    await page.getByText("its contact print, about, hull at mid grey:").waitFor();
    expect(await lightness(page, "Snow")).toBeGreaterThan(await lightness(page, "Shed door"));
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("a lamp that no strip was made for: no seconds, no scale, the strip as the way out", async () => {
    const { page, context } = await open({ screen: "phone", light: "day", at: "#/camera/now" });
    for (const [label, text] of [
      ["Time the meter shows", "1/15"],
      ["f-number on the meter", "8"],
      ["ISO on the meter", "100"],
      ["Focal length", "210"],
      ["f-number of the lens", "11"],
      ["Board to ground glass", "248"],
    ] as const) {
      await page.getByLabel(label, { exact: true }).first().fill(text);
    }
    await page.locator("label").filter({ hasText: "direct positive" }).click();
    await page.getByRole("button", { name: "Open the ledger, line by line" }).click();
    await drawn(page).waitFor();
    await page.getByRole("link", { name: "Flash strip", exact: true }).waitFor();
    expect(await page.getByRole("slider", { name: "Flash" }).count()).toBe(0);
    expect(Object.keys(await squares(page)).length).toBe(1);

    // A wish out of reach is said once, with the nearest; one that makes no sense waits.
    await page.getByRole("button", { name: "How it is made, and what is wanted" }).click();
    await page.getByLabel("Wanted white, D").fill("1.9");
    await page.getByLabel("Wanted black, D").fill("0.3");
    await page.getByText("waits: a white lighter than the black").waitFor();
    await page.getByLabel("Wanted white, D").fill("0.1");
    await page.getByLabel("Wanted black, D").fill("1.7");
    await page.getByRole("button", { name: "Want these" }).click();
    await page.getByRole("heading", { name: "Wanted white 0.10 is out of reach" }).waitFor();
    await context.close();
  });

  test("desk: three columns; the squares stand where the table says; both scales by keyboard; red light has no other colour", async () => {
    const { page, context, complaints } = await skiff("desk");
    const columns = await Promise.all(
      ["Readings", "Ledger", "Expected print"].map((name) => page.getByRole("heading", { name }).boundingBox()),
    );
    const [readings, ledger, print] = columns;
    expect(new Set(columns.map((box) => Math.round(box?.y ?? 0))).size).toBe(1);
    expect((readings?.x ?? 0) < (ledger?.x ?? 0) && (ledger?.x ?? 0) < (print?.x ?? 0)).toBe(true);

    const agrees = async () => {
      const at = await squares(page);
      for (const [name, { stops, density }] of Object.entries(at)) {
        const row = page.getByRole("row", { name: new RegExp(`^${name}`, "i") }).first();
        const cells = await row.getByRole("cell").allInnerTexts();
        const said = cells.at(-1) ?? "";
        const [low, high] = said.split(" to ").map(Number);
        // Two decimals stand in the table; from a ± of 0.3 on only a range, whose ends are not the curve's.
        if (said.includes("±")) expect(density).toBeCloseTo(Number(said.split(" ")[0]), 1);
        else expect(density > (low ?? 9) && density < (high ?? 0)).toBe(true);
        // The meter's stops; flare lifts the darkest by up to a stop.
        const metered = Number((cells.at(-2) ?? "").replace("−", "-").replace("+", ""));
        expect(stops - metered).toBeGreaterThan(-0.05);
        expect(stops - metered).toBeLessThan(1.2);
      }
    };
    await agrees();

    // The tested lamp gives seconds with their range; Home takes the advice, and both ends come as wanted.
    const flash = page.getByRole("slider", { name: "Flash" });
    await page.getByText("desk lamp, 2 m, three tissues; strip of 30 Nov").first().waitFor();
    const door = await lightness(page, "Shed door");
    await flash.focus();
    await page.keyboard.press("Home");
    expect(await flash.getAttribute("aria-valuetext")).toMatch(/^[\d.]+ seconds?, [\d.]+ to [\d.]+ s$/);
    await expect.poll(() => lightness(page, "Shed door")).toBeLessThan(door - 0.05);
    await page.getByText("Ring: without flash.").waitFor();
    await bar(page)
      .getByRole("heading", { name: /^Flash first, [\d.]+ s$/ })
      .waitFor();
    await page.locator("label").filter({ hasText: "before the first bath" }).click();
    await bar(page)
      .getByRole("heading", { name: /^Flash after, [\d.]+ s$/ })
      .waitFor();
    await page.getByRole("button", { name: /^Take \d/ }).click();
    await page.getByText(/both ends come as wanted/).waitFor();
    const seen = await squares(page);
    const wanted = (await drawn(page).getAttribute("aria-label"))?.match(
      /Wanted white ([\d.]+)\. Wanted black ([\d.]+)\./,
    );
    expect(seen.Snow?.density).toBeCloseTo(Number(wanted?.[1]), 1);
    expect(seen["Shed door"]?.density).toBeCloseTo(Number(wanted?.[2]), 1);

    await page.getByRole("button", { name: "Red light" }).click();
    await page.getByRole("button", { name: "Lights are out" }).click();
    await drawn(page).waitFor();
    await expect.poll(() => page.evaluate(() => document.documentElement.dataset.light)).not.toBe("day");
    const { greenOrBlue, lit } = await pixels({ page, png: await page.screenshot() });
    expect(greenOrBlue).toBe(0);
    expect(lit).toBeGreaterThan(500);
    expect((await axe({ page })).filter((found) => !found.startsWith("color-contrast"))).toEqual([]);
    expect(complaints).toEqual([]);
    await context.close();
  });
});
