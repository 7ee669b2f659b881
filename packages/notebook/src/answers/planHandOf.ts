import type { PlanHand } from "@captray/science/exposure";
import type { Hand } from "../records/index.ts";
import { practiceOf } from "./practiceOf.ts";

/** The hand as `plan` takes it: its bias is subtracted, and what is not known of the bias is scatter; to the ticks where that was practised. */
export function planHandOf({ hand }: { readonly hand: Hand | undefined }): PlanHand | undefined {
  const practice = practiceOf({ hand, way: "ticks" }) ?? practiceOf({ hand, way: "counted" });
  if (practice === undefined) return undefined;
  const { biasS, rate, motorSdS, weber } = practice;
  const rateSd = rate === undefined ? 0 : rate.sd / Math.max(rate.value, 0.1);
  return { biasS: biasS.value, motorSdS: Math.hypot(motorSdS, biasS.sd), weber: Math.hypot(weber, rateSd) };
}
