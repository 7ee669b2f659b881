import type { Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { axe, open, pixels, type Screen, smallBoxes } from "./helpers.ts";

/** The invented notebook: two holders, W30 exposed in holder 2, side B. */
async function inTheDemo(screen: Screen = "phone") {
  const opened = await open({ light: "day", screen });
  await opened.page.getByRole("button", { name: /demo notebook/ }).click();
  await opened.page.getByText("Demo notebook, invented.").waitFor();
  return opened;
}

async function at(page: Page, path: string, head: string | RegExp): Promise<void> {
  await page.goto(`${inject("address")}#${path}`);
  await page.getByRole("heading", { name: head }).first().waitFor();
}

const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).first().click();
/** A side of a drawn holder: "2 A". */
const side = (page: Page, holder: string, letter: string) =>
  page
    .getByRole("list", { name: `Sides of holder ${holder}` })
    .locator("li")
    .filter({ hasText: new RegExp(`^${letter}\\s`) });

async function onlyRed(page: Page): Promise<void> {
  const { greenOrBlue, lit } = await pixels({ page, png: await page.screenshot() });
  expect(greenOrBlue).toBe(0);
  expect(lit).toBeGreaterThan(200); // something is to be seen
}

/** The next side once the slide is shut, by a pedal's key; the page rests a moment after each press. */
async function slideShut(page: Page): Promise<void> {
  await page.locator(".Shelf-Dark-words:not([data-resting])").waitFor();
  await page.keyboard.press("b");
}

