import fc from "fast-check";
import { expect, test } from "vitest";
import { expectClose, expectRefusal, seeded } from "../../fixtures/optics/checking.ts";
import peer from "../../fixtures/tone/flash-strip.json" with { type: "json" };
import { type FlashRateFromDensitiesInput, flashRateFromDensities } from "./flashRateFromDensities.ts";
import { flashRateFromStrip } from "./flashRateFromStrip.ts";
import { type FlashThresholdInput, flashThreshold } from "./flashThreshold.ts";
import { forward } from "./forward.ts";
import { lightness } from "./lightness.ts";
import { planExposureFlash } from "./planExposureFlash.ts";
import { planFlashStrip } from "./planFlashStrip.ts";

test.each(peer.thresholds)(
  "the least flash that shows, case %# [peer: scipy brentq; spread of 20 000 drawn papers]",
  (one) => {
    const found = flashThreshold(one.in as FlashThresholdInput);
    expectClose(found.logExposure, one.logExposure, 1e-6, 2e-6); // the peer's return factor comes from a table
    expectClose(found.eyeSdLn, one.eyeSdLn, 1e-3);
    expectClose(Math.sqrt(found.sdLn ** 2 - found.eyeSdLn ** 2), one.paperSdLn, 0.03); // ±3 %: spread of 20 000, three of its sds
  },
);

test("a flash of the threshold moves the bare tone by 1.5 in L*: up in a direct positive, down in a negative [forward; cie-15]", () => {
  for (const process of ["reversal", "negative"] as const) {
    const { logExposure, bareDensity, seenDensity } = flashThreshold({ process });
    const { density } = forward({
      curve: { phi: 1e-5, fr: 1 },
      sheets: [
        { process, flashS: 0 },
        { process, flashS: 10 ** logExposure },
      ],
      patches: [
        { sheet: 0, kind: "image", logExposure: -30 },
        { sheet: 1, kind: "image", logExposure: -30 },
      ],
    });
    expectClose(density[0] ?? 0, bareDensity, 1e-9);
    expectClose(density[1] ?? 0, seenDensity, 1e-9);
    const change = lightness({ density: density[1] ?? 0 }) - lightness({ density: density[0] ?? 0 });
    expectClose(change, process === "reversal" ? 1.5 : -1.5, 1e-9);
  }
});

test("the eye's step lies between the 1 often said and the 2.3 found; both within nine in ten [jnd-pages]", () => {
  const [low, high] = [1, 2.3].map((step) => Math.abs(Math.log(step / 1.5)));
  expect(low).toBeLessThan(1.645 * 0.4);
  expect(high).toBeLessThan(1.645 * 0.4 + 1e-9);
});

test("in blacks the eye's step is several times more density than in whites [cie-15: slope of L*, by hand]", () => {
  const black = flashThreshold({});
  const white = flashThreshold({ process: "negative" });
  // dL*/dD = −ln 10 · 903.3 Y below Y 0.00886, −ln 10 · 116/3 · Y^(1/3) above: at D 2.0 about −21, at D 0.15 about −79.
  expect(black.bareDensity - black.seenDensity).toBeGreaterThan(0.06);
  expect(white.seenDensity - white.bareDensity).toBeLessThan(0.025);
});

test("a guessed index adds its 0.7 stop to the doubt, half the index doubles the light [by hand: ln 2 · 0.7]", () => {
  const guessed = flashThreshold({ paper: { exposureIndex: 1, exposureIndexSdStops: 0.7 } });
  const sure = flashThreshold({ paper: { exposureIndex: 1, exposureIndexSdStops: 0 } });
  expectClose(guessed.sdLn ** 2 - sure.sdLn ** 2, (Math.LN2 * 0.7) ** 2, 1e-6);
  expectClose(flashThreshold({ paper: { exposureIndex: 0.5 } }).exposureLxS, 2 * sure.exposureLxS, 1e-9);
});

test("a step of light beyond the paper is refused with what it reaches", () => {
  expectRefusal(() => flashThreshold({ leastLightness: 70 }), "toneOutOfReach", "leastLightness");
  expectRefusal(() => flashThreshold({ leastLightness: 0 }), "notPositive", "leastLightness");
});

