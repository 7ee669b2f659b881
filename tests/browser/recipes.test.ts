import { expect, test } from "vitest";
import { axe, open, pixels, smallBoxes } from "./helpers.ts";

test("a newcomer starts from a frame: bad input has its sentence, a bleach without stop its reason, and nothing is lost", async () => {
  const { page, context, complaints } = await open({ at: "#/shelf" });
  const line = (name: RegExp) => page.getByRole("button", { name, expanded: false }).first();
  await page.getByText("What is done in the trays: baths in their order").waitFor();
  await page.getByRole("button", { name: "Start from a frame" }).click();
  await page.getByRole("button", { name: "Start from direct positive, acid and peroxide", exact: true }).click();
  await page.getByText("Common practice: test first.").first().waitFor();
  await page.getByRole("img", { name: /^To scale: first developer 2 min; .* white light from 12 min 30 on/ }).waitFor();

  // Negative times, 60 °C: each has its sentence, and the page waits for it.
  await line(/^1 first developer/).click();
  await page.getByLabel("As a rule").fill("-3");
  await page.getByRole("status").filter({ hasText: "A step cannot be shorter than nothing" }).waitFor();
  await page.getByLabel("As a rule").fill("3 min");
  await page.getByLabel("Mixed to").fill("60");
  await page.getByText("waits: first developer: “60” cannot be kept").waitFor();
  await page.getByLabel("Mixed to").fill("21");
  await page.getByText("One sheet takes about 21 min").waitFor();
  expect(await axe({ page })).toEqual([]);
  expect(await smallBoxes({ page, least: 34 })).toEqual([]);

  // No stop before the bleach: said at the acid, with the reason; going on knowingly is kept.
  await line(/^2 stop/).click();
  await page.getByRole("button", { name: "Take stop out" }).click();
  const acid = page.getByRole("listitem").filter({ has: page.getByRole("button", { name: /^3 acid/ }) });
  await acid.getByRole("button", { name: "I know, go on" }).click();
  await acid.getByText("Done knowingly.").waitFor();
  // A closed page loses nothing that was written on it.
  await page.reload();
  await page.getByText("Changed, not kept yet.").waitFor();
  await page.getByRole("button", { name: "Keep it so" }).click();
  await page.getByText("waits: something to be changed").waitFor();
  await acid.getByText("Done knowingly.").waitFor();
  await page.reload();
  await acid.getByText("Done knowingly.").waitFor();
  // Whatever is kept can be taken back.
  await acid.getByRole("button", { name: /^Mind again/ }).click();
  await page.getByRole("button", { name: "Keep it so" }).click();
  await page.getByRole("button", { name: "Take back" }).click();
  await acid.getByText("Done knowingly.").waitFor();
  expect(complaints).toEqual([]);
  await context.close();
});

test("in red light at the desk: reordered by keys, copied with a longer development, patches drawn, put away and back", async () => {
  const { page, context, complaints } = await open({ at: "#/shelf/recipes", screen: "desk", light: "red" });
  await page.getByRole("button", { name: "Start from direct positive, acid and peroxide mixed" }).click();
  const rinse = page.getByRole("button", { name: /^\d+ rinse 30 s to 2 min/ });
  await rinse.focus();
  for (const place of ["3", "4"]) {
    await page.keyboard.press("Alt+ArrowDown");
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toMatch(new RegExp(`^${place}rinse30 s to 2`));
  }
  for (let press = 0; press < 2; press++) await page.keyboard.press("Alt+ArrowUp");
  await expect.poll(() => page.getByText("waits: something to be changed").count()).toBe(1);

  await page.getByRole("button", { name: "Copy and change" }).click();
  await page.getByRole("heading", { name: "direct positive, acid and peroxide mixed 2", level: 1 }).waitFor();
  await page.getByRole("button", { name: /^1 first developer/ }).click();
  await page.getByLabel("As a rule").fill("3 min");
  await page.getByText("its first development is 1.5 times as strong.").waitFor();
  for (const name of [/^black/, /^bleached only/]) await page.getByRole("button", { name }).click();
  await page
    .getByRole("img", { name: /Control patches, 15 mm each.* For the scan b lies beside the print\./ })
    .waitFor();
  await page.getByText("A fixing bath beside the bleach.").waitFor();
  const png = await page.screenshot();
  expect(await pixels({ page, png })).toMatchObject({ greenOrBlue: 0 });
  await page.getByRole("button", { name: "Keep it so" }).click();
  await page.getByRole("button", { name: "Put it away" }).click();
  await page.getByText("the mixed bath dies within hours").waitFor();
  await expect.poll(() => page.getByRole("link", { name: /mixed 2$/ }).count()).toBe(0);
  await page.getByRole("link", { name: "Close" }).click();
  await page.getByRole("button", { name: /Put away/ }).click();
  await page.getByRole("button", { name: "Bring direct positive, acid and peroxide mixed 2 back" }).click();
  await page.getByRole("link", { name: /mixed 2$/ }).waitFor();
  expect(complaints).toEqual([]);
  await context.close();
});
