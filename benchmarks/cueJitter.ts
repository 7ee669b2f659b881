import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import type { CueBench } from "./cuePage.ts";
import { pageScript } from "./pageScript.ts";
import { check, type Figure, type World } from "./promise.ts";
import { summarise } from "./yardstick.ts";

const cues = 40;
const everyS = 0.3;

/** The promise: a cue sounds where it was set, to a millisecond of the audio clock, though the page is busy. */
export async function run({ root, newBrowser }: World): Promise<readonly Figure[]> {
  const script = await pageScript({ root, entry: "cuePage" });
  const server = createServer((request, response) => {
    const asked = request.url === "/page.js";
    response.setHeader("content-type", asked ? "text/javascript" : "text/html");
    response.end(
      asked ? script : '<!doctype html><title>benchmark</title><script type="module" src="/page.js"></script>',
    );
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  try {
    const browser = await newBrowser("--autoplay-policy=no-user-gesture-required");
    const page = await browser.newPage();
    page.setDefaultTimeout(120_000);
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    await page.waitForFunction(() => "bench" in globalThis);
    const apart = (await page.evaluate(`bench.jitter(${cues}, ${everyS})`)) as Awaited<ReturnType<CueBench["jitter"]>>;
    check(apart.length === cues, `${apart.length} of ${cues} cues were heard`);
    const yard = summarise((await page.evaluate("Array.from({ length: 12 }, () => bench.loopMs())")) as number[]);
    return [
      {
        what: `a cue against its place on the audio clock, ${cues} of them, the page busy a quarter of the time`,
        unit: "ms",
        timing: summarise([...apart]),
        promised: { median: 1, p95: 1 },
        yardstickMs: yard.medianMs,
        checked: "every cue was heard, by a worklet on the audio clock",
        limitedBy: "a page that is busy for longer than the look-ahead of 0.2 s",
      },
    ];
  } finally {
    server.close();
  }
}
