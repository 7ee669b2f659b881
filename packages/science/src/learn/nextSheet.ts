import { OutOfDomain } from "../errors/outOfDomain.ts";
import {
  requireFinite,
  requireInteger,
  requireNotNegative,
  requirePositive,
  requireWithin,
} from "../errors/require.ts";
import { choleskyFlat, solveFlat } from "../numbers/choleskyFlat.ts";
import { bestSettings } from "./bestSettings.ts";
import { curveCovariance, spread } from "./fittedCurve.ts";
import { curveCount, type ReadyPatch } from "./layPatches.ts";
import { learn } from "./learn.ts";
import type {
  CandidateInput,
  ControlKind,
  Lever,
  LeverEffect,
  LeverSettings,
  NextSheet,
  NextSheetInput,
  RankedCandidate,
  SceneArea,
  TestKind,
} from "./nextTypes.ts";
import { readCampaign, requireLog, requireReversal, usualTimeStops } from "./readCampaign.ts";
import { leverNames, leverRange, leverSlopes, patchesAt, printedAt, rowOf, type Scene, tonesAt } from "./sceneTones.ts";
import { standardCandidates } from "./standardCandidates.ts";
import { noiseOf, teach } from "./teach.ts";

const NINE_IN_TEN = 1.6448536269514722;
const NOW: LeverSettings = { stops: 0, flashS: 0, log2u1: 0, rounds: 2, log2u2: 0 };
const [HORIZON, NEW_SD, TOLERANCE] = [3, 0.012, 0.05];
/** A lever is not moved for less than this of a density a range. */
const RELUCTANCE = 0.05;
const WORTH_THE_PAPER = 0.01;
const STEPS = 7;
const HALF_STOP = Math.log10(2) / 2;
const MOST_DOUBLINGS = 6;
const TESTS: readonly TestKind[] = ["picture", "stepTest", "splitStepTest"];
const CONTROLS: readonly ControlKind[] = ["black", "fogged", "base", "baseProcessed", "bleachOnly"];

interface WholeCandidate {
  readonly name: string;
  readonly test: TestKind;
  readonly settings: LeverSettings;
  readonly controls: readonly ControlKind[];
}

/**
 * The one sheet to make now: what each candidate would teach, what it would gain, and when to stop.
 *
 * Formula  E(d) = Σ w [(D − D*)² + g Σ gᵀ + σ_t² j²]; bits = ½ log2(det(V + J Σ Jᵀ)/det V); E after = max(E − tr[W B (BᵀWB + Λ)⁻¹
 *          BᵀW G (Σ − Σ') Gᵀ], 0), B the levers at the best settings, Λ = (0.05/range)²; score = √E(best) − √[(E_sheet + N E_after)/(N+1)].
 * Units    densities, stops, seconds of flash, doublings of dose, rounds; information in bits.
 * Holds    for direct positives; score and bits are what is expected before the sheet is made, to first order.
 * Error    the score looks one sheet ahead; for learning alone, go by bits.
 *
 * @throws {OutOfDomain} notAReversal, tooFew, unknownSheet, notPositive, negative, outOfRange, wetAndDryMixed, papersMixed, processesMixed, unknownKey, missingKey, unknownWord, wrongType, twoOfOne, toneOutOfReach, notFinite
 * @source raiffa-schlaifer-1961: what a test is worth beforehand (from memory); none: its linear form (by hand)
 * @example nextSheet({ sheets: [{ sheet: "W30" }], patches: [{ sheet: "W30", logExposure: 1, density: { value: 0.9, sd: 0.01 } }], scene: [{ area: "snow", logExposure: 1.6, wanted: 0.3 }], candidates: [{ name: "repeat" }] }).bestPicture // "repeat"
 */
