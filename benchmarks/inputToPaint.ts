import type { CDPSession, Page } from "playwright-core";
import { readTheLight } from "../tests/browser/readTheLight.ts";
import { check, type Figure, type World } from "./promise.ts";
import { timeLoop } from "./timeLoop.ts";
import { summarise, yardstick } from "./yardstick.ts";

const strokes = 60;

interface Painted {
  readonly ms: number;
  /** What the exposure bar said in the painted frame. */
  readonly bar: string;
}

declare global {
  interface Window {
    painted: Painted[];
  }
}

/**
 * From the key to the painted answer, on “I have a reading now” of a phone. A figure is added to the ISO and rubbed out
 * again; the clock starts with the key event and stops behind the frame that shows the other cap time. Frames are not held
 * back to a screen's 60 a second here, since waiting for the screen is no work of ours; a third figure keeps the wait.
 */
export async function run({ address, newBrowser }: World): Promise<readonly Figure[]> {
  const figures: Figure[] = [];
  for (const { what, flags, slowed, promised } of [
    {
      what: "key to painted cap time, phone page",
      flags: ["--disable-frame-rate-limit", "--disable-gpu-vsync"],
      slowed: 1,
      promised: { p95: 16 },
    },
    {
      what: "the same, processor slowed 4 times",
      flags: ["--disable-frame-rate-limit", "--disable-gpu-vsync"],
      slowed: 4,
      promised: { median: 16, p95: 33 },
    },
    { what: "the same, full speed, the wait for a 60 Hz screen included", flags: [], slowed: 1, promised: {} },
  ]) {
    const browser = await newBrowser(...flags);
    const page = await browser.newPage({ viewport: { width: 390, height: 844 }, reducedMotion: "reduce" });
    await page.addInitScript(() => localStorage.setItem("light", "day"));
    await page.goto(`${address}#/camera/now`);
    await page.getByRole("heading", { name: "I have a reading now" }).waitFor();
    await readTheLight(page);
    await page.getByLabel("ISO on the meter").click();
    await page.keyboard.press("End");
    await watch(page);
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: slowed });
    await session.send("Performance.enable", { timeDomain: "threadTicks" });
    for (let i = 0; i < 10; i++) await stroke(page, i);
    await page.evaluate(() => {
      window.painted = [];
    });
    const works: number[] = [];
    for (let i = 0; i < strokes; i++) {
      const before = await workedMs(session);
      await stroke(page, i);
      works.push((await workedMs(session)) - before);
    }
    const painted = await page.evaluate(() => window.painted);
    const loops = await page.evaluate(timeLoop, yardstick.toString());
    await browser.close();

    check(painted.length === strokes, `${painted.length} frames for ${strokes} strokes`);
    for (const [i, { bar }] of painted.entries()) {
      // 1/16 · 2 · (248/210)² · 100/0.7 = 24.9 s at ISO 100, and ten times that, 249 s or about 4 min 10, at ISO 1000.
      check(i % 2 === 0 ? /^4m10/.test(bar) : /^25 s/.test(bar), `stroke ${i} painted “${bar}”`);
    }
    figures.push({
      what,
      unit: "ms",
      timing: summarise(painted.map(({ ms }) => ms)),
      promised,
      yardstickMs: summarise(loops).medianMs,
      checked: "each painted frame shows the right cap time",
      limitedBy:
        "drawing the whole page anew at each stroke (React, six fields, the plan), its layout and painting; the row of processor time says how much of it is work",
    });
    if (figures.length === 1) {
      figures.push({
        what: "processor time of a stroke: the page's main thread, keeping the draft included",
        unit: "ms",
        timing: summarise(works),
        promised: {},
        yardstickMs: summarise(loops).medianMs,
        checked: "as above",
        limitedBy: "",
      });
    }
  }
  return figures;
}

/** What the page's main thread has worked so far, whatever else the machine does. */
async function workedMs(session: CDPSession): Promise<number> {
  const { metrics } = await session.send("Performance.getMetrics");
  return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN);
}

async function stroke(page: Page, i: number): Promise<void> {
  const before = await page.evaluate(() => window.painted.length);
  await page.keyboard.press(i % 2 === 0 ? "0" : "Backspace");
  await page.waitForFunction((count) => window.painted.length > count, before, { polling: 50 });
  // What follows at leisure (keeping the reading) must not lie in the next stroke's way only by chance.
  await page.waitForTimeout(120);
}

async function watch(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.painted = [];
    let started = 0;
    addEventListener(
      "keydown",
      (event) => {
        started = event.timeStamp;
      },
      { capture: true },
    );
    addEventListener("input", () => {
      requestAnimationFrame(() => {
        // A message is handled only behind the frame.
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => {
          port1.close();
          const bar = document.querySelector('[aria-label="Exposure"]')?.textContent ?? "";
          window.painted.push({ ms: performance.now() - started, bar });
        };
        port2.postMessage(0);
      });
    });
  });
}
