import { OutOfDomain } from "../errors/outOfDomain.ts";
import { requireNotNegative } from "../errors/require.ts";

/** How the face of a paper is finished. */
export type Finish = "gloss" | "semimatt" | "matt";

export interface SurfaceInput {
  /** Gloss unless said; or `surface`, not both. */
  readonly finish?: Finish | undefined;
  /** Share of the light that the first surface scatters towards the eye. */
  readonly surface?: number | undefined;
}

const SHARES: Readonly<Record<Finish, number>> = { gloss: 0.003, semimatt: 0.012, matt: 0.025 };

/** First-surface light of a finish, or as given. Inner helper of the tone functions. */
export function surfaceOf({ finish, surface }: SurfaceInput): number {
  if (surface === undefined) {
    const named = finish ?? "gloss";
    if (!Object.hasOwn(SHARES, named)) {
      throw new OutOfDomain("unknownWord", { finish: named, choices: Object.keys(SHARES) }, "finish");
    }
    return SHARES[named];
  }
  if (finish !== undefined) throw new OutOfDomain("twoOfOne", { first: "finish", key: "surface" }, "surface");
  requireNotNegative({ surface });
  return surface;
}
