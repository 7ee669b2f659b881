import { AxeBuilder } from "@axe-core/playwright";
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { inject } from "vitest";

/** The three screens every page is drawn for. */
export const screens = {
  phone: { width: 390, height: 844 },
  tablet: { width: 820, height: 1180 },
  desk: { width: 1440, height: 900 },
} as const;
export type Screen = keyof typeof screens;

export interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What the page complained of: must stay empty. */
  readonly complaints: string[];
}

let connected: Promise<Browser> | undefined;

/** The browser all journeys share. */
export function browser(): Promise<Browser> {
  connected ??= chromium.connect(inject("ws"));
  return connected;
}

export interface OpenInput {
  readonly screen?: Screen;
  /** The light of the last time; without it a first visit. */
  readonly light?: "day" | "red";
  /** After the address: "#/shelf". */
  readonly at?: string;
  readonly options?: BrowserContextOptions;
  /** Lets the app keep itself for later: only where that is what is tried, since every fresh context fetches all of it. */
  readonly keepsItself?: boolean;
  readonly on?: Browser;
}

/** A fresh notebook in a fresh browser context, opened at a page. */
export async function open({
  screen = "phone",
  light,
  at = "",
  options = {},
  keepsItself = false,
  on,
}: OpenInput = {}): Promise<Opened> {
  const context = await (on ?? (await browser())).newContext({
    viewport: screens[screen],
    reducedMotion: "reduce",
    locale: "en-GB",
    serviceWorkers: keepsItself ? "allow" : "block",
    ...options,
  });
  if (light !== undefined) {
    await context.addInitScript((kept) => {
      if (localStorage.getItem("light") === null) localStorage.setItem("light", kept);
    }, light);
  }
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("pageerror", (problem) => complaints.push(problem.message));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  await page.goto(inject("address") + at);
  await page.locator("main h1").first().waitFor();
  return { page, context, complaints };
}

/** What axe finds wrong on the page: rule and place, one line each. In red light contrasts are asked apart: axe sees greys. */
export async function axe({ page }: { readonly page: Page }): Promise<string[]> {
  // No page of ours has frames, so its results need no page of their own to be put together in.
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
}

/** How many points of a picture have green or blue, and the brightest red; codes as the screen got them, no profile applied. */
export async function pixels({ page, png }: { readonly page: Page; readonly png: Buffer | string }): Promise<{
  points: number;
  lit: number;
  greenOrBlue: number;
  first: readonly number[];
}> {
  const base64 = typeof png === "string" ? png : png.toString("base64");
  return page.evaluate(async (data) => {
    const bytes = Uint8Array.from(atob(data), (sign) => sign.charCodeAt(0));
    const picture = await createImageBitmap(new Blob([bytes]), { colorSpaceConversion: "none" });
    const canvas = new OffscreenCanvas(picture.width, picture.height);
    const drawing = canvas.getContext("2d", { colorSpace: "srgb" });
    if (drawing === null) throw new Error("no canvas");
    drawing.drawImage(picture, 0, 0);
    const codes = drawing.getImageData(0, 0, picture.width, picture.height).data;
    let lit = 0;
    let greenOrBlue = 0;
    for (let i = 0; i < codes.length; i += 4) {
      if ((codes[i] ?? 0) > 0) lit++;
      if ((codes[i + 1] ?? 0) > 0 || (codes[i + 2] ?? 0) > 0) greenOrBlue++;
    }
    return { points: codes.length / 4, lit, greenOrBlue, first: [...codes.slice(0, 3)] };
  }, base64);
}

/** The boxes that are pressed, smaller than they may be: words and size. Words in a line of text are let off. */
export async function smallBoxes({ page, least }: { readonly page: Page; readonly least: number }): Promise<string[]> {
  return page.evaluate((wanted) => {
    const pressed = [
      ...document.querySelectorAll<HTMLElement>('button, a[href], input:not([type="radio"]), [role="radio"]'),
    ];
    return pressed
      .filter((box) => box.checkVisibility() && !box.closest("[hidden], .unseen") && box.dataset.inline === undefined)
      .map((box) => ({ box, size: (box.closest("label, .Kit-Field-box") ?? box).getBoundingClientRect() }))
      .filter(({ size }) => size.height < wanted - 0.5 && size.width > 1)
      .map(
        ({ box, size }) => `${box.textContent || box.tagName}: ${Math.round(size.width)} by ${Math.round(size.height)}`,
      );
  }, least);
}
