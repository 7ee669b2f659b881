import { xoshiro128 } from "./xoshiro128.ts";

/** A stream of chance that gives the same numbers for the same seed. */
export interface RandomNumbers {
  /** Evenly spread, 0 < u < 1. */
  readonly uniform: () => number;
  /** Normally spread about 0 with a deviation of 1. */
  readonly normal: () => number;
}

/**
 * Opens a stream from a seed: xoshiro128** of Blackman and Vigna, its state filled by splitmix32; normal numbers by the
 * polar method of Marsaglia.
 */
export function randomNumbers(seed: number): RandomNumbers {
  const state = new Uint32Array(4);
  let filling = Math.floor(seed) >>> 0;
  for (let index = 0; index < 4; index += 1) {
    filling = (filling + 0x9e3779b9) >>> 0;
    let mixed = filling;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    state[index] = mixed ^ (mixed >>> 16);
  }
  const next = xoshiro128(state);
  let spare: number | undefined;
  return { uniform, normal };

  function uniform(): number {
    // 52 bits, and half a step, so that neither end is reached.
    return ((next() >>> 6) * 0x4000000 + (next() >>> 6) + 0.5) / 0x10000000000000;
  }

  function normal(): number {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square > 0 && square < 1) {
        const scale = Math.sqrt((-2 * Math.log(square)) / square);
        spare = y * scale;
        return x * scale;
      }
    }
  }
}
