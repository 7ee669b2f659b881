import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { open } from "./helpers.ts";
import { readTheLight } from "./readTheLight.ts";

// The board is our own drawing; what the fields make of it is checked where the readers are [packages/science/src/notation].

describe("the number board on a phone", () => {
  test("seven fields without the system's keyboard, walked with next; the answer stays in sight", async () => {
    const { page, context } = await open({ at: "#/camera/now" });
    const time = page.getByLabel("Time the meter shows");
    await time.click();
    await page.getByRole("group", { name: "Number board for a time" }).waitFor();
    expect(await time.getAttribute("inputmode")).toBe("none");

    await press(page, "one over", "1", "5", "next field");
    await page.getByRole("group", { name: "Number board for an f-number" }).waitFor();
    await press(page, "8", "next field", "1", "0", "0", "next field");
    await press(page, "2", "1", "0", "next field", "1", "1", "next field", "2", "4", "8");
    expect(await time.inputValue()).toBe("1/15");
    const board = page.getByRole("textbox", { name: "Board to ground glass" });
    expect(await board.inputValue()).toBe("248");
    await expectAboveTheFoot(page);
    await press(page, "next field"); // past the last one the board shuts
    await expect.poll(() => page.getByRole("group", { name: /Number board/ }).count()).toBe(0);
    await context.close();
  });

  test("back, rub out, a third of a stop, and a key board of one's own beside it", async () => {
    const { page, context } = await open({ at: "#/camera/now" });
    const lens = page.getByLabel("f-number of the lens");
    await lens.click();
    await press(page, "5", "point", "6", "6", "rub out", "a third");
    expect(await lens.inputValue()).toBe("5.6⅓");
    await press(page, "back to the field before");
    await page.keyboard.type("210");
    expect(await page.getByLabel("Focal length").inputValue()).toBe("210");
    await page.keyboard.press("Enter");
    expect(await lens.evaluate((field) => field === document.activeElement)).toBe(true);
    await context.close();
  });

  test("in red light it is there on a desk too; by day the desk has its own keys", async () => {
    for (const [light, boards] of [
      ["red", 1],
      ["day", 0],
    ] as const) {
      const { page, context } = await open({ at: "#/camera/now", screen: "desk", light });
      await page.getByLabel("Focal length").click();
      await page.waitForTimeout(200); // by day nothing may come
      await expect.poll(() => page.getByRole("group", { name: /Number board/ }).count()).toBe(boards);
      await context.close();
    }
  });

  test("keys of at least 56 by 56, also on the smallest phone", async () => {
    const { page, context } = await open({ at: "#/camera/now", options: { viewport: { width: 328, height: 640 } } });
    await page.getByLabel("Focal length").click();
    await page.getByRole("group", { name: /Number board/ }).waitFor();
    const keys = await page
      .getByRole("group", { name: /Number board/ })
      .getByRole("button")
      .all();
    expect(keys.length).toBe(16);
    for (const key of keys) {
      const box = await key.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(56);
    }
    await context.close();
  });
});

describe("what cannot be read", () => {
  test("the text stays, it is said what is wrong, and the likely meaning is one press away", async () => {
    const { page, context } = await open({ at: "#/camera/now" });
    await readTheLight(page, { time: "1/6o" });
    const time = page.getByLabel("Time the meter shows");
    expect(await time.inputValue()).toBe("1/6o");
    expect(await time.getAttribute("aria-invalid")).toBe("true");
    await page.getByRole("button", { name: "It was 1/60" }).click();
    expect(await time.inputValue()).toBe("1/60");
    expect(await page.locator("#app").textContent()).not.toMatch(/NaN|undefined|Infinity(?! at)/);
    await context.close();
  });
});

async function press(page: Page, ...keys: string[]): Promise<void> {
  for (const key of keys) {
    await page
      .getByRole("group", { name: /Number board/ })
      .getByRole("button", { name: key, exact: true })
      .click();
  }
}

/** The field in hand and the exposure both show above the board. */
async function expectAboveTheFoot(page: Page): Promise<void> {
  const field = await page.locator("input:focus").boundingBox();
  const bar = await page.getByRole("region", { name: "Exposure" }).boundingBox();
  const board = await page.getByRole("group", { name: /Number board/ }).boundingBox();
  if (field === null || bar === null || board === null) throw new Error("something is out of sight");
  expect(field.y).toBeGreaterThanOrEqual(0);
  expect(field.y + field.height).toBeLessThanOrEqual(bar.y);
  expect(bar.y + bar.height).toBeLessThanOrEqual(board.y + 0.5);
}