export function nextSheet(input: NextSheetInput): NextSheet {
  const { scene: areas, horizon = HORIZON, newSd = NEW_SD, tolerance = TOLERANCE, levers = leverNames } = input;
  const { campaign, process } = readCampaign(input);
  requireReversal(process);
  const weights = weightsOf(areas);
  const now = settingsOf(input.now, NOW, "now/");
  requireNotNegative({ horizon });
  requirePositive({ newSd, tolerance });
  for (const [index, lever] of levers.entries()) {
    if (!leverNames.includes(lever)) {
      throw new OutOfDomain("unknownWord", { levers: lever, choices: leverNames }, `levers/${index}`);
    }
  }
  const learnt = learn(campaign, input.rescale ?? true);
  const z = new Float64Array(curveCount + 1);
  z.set(learnt.optimum.z.subarray(0, curveCount));
  const scene: Scene = {
    areas,
    weights,
    surface: campaign.surface,
    z,
    covariance: curveCovariance(learnt),
    timeStops: usualTimeStops,
  };
  const best = bestSettings(scene, now, levers);
  const atBest = tonesAt(scene, best);
  const atNow = tonesAt(scene, now);
  const rmsBest = Math.sqrt(atBest.error);
  const answers = answerOfLevers();
  const sdTargetsBefore = sdTargets(scene.covariance);
  const noise = noiseOf(learnt, newSd, usualTimeStops);

  const listed = input.candidates?.map((each, index) => wholeOf(each, `candidates/${index}/`));
  if (listed?.length === 0) throw new OutOfDomain("tooFew", { candidates: 0, least: 1 }, "candidates");
  const whole = listed ?? standardCandidates(now, best, levers).map((each) => wholeOf(each, "now/"));
  const candidates = whole.map(ranked).sort((one, other) => other.score - one.score);
  const single = candidates
    .filter(({ test, controls, settings }) => {
      const moved = leverNames.filter((lever) => settings[lever] !== now[lever]);
      return test === "picture" && controls.length === 0 && moved.length === 1;
    })
    .sort((one, other) => other.bits - one.bits);
  return {
    best: { settings: best, rms: rmsBest },
    candidates,
    // A test may have the best score and is no picture; where tests alone are asked about, the best of them.
    bestPicture: (candidates.find(({ test }) => test === "picture") ?? candidates[0])?.name ?? "",
    oneChange: single[0]?.name ?? null,
    levers: whole.filter(isALever).map(leverOf),
    stop: stopOf(),
  };

  function wholeOf({ name, settings, controls = [], test = "picture" }: CandidateInput, at: string): WholeCandidate {
    if (!TESTS.includes(test)) throw new OutOfDomain("unknownWord", { test, choices: TESTS }, `${at}test`);
    for (const [index, kind] of controls.entries()) {
      if (!CONTROLS.includes(kind)) {
        throw new OutOfDomain("unknownWord", { controls: kind, choices: CONTROLS }, `${at}controls/${index}`);
      }
    }
    return { name, test, settings: settingsOf(settings, now, `${at}settings/`), controls };
  }

  function ranked({ name, test, settings, controls }: WholeCandidate): RankedCandidate {
    const isPicture = test === "picture";
    const printed = printedAt(
      scene,
      isPicture ? patchesAt(areas, settings, controls) : testPatches(test, settings, controls),
    );
    const { bits, covariance } = teach(scene.covariance, printed, noise);
    const sheet = isPicture ? tonesAt(scene, settings).error : atNow.error;
    const after = Math.max(atBest.error - drop(covariance), 0);
    return {
      name,
      test,
      settings,
      controls,
      bits,
      sdTargetsBefore,
      sdTargetsAfter: sdTargets(covariance),
      rmsSheet: Math.sqrt(sheet),
      rmsAfter: Math.sqrt(after),
      rmsNow: rmsBest,
      score: rmsBest - Math.sqrt((sheet + horizon * after) / (horizon + 1)),
    };
  }

  /** Seven half stops about the middle of the scene; split, on four strips processed apart. */
  function testPatches(
    test: TestKind,
    settings: LeverSettings,
    controls: readonly ControlKind[],
  ): readonly ReadyPatch[] {
    const logs = areas.map(({ logExposure }) => logExposure);
    const middle = (Math.min(...logs) + Math.max(...logs)) / 2;
    const steps = Array.from({ length: STEPS }, (_, step) => ({
      logExposure: middle + (step - (STEPS - 1) / 2) * HALF_STOP,
    }));
    if (test === "stepTest") return patchesAt(steps, settings, controls);
    return [0, 1].flatMap((doubling) =>
      [1, 3].flatMap((rounds) =>
        patchesAt(steps, { ...settings, log2u1: settings.log2u1 + doubling, rounds }, controls),
      ),
    );
  }

  function sdTargets(covariance: Float64Array): number {
    let sum = 0;
    for (const [index] of areas.entries()) {
      sum += (weights[index] ?? 0) * spread(covariance, rowOf(atBest.printed, index));
    }
    return Math.sqrt(Math.max(0, sum));
  }

  /** W B (BᵀWB + Λ)⁻¹ BᵀW: how the levers would answer to better knowledge of each area, area by area. */
  function answerOfLevers(): readonly Float64Array[] {
    const slopes = leverSlopes(scene, best, levers);
    const size = levers.length;
    const matrix = new Float64Array(size * size);
    for (const [one, lever] of levers.entries()) {
      for (let other = 0; other <= one; other += 1) {
        let sum = one === other ? (RELUCTANCE / leverRange[lever]) ** 2 : 0;
        for (const [area, row] of slopes.entries()) sum += (weights[area] ?? 0) * (row[one] ?? 0) * (row[other] ?? 0);
        matrix[one * size + other] = sum;
      }
    }
    choleskyFlat(matrix, size);
    return slopes.map((row, area) => {
      const solved = row.map((value) => value * (weights[area] ?? 0));
      solveFlat(matrix, size, solved);
      return Float64Array.from(slopes, (other, index) => {
        const sum = other.reduce((all, value, lever) => all + value * (solved[lever] ?? 0), 0);
        return sum * (weights[index] ?? 0);
      });
    });
  }

  /** What knowing better takes off the error of the sheets that follow. */
  function drop(after: Float64Array): number {
    const gained = scene.covariance.map((value, index) => value - (after[index] ?? 0));
    let sum = 0;
    for (const [one, line] of answers.entries()) {
      for (const [other, by] of line.entries()) {
        sum += by * spread(gained, rowOf(atBest.printed, one), rowOf(atBest.printed, other));
      }
    }
    return sum;
  }

  function isALever({ test, controls, settings }: WholeCandidate): boolean {
    return test === "picture" && controls.length === 0 && leverNames.some((lever) => settings[lever] !== now[lever]);
  }

  function leverOf({ name, settings }: WholeCandidate): LeverEffect {
    const { printed } = tonesAt(scene, settings);
    return {
      name,
      settings,
      areas: areas.map(({ area }, index) => {
        const value = (printed.density[index] ?? 0) - (atNow.printed.density[index] ?? 0);
        // What is uncertain of both falls out.
        const before = rowOf(atNow.printed, index);
        const row = rowOf(printed, index).map((slope, parameter) => slope - (before[parameter] ?? 0));
        const sd = Math.sqrt(Math.max(0, spread(scene.covariance, row)));
        return {
          area,
          change: { value, sd },
          interval: { low: value - NINE_IN_TEN * sd, high: value + NINE_IN_TEN * sd },
        };
      }),
    };
  }

  function stopOf(): NextSheet["stop"] {
    if (rmsBest <= tolerance && sdTargetsBefore <= tolerance) return { kind: "reached" };
    if (Math.sqrt(atBest.bias) > tolerance && sdTargetsBefore < tolerance / 2) return { kind: "limitReached" };
    const isWorthIt = candidates.some(({ score, rmsAfter }) => {
      return score >= WORTH_THE_PAPER || rmsBest - rmsAfter >= WORTH_THE_PAPER;
    });
    return isWorthIt ? null : { kind: "notWorthThePaper" };
  }
}

