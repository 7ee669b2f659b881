import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axe, open } from "./helpers.ts";

describe("the demo notebook", () => {
  test("says on every page that it is invented, and leaves the person's own notebook as it was", async () => {
    const { page, context, complaints } = await open();
    await page.getByRole("button", { name: "Open the demo notebook" }).click();
    for (const room of ["Camera", "Shelf", "Logbook"]) {
      await page.getByRole("navigation", { name: "Rooms" }).getByRole("link", { name: room }).click();
      await page.getByRole("heading", { name: room, level: 1 }).waitFor();
      expect(await page.getByText("Demo notebook, invented.").isVisible()).toBe(true);
    }
    expect(await page.getByRole("row").count()).toBeGreaterThan(3); // sheets to look at
    expect(await axe({ page })).toEqual([]);
    await page.reload(); // and after a reload it is still the demo
    await page.getByText("Demo notebook, invented.").waitFor();
    await page.getByRole("button", { name: "Leave the demo" }).click();
    await page.getByRole("heading", { name: /An empty notebook/ }).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });
});

describe("how things are kept", () => {
  test("a change says that it is kept and when, survives a reload, and can be taken back", async () => {
    const { page, context } = await open({ at: "#/shelf/lens/new" });
    await putLens(page, "210", "11");
    await page.getByText(/kept on this machine, \d\d:\d\d/).waitFor();
    const strip = page.locator(".Kit-TakeBackStrip");
    await strip.waitFor();
    expect((await strip.boundingBox())?.height).toBeGreaterThanOrEqual(56);

    await page.reload();
    await page.goto(page.url().replace(/#.*/, "#/shelf"));
    await page
      .getByText(/210 mm/)
      .first()
      .waitFor();
    await page.goto(page.url().replace(/#.*/, "#/shelf/lens/new"));
    await putLens(page, "300", "16");
    await page.goto(page.url().replace(/#.*/, "#/shelf"));
    await page
      .getByText(/300 mm/)
      .first()
      .waitFor();
    await strip.getByRole("button", { name: "Take back" }).click();
    await expect.poll(() => page.getByText(/300 mm/).count()).toBe(0);
    expect(await page.getByText(/210 mm/).count()).toBeGreaterThan(0);
    await context.close();
  });

  test("who has a notebook starts in the Camera room, not at the first visit", async () => {
    const { page, context } = await open({ at: "#/shelf/lens/new" });
    await putLens(page, "210", "11");
    await page.goto(page.url().replace(/#.*/, "#/"));
    await page.getByRole("heading", { name: "Camera", level: 1 }).waitFor();
    await context.close();
  });
});

async function putLens(page: Page, focalLength: string, fNumber: string): Promise<void> {
  await page.getByLabel("Focal length", { exact: true }).fill(focalLength);
  await page.getByLabel("f-number", { exact: true }).fill(fNumber);
  await page.getByRole("button", { name: "Put it on the shelf" }).click();
}
