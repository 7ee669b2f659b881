import {
  type CautionAct,
  cautionsFor,
  cautionTableAge,
  type Held,
  type ShownCaution,
  type Substance,
} from "@captray/science/chemistry";

export interface CautionsAtInput {
  readonly held: readonly Held[];
  readonly act: CautionAct;
  /** What stands beside it or is in the room; left out: nobody said. */
  readonly beside?: readonly Substance[] | undefined;
  readonly form?: "powder" | "liquid" | undefined;
  /** Ids read earlier in this sitting. */
  readonly seen?: readonly string[];
  /** The day it is, as 2026-12-03. */
  readonly today: string;
}

export interface CautionsAt {
  readonly cautions: readonly ShownCaution[];
  /** Once the limits are older than two years: the day they were last looked at. */
  readonly checkedOn?: string;
}

/** The cautions due at an act, without those read in this sitting; an old table says its date. */
export function cautionsAt({ held, act, beside, form, seen = [], today }: CautionsAtInput): CautionsAt {
  const { isOld, checkedOn } = cautionTableAge({ today });
  return {
    cautions: cautionsFor({ held, act, seen, ...(beside && { beside }), ...(form && { form }) }),
    ...(isOld && { checkedOn }),
  };
}
