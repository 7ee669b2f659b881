import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axe, open, pixels } from "./helpers.ts";

/** The invented notebook, opened at the page of the run that W31 went through. */
async function afterW31(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Open the demo notebook" }).click();
  await page.getByText("Demo notebook, invented.").waitFor();
  await page.getByRole("link", { name: "Logbook" }).click();
  await page.getByRole("link", { name: "W31", exact: true }).click();
  await page.getByRole("link", { name: "The whole run of W31" }).click();
  await page.getByRole("heading", { level: 1, name: "Afterwards" }).waitFor();
}

describe("afterwards", () => {
  test("a slip is read, its time put right and taken back; a fault is marked, by finger and by keys; the print is hung and taken down", async () => {
    const { page, context, complaints } = await open({ light: "day" });
    await afterW31(page);

    // Nobody pressed in the first rinse between the rounds: put right, and what was pressed can come back.
    await page
      .getByText(/nobody pressed: assumed/)
      .first()
      .waitFor();
    await page.getByText(/Expected of it on this paper: whites/).waitFor();
    await page.getByRole("button", { name: "Rinse, round 1" }).click();
    await page.getByRole("textbox", { name: /Rinse, round 1: how long/ }).fill("1m12");
    await page.getByRole("button", { name: "It was 1:12" }).click();
    await page.getByText(/put right; the presses say 1:00/).waitFor();
    await page.getByText("12 s longer. Harmless, up to twice the time.").waitFor();
    await page.getByRole("button", { name: "Take back" }).click();
    await page
      .getByText(/nobody pressed: assumed/)
      .first()
      .waitFor();

    const sheet = page.getByRole("application", { name: /W31, drawn/ });
    await sheet.scrollIntoViewIfNeeded();
    const box = await sheet.boundingBox();
    if (box === null) throw new Error("no sheet is drawn");
    await sheet.click({ position: { x: box.width * 0.2, y: box.height * 0.15 } });
    await page.getByText("Here: upper left. What is it?").waitFor();
    await page.getByRole("button", { name: "stain" }).click();
    await page.getByRole("button", { name: /stain.*upper left/ }).waitFor();
    await sheet.focus();
    await page.keyboard.press("ArrowDown"); // the cross stands in the middle, then goes down
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Enter"); // the first of the list of faults
    await page.getByRole("button", { name: /scratch.*middle/ }).waitFor();
    await page.getByRole("button", { name: "Scratch: larger" }).click();
    await page.getByText("W31: scratch larger.").waitFor();
    expect(await axe({ page })).toEqual([]);

    await page.getByRole("button", { name: "To the drying" }).click();
    await page.getByRole("heading", { level: 1, name: "Drying" }).waitFor();
    await page.getByText("unfixed", { exact: true }).waitFor();
    await page.getByRole("button", { name: /W31 hangs: on glass/ }).click();
    await page.getByText("line", { exact: true }).click();
    await page.getByRole("button", { name: "One place on" }).click();
    await page.getByRole("button", { name: "It hangs there" }).click();
    await page.getByRole("button", { name: /W31 hangs: line, place 2/ }).waitFor();
    expect(await axe({ page })).toEqual([]);
    await page.getByRole("button", { name: "W31 is dry: take it down" }).click();
    await page.getByRole("button", { name: "W31: keep it" }).click();
    await page.getByText(/What comes out of the wash stands here/).waitFor();
    await page.getByRole("button", { name: "Take back" }).click();
    await page.getByRole("heading", { name: "Dry, taken down" }).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  }, 120_000);

  test("in red light no point is green or blue, presses are large; a cut sheet has pieces with ways of their own", async () => {
    const { page, context, complaints } = await open({ light: "red" });
    await afterW31(page);
    const sheet = page.getByRole("application", { name: /W31, drawn/ });
    await sheet.scrollIntoViewIfNeeded();
    await sheet.click({ position: { x: 40, y: 40 } });
    const press = await page.getByRole("button", { name: "tong mark" }).boundingBox();
    expect(press?.height).toBeGreaterThanOrEqual(96);
    expect((await pixels({ page, png: await page.screenshot() })).greenOrBlue).toBe(0);
    await page.getByRole("button", { name: "tong mark" }).click();
    await page.getByRole("button", { name: /tong mark.*upper/ }).waitFor();

    await page.getByRole("link", { name: "The page of W31" }).click();
    await page.getByRole("button", { name: "Cut it into pieces" }).click();
    await page.getByRole("button", { name: "Cut so" }).click();
    await page.getByRole("button", { name: /W31a/ }).click();
    await page.getByRole("button", { name: "W31a: Taken down, dry now" }).click();
    await page
      .getByText(/dry, taken down/)
      .first()
      .waitFor();
    const lines = await page
      .locator(".Kit-RunDone > tbody > tr:has(button), .Logbook-Pieces > li > button, .Kit-Faults-list > li > button")
      .evaluateAll((all) => all.map((line) => line.getBoundingClientRect().height));
    expect(Math.min(...lines)).toBeGreaterThanOrEqual(56);
    await page.goto(page.url().replace(/#.*/, "#/trays/drying"));
    await page.getByRole("link", { name: "W31b: its page" }).waitFor();
    expect((await pixels({ page, png: await page.screenshot() })).greenOrBlue).toBe(0);
    expect(complaints).toEqual([]);
    await context.close();
  }, 120_000);
});