test("a strip rises by one factor, in whole seconds, with the expected step in the middle [property]", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-4, max: 100, noNaN: true }),
      fc.double({ min: 0.01, max: 50, noNaN: true }),
      fc.double({ min: 0, max: 2, noNaN: true }),
      fc.integer({ min: 2, max: 12 }),
      (rateLx, thresholdLxS, rateSdLn, steps) => {
        const { timesS, factor, middleS, verdict } = planFlashStrip({ rateLx, thresholdLxS, rateSdLn, steps });
        expect(timesS).toHaveLength(steps);
        expect(factor).toBeGreaterThanOrEqual(2 ** (1 / 3) - 1e-12);
        expect(factor).toBeLessThanOrEqual(2);
        for (const [place, timeS] of timesS.entries()) {
          expect(Number.isInteger(timeS)).toBe(true);
          expect(timeS).toBeGreaterThan(timesS[place - 1] ?? 0);
        }
        expectClose(middleS, thresholdLxS / rateLx);
        if (verdict === "fits" && factor >= 1.4) {
          expect(timesS[0]).toBeLessThanOrEqual(Math.ceil(middleS));
          expect(timesS.at(-1)).toBeGreaterThanOrEqual(Math.floor(middleS));
        }
      },
    ),
    seeded,
  );
});

test("a lamp nobody has measured: seven steps a stop apart, six stops from end to end [by hand: 16 s in the middle]", () => {
  const plan = planFlashStrip({ rateLx: 0.1, thresholdLxS: 1.6, thresholdSdLn: 0.8 });
  expect(plan.timesS).toEqual([2, 4, 8, 16, 32, 64, 128]);
  expect(plan.verdict).toBe("fits");
});

test("a lamp out of a hand's reach is said to be, too bright or too dim [by hand]", () => {
  expect(planFlashStrip({ rateLx: 2, thresholdLxS: 1.6 }).verdict).toBe("lampTooBright");
  expect(planFlashStrip({ rateLx: 0.001, thresholdLxS: 1.6 }).verdict).toBe("lampTooDim");
  expectRefusal(() => planFlashStrip({ rateLx: 0, thresholdLxS: 1 }), "notPositive", "rateLx");
  expectRefusal(() => planFlashStrip({ rateLx: 1, thresholdLxS: 1, steps: 1 }), "outOfRange", "steps");
});

test("between 6 and 12 s: the middle in ln t, and a stop's width over √12 [by hand: 1.2 / √72; ln 2 / √12]", () => {
  const { rateLx, sdLn, stripSdLn } = flashRateFromStrip({
    lastUnseenS: 6,
    firstSeenS: 12,
    thresholdLxS: 1.2,
    thresholdSdLn: 0.5,
    eyeSdLn: 0.3,
  });
  expectClose(rateLx, 1.2 / 8.48528137);
  expectClose(sdLn, Math.hypot(0.20009433, 0.5));
  expectClose(stripSdLn, Math.hypot(0.20009433, 0.3));
  expectRefusal(
    () => flashRateFromStrip({ lastUnseenS: 6, firstSeenS: 6, thresholdLxS: 1 }),
    "outOfRange",
    "firstSeenS",
  );
});

test("half the light asks for twice the seconds: the rate is that of the flash that shows [property]", () => {
  const once = flashRateFromStrip({ lastUnseenS: 4, firstSeenS: 6, thresholdLxS: 1 });
  const twice = flashRateFromStrip({ lastUnseenS: 8, firstSeenS: 12, thresholdLxS: 1 });
  expectClose(twice.rateLx, once.rateLx / 2);
  expectClose(twice.sdLn, once.sdLn);
});

test.each(peer.strips)("the rate is found again from the densities it printed, case %# [peer: scipy model]", (one) => {
  const found = flashRateFromDensities(one.in as FlashRateFromDensitiesInput);
  expectClose(found.rateLx, one.rateLx, 1e-4); // the peer's return factor comes from a table
  expect(found.used).toBeGreaterThan(1);
  expect(found.stripSdLn).toBeLessThan(found.sdLn);
});

