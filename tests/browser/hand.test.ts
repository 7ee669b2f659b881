import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axe, open, smallBoxes } from "./helpers.ts";

/** A reading of the slip by hand: 1/8 at f/8, ISO 100, so that the strips are short. */
async function reading(page: Page): Promise<void> {
  await page
    .getByRole("link", { name: "I have a reading now" })
    .or(page.getByRole("button", { name: "I have a reading now" }))
    .first()
    .click();
  await fill(page);
}

async function fill(page: Page): Promise<void> {
  for (const [label, text] of [
    ["Time the meter shows", "1/125"],
    ["f-number on the meter", "8"],
    ["ISO on the meter", "100"],
    ["Focal length", "210"],
    ["f-number of the lens", "8"],
    ["Board to ground glass", "distant"],
  ] as const) {
    await page.getByLabel(label, { exact: true }).first().fill(text);
  }
  await page.getByRole("radio", { name: /direct positive/ }).check({ force: true });
}

describe.concurrent("the hand", () => {
  test("planned because the doubt is wide, given strip by strip, answered: the index goes on the box and the doubt narrows", async () => {
    const { page, context, complaints } = await open({ light: "day" });
    await reading(page);
    await page.getByRole("button", { name: "make a step test first" }).click();
    await page.getByRole("heading", { name: "The strips" }).waitFor();
    await page.getByRole("radio", { name: "3 strips" }).check({ force: true });
    await page.getByRole("radio", { name: "half a stop" }).check({ force: true });
    await page.getByRole("radio", { name: "top", exact: true }).check({ force: true });
    const sheet = page.getByRole("list", { name: /The sheet, from the top edge on/ });
    expect(await sheet.getByRole("listitem").count()).toBe(3);
    const totals = (await sheet.locator("b").allTextContents()).map(Number);
    expect(totals.every((total, place) => place === 0 || total > (totals[place - 1] ?? 0))).toBe(true);
    expect(await axe({ page })).toEqual([]);
    expect(await smallBoxes({ page, least: 56 })).toEqual([]);
    await page.getByRole("button", { name: "To the cap" }).click();
    await page.waitForURL(/#\/camera\/cap\//);

    await page.getByText(/3 strips, an opening each/).waitFor();
    for (let strip = 1; strip <= 3; strip++) {
      // The card is moved on meanwhile; a press within half a second would be the bounce of the last.
      await page.waitForTimeout(700);
      await page.keyboard.press("b");
      await page.getByRole("heading", { name: /Cap off|Cap on now/ }).waitFor();
      await page.waitForFunction(() => document.querySelector("h1")?.textContent === "Cap on now");
      await page.keyboard.press("b");
      if (strip < 3) await page.getByText(`${strip} of 3 strips have theirs`).waitFor();
    }
    await page.getByRole("heading", { name: /Kept as given/ }).waitFor();
    const said = await page.getByText(/^Strips: /).innerText();
    const givenS = said
      .replace(/[^\d., ]/g, "")
      .split(",")
      .map(Number);
    await page.getByRole("link", { name: /Which strip is right/ }).click();

    await page.getByRole("radio", { name: /strip 1/ }).check({ force: true });
    await page.getByRole("radio", { name: /between it and strip 2/ }).check({ force: true });
    await page.getByText(/The paper is .* than the ledger was told/).waitFor();
    expect(await axe({ page })).toEqual([]);
    await page.getByRole("button", { name: "Put it on the box" }).click();
    await page.getByText("It is on the box, and every plan with this paper uses it.").waitFor();
    await page.getByRole("link", { name: "Close" }).click();
    // Found with one's own step test: half a stop instead of more than one, and the light, lens and meter are in it.
    await page.getByRole("rowheader", { name: /Paper at EI/ }).waitFor();
    await page
      .getByText(/found with own sheets/)
      .first()
      .waitFor();
    expect(await page.getByText("A step test first would tell").count()).toBe(0);
    // … and the same reading now asks for the very seconds of that strip: the mean of the two, in stops.
    const rightS = Math.sqrt((givenS[0] ?? 0) * (givenS[1] ?? 0));
    const bar = await page.getByLabel("Exposure").locator("p").first().innerText();
    expect(Math.abs(Number.parseFloat(bar) / rightS - 1)).toBeLessThan(0.08);
    expect(complaints).toEqual([]);
    await context.close();
  }, 90_000);

  test("practised with a key: a miss struck out, bias and spread said, and the ledger's hand line follows", async () => {
    const { page, context, complaints } = await open({ screen: "desk", light: "day", at: "#/camera/now" });
    await fill(page);
    await page.getByText("not practised").waitFor();
    await page.getByRole("button", { name: /Your hand/ }).click();
    await page.getByRole("link", { name: "Practise with the cap" }).click();
    await page.getByText("None yet. Six are needed").waitFor();
    expect(await axe({ page })).toEqual([]);
    for (let opening = 1; opening <= 7; opening++) {
      await page.keyboard.press("b");
      await page.getByText("Press as the cap goes on").waitFor();
      await page.waitForTimeout(1500);
      await page.keyboard.press("b");
      await page.getByText("Press as the cap comes off").waitFor();
      await page.waitForTimeout(600);
    }
    await page.getByRole("button", { name: /Strike out opening 1,/ }).click();
    await page.getByText(/6 openings\. The ledger and the cap page go by them/).waitFor();
    await page.getByRole("img", { name: /6 openings about the wanted line, 1 struck out/ }).waitFor();
    await page.getByText("Bias, + is too long").waitFor();
    await page.goBack();
    await page.getByText("as practised").waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  }, 60_000);
});
