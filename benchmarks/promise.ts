import type { Browser, BrowserContext, BrowserContextOptions } from "playwright-core";
import type { Timing } from "./yardstick.ts";

/** What a promise is tried on: made once by `npm run bench`. */
export interface World {
  /** The repository, with a slash at its end. */
  readonly root: string;
  /** The folder the app was built into for this run. */
  readonly app: string;
  /** Where it is served. */
  readonly address: string;
  /** A browser of its own, with flags besides the usual ones. */
  newBrowser(...flags: readonly string[]): Promise<Browser>;
  /** A browser with a folder of its own, as a person has one: it keeps compiled scripts too. */
  newProfile(options: BrowserContextOptions): Promise<BrowserContext>;
}

/** One figure of a promise about speed, with everything needed to judge it. */
export interface Figure {
  readonly what: string;
  readonly unit: "ms" | "kB";
  readonly timing: Timing;
  /** What is promised of the median and of the 95th percentile, in the same unit; neither where nothing is. */
  readonly promised: { readonly median?: number; readonly p95?: number };
  /** The fixed loop, timed beside it in the same engine; absent where the figure is no time. */
  readonly yardstickMs?: number;
  readonly peers?: readonly { readonly name: string; readonly medianMs: number }[];
  /** How the answer was checked. */
  readonly checked: string;
  /** What a figure that misses is limited by. */
  readonly limitedBy: string;
}

/** Whether a figure keeps what is promised of it; undefined where nothing is. */
export function keeps({ timing, promised }: Figure): boolean | undefined {
  if (promised.median === undefined && promised.p95 === undefined) return undefined;
  return timing.medianMs <= (promised.median ?? Infinity) && timing.p95Ms <= (promised.p95 ?? Infinity);
}

/** Stops the run: a figure of a wrong answer is worth nothing. */
export function check(right: boolean, what: string): void {
  if (!right) throw new Error(`The answer is wrong: ${what}`);
}
