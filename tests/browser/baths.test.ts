import { afterEach, expect, test } from "vitest";
import { axe, type Opened, open, pixels, smallBoxes } from "./helpers.ts";

let opened: Opened | undefined;

afterEach(async () => {
  const { context, complaints } = opened ?? {};
  opened = undefined;
  await context?.close();
  expect(complaints ?? []).toEqual([]);
});

test("mixes the bleach from what stands in the shed, keeps it as a bath, and discards it into its own vessel", async () => {
  opened = await open({ light: "day", options: { timezoneId: "Europe/Berlin" } });
  const { page } = opened;
  await page.getByRole("button", { name: "Open the demo notebook" }).click();
  await page.getByText("Demo notebook, invented.").waitFor();
  await page.goto(`${page.url().split("#")[0]}#/trays/mixing/peroxide`);

  // The brown bottle is remembered; another one with a bare figure is asked about, never guessed.
  await page.getByRole("row", { name: "peroxide, the brown bottle 91.9 ml" }).waitFor();
  await page.getByText("another", { exact: true }).click();
  await page.getByLabel("What you call it").fill("the new bottle");
  await page.getByLabel("Strength on the label").fill("9 %");
  await page.getByRole("heading", { name: "“9 %” does not say what it is a part of" }).waitFor();
  await page.getByRole("button", { name: /^9 % w\/w, by weight/ }).click();
  await page.getByRole("row", { name: "the new bottle 123 ml" }).waitFor();

  // What must not be near it is refused with the safer way.
  await page.getByText("chlorine bleach", { exact: true }).click();
  await page.getByRole("heading", { name: /react violently/ }).waitFor();
  await page.getByText("none of these", { exact: true }).click();

  // Read once, the cautions that may go are gone for this sitting; the others stay.
  await page.getByText("No kitchen measures").waitFor();
  await page.getByRole("button", { name: "Cautions read, for this sitting" }).click();
  await page.getByText("No kitchen measures").waitFor({ state: "detached" });
  await page.getByText("Never stopper mixed or used bleach").waitFor();
  expect(await axe({ page })).toEqual([]);
  expect(await smallBoxes({ page, least: 56 })).toEqual([]);

  await page.getByRole("button", { name: "Mixed now" }).click();
  await page.getByRole("heading", { name: "How it is" }).waitFor();
  await page.getByText(/^Mixed today \d\d:\d\d, good until about/).waitFor();
  await page.getByText("Vented. Never stopper it.").first().waitFor();

  // Of two vessels the wrong one is answered with a reason, and nothing is written down.
  await page.getByRole("button", { name: /^Used fixer/ }).click();
  await page.getByRole("heading", { name: "Not into that one" }).waitFor();
  await page.getByRole("button", { name: /^Used bleach/ }).click();
  await page.getByText(/into the vessel for used bleach. It is offered to no run any more/).waitFor();

  await page.goto(`${page.url().split("#")[0]}#/trays/baths`);
  await page.getByText("the new bottle").waitFor();
  expect(await page.getByText(/Mixed today/).count()).toBe(0);
});

test("a bleach past its last hour stands on the door of the Trays only to be discarded, in red light without green or blue", async () => {
  opened = await open({ light: "red" });
  const { page } = opened;
  await page.clock.install({ time: new Date("2026-11-25T18:00:00Z") });
  await page.reload();
  await page.getByRole("button", { name: "Open the demo notebook" }).click();
  await page.getByText("Demo notebook, invented.").waitFor();
  await page.goto(`${page.url().split("#")[0]}#/trays/mixing/peroxide`);
  await page.getByRole("button", { name: "Mixed now" }).click();
  await page.getByRole("heading", { name: "How it is" }).waitFor();
  await page.clock.setSystemTime(new Date("2026-11-26T07:00:00Z"));
  await page.clock.runFor(31_000);
  await page.getByText("It goes into no further run").waitFor();
  await page.goto(`${page.url().split("#")[0]}#/trays`);
  await page.getByRole("heading", { name: "Peroxide still stands there: discard it" }).waitFor();
  const { lit, greenOrBlue } = await pixels({ page, png: await page.screenshot() });
  expect(lit).toBeGreaterThan(1000);
  expect(greenOrBlue).toBe(0);
});
