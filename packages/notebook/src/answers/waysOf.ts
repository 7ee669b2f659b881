import { type HonestWaysAnswer, honestWays, type LongestStillAnswer, longestStill } from "@captray/science/exposure";
import type { Kit } from "./kit.ts";
import type { PlanOf } from "./planOf.ts";
import { practiceOf } from "./practiceOf.ts";

export interface WaysOf {
  /** How the time can be given by hand, or what would make it long enough. */
  readonly byHand: HonestWaysAnswer;
  /** Against how long the subject keeps still; nothing where that was not said. */
  readonly still: LongestStillAnswer | undefined;
}

/** How a planned time can be given with the cap: openings with their honest cost, or the levers that would make it possible. */
export function waysOf({ kit, plan }: { readonly kit: Kit; readonly plan: Extract<PlanOf, { kind: "plan" }> }): WaysOf {
  const { timeS, optics } = plan.answer;
  const magnification = optics.magnification ?? 0;
  const pupilRatio = kit.lens?.pupilRatio?.value ?? 1;
  const reciprocity = kit.paperBox?.reciprocity && {
    reciprocityExponent: kit.paperBox.reciprocity.exponent,
    reciprocityFromS: kit.paperBox.reciprocity.fromS,
  };
  const rate = practiceOf({ hand: kit.hand, way: "counted" })?.rate;
  const stillS = kit.scene.stillS?.value;
  return {
    byHand: honestWays({
      timeS,
      ...(plan.input.hand && { hand: plan.input.hand }),
      ...(rate && { counted: { secondS: rate.value, secondSdS: rate.sd } }),
      magnification,
      pupilRatio,
      ...reciprocity,
    }),
    still:
      stillS === undefined ? undefined : longestStill({ timeS, stillS, magnification, pupilRatio, ...reciprocity }),
  };
}