test("steps like the bare one, or changed the wrong way, say nothing; without any other it is refused", () => {
  const steps = [
    { timeS: 4, density: 2.0 },
    { timeS: 8, density: 2.2 },
  ];
  expectRefusal(() => flashRateFromDensities({ bareDensity: 2.0, steps }), "tooFew", "steps");
  const telling = flashRateFromDensities({ bareDensity: 2.0, steps: [...steps, { timeS: 40, density: 1.6 }] });
  expect(telling.used).toBe(1);
});

test("one step alone: its doubt and the bare one's, by the slope of the curve there [forward: slope by differences]", () => {
  const found = flashRateFromDensities({
    process: "negative",
    bareDensity: 0.15,
    steps: [{ timeS: 30, density: 0.55 }],
  });
  const { bareDensity } = flashThreshold({ process: "negative" });
  const at = (flashLxS: number) =>
    forward({
      curve: { phi: 1e-5, fr: 1 },
      sheets: [{ process: "negative", flashS: flashLxS }],
      patches: [{ sheet: 0, kind: "image", logExposure: -30 }],
    }).density[0] ?? Number.NaN;
  const lxS = found.rateLx * 30;
  expectClose(at(lxS) - bareDensity, 0.4, 1e-4);
  const slope = (at(lxS * 1.001) - at(lxS / 1.001)) / (2 * Math.log(1.001));
  expectClose(found.stripSdLn, (Math.SQRT2 * 0.02) / slope, 1e-3); // ±0.1 %: slopes over a step of 0.01 in D
});

test("the seconds of a flash do not hang on where the curve lies: strip and plan move together [by hand: both go with 10^x50]", () => {
  const seconds = [0.5, 2].map((exposureIndex) => {
    const paper = { exposureIndex };
    const { exposureLxS } = flashThreshold({ paper });
    const { rateLx } = flashRateFromStrip({ lastUnseenS: 6, firstSeenS: 8, thresholdLxS: exposureLxS });
    const scale = exposureLxS / flashThreshold({}).exposureLxS;
    const x50 = 0.8 + Math.log10(scale);
    const light = { highlightLxS: 30 * scale, shadowLxS: 1.5 * scale, meanLxS: 6 * scale };
    const { flashLxS } = planExposureFlash({ ...light, highlightDensity: 0.55, shadowDensity: 1.6, curve: { x50 } });
    return flashLxS / rateLx;
  });
  expectClose(seconds[0] ?? 0, seconds[1] ?? 1, 1e-9);
});

test("nine in ten hold what is true: 600 strips of drawn papers, lamps and eyes [simulation, seeded]", () => {
  // A generator of its own, so that the simulation shares nothing with the package.
  let state = 20261125;
  const even = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  const normal = () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
  const believed = flashThreshold({ paper: { exposureIndex: 1 } });
  const paperSdLn = Math.sqrt(believed.sdLn ** 2 - believed.eyeSdLn ** 2);
  const { timesS } = planFlashStrip({ rateLx: 0.1, thresholdLxS: believed.exposureLxS, thresholdSdLn: believed.sdLn });
  let held = 0;
  let told = 0;
  for (let strip = 0; strip < 600; strip++) {
    const rate = 0.1 * Math.exp(normal());
    const shows = believed.exposureLxS * Math.exp(paperSdLn * normal() + believed.eyeSdLn * normal());
    const first = timesS.findIndex((timeS) => rate * timeS >= shows);
    const [lastUnseenS, firstSeenS] = [timesS[first - 1], timesS[first]];
    if (lastUnseenS === undefined || firstSeenS === undefined) continue;
    told++;
    const { exposureLxS: thresholdLxS, sdLn: thresholdSdLn } = believed;
    const { rateLx, sdLn } = flashRateFromStrip({ lastUnseenS, firstSeenS, thresholdLxS, thresholdSdLn });
    if (Math.abs(Math.log(rateLx / rate)) <= 1.645 * sdLn) held++;
  }
  expect(told / 600).toBeGreaterThan(0.85); // the span was made for nine in ten
  expect(held / told).toBeGreaterThan(0.86);
  expect(held / told).toBeLessThan(0.96);
});
