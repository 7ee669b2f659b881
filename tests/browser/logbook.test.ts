import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axe, type OpenInput, open, smallBoxes } from "./helpers.ts";
import { readTheLight } from "./readTheLight.ts";

/** One sheet through the cap: read, given in two openings, and its page opened. */
async function oneSheet(more: OpenInput = {}) {
  const opened = await open({ light: "day", at: "#/camera/now", ...more });
  const { page } = opened;
  await readTheLight(page, { time: "1/8" });
  await page.getByRole("button", { name: "To the cap" }).first().click();
  await page.getByRole("button", { name: /Press to count in/ }).click();
  await page.getByRole("heading", { name: "Cap off" }).waitFor();
  await page.waitForTimeout(1200);
  await page.getByRole("button", { name: /Cap on, wait/ }).click();
  await page.waitForTimeout(450); // nearer than 0.35 s it would be one finger
  await page.keyboard.press("b");
  await page.waitForTimeout(1000);
  await page.keyboard.press("b");
  await page.getByRole("heading", { name: "Kept as given" }).waitFor();
  await page.getByRole("link", { name: /The page of/ }).click();
  await page.getByRole("heading", { level: 1, name: /A1/ }).waitFor();
  return opened;
}

const ledgerOf = (page: Page) => page.locator(".Kit-Ledger").textContent();

describe.concurrent("the logbook", () => {
  test("empty, it teaches the first step", async () => {
    const { page, context } = await open({ light: "day", at: "#/logbook" });
    await page.getByText(/Every sheet will stand here/).waitFor();
    await page.getByRole("link", { name: "I have a reading now" }).click();
    await page.getByRole("heading", { level: 1, name: "I have a reading now" }).waitFor();
    await context.close();
  });

  test("a sheet's page: openings, that day's ledger, what stood there before; notes and purpose are kept and found", async () => {
    const { page, context, complaints } = await oneSheet();
    await page
      .getByText(/s, to the ticks at/)
      .first()
      .waitFor();
    await page.getByRole("heading", { name: "That day’s ledger" }).waitFor();
    await page.getByRole("heading", { name: "What stood here before" }).waitFor();
    await page
      .getByText(/taken as planned/)
      .first()
      .waitFor();

    await page.getByLabel("what for").fill("snow on the upturned skiff");
    await page.getByLabel("what for").press("Enter");
    await page.getByRole("textbox", { name: "Notes" }).fill("The hull is a stop too dark.");
    await page.getByRole("textbox", { name: "Notes" }).blur();
    await page.getByText("kept", { exact: true }).waitFor();
    await page.reload();
    await page.getByText("The hull is a stop too dark.").waitFor();

    await page.getByRole("link", { name: "Close" }).click();
    const find = page.getByLabel("Find sheets");
    await find.fill("SKIFF snow");
    await page.getByText("1 of 1 sheet").waitFor();
    await find.fill("rope");
    await page.getByText("No sheet holds all of these words.").waitFor();
    await page.getByRole("button", { name: "Show them all" }).click();
    await page.getByRole("link", { name: "A1" }).click();
    await page.getByRole("heading", { level: 1, name: /A1/ }).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("Again starts from everything but the reading, and the former sheet's ledger stays as it was that day", async () => {
    const { page, context } = await oneSheet({ screen: "tablet" });
    const frozen = await ledgerOf(page);
    await page.getByRole("button", { name: /^Again/ }).click();
    await page.getByRole("heading", { level: 1, name: "I have a reading now" }).waitFor();
    expect(await page.getByLabel("Focal length").inputValue()).toBe("210");
    expect(await page.getByLabel("Time the meter shows").inputValue()).toBe("");
    await page.getByLabel("Time the meter shows").fill("1/15");
    await page.getByRole("button", { name: "To the cap" }).first().click();
    await page.getByRole("heading", { name: "Cap on" }).waitFor();
    await page.goBack();
    await page.goBack();
    await page.getByRole("heading", { level: 1, name: /A1/ }).waitFor();
    expect(await ledgerOf(page)).toBe(frozen);
    await context.close();
  });

  test("a step is dated by a press, and a sheet that is put away leaves the list", async () => {
    const { page, context } = await oneSheet();
    await page.getByRole("button", { name: "In the trays: now" }).click();
    await page.getByText(/direct positive, in the trays/).waitFor();
    await page.getByRole("button", { name: "Put A1 away" }).click();
    await page.getByText(/Every sheet will stand here/).waitFor();
    await context.close();
  });

  test.each(["phone", "desk"] as const)(
    "axe finds nothing and rows are large enough, %s",
    async (screen) => {
      const { page, context } = await oneSheet({ screen });
      expect(await axe({ page })).toEqual([]);
      const least = screen === "phone" ? 56 : 34;
      expect(await smallBoxes({ page, least: 34 })).toEqual([]);
      await page.goto(page.url().replace(/#.*/, "#/logbook"));
      await page.getByLabel("Find sheets").waitFor();
      expect(await axe({ page })).toEqual([]);
      const rows = await page
        .locator(".Logbook-Sheets-list tbody tr")
        .evaluateAll((all) => all.map((row) => row.clientHeight));
      for (const height of rows) expect(height).toBeGreaterThanOrEqual(least);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      await context.close();
    },
    120_000,
  );

  test("at a desk the list lies left and the chosen sheet right", async () => {
    const { page, context } = await oneSheet({ screen: "desk" });
    const list = await page.getByLabel("Find sheets").boundingBox();
    const story = await page.getByRole("heading", { level: 1, name: /A1/ }).boundingBox();
    expect(list?.x ?? 0).toBeLessThan(story?.x ?? 0);
    expect(await page.locator("tr[data-chosen] a").textContent()).toBe("A1");
    await context.close();
  });
});
