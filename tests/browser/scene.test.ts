import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axe, open, screens, smallBoxes } from "./helpers.ts";

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true }).first();

/** A small picture of a boatyard, drawn by the browser itself: sky, snow and a hull. */
async function pictureOfAYard(page: Page, width: number, height: number): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ([wide, high]) => {
      const canvas = new OffscreenCanvas(wide ?? 1, high ?? 1);
      const drawing = canvas.getContext("2d");
      if (drawing === null) throw new Error("no canvas");
      drawing.fillStyle = "#8fa3b5";
      drawing.fillRect(0, 0, canvas.width, canvas.height);
      drawing.fillStyle = "#e8ecef";
      drawing.fillRect(0, canvas.height * 0.6, canvas.width, canvas.height);
      drawing.fillStyle = "#5a4030";
      drawing.fillRect(canvas.width * 0.2, canvas.height * 0.45, canvas.width * 0.6, canvas.height * 0.2);
      const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: "image/png" })).arrayBuffer());
      return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
    },
    [width, height],
  );
  return Buffer.from(base64, "base64");
}

/** Adds an area read at f/8 and ISO 100; the first reading of all says the frame too. */
async function addArea(page: Page, name: string, time: string, isFirst = false): Promise<void> {
  await page.getByRole("button", { name: "Add an area" }).click();
  await field(page, "Name of the area").fill(name);
  await field(page, "The meter says").fill(time);
  if (isFirst) {
    await field(page, "at f/").fill("8");
    await field(page, "at ISO").fill("100");
  }
  await page.getByRole("button", { name: "Add it", exact: true }).click();
  await page.getByRole("button", { name: new RegExp(`^${name}`) }).waitFor();
}

/** Puts a lens of 210 mm at f/11 on the shelf, as a person does. */
async function lensOnTheShelf(page: Page): Promise<void> {
  await page.goto(`${page.url().split("#")[0]}#/shelf/lens/new`);
  await field(page, "Focal length").fill("210");
  await field(page, "f-number").fill("11");
  await page.getByRole("button", { name: "Put it on the shelf" }).click();
  await page.getByRole("heading", { name: "Shelf" }).waitFor();
}

