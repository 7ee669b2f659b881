import { describe, expect, inject, test } from "vitest";
import { axe, open, pixels, smallBoxes } from "./helpers.ts";
import { type PrintedLine, printedPages } from "./printedLines.ts";

/** What a ruler on paper is good for. */
const rulerMm = 0.2;

const papers = [
  { name: "A6", widthMm: 105, heightMm: 148 },
  { name: "A4", widthMm: 210, heightMm: 297 },
  { name: "Letter", widthMm: 215.9, heightMm: 279.4 },
] as const;

async function cardOfTheSkiff(screen: "phone" | "desk") {
  const opened = await open({ light: "day", screen });
  const { page } = opened;
  await page.getByRole("button", { name: "Open the demo notebook" }).click();
  await page.getByText("Demo notebook, invented.").waitFor();
  await page.goto(`${inject("address")}#/camera`);
  await page.locator("main a", { hasText: "Upturned skiff before the shed" }).first().click();
  await page.getByRole("link", { name: "Field card" }).click();
  await page.getByRole("heading", { name: "Field card" }).waitFor();
  await page.evaluate(() => document.fonts.ready);
  return opened;
}

const isUpright = ({ from, to }: PrintedLine) => Math.abs(from[0] - to[0]) < 0.01;

describe("a page true to size", () => {
  test("the ruler of this test: known lines, scaled and moved, are measured as they are [by hand]", async () => {
    const { page, context } = await open({ light: "day" });
    await page.setContent(`<style>@page{size:120mm 90mm;margin:0}body{margin:0}</style>
      <svg style="position:absolute;left:0;top:0" width="120mm" height="90mm" viewBox="0 0 240 180" stroke="black">
      <path d="M20 40h100"/><g transform="translate(10 20) rotate(90) scale(2)"><path d="M0 0h30"/></g></svg>`);
    const [sheet] = printedPages({ pdf: await page.pdf({ preferCSSPageSize: true }) });
    const lengths = sheet?.lines.map(({ lengthMm }) => lengthMm) ?? [];
    expect(lengths).toHaveLength(2);
    for (const length of [50, 30]) expect(lengths.some((one) => Math.abs(one - length) < 0.05)).toBe(true);
    const across = sheet?.lines.find((one) => !isUpright(one));
    expect(across?.from[0]).toBeCloseTo(10, 1);
    expect(across?.from[1]).toBeCloseTo(20, 1);
    await context.close();
  });

  test("the demo's field card prints on A6, A4 and Letter: one page, 100 mm is 100 mm, and the grid is where it should be", async () => {
    const { page, context, complaints } = await cardOfTheSkiff("desk");
    for (const { name, widthMm, heightMm } of papers) {
      await page.getByRole("radio", { name: new RegExp(`^${name}`) }).check({ force: true });
      await page.locator(`.Kit-TrueScale-print[data-paper="${name.toLowerCase()}"]`).waitFor({ state: "attached" });
      const pages = printedPages({ pdf: await page.pdf({ preferCSSPageSize: true }) });
      expect(pages).toHaveLength(1);
      const [sheet] = pages;
      if (sheet === undefined) throw new Error("nothing was printed");
      expect(Math.abs(sheet.widthMm - widthMm)).toBeLessThan(0.3); // Chromium rounds a page up to whole px of 0.26 mm
      expect(Math.abs(sheet.heightMm - heightMm)).toBeLessThan(0.3);

      const check = sheet.lines.filter(({ lengthMm }) => Math.abs(lengthMm - 100) <= rulerMm);
      expect(check, `${name}: the check line`).toHaveLength(1);
      expect(check[0] && isUpright(check[0])).toBe(name === "A6");
      // The card is 89 mm wide, its ten rows 5.6 mm high, its columns of times (89 − 14) / 5 mm wide.
      const across = sheet.lines.filter((line) => !isUpright(line) && Math.abs(line.lengthMm - 89) <= rulerMm);
      expect(across.length, `${name}: bar, head and ten rows`).toBe(12);
      const rows = across
        .map(({ from }) => from[1])
        .sort((a, b) => a - b)
        .slice(1);
      for (const [row, y] of rows.slice(1).entries())
        expect(Math.abs(y - (rows[row] ?? 0) - 5.6)).toBeLessThan(rulerMm);
      const upright = sheet.lines.filter((line) => isUpright(line) && line.lengthMm > 60 && line.lengthMm < 80);
      const columns = upright.map(({ from }) => from[0]).sort((a, b) => a - b);
      expect(columns).toHaveLength(5);
      for (const [column, x] of columns.slice(1).entries())
        expect(Math.abs(x - (columns[column] ?? 0) - 15)).toBeLessThan(rulerMm);
      // Nothing lies nearer to an edge than printers reach.
      for (const { from, to } of sheet.lines) {
        for (const [x, y] of [from, to]) expect(Math.min(x, y, widthMm - x, heightMm - y)).toBeGreaterThan(5 - rulerMm);
      }
    }
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("on a phone: the cells, half stops, a row typed back becomes a sheet and is taken back; in red nothing is white", async () => {
    const { page, context, complaints } = await cardOfTheSkiff("phone");
    const seen = page.locator(".Kit-TrueScale");
    expect(await seen.locator('[data-name="cell 1/15, 1.37 m"]').textContent()).toBe("13 s");
    expect(await seen.locator('[data-name="cell 1/500, distant"]').textContent()).toBe("short");
    expect(await axe({ page })).toEqual([]);
    expect(await smallBoxes({ page, least: 56 })).toEqual([]);
    await page.getByRole("radio", { name: /half stops/ }).check({ force: true });
    await seen.locator('[data-name="cell 1/20, 1.37 m"]').waitFor();

    const keep = page.getByRole("button", { name: "Keep this sheet" });
    expect(await keep.getAttribute("aria-disabled")).toBe("true");
    await page.getByLabel("Code").fill("W30");
    await page.getByLabel("Reading", { exact: true }).fill("1/30");
    await page.getByRole("heading", { name: "W30 has been exposed already" }).waitFor();
    await page.getByLabel("Code").fill("W41");
    await page.getByLabel("Board to glass").fill("266");
    await page.getByLabel("Cap off for").fill("7.5");
    await page.getByText(/W41: the card says 7\.3 s; given 7\.5 s/).waitFor();
    await keep.click();
    await page.getByRole("link", { name: "W41" }).click();
    await page.getByRole("heading", { name: /W41/ }).first().waitFor();
    await page
      .getByText(/7\.5 s/)
      .first()
      .waitFor();
    await page.getByRole("button", { name: "Take back" }).click();
    await page.goto(`${inject("address")}#/logbook`);
    await page.getByText("W35").first().waitFor();
    await expect.poll(() => page.getByText("W41").count()).toBe(0);

    await page.goBack();
    await page.goBack();
    await page.getByRole("heading", { name: "Field card" }).waitFor();
    await page.evaluate(() => localStorage.setItem("light", "red"));
    await page.reload();
    await page.getByText("daylight; the printer’s window is white").waitFor();
    const { greenOrBlue, lit } = await pixels({ page, png: await page.screenshot() });
    expect(greenOrBlue).toBe(0);
    expect(lit).toBeGreaterThan(200);
    expect(complaints).toEqual([]);
    await context.close();
  });
});
