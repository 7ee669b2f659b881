import { type CautionsAt, cautionsAt } from "@captray/notebook/answers";
import type { CautionAct, Held, Substance } from "@captray/science/chemistry";
import { useSyncExternalStore } from "react";
import { followSitting, readThisSitting } from "./sitting.ts";

export interface CautionsAsked {
  readonly held: readonly Held[];
  readonly act: CautionAct;
  readonly beside?: readonly Substance[] | undefined;
  readonly form?: "powder" | "liquid" | undefined;
}

/** The cautions due at an act, without those read in this sitting. */
export function useCautions(asked: CautionsAsked): CautionsAt {
  return cautionsAt({ ...asked, seen: useReadCautions(), today: new Date().toISOString().slice(0, 10) });
}

/** Ids of the cautions read in this sitting. */
export function useReadCautions(): readonly string[] {
  return useSyncExternalStore(followSitting, readThisSitting);
}
