import type { Page } from "playwright-core";
import { check, type Figure, type World } from "./promise.ts";
import { timeLoop } from "./timeLoop.ts";
import { summarise, yardstick } from "./yardstick.ts";

const moves = 80;

interface Slid {
  readonly ms: number;
  /** Where the hull's square stood in the painted frame, px from the left. */
  readonly x: number;
}

declare global {
  interface Window {
    slid: Slid[];
  }
}

/**
 * From the finger to the painted print, on the page of a scene on a phone: the cap time is slid to and fro by a mouse, and
 * the clock runs from the input event to behind the frame that shows the squares at their new place. Frames are not held back
 * to a screen's 60 a second.
 */
export async function run({ address, newBrowser }: World): Promise<readonly Figure[]> {
  const figures: Figure[] = [];
  for (const { what, slowed, promised } of [
    { what: "slid cap time to painted print, five areas, phone page", slowed: 1, promised: { p95: 16 } },
    { what: "the same slide, processor slowed 4 times", slowed: 4, promised: { median: 16, p95: 33 } },
  ]) {
    const browser = await newBrowser("--disable-frame-rate-limit", "--disable-gpu-vsync");
    const page = await browser.newPage({ viewport: { width: 390, height: 844 }, reducedMotion: "reduce" });
    await page.addInitScript(() => localStorage.setItem("light", "day"));
    await page.goto(address);
    await page.getByRole("button", { name: "Open the demo notebook" }).click();
    await page.getByText("Demo notebook, invented.").waitFor();
    await page.goto(`${address}#/camera/scenes`);
    await page
      .getByRole("link", { name: /Upturned skiff/ })
      .first()
      .click();
    await page.getByRole("img", { name: /^Curve of/ }).waitFor();
    const thumb = page.locator(".Kit-Scale-thumb").first();
    await thumb.scrollIntoViewIfNeeded();
    const box = await thumb.boundingBox();
    check(box !== null, "no thumb to slide");
    const [x, y] = [(box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2];
    await watch(page);
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: slowed });
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let i = 0; i < 10; i++) await slide(page, x, y, i);
    await page.evaluate(() => {
      window.slid = [];
    });
    for (let i = 0; i < moves; i++) await slide(page, x, y, i);
    await page.mouse.up();
    const slid = await page.evaluate(() => window.slid);
    const loops = await page.evaluate(timeLoop, yardstick.toString());
    await browser.close();

    check(slid.length === moves, `${slid.length} frames for ${moves} moves`);
    for (const [i, one] of slid.entries()) {
      // The mark follows the finger: as many px as the thumb, but for what flare and reciprocity take.
      const before = slid[i - 1];
      if (before === undefined) continue;
      const [finger, mark] = [offset(i + 1) - offset(i), one.x - before.x];
      check(Math.abs(mark - finger) < 1.5, `move ${i}: the finger went ${finger} px, the mark ${mark}`);
    }
    figures.push({
      what,
      unit: "ms",
      timing: summarise(slid.map(({ ms }) => ms)),
      promised,
      yardstickMs: summarise(loops).medianMs,
      checked: "in each painted frame the hull’s square has moved as far as the finger",
      limitedBy: "drawing some hundred shapes and five figures anew (React), layout and painting of the drawing",
    });
  }
  return figures;
}

/** To and fro by 40 px, another px each time. */
function offset(i: number): number {
  const turn = i % 40;
  return turn < 20 ? turn * 2 : (40 - turn) * 2;
}

async function slide(page: Page, x: number, y: number, i: number): Promise<void> {
  const before = await page.evaluate(() => window.slid.length);
  await page.mouse.move(x + offset(i + 1), y);
  await page.waitForFunction((count) => window.slid.length > count, before, { polling: 20 });
}

async function watch(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.slid = [];
    addEventListener("input", (event) => {
      const started = event.timeStamp;
      requestAnimationFrame(() => {
        // A message is handled only behind the frame.
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => {
          port1.close();
          const square = document.querySelector('[data-name="area Hull"]');
          window.slid.push({ ms: performance.now() - started, x: Number(square?.getAttribute("x")) });
        };
        port2.postMessage(0);
      });
    });
  });
}