function weightsOf(areas: readonly SceneArea[]): Float64Array {
  if (areas.length === 0) throw new OutOfDomain("tooFew", { scene: 0, least: 1 }, "scene");
  for (const [index, { logExposure, wanted, weight = 1 }] of areas.entries()) {
    requireLog({ [`scene/${index}/logExposure`]: logExposure });
    requirePositive({ [`scene/${index}/wanted`]: wanted, [`scene/${index}/weight`]: weight });
  }
  const sum = areas.reduce((all, { weight = 1 }) => all + weight, 0);
  return Float64Array.from(areas, ({ weight = 1 }) => weight / sum);
}

/** Settings that a sheet can have; what is left out is as `usual`. */
function settingsOf(
  given: { readonly [Name in Lever]?: number | undefined } | undefined,
  usual: LeverSettings,
  at: string,
): LeverSettings {
  const { stops = usual.stops, flashS = usual.flashS, log2u1 = usual.log2u1 } = given ?? {};
  const { rounds = usual.rounds, log2u2 = usual.log2u2 } = given ?? {};
  requireFinite({ [`${at}stops`]: stops });
  requireWithin({ [`${at}stops`]: stops }, { least: -30, most: 30 });
  requireNotNegative({ [`${at}flashS`]: flashS });
  requireWithin({ [`${at}log2u1`]: log2u1, [`${at}log2u2`]: log2u2 }, { least: -MOST_DOUBLINGS, most: MOST_DOUBLINGS });
  requireInteger({ [`${at}rounds`]: rounds });
  requireNotNegative({ [`${at}rounds`]: rounds });
  return { stops, flashS, log2u1, rounds, log2u2 };
}