describe("loading", () => {
  test("four sides planned in the light, read out in red by key, through a kill and a reload; one exposed, refused, swapped, taken back", async () => {
    const opened = await inTheDemo();
    const { context, complaints } = opened;
    let { page } = opened;
    await at(page, "/shelf/holder/new", "A holder for the shelf");
    await press(page, "Put it on the shelf");
    await side(page, "4", "A").waitFor();
    const left = async () =>
      Number.parseInt(
        (await page
          .getByText(/\d+ left/)
          .first()
          .textContent()) ?? "",
        10,
      );

    // An exposed side is refused, with its way out.
    await at(page, "/shelf/loading", "Load holders");
    const before = await left();
    await side(page, "2", "B").getByRole("button").click();
    await page.getByRole("heading", { name: "Holder 2, side B is not empty" }).waitFor();
    expect(await axe({ page })).toEqual([]);
    await press(page, "Empty it first: W30 goes to the exposed box");
    for (const [holder, letter] of ["2A", "2B", "4A", "4B"])
      await side(page, holder ?? "", letter ?? "")
        .getByRole("button")
        .click();
    await page.getByRole("radio", { name: /Box C/ }).check({ force: true });
    await page.getByRole("checkbox", { name: "W34" }).uncheck();
    const planned = await page.getByText("Codes for the soft pencil").locator("b").textContent();
    const [first, second] = (planned ?? "").split(", ");
    await press(page, "Lay 4 sheets out");
    await page.getByText(`${first} into holder 2, side A`).waitFor();

    await press(page, "Read it out in the dark");
    await page.getByRole("heading", { name: "Before the lights go out" }).waitFor();
    await onlyRed(page);
    await press(page, "Lights are out: begin");
    await page.getByRole("heading", { name: "Side A" }).waitFor();
    await page.getByText("holder 2, from box C").waitFor();
    await onlyRed(page);
    expect(await axe({ page })).toEqual([]);
    await slideShut(page);
    await page.getByRole("heading", { name: "Side B" }).waitFor();
    await slideShut(page);
    await page.getByText("holder 4, from box C").waitFor();
    await slideShut(page);
    // Killed within the press, and opened anew.
    await page.close({ runBeforeUnload: false });
    page = await context.newPage();
    await page.goto(`${inject("address")}#/shelf/loading/dark`);
    await page.getByText("4 of 4").waitFor();
    await onlyRed(page);
    await page.reload();
    await page.getByText("4 of 4").waitFor();
    await onlyRed(page);

    // Not in yet after all: taken back, and loaded again.
    await page.getByRole("button", { name: /Hold for 2 s/ }).press("Enter");
    await press(page, /^Take back/);
    await page.getByText("3 of 4").waitFor();
    await slideShut(page);
    await page.getByText("4 of 4").waitFor();
    await slideShut(page);
    await page.getByRole("heading", { name: "All loaded" }).waitFor();
    await onlyRed(page);
    await press(page, /To the shelf/);
    await side(page, "4", "B").filter({ hasText: "loaded, not yet exposed" }).waitFor();
    await onlyRed(page);
    await press(page, "Daylight");
    await press(page, "All shut: daylight");
    await at(page, "/shelf/loading", "Load holders");
    expect(await left()).toBe(before - 4);

    // To the cap: several are loaded, so it is asked which.
    await at(page, "/camera/scenes", "Scenes");
    await page
      .getByRole("link", { name: /Upturned skiff before the shed/ })
      .first()
      .click();
    await press(page, "To the cap");
    await page.getByRole("heading", { name: "Which side?" }).waitFor();
    const which = page.url();
    await side(page, "2", "A").getByRole("button").click();
    await page.getByText("holder 2, side A").first().waitFor();
    await press(page, /Press to count in/);
    await page.getByRole("heading", { name: "Cap off" }).waitFor();
    await page.waitForFunction(() => Number(document.querySelector("[role=timer]")?.textContent) >= 1);
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: "Kept as given" }).waitFor();

    // Exposing it again, or loading it, is refused.
    await page.goto(which);
    await side(page, "2", "A").getByRole("button").click();
    await page.getByRole("heading", { name: "Holder 2, side A is not empty" }).waitFor();
    await press(page, "That was another side");
    await page
      .getByText("No other side is empty", { exact: false })
      .or(page.getByRole("button", { name: /Holder 3, side A/ }))
      .first()
      .waitFor();

    // It was side B: swapped from the exposure on, and taken back.
    await at(page, "/logbook", "Logbook");
    await page.getByRole("link", { name: first ?? "", exact: true }).click();
    await press(page, "It was swapped with another sheet");
    await page.getByRole("radio", { name: new RegExp(second ?? "") }).check({ force: true });
    await press(page, `Swap ${first} and ${second} from the exposure on`);
    await page.getByText(`${first} and ${second} swapped from the exposure on.`).waitFor();
    await at(page, "/shelf", "Holders");
    await side(page, "2", "B")
      .filter({ hasText: `${second}, exposed` })
      .waitFor();
    await side(page, "2", "A").filter({ hasText: "loaded, not yet exposed" }).waitFor();
    await press(page, "Take back");
    await side(page, "2", "A")
      .filter({ hasText: `${first}, exposed` })
      .waitFor();
    await side(page, "2", "B").filter({ hasText: "loaded, not yet exposed" }).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  }, 120_000);

  test("every step of a sheet is dated in ordinary words, put right, and taken back", async () => {
    const { page, context, complaints } = await inTheDemo("desk");
    await at(page, "/logbook", /W\d+/);
    await page.getByRole("link", { name: "W30", exact: true }).click();
    await page.getByRole("heading", { level: 1, name: /^W30/ }).waitFor();
    const way = page.getByRole("list", { name: "The way of the sheet" });
    const line = (word: string) => way.locator("li[data-done]").filter({ hasText: new RegExp(`${word}\\b`) });
    await press(page, "In the trays: at another time");
    const when = page.getByLabel("In the trays: when it was");
    await when.fill("soon");
    await page.getByText("An hour, or a day and an hour").waitFor();
    await when.fill("1 Dec 2025 20:02");
    await press(page, "Set it so");
    await line("In the trays").filter({ hasText: "20:02" }).waitFor();
    await press(page, "Drying: now");
    await line("Drying").waitFor();
    await press(page, "Kept: now");
    await line("Kept").waitFor();
    await press(page, "Another step");
    await press(page, "Discarded: now");
    await line("Discarded").waitFor();
    expect(await line("Kept").count()).toBe(0);
    expect(await axe({ page })).toEqual([]);
    expect(await smallBoxes({ page, least: 34 })).toEqual([]);
    await press(page, "Take back");
    await line("Kept").waitFor();
    await press(page, "Exposed: put it right");
    await press(page, "It did not happen");
    await expect.poll(() => line("Exposed").count()).toBe(0);
    await press(page, "Take back");
    await line("Exposed").filter({ hasText: "one opening of 13 s" }).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  }, 60_000);
});
