import type { Bath, BathSubstance, WasteVessel } from "../records/index.ts";

export interface WasteOf {
  /** Where it goes. */
  readonly vessel: WasteVessel;
  /** Why it goes into none of the others; keys are the vessels it must stay out of. */
  readonly refused: Readonly<
    Partial<
      Record<
        WasteVessel,
        "bleachMeetsFixer" | "alkaliMeetsPeroxide" | "acidMeetsFixer" | "silverInDrain" | "alkaliMeetsFixer"
      >
    >
  >;
}

/**
 * Into which of two waste vessels a used bath goes: used bleach and used fixer never meet.
 *
 * Sulfite goes with the fixer, of which it is a part; developer and stop go into neither, because their alkali and acid free gas from both.
 */
export function wasteOf({ bath }: { readonly bath: Pick<Bath, "role" | "holds"> }): WasteOf {
  const { role = "water", holds = [] } = bath;
  const has = (...words: readonly BathSubstance[]) => holds.some(({ what }) => words.includes(what));
  if (has("h2o2", "permanganate", "dichromate") || ["acid", "peroxide", "acidAndPeroxide"].includes(role)) {
    return { vessel: "usedBleach", refused: { usedFixer: "bleachMeetsFixer", neither: "silverInDrain" } };
  }
  if (has("fixer") || ["fix", "clear", "washAid"].includes(role)) {
    return { vessel: "usedFixer", refused: { usedBleach: "bleachMeetsFixer", neither: "silverInDrain" } };
  }
  if (has("acetic", "citric", "sulfuric") || role === "stop") {
    return { vessel: "neither", refused: { usedFixer: "acidMeetsFixer" } };
  }
  if (role === "water") return { vessel: "neither", refused: {} };
  return {
    vessel: "neither",
    refused: { usedBleach: "alkaliMeetsPeroxide", usedFixer: "alkaliMeetsFixer" },
  };
}
