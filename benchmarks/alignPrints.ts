import { alignPrints } from "@captray/science/measure";
import { paintPrint, truth } from "../packages/science/fixtures/measure/paintedPrints.ts";
import { check, type Figure } from "./promise.ts";
import { time, yardstick } from "./yardstick.ts";

const size = { widthPx: 1500, heightPx: 1200 };
const shift = { scale: 1.012, rightPx: 23, downPx: -11 };

/** Two prints of one scene found in one another: turned, enlarged, moved, on another paper, with grain. */
export async function run(): Promise<readonly Figure[]> {
  const first = paintPrint({ seed: 3, ...size, grain: 0.02 });
  const loop = time(9, yardstick);
  return [0.4, 1.7, 5, -3].map((turnDegrees) => {
    const laid = { turnDegrees, ...shift };
    const second = paintPrint({
      ...{ seed: 3, ...size, ...laid, grain: 0.03 },
      curve: (tone) => 0.08 + 0.8 * tone ** 1.5,
    });
    const { timing, answer } = time(9, () => alignPrints({ first, second }));
    if (answer.kind !== "aligned") throw new Error(`turned by ${turnDegrees}°: ${answer.why}`);
    const { xx, xy, x0, yx, yy, y0 } = answer.transform;
    const { through } = truth({ ...size, ...laid });
    for (const [x, y] of [
      [0, 0],
      [1500, 0],
      [1500, 1200],
      [0, 1200],
    ] as const) {
      const [u, v] = through(x, y);
      const error = Math.hypot(xx * x + xy * y + x0 - u, yx * x + yy * y + y0 - v);
      check(error <= 0.1, `turned by ${turnDegrees}°, a corner lies ${error} px off`);
    }
    return {
      what: `two prints of 1500 × 1200 found in one another, turned by ${turnDegrees}°`,
      unit: "ms",
      timing,
      promised: { median: 1200 },
      yardstickMs: loop.timing.medianMs,
      checked: "every corner within 0.1 px of where it was painted",
      limitedBy: "rounds of the fit over every second pixel, and the spectra of 512 × 512 copies",
    };
  });
}
