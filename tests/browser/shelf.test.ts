import { expect, test } from "vitest";
import { axe, open } from "./helpers.ts";

test("a lens in a minute, refined later: what was measured goes before what is engraved", async () => {
  const { page, context, complaints } = await open({ at: "#/shelf/lens/new" });
  await page.getByLabel("Focal length", { exact: true }).fill("210");
  await page.getByLabel("f-number", { exact: true }).fill("11");
  expect(await axe({ page })).toEqual([]);
  await page.getByRole("button", { name: "Put it on the shelf" }).click();
  await page.getByRole("link", { name: "210 mm" }).click();
  await page.getByLabel("Diameter of the pupil, seen from the front").fill("18.4");
  await page.getByRole("button", { name: "Keep it so" }).click();
  await page.getByText("marked f/11; pupil 18.4 mm").waitFor();
  await page.reload();
  await page.getByText("marked f/11; pupil 18.4 mm").waitFor();
  expect(complaints).toEqual([]);
  await context.close();
});

test("a box with an index for each kind; an index told by somebody is surer than a guess", async () => {
  const { page, context } = await open({ at: "#/shelf/box/new", screen: "desk" });
  await page.getByLabel("Your own name for it").fill("box C");
  await page.getByLabel("Sheets left").fill("14");
  await page.getByLabel("Exposure index, positive").fill("1,4");
  const how = page.getByRole("radiogroup", { name: "How the positive’s index was found" });
  await how.locator("label").filter({ hasText: "told by somebody" }).click();
  await page.getByRole("button", { name: "Put it on the shelf" }).click();
  await page.getByRole("img", { name: "14 sheets" }).waitFor();
  await page.getByText("EI 1.4").waitFor();
  await page.getByText("±0.82 stop").waitFor();
  await page.getByRole("button", { name: "Take back" }).click();
  await expect.poll(() => page.getByText("box C").count()).toBe(0);
  await context.close();
});

test("an empty shelf teaches, and nothing on it is a dead end", async () => {
  const { page, context } = await open({ at: "#/shelf" });
  await page.getByText("A meter comes by itself with the first reading.").waitFor();
  await page.goto(`${page.url().split("#")[0]}#/shelf/lens/nothing`);
  await page.getByText("This lens is not on the shelf.").waitFor();
  await page.getByRole("link", { name: "To the shelf" }).click();
  await page.getByRole("heading", { name: "Shelf" }).waitFor();
  await context.close();
});
