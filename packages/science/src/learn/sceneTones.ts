import { spread } from "./fittedCurve.ts";
import { layPatches, type ReadyPatch } from "./layPatches.ts";
import type { ControlKind, Lever, LeverSettings, SceneArea } from "./nextTypes.ts";
import { type PrintRows, printRows, roomFor } from "./printRows.ts";

/** The order in which levers are moved. */
export const leverNames: readonly Lever[] = ["stops", "flashS", "log2u1", "rounds", "log2u2"];

/** How far each lever is moved at first, which is also what counts as one step of it. */
export const leverRange: LeverSettings = { stops: 1, flashS: 3, log2u1: 1, rounds: 1, log2u2: 1 };
const STEP: LeverSettings = { stops: 1e-4, flashS: 3e-4, log2u1: 1e-4, rounds: 1e-4, log2u2: 1e-4 };

const START: LeverSettings = { stops: 0, flashS: 0, log2u1: 0, rounds: 2, log2u2: 0 };

/** A scene on a fitted paper. */
export interface Scene {
  readonly areas: readonly SceneArea[];
  /** Add up to 1. */
  readonly weights: Float64Array;
  readonly surface: number;
  /** The optimum: thirteen parameters, then an offset of 0. */
  readonly z: Float64Array;
  readonly covariance: Float64Array;
  readonly timeStops: number;
}

/** The areas of a scene at some settings, and control patches beside them. */
export function patchesAt(
  areas: readonly { readonly logExposure: number }[],
  settings: LeverSettings,
  controls: readonly ControlKind[] = [],
): readonly ReadyPatch[] {
  const light = areas.map(({ logExposure }) => 10 ** (logExposure + settings.stops * Math.log10(2)));
  const same = {
    sheet: 0,
    meanLxS: light.reduce((sum, each) => sum + each, 0) / Math.max(1, light.length),
    flashS: settings.flashS,
    settings: {
      process: "reversal" as const,
      u1: 2 ** settings.log2u1,
      rounds: settings.rounds,
      u2: 2 ** settings.log2u2,
    },
  };
  return [
    ...light.map((imageLxS): ReadyPatch => ({ ...same, kind: "image", imageLxS })),
    ...controls.map((kind): ReadyPatch => ({ ...same, kind, imageLxS: 0 })),
  ];
}

/** Prints patches of one sheet at the optimum. */
export function printedAt({ surface, z }: Scene, patches: readonly ReadyPatch[]): PrintRows {
  const out = roomFor(patches.length);
  printRows(layPatches(patches, 1), surface, z, out);
  return out;
}

/** Tones of a scene at some settings, and how far off they would probably be. */
export interface Tones {
  readonly printed: PrintRows;
  /** Weighted mean square of what is off: by plan, by doubt and by timing. */
  readonly error: number;
  /** Of it, by plan only. */
  readonly bias: number;
}

export function tonesAt(scene: Scene, settings: LeverSettings): Tones {
  return tonesOf(scene, printedAt(scene, patchesAt(scene.areas, settings)));
}

/** The same, many times over: the expected error at some settings, printed into one room. */
export function errorOfScene(scene: Scene): (settings: LeverSettings) => number {
  const { areas, surface, z } = scene;
  const out = roomFor(areas.length);
  const light = areas.map(({ logExposure }) => 10 ** logExposure);
  const mean = light.reduce((sum, each) => sum + each, 0) / Math.max(1, light.length);
  const laid = layPatches(patchesAt(areas, START), 1);
  return ({ stops, flashS, log2u1, rounds, log2u2 }) => {
    const factor = 2 ** stops;
    for (const [index, each] of light.entries()) laid.imageLxS[index] = each * factor;
    laid.meanLxS.fill(mean * factor);
    laid.flashS.fill(flashS);
    const treatments = [{ process: "reversal" as const, u1: 2 ** log2u1, rounds, u2: 2 ** log2u2 }];
    printRows({ ...laid, treatments }, surface, z, out);
    return tonesOf(scene, out).error;
  };
}

function tonesOf(scene: Scene, printed: PrintRows): Tones {
  let bias = 0;
  let doubt = 0;
  for (const [index, { wanted }] of scene.areas.entries()) {
    const weight = scene.weights[index] ?? 0;
    bias += weight * ((printed.density[index] ?? 0) - wanted) ** 2;
    doubt +=
      weight *
      (spread(scene.covariance, rowOf(printed, index)) + (scene.timeStops * (printed.byStop[index] ?? 0)) ** 2);
  }
  return { printed, error: bias + doubt, bias };
}

/** Slopes of one patch by the parameters. */
export function rowOf({ rows, density }: PrintRows, patch: number): Float64Array {
  const size = rows.length / density.length;
  return rows.subarray(patch * size, (patch + 1) * size);
}

/** Change of each area's density with each of the levers, area by area. */
export function leverSlopes(scene: Scene, settings: LeverSettings, levers: readonly Lever[]): readonly Float64Array[] {
  const columns = levers.map((lever) => {
    const moved = (by: number) =>
      printedAt(scene, patchesAt(scene.areas, { ...settings, [lever]: settings[lever] + by })).density;
    // No flash and no bleach cannot be less.
    const least = lever === "flashS" || lever === "rounds" ? Math.min(STEP[lever], settings[lever]) : STEP[lever];
    const [up, down] = [moved(STEP[lever]), moved(-least)];
    return up.map((value, area) => (value - (down[area] ?? 0)) / (STEP[lever] + least));
  });
  return scene.areas.map((_, area) => Float64Array.from(columns, (column) => column[area] ?? 0));
}