describe("a scene planned before it is read", () => {
  test("on a phone: set up by image size, three areas, one two below mid; range, sharpness, the hour, a photograph", async () => {
    const { page, context, complaints } = await open({ light: "day" });
    await lensOnTheShelf(page);
    await page.goto(`${page.url().split("#")[0]}#/camera`);
    await page.getByRole("button", { name: /^A new scene/ }).click();
    await page.getByRole("heading", { name: "Set-up" }).waitFor();
    await page.getByText("Nothing has been read yet").waitFor();

    // The one lens of the shelf is taken. An image of 90 mm of half a metre: m = 0.18, v = 210 · 1.18 = 247.8 mm.
    await page.locator("label").filter({ hasText: "image size" }).click();
    await field(page, "Size of the image").fill("90");
    await field(page, "Size of the subject").fill("50 cm");
    const others = page.getByRole("table", { name: "The same, said in the other ways" });
    await others.getByText(/^24[78]/).waitFor();
    expect(await others.innerText()).toMatch(/Magnification\s+0\.18/);
    await field(page, "The picture on the paper").fill("13 x 18 cm");
    await others.getByText("The sheet takes in").waitFor();

    await addArea(page, "hull", "1/15", true);
    await addArea(page, "snow", "1/125");
    await addArea(page, "shed door", "1");
    await page.getByText("The scene is 7.0 stops, give or take 0.3: from shed door to snow.").waitFor();
    await page.getByRole("button", { name: /^shed door/ }).click();
    await field(page, "shed door: stops above mid grey").fill("-2");
    await page.getByRole("button", { name: "Place this one 2 stops below mid" }).click();
    await page.getByRole("button", { name: /shed door.*placed −2/s }).waitFor();
    await page.getByRole("button", { name: /hull.*\+4\.0/s }).waitFor();

    // Read once more and averaged: 1 s and 1/4 s have 1/2 s between them.
    await field(page, "Read shed door anew").fill("1/4");
    await page.getByRole("button", { name: "Average it with those before" }).click();
    await page.getByText("The middle of 2 readings.").waitFor();
    await page.getByRole("button", { name: "Take shed door out" }).click();
    await expect.poll(() => page.getByRole("button", { name: /^shed door/ }).count()).toBe(0);
    await page.getByRole("button", { name: "Take back" }).click();
    await page.getByRole("button", { name: /shed door.*1\/2.*placed −2/s }).waitFor();

    expect(await axe({ page })).toEqual([]);
    expect(await smallBoxes({ page, least: 56 })).toEqual([]);

    // A photograph: one of 3000 points is reduced, a text is refused with its sentence, and nothing is lost.
    await field(page, "What it is a picture of").fill("Skiff on the slip");
    await field(page, "Where").fill("on the slip");
    const pick = page.getByLabel("Pick a photograph");
    await pick.setInputFiles({ name: "notes.jpg", mimeType: "image/jpeg", buffer: Buffer.from("no picture") });
    await page.getByText("This file is no photograph that can be read here").waitFor();
    const buffer = await pictureOfAYard(page, 3000, 2000);
    await pick.setInputFiles({ name: "yard.png", mimeType: "image/png", buffer });
    const picture = page.getByRole("img", { name: /^Photograph of/ });
    await picture.waitFor();
    const kept = await picture.evaluate((image: HTMLImageElement) => ({
      width: image.naturalWidth,
      height: image.naturalHeight,
      signs: image.src.length,
    }));
    expect(kept).toMatchObject({ width: 1000, height: 667 });
    expect(kept.signs).toBeLessThan(170_000);
    await page.getByRole("radio", { name: "hull" }).check({ force: true });
    await page.locator("button.Camera-Photograph-picture").click();
    await page.getByRole("img", { name: /marked: hull$/ }).waitFor();
    await page.reload();
    await page.getByRole("img", { name: /marked: hull$/ }).waitFor();
    await page.setViewportSize(screens.desk); // there it stands over the readings, once
    await page.getByRole("table", { name: /^Areas/ }).waitFor();
    await expect.poll(() => page.getByRole("img", { name: /marked: hull$/ }).count()).toBe(1);
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("the skiff of the demo: sharp from 1.31 to 1.43 m; the lamp, the light, the hour; the checklist; copied, put away and back", async () => {
    const { page, context, complaints } = await open({ screen: "desk", light: "day" });
    await page.getByRole("button", { name: "Open the demo notebook" }).click();
    await page.goto(`${page.url().split("#")[0]}#/camera/scenes`);
    await page.getByRole("link", { name: /Upturned skiff before the shed/ }).click();
    await page.getByText("Sharp from 1.31 to 1.43 m").waitFor();
    await page
      .getByRole("img", { name: /Scale of distance: sharp from 1\.31 m to 1\.43 m; focused at 1\.37 m/ })
      .waitFor();
    await page.getByText(/Covers 13 × 18 cm; the corner loses 0\.5 stop/).waitFor();
    const areas = page.getByRole("table", { name: /^Areas/ });
    expect((await areas.innerText()).replace(/\s+/g, " ")).toMatch(
      /snow 1\/125 \+3\.0.*hull 1\/15 0.*shed door 1 s −4\.0/,
    );

    // A focus that cannot be is said, and what was kept stands.
    await page.getByRole("button", { name: "Change the set-up" }).click();
    await field(page, "Board to ground glass").fill("180");
    await page.getByText("The extension (180 mm) is shorter than the focal length (210 mm).").first().waitFor();
    await page.getByRole("button", { name: "Take back" }).click();
    await page.getByText("Sharp from 1.31 to 1.43 m").waitFor();
    await page.getByRole("link", { name: "Checklist before the cap" }).click();
    await page.getByLabel(/The cap on the lens/).check();
    await page.getByText(/^\d to do, in this order/).waitFor();
    await page.getByRole("link", { name: "Close" }).click();

    await page.getByRole("link", { name: "Light and hour of the day" }).click();
    await page.getByRole("radio", { name: /a filament bulb.*\+2\.1/s }).waitFor();
    await field(page, "It stands at").fill("1.5 m");
    await field(page, "Moved to").fill("3 m");
    await page.getByText(/^2\.00 stops more time/).waitFor();
    await page.getByText("Still to say: the place, the day and the sky.").waitFor();
    await field(page, "Latitude").fill("95");
    await page.getByText(/At most 90\./).waitFor();
    await field(page, "Latitude").fill("52° 24′ N");
    await field(page, "Longitude").fill("3.1 W");
    await page.getByRole("textbox", { name: /^Day/ }).fill("2026-12-21");
    await page.locator("label").filter({ hasText: "sun and blue sky" }).click();
    await field(page, "Cap time at least").fill("10");
    const day = page.getByRole("img", { name: /^Cap time over the day/ });
    await expect.poll(() => day.getAttribute("aria-label")).toMatch(/As wanted from \d+:\d\d to \d+:\d\d/);
    expect(await page.locator("main").innerText()).not.toMatch(/NaN|Infinity|undefined/);
    await field(page, "Cap time at least").fill("2 h");
    await page.getByText("No hour that day: there is always too much light").waitFor();

    await page.goto(`${page.url().split("#")[0]}#/camera/scenes`);
    await page.getByRole("button", { name: "Copy Upturned skiff before the shed as a new scene" }).click();
    await page.getByRole("heading", { name: "Upturned skiff before the shed again" }).waitFor();
    await page.getByText("Nothing has been read yet").waitFor();
    await page.goto(`${page.url().split("#")[0]}#/camera/scenes`);
    await page.getByRole("button", { name: "Put Upturned skiff before the shed again away" }).click();
    await page.getByRole("heading", { name: "Put away" }).waitFor();
    await page.getByRole("button", { name: "Show them" }).click();
    await page.getByRole("button", { name: "Fetch Upturned skiff before the shed again back" }).click();
    await page.getByRole("link", { name: /Upturned skiff before the shed again/ }).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });
});
