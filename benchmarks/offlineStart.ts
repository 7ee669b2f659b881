import { readTheLight } from "../tests/browser/readTheLight.ts";
import { check, type Figure, type World } from "./promise.ts";
import { timeLoop } from "./timeLoop.ts";
import { summarise, yardstick } from "./yardstick.ts";

const starts = 21;

declare global {
  interface Window {
    shown?: number;
  }
}

/**
 * The app opened without a network, in a browser that runs already: from the start of the navigation in a new tab to the
 * frame behind which “I have a reading now” stands with the kept reading's cap time.
 */
export async function run({ address, newProfile }: World): Promise<readonly Figure[]> {
  const context = await newProfile({ viewport: { width: 390, height: 844 }, reducedMotion: "reduce" });
  await context.addInitScript(() => {
    localStorage.setItem("light", "day");
    const watch = new MutationObserver(() => {
      if (!/^25 s/.test(document.querySelector('[aria-label="Exposure"]')?.textContent ?? "")) return;
      watch.disconnect();
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => {
          port1.close();
          window.shown = performance.now();
        };
        port2.postMessage(0);
      });
    });
    watch.observe(document, { subtree: true, childList: true, characterData: true });
  });
  const first = await context.newPage();
  await first.goto(`${address}#/camera/now`);
  await readTheLight(first);
  await first.waitForFunction(() => window.shown !== undefined);
  await first.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller === null) {
      await new Promise((taken) => navigator.serviceWorker.addEventListener("controllerchange", taken, { once: true }));
    }
  });
  await first.close();

  await context.setOffline(true);
  const times: number[] = [];
  let loops: number[] = [];
  for (let i = 0; i < starts + 3; i++) {
    const page = await context.newPage();
    await page.goto(`${address}#/camera/now`);
    await page.waitForFunction(() => window.shown !== undefined);
    const shown = await page.evaluate(() => window.shown ?? Number.NaN);
    const heading = await page.locator("main h1").textContent();
    check(heading === "I have a reading now" && Number.isFinite(shown), `start ${i} shows “${heading}”`);
    if (i >= 3) times.push(shown);
    if (i === 3) loops = await page.evaluate(timeLoop, yardstick.toString());
    await page.close();
  }
  await context.close();
  return [
    {
      what: "offline start to the kept reading's cap time, new tab",
      unit: "ms",
      timing: summarise(times),
      promised: { median: 200 },
      yardstickMs: summarise(loops).medianMs,
      checked: "heading and cap time are those of the kept reading",
      limitedBy: "the browser: a new process for the tab, starting React and the first drawing of the page",
    },
  ];
}
