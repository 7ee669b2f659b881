import type { Page } from "playwright-core";

const fields = {
  time: "Time the meter shows",
  meterFNumber: "f-number on the meter",
  iso: "ISO on the meter",
  focalLength: "Focal length",
  lensFNumber: "f-number of the lens",
} as const;

/** The upturned skiff on the slip, overcast: the reading of the invented boatyard. */
export const invented = {
  time: "1/15",
  meterFNumber: "8",
  iso: "100",
  focalLength: "210",
  lensFNumber: "11",
  extension: "248",
  kind: "direct positive" as "direct positive" | "paper negative",
};

/** Fills “I have a reading now”, with whatever is said in place of the invented reading. */
export async function readTheLight(page: Page, said: Partial<typeof invented> = {}): Promise<void> {
  const reading = { ...invented, ...said };
  for (const [name, label] of Object.entries(fields)) {
    await page.getByLabel(label).fill(reading[name as keyof typeof fields]);
  }
  await page.getByRole("textbox", { name: "Board to ground glass" }).fill(reading.extension);
  await page.getByRole("radio", { name: new RegExp(reading.kind) }).check({ force: true });
}
