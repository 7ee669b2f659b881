import { curveNames, type Process, type WholeSettings } from "../tone/curve.ts";
import type { PatchKind } from "../tone/patchOf.ts";

// Inner helpers of learning: they keep positions and flat lists, because they run for every patch of every step of a fit.

/** How many numbers a curve has. */
export const curveCount = curveNames.length;

/** A patch ready to be laid out: every setting known. */
export interface ReadyPatch {
  readonly sheet: number;
  readonly kind: PatchKind;
  /** lx·s of image light. */
  readonly imageLxS: number;
  /** lx·s of the mean of its frame. */
  readonly meanLxS: number;
  readonly flashS: number;
  readonly settings: WholeSettings;
}

/** One way of processing that patches share. */
export interface Treatment {
  readonly process: Process;
  readonly u1: number;
  readonly rounds: number;
  readonly u2: number;
}

export const [IMAGE, BLACK, BASE, BASE_PROCESSED, BLEACH_ONLY] = [0, 1, 3, 4, 5] as const;
const KINDS: readonly PatchKind[] = ["image", "black", "fogged", "base", "baseProcessed", "bleachOnly"];

/** Patches as flat lists. */
export interface Laid {
  readonly count: number;
  readonly sheets: number;
  readonly sheet: Int32Array;
  readonly kind: Uint8Array;
  readonly imageLxS: Float64Array;
  readonly meanLxS: Float64Array;
  readonly flashS: Float64Array;
  readonly treatment: Int32Array;
  readonly treatments: readonly Treatment[];
}

/** Lays patches out; `sheets` is how many sheets share an offset each. */
export function layPatches(patches: readonly ReadyPatch[], sheets: number): Laid {
  const treatments: Treatment[] = [];
  const places = new Map<string, number>();
  const treatment = patches.map(({ settings: { process, u1, rounds, u2 } }) => {
    const key = `${process} ${u1} ${rounds} ${u2}`;
    const known = places.get(key);
    if (known !== undefined) return known;
    places.set(key, treatments.length);
    return treatments.push({ process, u1, rounds, u2 }) - 1;
  });
  return {
    count: patches.length,
    sheets,
    sheet: Int32Array.from(patches, ({ sheet }) => sheet),
    kind: Uint8Array.from(patches, ({ kind }) => KINDS.indexOf(kind)),
    imageLxS: Float64Array.from(patches, ({ imageLxS }) => imageLxS),
    meanLxS: Float64Array.from(patches, ({ meanLxS }) => meanLxS),
    flashS: Float64Array.from(patches, ({ flashS }) => flashS),
    treatment: Int32Array.from(treatment),
    treatments,
  };
}
