import type { Page } from "playwright-core";
import { expect, inject, test } from "vitest";
import { axe, open, pixels, smallBoxes } from "./helpers.ts";

const at = (page: Page, hash: string) => page.goto(`${inject("address")}${hash}`);
const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).first().click();
const headed = (page: Page, name: string | RegExp) => page.getByRole("heading", { name }).first().waitFor();
const past = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

test("this screen is tried on paper: masked, all red and dark by itself, reloaded in the middle, answered for the door of the room", async () => {
  const { page, context, complaints } = await open({ light: "day" });
  await page.getByRole("button", { name: /demo/i }).first().click();
  await page.getByRole("link", { name: "Camera" }).first().waitFor();

  await at(page, "#/trays/light");
  await headed(page, "What is known");
  await press(page, "Test the safelight");
  await headed(page, "How to mask the sheet");
  await page.getByText(/waits: the distance to the paper/).waitFor();
  await page.getByLabel("From the lamp to the paper").fill("1.2 m");
  await press(page, "Keep it");
  await expect.poll(() => page.getByText(/waits: the distance/).count()).toBe(0);

  await at(page, "#/trays/light");
  await press(page, "Test this screen");
  await headed(page, "How to mask the sheet");
  await page.getByRole("radio", { name: "30 s, 1, 2, 4 min" }).check({ force: true });
  await page.getByRole("img", { name: /at 30 s, 1 min, 2 min, 4 min/ }).waitFor();
  expect(await axe({ page })).toEqual([]);
  expect(await smallBoxes({ page, least: 56 })).toEqual([]);
  expect(await past(page)).toBeLessThanOrEqual(0);

  await press(page, "Lights out, begin");
  await headed(page, "Before the lights go out");
  await press(page, "Red light, boxes shut");
  await headed(page, "All dark");
  const dark = await pixels({ page, png: await page.screenshot() });
  expect(dark.greenOrBlue).toBe(0);
  expect(dark.lit / dark.points).toBeLessThan(0.15);
  expect(await smallBoxes({ page, least: 96 })).toEqual([]);

  // From the press on the screen itself is the light; it goes on through a reload, and by the clock.
  await page.clock.install();
  await page.keyboard.press("b");
  await headed(page, "Screen over the paper");
  await page.clock.runFor(1000);
  await page.keyboard.press("b");
  await headed(page, "Next: the band of 30 s");
  const red = await pixels({ page, png: await page.screenshot() });
  expect(red.greenOrBlue).toBe(0);
  expect(red.lit / red.points).toBeGreaterThan(0.85);
  await page.clock.runFor(31_000);
  await page.keyboard.press("b");
  await headed(page, "Next: the band of 1 min");
  await page.reload();
  await headed(page, "Next: the band of 1 min");
  const again = await pixels({ page, png: await page.screenshot() });
  expect([again.greenOrBlue, again.lit / again.points > 0.85]).toEqual([0, true]);
  await page.clock.runFor(210_000);
  await headed(page, "All dark again");
  await page.keyboard.press("b");
  await headed(page, "Into the developer, in the dark");
  // A press through the page of a made-up clock is known to a second.
  await page.getByText(/^3[0-2](?:\.\d)? s given$/).waitFor();
  await page.getByText("120 s, taken as planned").waitFor();
  await press(page, "To the test");

  // Dry, in good light.
  const choose = (half: RegExp, name: string) =>
    page.getByRole("radiogroup", { name: half }).getByRole("radio", { name }).check({ force: true });
  await choose(/^On the left/, "from 4 min on");
  await choose(/^On the right/, "no change");
  await page.getByText("Safe for 2 min at 50 cm from the paper").waitFor();
  await page.getByText(/Stay within 1 min for each sheet/).waitFor();
  await choose(/^On the strip/, "from 30 s on");
  await page.getByText(/^Not safe even for 3[0-2] s$/).waitFor();
  await choose(/^On the strip/, "no change");
  await at(page, "#/trays");
  await page.getByText(/within 1 min at 50 cm/).waitFor();
  expect(complaints).toEqual([]);
  await context.close();
}, 90_000);
