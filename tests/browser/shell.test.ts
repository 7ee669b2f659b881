import { describe, expect, inject, test } from "vitest";
import { axe, open, type Screen, screens, smallBoxes } from "./helpers.ts";

const every = Object.keys(screens) as Screen[];

describe("the first visit", () => {
  test("an empty notebook says what can be done, and speaks only of rooms that exist", async () => {
    const { page, context, complaints } = await open();
    await page.getByRole("heading", { name: /An empty notebook/ }).waitFor();
    const rooms = page.getByRole("navigation", { name: "Rooms" }).getByRole("link");
    expect(await rooms.allTextContents()).toEqual(["Shelf", "Camera", "Trays", "Logbook"]);
    expect(await page.locator("main").textContent()).not.toMatch(/Bench/);
    await page.getByRole("button", { name: /I have a reading now/ }).click();
    await page.getByRole("heading", { name: "I have a reading now" }).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });

  test.each(every)("axe finds nothing wrong by day [wcag-2.2], %s", async (screen) => {
    const { page, context } = await open({ screen, light: "day" });
    expect(await axe({ page })).toEqual([]);
    await context.close();
  });

  test("axe finds nothing wrong in red light, nor in the two questions between the lights", async () => {
    const { page, context } = await open({ light: "day" });
    await page.getByRole("button", { name: "Red light" }).click();
    await page.getByRole("heading", { name: "Before the lights go out" }).waitFor();
    expect(await axe({ page })).toEqual([]);
    await page.getByRole("button", { name: "Lights are out" }).click();
    expect(await axe({ page })).toEqual([]);
    await page.getByRole("button", { name: "Daylight" }).click();
    expect(await axe({ page })).toEqual([]);
    await context.close();
  });
});

describe("for every hand and eye", () => {
  test.each(every)("whatever is pressed is at least 56 high, %s", async (screen) => {
    const { page, context } = await open({ screen });
    expect(await smallBoxes({ page, least: 56 })).toEqual([]);
    await context.close();
  });

  test("nothing is cut off or runs past the edge, at 320 px and with letters twice the size", async () => {
    for (const options of [{ viewport: { width: 320, height: 640 } }, { viewport: { width: 390, height: 844 } }]) {
      const { page, context } = await open({ options });
      await page.addStyleTag({ content: ":root{font-size:200%}" });
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over).toBeLessThanOrEqual(0);
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>("h1, h2, b, span, p, button, a")]
          .filter((part) => !part.closest(".unseen") && part.clientWidth > 0 && part.scrollWidth > part.clientWidth + 1)
          .map((part) => part.textContent),
      );
      expect(cut).toEqual([]);
      await context.close();
    }
  });

  test("the keyboard alone goes through the shell, and one sees where it is", async () => {
    const { page, context } = await open({ screen: "desk" });
    const seen: string[] = [];
    for (let step = 0; step < 12; step++) {
      await page.keyboard.press("Tab");
      const at = await page.evaluate(() => {
        const { activeElement } = document;
        if (!(activeElement instanceof HTMLElement) || activeElement === document.body) return undefined;
        const { outlineWidth, outlineStyle } = getComputedStyle(activeElement);
        return {
          words: (activeElement.querySelector("span") ?? activeElement).textContent ?? "",
          ring: `${outlineWidth} ${outlineStyle}`,
        };
      });
      if (at === undefined) break;
      expect(at.ring).toBe("3px solid");
      seen.push(at.words);
    }
    const order = [
      "Cap & Tray",
      "Red light",
      "I have a reading now",
      "Put a lens on the shelf",
      "Shelf",
      "Camera",
      "Logbook",
    ];
    expect(seen.filter((words) => order.includes(words))).toEqual(order);
    await page.getByRole("link", { name: "Shelf" }).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => page.url()).toContain("#/shelf");
    await context.close();
  });

  test("an address that leads nowhere says so, with a way back", async () => {
    const { page, context } = await open({ at: "#/attic" });
    await page.getByRole("heading", { name: "There is no such page" }).waitFor();
    await page.getByRole("link", { name: "Go to the start" }).click();
    await page.getByRole("heading", { name: /An empty notebook/ }).waitFor();
    await context.close();
  });

  test("where the app cannot be opened, a sentence stands in place of a blank page", async () => {
    const { page, context } = await open();
    await page.route("**/assets/*.js", (route) => route.abort());
    await page.evaluate(async () => {
      for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister();
    });
    await page.reload();
    await page.getByText("could not be opened").waitFor();
    await context.close();
  });
});

describe("installing", () => {
  test("the manifest has no mistakes, and the browser would install it [w3c-appmanifest; peer: Chromium]", async () => {
    const { page, context } = await open({ keepsItself: true });
    const session = await context.newCDPSession(page);
    const { errors, url } = await session.send("Page.getAppManifest");
    expect([errors, url]).toEqual([[], `${inject("address")}manifest.webmanifest`]);
    const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
    expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== "in-incognito")).toEqual([]);
    await context.close();
  });
});
