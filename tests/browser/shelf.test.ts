import { expect, test } from "vitest";
import { axe, open, smallBoxes } from "./helpers.ts";

test("a newcomer: a lens by its pupil, its focal length from two sizes, a box; bad input gets its sentence", async () => {
  const { page, context, complaints } = await open({ at: "#/shelf/lens/new" });
  const field = (label: string) => page.getByLabel(label, { exact: true });
  await field("Focal length").fill("200");
  await field("f-number").fill("11");
  // What cannot be read holds the page back and says where; nothing is kept without it.
  await field("Diameter of the pupil, seen from the front").fill("12 bananas");
  await page.getByText("waits: “Diameter of the pupil, seen from the front” to be mended or emptied").waitFor();
  await field("Diameter of the pupil, seen from the front").fill("18.4");
  await page.getByText("the middle of the lens lies in the lens board").waitFor();
  expect(await axe({ page })).toEqual([]);
  expect(await smallBoxes({ page, least: 34 })).toEqual([]);
  await page.getByRole("button", { name: "Put it on the shelf" }).click();
  await page.getByText(/marked f\/11; measured f\/10\.9 ±0\.5; pupil 18\.4 mm ±0\.5/).waitFor();
  await page.getByRole("img", { name: /pupil 18\.4 mm ±0\.5, drawn to scale with 200 mm/ }).waitFor();

  await page.getByRole("link", { name: "Measure the focal length of 200 mm" }).click();
  const measures = [
    ["Board to ground glass, first", "220.5"],
    ["Its length on the glass, first", "50"],
    ["Its true length, first", "1 m"],
    ["Board to ground glass, second", "220.5"],
    ["Its length on the glass, second", "90"],
    ["Its true length, second", "200"],
  ] as const;
  for (const [label, text] of measures) await field(label).fill(text);
  // The board did not move between two sizes: no lens does that.
  await page.getByRole("status").waitFor();
  await field("Board to ground glass, second").fill("304.5");
  await page.getByText(/Focal length 210/).waitFor();
  await page.getByRole("button", { name: "Keep it" }).click();
  await expect.poll(() => field("Focal length as measured").inputValue()).toBe("210");
  expect(await field("Focal length").inputValue()).toBe("200");

  await page.goto(`${page.url().split("#")[0]}#/shelf`);
  await page.getByText(/focal length measured from two image sizes 210/).waitFor();
  await page.getByRole("link", { name: "Put something on it" }).click();
  await page.getByRole("button", { name: /A box of paper/ }).click();
  await field("Your own name for it").fill("box C");
  await field("Sheets left").fill("14");
  await field("Exposure index, positive").fill("1,4");
  const how = page.getByRole("radiogroup", { name: "How the positive’s index was found" });
  await how.locator("label").filter({ hasText: "told by somebody" }).click();
  await page.getByRole("button", { name: "Put it on the shelf" }).click();
  await page.getByRole("img", { name: "14 of 14 sheets left" }).waitFor();
  await page.getByText("EI 1.4").waitFor();
  await page.getByText("±0.82 stop").waitFor();
  await page.getByText("taken for granted: a guess; one step test would tell").waitFor();
  await page.getByRole("button", { name: "Take back" }).click();
  await expect.poll(() => page.getByText("box C", { exact: true }).count()).toBe(0);
  await page.reload();
  await page.getByText(/focal length measured from two image sizes 210/).waitFor();
  expect(complaints).toEqual([]);
  await context.close();
});

test("camera and meter: an empty shelf teaches, what is put away comes back, and nothing is a dead end", async () => {
  const { page, context, complaints } = await open({ at: "#/shelf", screen: "desk", light: "red" });
  const field = (label: string) => page.getByLabel(label, { exact: true });
  await page.getByText("A meter comes by itself with the first reading.").waitFor();
  await page.getByRole("button", { name: "Put a camera on the shelf" }).click();
  await field("What you call it").fill("the tea chest");
  await page.locator("label").filter({ hasText: "13 × 18 cm" }).click();
  await field("With the bellows shut").fill("420");
  await field("Racked out as far as it goes").fill("140");
  await page.getByRole("status").waitFor();
  await field("With the bellows shut").fill("120");
  await page.getByRole("button", { name: "Put it on the shelf" }).click();
  await page.getByText("racks from 120 mm to 140 mm").waitFor();

  await page.getByRole("button", { name: "Put a meter on the shelf" }).click();
  await field("What you call it").fill("the grey one");
  await page.getByRole("button", { name: "Put it on the shelf" }).click();
  await page.getByRole("link", { name: "the grey one" }).click();
  await page.getByRole("link", { name: "Measure what it is off" }).click();
  for (const [label, text] of [
    ["Time, this meter", "1/60"],
    ["f-number, this meter", "8"],
    ["Time, the other", "1/30"],
    ["f-number, the other", "8"],
  ] as const)
    await field(label).fill(text);
  await page.getByText("It shows too much light by").waitFor();
  expect(await axe({ page })).toEqual([]);
  await page.getByRole("button", { name: "Count it from now on" }).click();
  await expect.poll(() => field("It shows too much light by").inputValue()).toBe("1");
  await page.getByRole("button", { name: "Put it away" }).click();
  await page.getByRole("button", { name: /Put away/ }).click();
  await page.getByRole("button", { name: "Bring the grey one back" }).click();
  await page.getByText(/shows 1 stop too much light, ±0\.39/).waitFor();

  await page.goto(`${page.url().split("#")[0]}#/shelf/lens/nothing`);
  await page.getByText("This lens is not on the shelf.").waitFor();
  await page.getByRole("link", { name: "To the shelf" }).click();
  await page.getByRole("heading", { name: "Shelf" }).waitFor();
  expect(complaints).toEqual([]);
  await context.close();
});
