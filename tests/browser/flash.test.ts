import type { Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { axe, open, pixels, smallBoxes } from "./helpers.ts";

const at = (page: Page, hash: string) => page.goto(`${inject("address")}${hash}`);
const big = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).first();
const choose = (page: Page, name: string | RegExp) => page.getByRole("radio", { name }).check({ force: true });

async function onlyRed(page: Page): Promise<void> {
  const { greenOrBlue, lit } = await pixels({ page, png: await page.screenshot() });
  expect(greenOrBlue).toBe(0);
  expect(lit).toBeGreaterThan(500);
}

/** Whether anything runs past the right edge. */
const past = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

describe("flash", () => {
  test("set-up, strip planned, timed, reloaded in the middle, answered: seconds with their range, given before loading", async () => {
    const { page, context, complaints } = await open({ light: "day" });
    await page.getByRole("button", { name: /demo/i }).first().click();
    await page.getByRole("link", { name: "Camera" }).first().waitFor();

    // Without a tested set-up no seconds, anywhere.
    await at(page, "#/camera/flash/new");
    await page.getByLabel("What you call it").fill("night light on the shelf");
    await page.getByLabel("From the lamp to the paper").fill("1500");
    expect(await axe({ page })).toEqual([]);
    await big(page, "Keep the set-up").click();
    await page.getByText("No seconds yet: make a flash strip first.").waitFor();
    await big(page, /Make a flash strip|Another flash strip/).click();
    await page.getByRole("heading", { name: "The steps" }).waitFor();
    await choose(page, "left");
    await choose(page, "4 steps");
    await choose(page, "half a stop");
    await page.getByLabel("The shortest step").fill("0.2");
    await page.getByText(/Less than half a second/).waitFor();
    await page.getByLabel("The shortest step").fill("1");
    await big(page, "From 1 s on").click();
    const strip = page.getByRole("list", { name: "From the left edge on" });
    await strip.getByText("4", { exact: true }).waitFor();
    expect(await strip.locator("b").allTextContents()).toEqual(["bare", "1", "2", "3", "4"]);
    expect(await axe({ page })).toEqual([]);
    expect(await smallBoxes({ page, least: 56 })).toEqual([]);
    expect(await past(page)).toBeLessThanOrEqual(0);

    // At the lamp: the white screen turns red first.
    await big(page, "To the lamp").click();
    await page.getByRole("heading", { name: "This screen is white" }).waitFor();
    expect(await axe({ page })).toEqual([]);
    await big(page, /Red light, then the lamp/).click();
    await page.getByRole("heading", { name: "Lamp off" }).waitFor();
    await onlyRed(page);
    expect(await smallBoxes({ page, least: 96 })).toEqual([]);
    expect((await axe({ page })).filter((found) => !found.startsWith("color-contrast"))).toEqual([]);
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: "Lamp on at zero" }).waitFor();
    await page.getByRole("heading", { name: "Lamp on", exact: true }).waitFor();
    await onlyRed(page);
    // Killed in the middle: the clock goes on.
    await page.reload();
    await page.getByRole("heading", { name: /Lamp (on|off now)/ }).waitFor();
    await page.waitForFunction(() => /lamp goes off/.test(document.querySelector("[data-press]")?.textContent ?? ""));
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: /kept as given/ }).waitFor();
    await onlyRed(page);

    // A time put right, and taken back.
    await page.getByLabel("Put step 2 right").fill("0.6");
    await page.getByText(/The step before it had/).waitFor();
    await page.getByLabel("Put step 2 right").fill("2.4");
    await big(page, "Keep 2.4 s").click();
    await page.getByText("put right", { exact: true }).waitFor();
    await page.getByRole("button", { name: "Take back" }).last().click();
    await expect.poll(() => page.getByText("put right", { exact: true }).count()).toBe(0);
    await big(page, "To the strip").click();

    // After the trays.
    await choose(page, "from 2 s on");
    await page.getByText(/It first shows between 1 and 2 s/).waitFor();
    await page
      .getByText(/lx·s a second/)
      .first()
      .waitFor();
    await choose(page, /from 1 s on/);
    await page.getByText("The lamp is brighter than this strip can tell").waitFor();
    await choose(page, "from 2 s on");
    await page.getByText(/It first shows between 1 and 2 s/).waitFor();

    // The scene knows: seconds with their range, the strip's date, and when.
    await at(page, "#/camera");
    await page
      .getByRole("link", { name: /Snow on the slip/ })
      .first()
      .click();
    await page
      .getByRole("link", { name: /Plan a flash|Give the flash/ })
      .first()
      .click();
    await page.getByRole("heading", { name: /Flash for/ }).waitFor();
    await choose(page, /night light/);
    await choose(page, /before loading/);
    await page.getByLabel("Seconds of flash").fill("1");
    await page.getByText(/for the same light .* would not surprise/).waitFor();
    await page
      .getByText(/strip of \d/)
      .first()
      .waitFor();
    await page.getByText("Mains and wet hands:").first().waitFor();
    await big(page, "Give it now").click();
    await page.getByRole("heading", { name: "Lamp off" }).waitFor();
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: "Lamp on", exact: true }).waitFor();
    await page.waitForFunction(() => document.querySelector("h1")?.textContent === "Lamp off now");
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: /kept as given/ }).waitFor();
    await big(page, /The page of/).click();
    await page.getByText(/plan 1 s before loading, given 1/).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  }, 120_000);

  test("planned for after the exposure: exposed, flash owed, until it was given", async () => {
    const { page, context, complaints } = await open({ light: "day", screen: "desk" });
    await page.getByRole("button", { name: /demo/i }).first().click();
    await page.getByRole("link", { name: "Camera" }).first().waitFor();
    await at(page, "#/camera");
    await page
      .getByRole("link", { name: /Snow on the slip/ })
      .first()
      .click();
    await page.locator(".Camera-FlashLine").getByRole("link").click();
    await choose(page, /after the exposure/);
    await page.getByLabel("Seconds of flash").fill("1");
    await page.getByText(/The strip was of this very box and index/).waitFor();
    expect(await axe({ page })).toEqual([]);
    await big(page, "Keep it for after the exposure").click();
    await page.getByText("Flash of 1 s, after the exposure.").waitFor();
    await page.getByRole("button", { name: "To the cap" }).first().click();
    await page.getByRole("heading", { name: "Cap on" }).waitFor();
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: "Cap off" }).waitFor();
    await page.waitForFunction(() => Number(document.querySelector("[role=timer]")?.textContent) >= 2);
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: "Kept as given" }).waitFor();
    await page.getByRole("link", { name: "Give the flash" }).click();
    await page.getByText("It is exposed: before the first bath.").waitFor();
    await at(page, "#/camera/flash");
    await page
      .getByRole("link", { name: /its flash/ })
      .first()
      .click();
    await big(page, "Give it now").click();
    await big(page, /Red light, then the lamp/).click();
    await page.getByRole("heading", { name: "Lamp off" }).waitFor();
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Lamp off now" }).waitFor();
    await page.keyboard.press("b");
    await page.getByText(/Straight into the first bath/).waitFor();
    await big(page, /The page of/).click();
    await page.getByText(/plan 1 s after the exposure, given/).waitFor();
    await expect.poll(() => page.getByText(/flash owed/).count()).toBe(0);
    expect(complaints).toEqual([]);
    await context.close();
  }, 120_000);

  test("no lamp tested, a copied set-up, and dead addresses: each has its way out", async () => {
    const { page, context } = await open({ light: "day", screen: "desk", at: "#/camera/flash" });
    await page.getByRole("button", { name: "Set up a lamp for flash" }).waitFor();
    for (const dead of ["nothing", "strip/nothing", "run/nothing", "for/nothing", "give/nothing"]) {
      await at(page, `#/camera/flash/${dead}`);
      await page.getByRole("link", { name: /All set-ups|All strips|To the flash|Plan a flash/ }).waitFor();
    }
    await at(page, "#/camera/flash/new");
    await page.getByLabel("What you call it").fill("bulb behind the door");
    await page.getByLabel("A meter at the paper says").fill("-2");
    await page.getByText(/Lux at the paper, above 0/).waitFor();
    await page.getByLabel("A meter at the paper says").fill("0.3");
    await big(page, "Keep the set-up").click();
    // Copied to be moved it is another set-up; taken back it is gone.
    await big(page, "Copy, to move or dim it").click();
    await page.getByRole("heading", { name: "bulb behind the door, again" }).waitFor();
    await page.getByRole("button", { name: "Take back" }).click();
    await page.getByText("This set-up is not in the notebook.").waitFor();
    await context.close();
  });
});
